/** Something that happens in a fortnight between two pays; `day` counts from the pay, 0 to 13. Amounts in cents. */
export type Happening =
  | { readonly day: number; readonly pot: string; readonly cash: number; readonly purpose: string }
  | {
      readonly day: number
      readonly pot: string
      readonly shop: string
      readonly order: number
      readonly chargedAfter: number
    }

/** What the demo household buys, over and over with other amounts: `turn` 0 is the oldest fortnight, 5 the latest whole one. */
export function fortnight(turn: number): readonly Happening[] {
  const vary = (cents: number, step: number): number => cents + (((turn * 37) % 11) - 5) * step
  return [
    { day: 0, pot: 'groceries', cash: vary(8_340, 95), purpose: 'weekly shop' },
    { day: 1, pot: 'market', cash: vary(2_750, 50), purpose: 'vegetables and eggs' },
    { day: 2, pot: 'eating-out', cash: vary(1_850, 45), purpose: 'soup and bread, two' },
    { day: 3, pot: 'piano-lessons', cash: 3_500, purpose: 'lesson' },
    { day: 4, pot: 'household', shop: 'tallow-and-twine.example', order: vary(2_260, 85), chargedAfter: 2 },
    { day: 5, pot: 'groceries', cash: vary(2_120, 35), purpose: 'milk, flour, coffee' },
    { day: 6, pot: 'garden', shop: 'fernhill.localhost', order: vary(2_405, 110), chargedAfter: 1 },
    { day: 7, pot: 'groceries', cash: vary(8_610, 80), purpose: 'weekly shop' },
    { day: 8, pot: 'market', cash: vary(2_900, 50), purpose: 'apples, cheese' },
    { day: 8, pot: 'paper', shop: 'lunaire.localhost', order: vary(2_415, 65), chargedAfter: 3 },
    { day: 9, pot: 'eating-out', cash: vary(2_100, 60), purpose: 'pizza on Sunday' },
    { day: 10, pot: 'piano-lessons', shop: 'corvid.localhost', order: vary(2_790, 70), chargedAfter: 2 },
    { day: 11, pot: 'groceries', shop: 'millrace-larder.example', order: vary(3_540, 60), chargedAfter: 2 },
    { day: 11, pot: 'clothes', shop: 'wool-and-weather.example', order: vary(3_180, 150), chargedAfter: 2 },
    { day: 12, pot: 'household', cash: vary(940, 40), purpose: 'light bulbs, glue' },
    { day: 13, pot: 'garden', cash: vary(1_100, 45), purpose: 'a fern' },
  ]
}

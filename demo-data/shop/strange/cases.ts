import { amountText } from '../price-text.ts'

/** Where the strange pages lie, all under Fernhill. */
export const strangePaths = [
  '/strange/no-total',
  '/strange/no-total?as=letter',
  '/strange/changing',
  '/strange/script-submit',
  '/strange/enter',
  '/strange/plain',
  '/strange/abroad',
] as const

const CASES = {
  'no-total': { item: 'Hedge survey, by appointment', cents: 6140 },
  changing: { item: 'Winter wreath', cents: 4000 },
  'changing-wrapped': { item: 'Winter wreath, gift-wrapped', cents: 4500 },
  'script-submit': { item: 'Sweet pea collection', cents: 2730 },
  enter: { item: 'Seed potato sampler', cents: 1890 },
  abroad: { item: 'Dahlia tubers, six', cents: 2840 },
} as const

/** A strange page on which an order can be placed. */
export type StrangeCase = keyof typeof CASES

/** What each strange order comes to when it reaches the server, whether or not its page can be read (CAD; `abroad` in EUR). */
export const strangeTotals: Readonly<Record<StrangeCase, string>> = {
  'no-total': amountText(CASES['no-total'].cents),
  changing: amountText(CASES.changing.cents),
  'changing-wrapped': amountText(CASES['changing-wrapped'].cents),
  'script-submit': amountText(CASES['script-submit'].cents),
  enter: amountText(CASES.enter.cents),
  abroad: amountText(CASES.abroad.cents),
}

/** What a strange order buys, and for how many cents; null for an unknown case. */
export function strangeCase(
  name: string,
): { readonly id: StrangeCase; readonly item: string; readonly cents: number } | null {
  return isStrangeCase(name) ? { id: name, ...CASES[name] } : null
}

function isStrangeCase(name: string): name is StrangeCase {
  return Object.hasOwn(CASES, name)
}

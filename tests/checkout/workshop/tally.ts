import type { Verdict } from './judge.ts'
import type { Expected } from './plan.ts'

/** How many pages of a group were read how. */
export interface Tally {
  pages: number
  withTotal: number
  wrong: number
  missed: number
  invented: number
  withControl: number
  controlWrong: number
  withNumber: number
  numberWrong: number
  stageWrong: number
}

export const emptyTally = (): Tally => ({
  pages: 0,
  withTotal: 0,
  wrong: 0,
  missed: 0,
  invented: 0,
  withControl: 0,
  controlWrong: 0,
  withNumber: 0,
  numberWrong: 0,
  stageWrong: 0,
})

/** Adds one page to a tally. */
export function count(tally: Tally, verdict: Verdict, expected: Expected): void {
  tally.pages += 1
  if (expected.total !== null) tally.withTotal += 1
  if (verdict.total === 'wrong') tally.wrong += 1
  if (verdict.total === 'missed') tally.missed += 1
  if (verdict.total === 'invented') tally.invented += 1
  if (expected.placeOrder.length > 0) tally.withControl += 1
  // A control found where there is none counts against the same figure.
  if (!verdict.controls) tally.controlWrong += 1
  if (expected.orderNumber !== null) tally.withNumber += 1
  if (!verdict.number) tally.numberWrong += 1
  if (!verdict.stage) tally.stageWrong += 1
}

/** The goals of the reader, and whether these pages meet them. */
export function goalsOf(
  tally: Tally,
): readonly { readonly goal: string; readonly reached: string; readonly met: boolean }[] {
  const share = (part: number, whole: number): string => `${part} of ${whole}`
  return [
    {
      goal: 'a wrong total on fewer than 1 page in 200',
      reached: share(tally.wrong, tally.withTotal),
      met: tally.wrong * 200 < tally.withTotal || tally.wrong === 0,
    },
    {
      goal: 'no answer on fewer than 1 page in 20',
      reached: share(tally.missed, tally.withTotal),
      met: tally.missed * 20 < tally.withTotal || tally.missed === 0,
    },
    {
      goal: 'the right place-order control on 19 of 20',
      reached: share(tally.withControl - tally.controlWrong, tally.withControl),
      met: tally.controlWrong * 20 <= tally.withControl,
    },
    {
      goal: 'never a total on a page that has none',
      reached: share(tally.invented, tally.pages - tally.withTotal),
      met: tally.invented === 0,
    },
  ]
}

/** Tallies under names, printed as one table. */
export class Tallies {
  readonly #groups = new Map<string, Tally>()

  add(group: string, verdict: Verdict, expected: Expected): void {
    const tally = this.#groups.get(group) ?? emptyTally()
    this.#groups.set(group, tally)
    count(tally, verdict, expected)
  }

  print(title: string): void {
    const head = [
      title,
      'pages',
      'wrong',
      'no answer',
      'invented',
      'control not right',
      'number not right',
      'stage not right',
    ]
    console.log(`\n| ${head.join(' | ')} |\n|${'---|'.repeat(head.length)}`)
    for (const [group, t] of [...this.#groups].sort(([a], [b]) => a.localeCompare(b, 'en'))) {
      const row = [
        group,
        t.pages,
        `${t.wrong} of ${t.withTotal}`,
        `${t.missed} of ${t.withTotal}`,
        `${t.invented} of ${t.pages - t.withTotal}`,
        `${t.controlWrong} of ${t.withControl}`,
        `${t.numberWrong} of ${t.withNumber}`,
        t.stageWrong,
      ]
      console.log(`| ${row.join(' | ')} |`)
    }
  }
}

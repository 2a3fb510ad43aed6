import { type PricedRow, saysLater, type TotalContext } from './add-up.ts'
import { isDisguised } from './disguise.ts'
import type { Evidence, ReadAmount } from './reading.ts'
import { type Candidate, rankTotals } from './total.ts'

/** The total, the row it came from, and what was seen on the way. */
export interface TotalChoice {
  readonly total: ReadAmount | null
  /** The best candidate, even where it could not be taken. */
  readonly candidate: Candidate | null
  readonly evidence: readonly Evidence[]
}

const LOWEST = 1.5
const CLEAR_LEAD = 0.75
const MOST_EVIDENCE = 20

/**
 * Picks the total among the candidates, or says why none can be taken: two that contradict each other, a part that is
 * not known yet, a credit taken off after it, a currency that nothing tells.
 *
 * @param orders whether the page has a control that places the order; then nothing can be "calculated later"
 */
export function chooseTotal(context: TotalContext, orders: boolean): TotalChoice {
  const candidates = rankTotals(context).filter((each) => each.score < LOWEST || !showsOtherwise(context, each))
  const [best] = candidates
  if (!best || best.score < LOWEST)
    return { total: null, candidate: null, evidence: setAside(candidates, 'too little speaks for it') }
  const obstacle = obstacleTo(context, best, candidates, orders)
  const others = setAside(
    candidates.filter((each) => each !== best && each.row.value !== best.row.value),
    'another amount has more to speak for it',
  )
  const { money } = best.row
  if (obstacle !== null || money === null) {
    const why = obstacle ?? 'nothing on the page tells which currency this is'
    return { total: null, candidate: best, evidence: [evidenceFor(best, false, why), ...others] }
  }
  const currency: Evidence = {
    figure: 'currency',
    source: money.source,
    label: money.label,
    text: money.code,
    used: true,
    why: money.why,
    element: best.row.figure.box.element,
  }
  const why = ['its label', ...best.reasons].join('; ')
  return {
    total: { amount: best.row.amount, currency: money.code },
    candidate: best,
    evidence: [evidenceFor(best, true, why), currency, ...others],
  }
}

function obstacleTo(
  context: TotalContext,
  best: Candidate,
  candidates: readonly Candidate[],
  orders: boolean,
): string | null {
  const rival = candidates.find((each) => contradicts(each, best))
  if (rival) return `another amount (${rival.row.figure.text}) has as much to speak for it`
  if (best.closure?.left.some((term) => term.role === 'credit')) {
    return 'a credit is taken off after it, and the page does not say what remains'
  }
  if (isSplit(context, best)) return 'it is split into two sums behind it, and nothing known says which is charged now'
  const later = orders || context.confirmation ? null : saysLater(context, best.row)
  return later === null ? null : `not final: "${later}"`
}

/** Whether a part of the amount is drawn so that nobody reads what is written. */
function showsOtherwise({ page }: TotalContext, { row }: Candidate): boolean {
  const { from, to } = row.figure
  return page.leaves.slice(from, to + 1).some((leaf) => /\p{Nd}/u.test(leaf.text) && isDisguised(leaf.box.element))
}

const SUM_PARTS: ReadonlySet<PricedRow['meaning']> = new Set([
  'items',
  'net',
  'shipping',
  'tax',
  'included',
  'fee',
  'tip',
])

// Labels, remarks and amounts between a total and the second of two sums that make it up.
const SPLIT_REACH = 8

/** Two sums right behind the total that make it up, and are no parts of it: a deposit, and what is left to pay later. */
function isSplit({ rows, items, stream }: TotalContext, best: Candidate): boolean {
  if (best.row.meaning === 'dueNow') return false
  const at = rows.findIndex((row) => row.index === best.row.index)
  const goods = items.map((item) => stream.within(item.box))
  const behind = rows
    .slice(at + 1, at + 5)
    .filter((row) => row.value > 0 && !row.figure.struck && row.index - best.row.index <= SPLIT_REACH)
    .filter((row) => !goods.some(([from, to]) => row.index >= from && row.index < to))
  return behind.some((row, place) => {
    const other = behind[place + 1]
    if (!other || row.value + other.value !== best.row.value) return false
    return !SUM_PARTS.has(row.meaning) && !SUM_PARTS.has(other.meaning)
  })
}

/** Another amount with equal support: same strength, and neither or both proven by the arithmetic. */
function contradicts(other: Candidate, best: Candidate): boolean {
  return (
    other.row.value !== best.row.value &&
    best.score - other.score < CLEAR_LEAD &&
    (other.closure === null) === (best.closure === null) &&
    !best.group.includes(other.row)
  )
}

function setAside(candidates: readonly Candidate[], why: string): Evidence[] {
  return candidates.slice(0, MOST_EVIDENCE).map((each) => evidenceFor(each, false, [why, ...each.reasons].join('; ')))
}

function evidenceFor({ row }: Candidate, used: boolean, why: string): Evidence {
  return {
    figure: 'total',
    source: row.meaning === null ? 'text' : 'label',
    label: row.label,
    text: row.figure.text,
    used,
    why,
    element: row.figure.box.element,
  }
}

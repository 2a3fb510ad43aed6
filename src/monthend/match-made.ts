import type { Money } from '../money/money.ts'
import type { Choice } from './match-choose.ts'
import { type Graph, type Pair, pairOf, type ReadyLine } from './match-edges.ts'
import type { Group } from './match-groups.ts'
import { pairConfidence, rivalOf, SEVERAL, SURE } from './match-judge.ts'
import type { MatchReason, StatementMatch } from './match-types.ts'
import { IS_NAMED, type Target } from './match-weigh.ts'

type ToMoney = (minor: number) => Money

const EMPTY = { orders: [], entries: [], renewal: null, parts: [], completes: [] } as const

/** The match of a line with the target it was assigned, with its reasons. */
export function matchOfPair(
  graph: Graph,
  choice: Choice,
  lineOf: readonly number[],
  index: number,
  money: ToMoney,
): StatementMatch {
  const line = at(graph.lines, index)
  const target = at(graph.targets, choice.targetOf[index] ?? -1)
  const pair = pairOf(graph.names, line, target)
  if (!pair) throw new RangeError('A pair was chosen that is none.')
  const rival = rivalOf(graph, choice, lineOf, index)
  const confidence = pairConfidence(pair, target, line) * (rival ? SEVERAL : 1)
  return {
    ...EMPTY,
    ...whatOf(target, line, money),
    lines: [line.line.id],
    difference: money(line.amount - target.amount),
    completes: ['foreign', 'margin', 'rate'].includes(pair.fit) && target.order ? [target.order.order] : [],
    confidence,
    isSure: confidence >= SURE,
    reasons: [...pairReasons(pair, target, line, money), ...(rival ? [rival] : [])],
  }
}

/** The match of a part of an order's charge, or of one more refund. */
export function matchOfPart(line: ReadyLine, target: Target, pair: Pair, money: ToMoney): StatementMatch {
  const confidence = pairConfidence(pair, target, line)
  return {
    ...EMPTY,
    ...whatOf(target, line, money),
    lines: [line.line.id],
    difference: money(line.amount - target.amount),
    confidence,
    isSure: false,
    reasons: pairReasons(pair, target, line, money),
  }
}

/** The match of a sum, or of two lines that are one transfer. */
export function matchOfGroup(graph: Graph, group: Group, money: ToMoney): StatementMatch {
  const lines = group.lines.map((l) => at(graph.lines, l))
  const targets = group.targets.map((t) => at(graph.targets, t))
  const [first] = targets
  const base = { ...EMPTY, lines: lines.map((l) => l.line.id), difference: money(0) }
  const doubt: MatchReason[] = group.isOneOfSeveral ? [{ code: 'several-ways' }] : []
  if (!first) return judged(base, 'transfer', 0.92, [{ code: 'opposite-line' }, ...doubt])
  if (first.entry) {
    const told = lines.every((l) => l.line.kind === first.entry?.kind)
    const reasons: MatchReason[] = [{ code: 'sum-of-entries', count: targets.length }]
    if (told) reasons.push({ code: 'bank-says', kind: first.entry.kind })
    const entries = targets.flatMap((t) => (t.entry ? [t.entry.entry] : []))
    // Several entries of those very days that sum to the cent are no accident, whatever the bank calls it.
    const isNear = lines.every((l) => targets.every((t) => l.day - t.day >= -1 && l.day - t.day <= 3))
    return judged({ ...base, entries }, 'seen', told ? 0.94 : isNear ? 0.92 : 0.8, [...reasons, ...doubt])
  }
  const likeness = Math.min(...lines.flatMap((l) => targets.map((t) => graph.names.likeness(l.text, t.name))))
  const orders = targets.flatMap((t) => (t.order ? [t.order.order] : []))
  const [order] = orders
  const parts =
    targets.length > 1
      ? targets.flatMap((t) =>
          t.order && lines[0]
            ? [{ line: lines[0].line.id, order: t.order.order, amount: money(Math.abs(t.amount)) }]
            : [],
        )
      : lines.flatMap((l) => (order ? [{ line: l.line.id, order, amount: money(Math.abs(l.amount)) }] : []))
  const sum: MatchReason =
    targets.length > 1
      ? { code: 'sum-of-orders', count: targets.length }
      : { code: 'sum-of-lines', count: lines.length }
  const sure = likeness >= IS_NAMED ? 0.93 : 0.75
  return judged({ ...base, orders, parts }, 'charge', sure, [sum, { code: 'name', likeness }, ...doubt])
}

function judged(
  base: Omit<StatementMatch, 'kind' | 'confidence' | 'isSure' | 'reasons'>,
  kind: StatementMatch['kind'],
  sure: number,
  reasons: readonly MatchReason[],
): StatementMatch {
  const confidence = reasons.some((r) => r.code === 'several-ways') ? sure * SEVERAL : sure
  return { ...base, kind, confidence, isSure: confidence >= SURE, reasons }
}

type What = Pick<StatementMatch, 'kind' | 'orders' | 'entries' | 'renewal' | 'parts'>

function whatOf(target: Target, { line, amount }: ReadyLine, money: ToMoney): What {
  const base = { orders: [], entries: [], renewal: null, parts: [] }
  if (target.entry) return { ...base, kind: 'seen', entries: [target.entry.entry] }
  if (target.renewal) return { ...base, kind: 'renewal', renewal: target.renewal }
  const order = target.order?.order
  if (order === undefined) return { ...base, kind: 'seen' }
  const part = { line: line.id, order, amount: money(Math.abs(amount)) }
  return { ...base, kind: target.kind === 'refund' ? 'refund' : 'charge', orders: [order], parts: [part] }
}

function pairReasons(pair: Pair, target: Target, line: ReadyLine, money: ToMoney): MatchReason[] {
  const reasons: MatchReason[] = [amountReason(pair, target, line, money)]
  if (target.kind === 'refund' && pair.fit === 'exact' && target.order?.expected)
    reasons.push({ code: 'expected-refund' })
  if (pair.number !== null) reasons.push({ code: 'order-number', number: target.order?.number ?? pair.number })
  if (target.kind !== 'entry' || pair.likeness >= IS_NAMED) reasons.push({ code: 'name', likeness: pair.likeness })
  if (pair.bankSays !== null) reasons.push({ code: 'bank-says', kind: pair.bankSays })
  reasons.push({ code: 'days', days: pair.lag })
  if (target.kind === 'charge' && target.order?.isOff) reasons.push({ code: 'was-cancelled' })
  if (line.line.replaces !== null) reasons.push({ code: 'replaces-line' })
  return reasons
}

function amountReason(pair: Pair, target: Target, { amount, line }: ReadyLine, money: ToMoney): MatchReason {
  const by = money(amount - target.amount)
  switch (pair.fit) {
    case 'exact':
      return { code: 'same-amount' }
    case 'foreign':
      return { code: 'foreign-amount', amount: target.order?.foreign ?? line.amount }
    case 'margin':
      return { code: 'within-margin', by }
    case 'rate':
      return { code: 'within-rate', by }
    case 'refund':
    case 'part':
      return { code: 'part-of', of: money(Math.abs(target.amount)) }
    case 'differs':
      return { code: 'other-amount', by }
  }
}

function at<T>(list: readonly T[], index: number): T {
  const found = list[index]
  if (found === undefined) throw new RangeError(`There is no number ${index}.`)
  return found
}

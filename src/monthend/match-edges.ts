import { dayNumber } from '../book/calendar-date.ts'
import type { AccountId } from '../book/ids.ts'
import type { Edge } from './match-assignment.ts'
import { Names } from './match-names.ts'
import { type MerchantText, merchantText, shopText } from './match-text.ts'
import type { MatchOptions, OrderToMatch } from './match-types.ts'
import { type Fit, fitOf, MAY_BE, pointsOf, type Target } from './match-weigh.ts'
import type { StatementLine } from './statement-line.ts'

/** A line, ready to be compared. */
export interface ReadyLine {
  readonly line: StatementLine
  readonly amount: number
  /** The day it was paid where the bank says so, else booked. */
  readonly day: number
  readonly text: MerchantText
  readonly codes: ReadonlySet<string>
  readonly foreign: { readonly currency: string; readonly minor: number } | null
  readonly account: AccountId | null
}

/** A line and a target that could belong together. */
export interface Pair {
  readonly fit: Fit
  readonly likeness: number
  readonly lag: number
  readonly number: string | null
  readonly bankSays: string | null
  readonly weight: number
}

/** Days a charge may be booked before its tag (tagged afterwards) and after it. */
const CHARGE_DAYS = { early: 5, late: 60 }
const REFUND_DAYS = { early: 0, late: 190 }
const ENTRY_DAYS = { early: 7, late: 10 }
const RENEWAL_DAYS = { early: 6, late: 9 }

/** A line with more possible targets than this keeps the likeliest ones. */
const MOST_EDGES = 40

/** Lines, targets and all pairs worth considering. */
export interface Graph {
  readonly lines: readonly ReadyLine[]
  readonly targets: readonly Target[]
  readonly names: Names
  readonly edges: readonly (readonly Edge[])[]
  /** Whether pairs were left out because there were too many. */
  readonly isCut: boolean
}

/** All pairs of booked lines and what the book expects, with their weights. */
export function buildGraph(
  lines: readonly StatementLine[],
  orders: readonly OrderToMatch[],
  options: MatchOptions,
): Graph {
  const names = new Names()
  const targets = targetsOf(orders, options, names)
  const ready = lines.map((line) => readyLine(line, options))
  const byAmount = new Map<number, number[]>()
  const byName = new Map<number, number[]>()
  targets.forEach((target, index) => {
    group(byAmount, target.amount, index)
    if (target.kind !== 'entry') group(byName, target.name, index)
  })
  let isCut = false
  const edges = ready.map((line) => {
    const seen = new Map<number, number>()
    const consider = (index: number): void => {
      const target = targets[index]
      if (!target || seen.has(index)) return
      const pair = pairOf(names, line, target)
      if (pair) seen.set(index, pair.weight)
    }
    for (const index of byAmount.get(line.amount) ?? []) consider(index)
    for (const name of names.alike(line.text)) for (const index of byName.get(name) ?? []) consider(index)
    const found = [...seen].map(([column, weight]) => ({ column, weight }))
    found.sort((a, b) => b.weight - a.weight || a.column - b.column)
    isCut ||= found.length > MOST_EDGES
    return found.slice(0, MOST_EDGES)
  })
  return { lines: ready, targets, names, edges, isCut }
}

/** What speaks for a line being a target; null when it cannot be. */
export function pairOf(names: Names, line: ReadyLine, target: Target): Pair | null {
  const lag = line.day - target.day
  if (lag < -target.early || lag > target.late) return null
  const { entry } = target
  if (entry && line.account !== null && line.account !== entry.account) return null
  if (entry && contradicts(line.line.kind, entry.kind)) return null
  const fit = fitOf(line.amount, line.foreign, target)
  if (fit === null) return null
  const likeness = names.likeness(line.text, target.name)
  const asked = target.order?.number?.toLowerCase()
  const number = asked && line.codes.has(asked) ? asked : null
  // What is not the exact amount must have the name, or the shop's own number.
  if (fit !== 'exact' && likeness < MAY_BE && number === null) return null
  if (target.kind === 'refund' && likeness < MAY_BE && number === null) return null
  const bankSays = entry && line.line.kind !== null && line.line.kind === bankWord(entry.kind) ? line.line.kind : null
  return {
    fit,
    likeness,
    lag,
    number,
    bankSays,
    weight: pointsOf(fit, likeness, lag, number !== null, bankSays !== null),
  }
}

/** A purchase by card is no withdrawal of notes, and the other way round. */
function contradicts(bank: StatementLine['kind'], entry: string): boolean {
  return entry === 'cash' ? bank === 'card' || bank === 'fee' || bank === 'interest' : bank === 'cash'
}

function bankWord(kind: string): string {
  return kind === 'spend' ? 'card' : kind
}

function readyLine(line: StatementLine, options: MatchOptions): ReadyLine {
  const text = merchantText(`${line.name} ${line.text}`)
  const codes = new Set([...text.codes, ...line.references.map((r) => r.toLowerCase())])
  const foreign = line.original && { currency: line.original.amount.currency, minor: line.original.amount.minor }
  return {
    line,
    amount: line.amount.minor,
    day: dayNumber(line.paidOn ?? line.date),
    text,
    codes,
    foreign,
    account: options.accounts?.[line.account] ?? null,
  }
}

function targetsOf(orders: readonly OrderToMatch[], options: MatchOptions, names: Names): Target[] {
  const targets: Target[] = []
  const none = { order: null, entry: null, renewal: null }
  for (const order of orders) {
    const [charged, refunded] = [order.charged?.minor ?? 0, order.refunded?.minor ?? 0]
    const open = order.held?.minor ?? order.amount.minor - charged
    const base = { ...none, day: dayNumber(order.date), name: names.idOf(shopText(order.shop)), order }
    if (open > 0) targets.push({ ...base, ...CHARGE_DAYS, kind: 'charge', amount: -open })
    // Money back can be more than is charged so far: the charge may stand in the same statement.
    const back = order.expected?.minor || charged + Math.max(0, open) - refunded
    if (back > 0) targets.push({ ...base, ...REFUND_DAYS, kind: 'refund', amount: back })
  }
  for (const entry of options.entries ?? []) {
    const name = names.idOf(merchantText(entry.text))
    targets.push({
      ...none,
      ...ENTRY_DAYS,
      kind: 'entry',
      amount: entry.amount.minor,
      day: dayNumber(entry.date),
      name,
      entry,
    })
  }
  for (const renewal of options.renewals ?? []) {
    const name = names.idOf(renewal.shop === undefined ? merchantText(renewal.name) : shopText(renewal.shop))
    const day = dayNumber(renewal.due)
    targets.push({ ...none, ...RENEWAL_DAYS, kind: 'renewal', amount: -renewal.amount.minor, day, name, renewal })
  }
  return targets
}

function group(map: Map<number, number[]>, key: number, index: number): void {
  const same = map.get(key)
  if (same) same.push(index)
  else map.set(key, [index])
}

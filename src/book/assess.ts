import { type Money, ofMinor } from '../money/money.ts'
import { figures, type PotBalance, potBalance } from './balances.ts'
import type { Book } from './book.ts'
import type { CalendarDate } from './calendar-date.ts'
import { type Due, dueAhead } from './due-ahead.ts'
import { findPot, type Pot } from './household.ts'
import type { PotId } from './ids.ts'
import { type NextFill, nextFill } from './next-fill.ts'
import { type Purchase, takeLines } from './order.ts'
import { findOrder } from './order-state.ts'

/** From best to worst. With several pots the worst outcome is the order's. */
export type Outcome = 'allow' | 'warn' | 'block'

/** What the engine found about one pot; `sayReason` makes a sentence of it. */
export interface Reason {
  readonly code: 'fits' | 'uses-notes' | 'below-floor' | 'below-zero' | 'cash-only' | 'renewal-ahead'
  readonly outcome: Outcome
  readonly pot: PotId
  /** This pot's part of the order. */
  readonly amount: Money
  readonly before: PotBalance
  readonly after: PotBalance
  /**
   * `below-zero`: how much the order is too much; `below-floor`: how far under the floor it ends; `renewal-ahead`: how
   * much is missing for what falls due; else zero.
   */
  readonly short: Money
  /** Notes that become spoken for. */
  readonly notesSpokenFor: Money
  readonly nextFill: NextFill | null
  /** `renewal-ahead`: what the pot must still pay up to and including the day of its next fill. */
  readonly ahead?: readonly Due[]
}

/** One pot of the purchase, before and after. */
export interface VerdictLine {
  readonly pot: PotId
  readonly outcome: Outcome
  readonly amount: Money
  readonly before: PotBalance
  readonly after: PotBalance
  /** How many more notes (by value) online orders have spent once this one is placed. */
  readonly notesSpokenFor: Money
}

/** The engine's answer on a purchase. Plain data: it can be sent in a message. */
export interface Verdict {
  readonly outcome: Outcome
  readonly reasons: readonly Reason[]
  readonly lines: readonly VerdictLine[]
}

const RANK: Record<Outcome, number> = { allow: 0, warn: 1, block: 2 }

/**
 * Answers whether an online purchase fits its pots. Pure and synchronous.
 *
 * Below zero follows the pot's rule; below its floor but not below zero warns; fitting only by using notes allows and
 * says how many notes become spoken for; a cash-only pot cannot pay online and blocks. An order that leaves too little
 * for what renews up to and including the day of the next fill warns. For an order tagged before (`purchase.order`) its
 * present hold is replaced by the new lines.
 *
 * @param today the day the next fill is counted from
 * @throws BookError `bad-lines`, `unknown-pot`, `archived-pot`, `currency-mismatch`, `bad-amount`
 * @example assess(book, {shop: 'corvid.example', lines: [{pot: potId('piano'), amount: money('CAD', '55.90')}]}, today).outcome
 */
export function assess(book: Book, purchase: Purchase, today: CalendarDate): Verdict {
  const heldNow = purchase.order === undefined ? null : findOrder(book, purchase.order)
  const reasons: Reason[] = []
  const lines: VerdictLine[] = []
  for (const { pot, amount } of takeLines(book, purchase)) {
    const part = heldNow?.parts.find((p) => p.pot === pot)
    const found = potReasons(book, purchase, findPot(book.household, pot), amount, part?.held ?? 0, today)
    const first = found[0]
    if (!first) continue
    reasons.push(...found)
    lines.push({
      pot,
      outcome: worst(found.map((r) => r.outcome)),
      amount: first.amount,
      before: first.before,
      after: first.after,
      notesSpokenFor: first.notesSpokenFor,
    })
  }
  return { outcome: worst(lines.map((l) => l.outcome)), reasons, lines }
}

function potReasons(
  book: Book,
  purchase: Purchase,
  pot: Pot,
  amount: number,
  heldNow: number,
  today: CalendarDate,
): Reason[] {
  const of = (minor: number): Money => ofMinor(book.household.currency, minor)
  const now = potBalance(book, pot.id)
  const before = heldNow === 0 ? now : figures(book, now.cash.minor, now.card.minor, now.held.minor - heldNow)
  const after = figures(book, before.cash.minor, before.card.minor, before.held.minor + amount)
  const left = after.left.minor
  const notes = after.spokenFor.minor - before.spokenFor.minor
  const reason = (code: Reason['code'], outcome: Outcome, short = 0): Reason => ({
    code,
    outcome,
    pot: pot.id,
    amount: of(amount),
    before,
    after,
    short: of(short),
    notesSpokenFor: of(notes),
    nextFill: nextFill(book.household, pot, today),
  })
  if (pot.sides === 'cash') return [reason('cash-only', 'block')]
  if (left < 0 && amount > 0) {
    // Making a standing hold smaller only helps, even where the pot is short for other reasons.
    return [reason('below-zero', amount <= heldNow ? 'allow' : pot.rule, -left)]
  }
  const found: Reason[] = []
  if (left < pot.floor && amount > 0) found.push(reason('below-floor', 'warn', pot.floor - left))
  const ahead = amount > heldNow ? dueAhead(book, purchase, pot, today) : []
  const owed = ahead.reduce((sum, due) => sum + due.amount.minor, 0)
  if (owed > left) found.push({ ...reason('renewal-ahead', 'warn', owed - left), ahead })
  if (notes > 0) found.push(reason('uses-notes', 'allow'))
  return found.length > 0 ? found : [reason('fits', 'allow')]
}

function worst(outcomes: readonly Outcome[]): Outcome {
  return outcomes.reduce<Outcome>((a, b) => (RANK[b] > RANK[a] ? b : a), 'allow')
}

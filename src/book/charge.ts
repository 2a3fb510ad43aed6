import type { CurrencyCode } from '../money/currency.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { type PotBalance, potBalance } from './balances.ts'
import { append, type Book } from './book.ts'
import type { ChargeEntry, OrderLine, Stamp } from './entry.ts'
import { findAccount } from './household.ts'
import type { AccountId, OrderId, PotId } from './ids.ts'
import { instalmentsOf } from './instalment.ts'
import { type OrderState, orderState, orderSums } from './order-state.ts'
import { ownLines } from './own-lines.ts'
import { entryBase, placeOf, takeAmount } from './posting.ts'
import { joinLines, spread, sumOf } from './spread.ts'

/** What is known of a charge beside its amount. */
export interface ChargeHow {
  /** What each pot bears; they sum to the charge. Absent: pro rata to what is held. */
  readonly lines?: readonly { readonly pot: PotId; readonly amount: Money }[]
  /** Places in the order's list of items that this charge is for. */
  readonly items?: readonly number[]
  /** What the shop asked in its own currency: tells the rate the card used. */
  readonly foreign?: Money
}

/**
 * What the card posted against an order. Each pot's hold goes down by its part of the charge, as far as it reaches; an
 * overrun is taken from the pot's card side and does not use another pot's hold. Without lines of its own the charge is
 * spread over the pots pro rata to what they hold, and so is what goes beyond; where nothing is held any more, pro rata to
 * what was tagged.
 *
 * @throws BookError `unknown-order`, `unknown-account`, `currency-mismatch`, `bad-amount`, `bad-split` (lines that do not
 *   sum to the charge, an unknown item)
 */
export function chargeOrder(
  book: Book,
  stamp: Stamp,
  order: OrderId,
  amount: Money,
  account?: AccountId,
  how: ChargeHow = {},
): ChargeEntry {
  const state = orderState(book, order)
  const charged = takeAmount(book.household, amount)
  const lines = ownLines(book, state, amount, how) ?? chargeLines(book.household.currency, state, charged)
  const holds = lines.map((line) => {
    const part = state.parts.find((p) => p.pot === line.pot)
    return { pot: line.pot, amount: Math.min(line.amount, Math.max(0, part?.held ?? 0)) }
  })
  const base = entryBase(
    stamp,
    [
      ...lines.map((l) => ({ account: `card:${l.pot}` as const, amount: -l.amount })),
      { account: 'outside', amount: charged },
      ...holds.map((h) => ({ account: `held:${h.pot}` as const, amount: -h.amount })),
      { account: 'on-order', amount: sumOf(holds) },
    ],
    [
      { account: placeOf(findAccount(book.household, account)), amount: -charged },
      { account: 'world', amount: charged },
    ],
  )
  const foreign = how.foreign ? { foreign: { currency: how.foreign.currency, amount: how.foreign.minor } } : {}
  return { ...base, kind: 'charge', order, lines, ...foreign }
}

/** What came of a charge: an entry to append, or a question, because it is more than the order still holds. */
export type ChargeAnswer =
  | { readonly kind: 'charged'; readonly entry: ChargeEntry }
  | {
      readonly kind: 'above-hold'
      /** What the order still holds. */
      readonly held: Money
      /** By how much the charge is more. */
      readonly above: Money
      /** The pots it would be taken from, with what they would have then. */
      readonly after: readonly { readonly pot: PotId; readonly above: Money; readonly balance: PotBalance }[]
    }

/**
 * Charges an order if its hold reaches; a charge above it needs the person's word (`acceptsAbove`), for something was
 * charged that nobody agreed to yet. The day's instalments count as held.
 *
 * @throws BookError what `chargeOrder` throws
 */
export function answerCharge(
  book: Book,
  stamp: Stamp,
  order: OrderId,
  amount: Money,
  options: ChargeHow & { readonly account?: AccountId; readonly acceptsAbove?: boolean } = {},
): ChargeAnswer {
  const entry = chargeOrder(book, stamp, order, amount, options.account, options)
  const state = orderState(book, order)
  const day = stamp.happened ?? stamp.date
  const due = instalmentsOf(state).filter((p) => p.state === 'to-come' && p.date <= day)
  const held = joinLines(
    state.parts.map((p) => ({ pot: p.pot, amount: Math.max(0, p.held) })),
    due.flatMap((p) => p.lines),
  )
  const over = entry.lines
    .map((l) => ({ pot: l.pot, amount: l.amount - (held.find((h) => h.pot === l.pot)?.amount ?? 0) }))
    .filter((l) => l.amount > 0)
  if (over.length === 0 || options.acceptsAbove) return { kind: 'charged', entry }
  const after = append(book, entry)
  const of = (minor: number): Money => ofMinor(book.household.currency, minor)
  return {
    kind: 'above-hold',
    held: of(sumOf(held)),
    above: of(sumOf(over)),
    after: over.map((l) => ({ pot: l.pot, above: of(l.amount), balance: potBalance(after, l.pot) })),
  }
}

function chargeLines(currency: CurrencyCode, state: OrderState, charged: number): OrderLine[] {
  const held = state.parts.filter((p) => p.held > 0).map((p) => ({ pot: p.pot, amount: p.held }))
  const reach = orderSums(state).held
  if (held.length > 0 && charged <= reach) return spread(currency, charged, held)
  const beyond = spread(currency, charged - sumOf(held), held.length > 0 ? held : sharesOf(state))
  return joinLines(held, beyond)
}

/** By what an order's costs are spread where nothing is held of them. */
function sharesOf(state: OrderState): OrderLine[] {
  const next = instalmentsOf(state).find((p) => p.state === 'to-come')
  if (next && sumOf(next.lines) > 0) return [...next.lines]
  const tagged = state.parts.filter((p) => p.tagged > 0).map((p) => ({ pot: p.pot, amount: p.tagged }))
  return tagged.length > 0 ? tagged : state.parts.map((p) => ({ pot: p.pot, amount: 1 }))
}

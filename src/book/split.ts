import { allocate } from '../money/allocate.ts'
import type { CurrencyCode } from '../money/currency.ts'
import { type Money, ofMinor, toDecimal } from '../money/money.ts'
import { BookError } from './book-error.ts'
import type { PotId } from './ids.ts'
import { oddUnits } from './odd-units.ts'

/** A cost of the whole order, which follows its items. `difference` is what a shop's own figures leave unexplained. */
export type SharedKind = 'shipping' | 'tax' | 'tip' | 'fee' | 'discount' | 'credit' | 'difference'

/** One thing bought and the pot that pays for it. `amount` is the line's sum, zero or more. */
export interface SplitItem {
  readonly name: string
  readonly amount: Money
  readonly pot: PotId
}

/** What an order costs beside its items; a discount or credit is negative. */
export interface SharedCost {
  readonly kind: SharedKind
  readonly amount: Money
}

/** How an order is put on pots: on one, by its items, by amounts (one pot may take the rest), or by shares. */
export type SplitHow =
  | { readonly by: 'pot'; readonly pot: PotId }
  | { readonly by: 'item'; readonly items: readonly SplitItem[]; readonly shared: readonly SharedCost[] }
  | {
      readonly by: 'amount'
      readonly lines: readonly { readonly pot: PotId; readonly amount: Money }[]
      readonly rest?: PotId
    }
  | { readonly by: 'share'; readonly shares: readonly { readonly pot: PotId; readonly share: string }[] }

/** One pot's part of an order. */
export interface SplitLine {
  readonly pot: PotId
  /** What its items alone cost; null where the order is not split by item. */
  readonly items: Money | null
  /** Its part of shipping, tax, tip, discount and the like, together. */
  readonly shared: Money
  /** All in all. The lines' amounts sum to the order exactly. */
  readonly amount: Money
  /** Minor units this pot bears beyond its exact part cut short: the odd cents. */
  readonly odd: number
}

/** An order put on its pots. */
export interface Split {
  readonly by: SplitHow['by']
  /** How odd cents were given out: each to the largest remainder, ties to the earlier pot (Hamilton's method). */
  readonly method: 'largest-remainder'
  readonly total: Money
  readonly lines: readonly SplitLine[]
  /** The order's shared costs, `difference` among them where the figures did not add up. */
  readonly shared: readonly SharedCost[]
}

/**
 * Puts an order on its pots. By item, the shared costs together follow each pot's items pro rata by largest remainder;
 * where a page's figures do not add up to its total, what is missing is one more shared cost. The parts sum to the total
 * exactly, and each is less than one minor unit from its exact part.
 *
 * @param total what the card pays, in the shop's currency
 * @throws BookError `bad-amount` (less than nothing), `bad-split` (no pot, amounts that do not sum to the total, an item below zero), `currency-mismatch`
 * @example splitOrder(money('CAD', '1.00'), {by: 'share', shares: [{pot: a, share: '2'}, {pot: b, share: '1'}]})
 *   // lines 0.67 (odd 1) and 0.33
 */
export function splitOrder(total: Money, how: SplitHow): Split {
  if (total.minor < 0) {
    throw new BookError('bad-amount', `An order of ${toDecimal(total)} is less than nothing. Enter a refund as one.`)
  }
  const base = { by: how.by, method: 'largest-remainder', total, shared: [] } as const
  const none = ofMinor(total.currency, 0)
  switch (how.by) {
    case 'pot':
      return { ...base, lines: [{ pot: how.pot, items: null, shared: none, amount: total, odd: 0 }] }
    case 'item':
      return byItem(total, how.items, how.shared)
    case 'amount':
      return { ...base, lines: byAmount(total, how.lines, how.rest) }
    case 'share': {
      const shares = how.shares.map((s) => s.share)
      if (shares.length === 0) throw bad('No pot has a share. Give at least one pot a share above zero.')
      const parts = allocated(total, shares)
      const odd = oddUnits(total.minor, shares, parts)
      return {
        ...base,
        lines: how.shares.map(({ pot }, n) => ({
          pot,
          items: null,
          shared: none,
          amount: parts[n] ?? none,
          odd: odd[n] ?? 0,
        })),
      }
    }
  }
}

/** The shared costs of an order, with what its figures leave unexplained as one more. Their sum is total - items. */
export function allShared(total: Money, items: readonly Money[], shared: readonly SharedCost[]): SharedCost[] {
  const said = shared.filter((s) => s.amount.minor !== 0)
  const known = sum([...items, ...said.map((s) => s.amount)], total.currency)
  const missing = ofMinor(total.currency, total.minor - known)
  return missing.minor === 0 ? said : [...said, { kind: 'difference', amount: missing }]
}

function byItem(total: Money, items: readonly SplitItem[], shared: readonly SharedCost[]): Split {
  if (items.length === 0) throw bad('There is no item to split by. Split by amount or by share.')
  const { currency } = total
  const pots = new Map<PotId, { items: number; count: number }>()
  for (const { name, amount, pot } of items) {
    if (amount.minor < 0) throw bad(`"${name}" costs less than nothing. Enter it as a discount.`)
    const of = pots.get(pot) ?? { items: 0, count: 0 }
    pots.set(pot, { items: of.items + inCurrency(amount, currency), count: of.count + 1 })
  }
  const costs = allShared(
    total,
    items.map((i) => i.amount),
    shared,
  )
  const net = ofMinor(
    currency,
    sum(
      costs.map((c) => c.amount),
      currency,
    ),
  )
  const all = [...pots]
  const worth = all.map(([, p]) => p.items)
  // Things that are all free still share the shipping: by how many there are.
  const weights = worth.some((w) => w > 0) ? worth : all.map(([, p]) => p.count)
  const parts = allocate(net, weights)
  const odd = oddUnits(net.minor, weights.map(String), parts)
  return {
    by: 'item',
    method: 'largest-remainder',
    total,
    shared: costs,
    lines: all.map(([pot, p], n) => {
      const part = parts[n]?.minor ?? 0
      return {
        pot,
        items: ofMinor(currency, p.items),
        shared: ofMinor(currency, part),
        amount: ofMinor(currency, p.items + part),
        odd: odd[n] ?? 0,
      }
    }),
  }
}

function byAmount(total: Money, lines: readonly { pot: PotId; amount: Money }[], rest: PotId | undefined): SplitLine[] {
  const sums = new Map<PotId, number>()
  for (const { pot, amount } of lines) {
    if (amount.minor < 0) throw bad(`${toDecimal(amount)} is less than nothing. Give each pot zero or more.`)
    sums.set(pot, (sums.get(pot) ?? 0) + inCurrency(amount, total.currency))
  }
  const placed = [...sums.values()].reduce((all, amount) => all + amount, 0)
  const missing = ofMinor(total.currency, total.minor - placed)
  if (missing.minor < 0) {
    const over = toDecimal(ofMinor(total.currency, -missing.minor))
    throw bad(`The pots' amounts come to ${over} more than the order. Lower one of them.`)
  }
  if (rest !== undefined) sums.set(rest, (sums.get(rest) ?? 0) + missing.minor)
  else if (missing.minor > 0) throw bad(`${toDecimal(missing)} of the order has no pot yet. Give it to one.`)
  if (sums.size === 0) throw bad('The order has no pot. Choose the pot that pays for it.')
  const none = ofMinor(total.currency, 0)
  return [...sums].map(([pot, minor]) => ({
    pot,
    items: null,
    shared: none,
    amount: ofMinor(total.currency, minor),
    odd: 0,
  }))
}

function allocated(total: Money, shares: readonly string[]): Money[] {
  const wrong = shares.find((s) => !/^\d{1,15}(\.\d{1,9})?$/.test(s))
  if (wrong !== undefined) throw bad(`"${wrong}" is not a share. Write a number such as 2 or 33.3.`)
  if (!shares.some((s) => Number(s) > 0)) throw bad('All shares are zero. Give at least one pot a share above zero.')
  return allocate(total, shares)
}

function sum(amounts: readonly Money[], currency: CurrencyCode): number {
  return amounts.reduce((all, m) => all + inCurrency(m, currency), 0)
}

function inCurrency(m: Money, currency: CurrencyCode): number {
  if (m.currency === currency) return m.minor
  throw new BookError(
    'currency-mismatch',
    `One figure is in ${m.currency} and the order in ${currency}. Enter all of an order in one currency.`,
  )
}

function bad(message: string): BookError {
  return new BookError('bad-split', message)
}

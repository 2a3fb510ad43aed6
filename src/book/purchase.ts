import { allocate } from '../money/allocate.ts'
import { type Money, ofMinor, toDecimal } from '../money/money.ts'
import { BookError } from './book-error.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { OrderLine } from './entry.ts'
import { type Converted, convert, type Rate } from './foreign.ts'
import type { Household } from './household.ts'
import { cutInstalments } from './instalment.ts'
import type { Purchase } from './order.ts'
import type { Instalments, OrderDetails } from './order-details.ts'
import { type Split, type SplitHow, splitOrder } from './split.ts'
import { spread, sumOf } from './spread.ts'

/** An order as a person means it. Amounts are in the currency the shop asks, unless they say otherwise. */
export interface OrderWish {
  /** Host name of the shop, without `www.`. */
  readonly shop: string
  /** All of the order, before a gift card. */
  readonly total: Money
  readonly split: SplitHow
  /** Needed where the shop asks another currency than the household's. */
  readonly foreign?: { readonly rate: Rate; readonly feePercent: string; readonly from: 'given' | 'seen' }
  /** An estimate: so much per cent is held on top; a plain decimal text. */
  readonly marginPercent?: string
  /** Paid by gift card, store credit or points. */
  readonly credit?: Money
  /**
   * The days of the parts. Equal parts, odd cents to the first ones, unless their amounts are given: in the household's
   * currency, summing to all that is held.
   */
  readonly instalments?: {
    readonly reserve: Instalments['reserve']
    readonly dates: readonly CalendarDate[]
    readonly amounts?: readonly Money[]
  }
  readonly renewal?: { readonly id: string; readonly due: CalendarDate }
}

/** A wish worked out: what to assess and tag, how it was split, and what it comes to abroad. */
export interface WorkedOut {
  readonly purchase: Purchase
  readonly split: Split
  readonly converted: Converted | null
  /** Each pot's part of the whole order in the household's currency, also where only an instalment is held now. */
  readonly whole: readonly OrderLine[]
}

/**
 * Works out an order: takes off what a gift card pays, splits it, converts it, adds the margin of an estimate and cuts it
 * into instalments. What the card will pay is put on the pots exactly.
 *
 * @param today the instalments due up to this day are held at once
 * @throws BookError `bad-split`, `bad-rate`, `bad-instalments`, `bad-amount`, `currency-mismatch`
 */
export function workOut(household: Household, wish: OrderWish, today: CalendarDate): WorkedOut {
  const { total, credit, marginPercent = '0' } = wish
  const paid = cardPays(total, credit)
  const split = splitOrder(paid, withCredit(wish.split, credit))
  const { currency } = household
  const isForeign = paid.currency !== currency
  if (isForeign && !wish.foreign) {
    throw new BookError(
      'bad-rate',
      `The shop asks ${paid.currency}. Say what one ${paid.currency} costs in ${currency}.`,
    )
  }
  const converted =
    isForeign && wish.foreign ? convert(paid, currency, wish.foreign.rate, wish.foreign.feePercent) : null
  const parts = split.lines.map((l) => ({ pot: l.pot, amount: l.amount.minor }))
  const atHome = converted ? spreadOr(household, converted.total.minor, parts) : parts
  const margin = marginOf(sumOf(atHome), marginPercent)
  const whole = margin === 0 ? atHome : spread(currency, sumOf(atHome) + margin, atHome)
  const instalments = instalmentsFor(household, wish, whole)
  const lines = instalments?.reserve === 'by-part' ? dueNow(instalments, whole, today) : whole
  const details = detailsOf(wish, split, margin, instalments, isForeign)
  return {
    split,
    converted,
    whole,
    purchase: {
      shop: wish.shop,
      lines: lines.map((l) => ({ pot: l.pot, amount: ofMinor(currency, l.amount) })),
      ...(Object.keys(details).length > 0 ? { details } : {}),
    },
  }
}

function cardPays(total: Money, credit: Money | undefined): Money {
  if (!credit) return total
  if (credit.currency !== total.currency || credit.minor < 0 || credit.minor > total.minor) {
    throw new BookError('bad-amount', `A gift card cannot pay ${toDecimal(credit)} of ${toDecimal(total)}. Check it.`)
  }
  return ofMinor(total.currency, total.minor - credit.minor)
}

/** By item, what a gift card pays is one more cost that lessens the order; amounts and shares are of what the card pays. */
function withCredit(how: SplitHow, credit: Money | undefined): SplitHow {
  if (how.by !== 'item' || !credit || credit.minor === 0) return how
  return { ...how, shared: [...how.shared, { kind: 'credit', amount: ofMinor(credit.currency, -credit.minor) }] }
}

function spreadOr(household: Household, amount: number, parts: readonly OrderLine[]): OrderLine[] {
  return spread(household.currency, amount, sumOf(parts) > 0 ? parts : parts.map((p) => ({ ...p, amount: 1 })))
}

/** Rounded up: a margin is there to be enough. */
function marginOf(amount: number, percent: string): number {
  if (!/^\d{1,3}(\.\d{1,4})?$/.test(percent)) {
    throw new BookError('bad-amount', `"${percent}" is not a margin. Write it in per cent, such as 10.`)
  }
  const [whole = '0', fraction = ''] = percent.split('.')
  const scale = 10n ** BigInt(fraction.length) * 100n
  return Number((BigInt(amount) * BigInt(whole + fraction) + scale - 1n) / scale)
}

function instalmentsFor(household: Household, wish: OrderWish, whole: readonly OrderLine[]): Instalments | null {
  if (!wish.instalments) return null
  const { reserve, dates, amounts } = wish.instalments
  if (dates.length < 2 || (amounts && amounts.length !== dates.length)) {
    throw new BookError('bad-instalments', 'Instalments need two parts at least, each with its day and amount.')
  }
  if (amounts?.some((m) => m.currency !== household.currency)) {
    throw new BookError('currency-mismatch', `Enter the instalments in ${household.currency}.`)
  }
  const total = ofMinor(household.currency, sumOf(whole))
  const cut =
    amounts ??
    allocate(
      total,
      dates.map(() => 1),
    )
  const parts = dates.map((date, n) => ({ date, amount: cut[n]?.minor ?? 0 }))
  return { reserve, parts: cutInstalments(household.currency, whole, parts) }
}

function dueNow({ parts }: Instalments, whole: readonly OrderLine[], today: CalendarDate): OrderLine[] {
  const due = parts.filter((p) => p.date <= today).flatMap((p) => p.lines)
  return whole.map(({ pot }) => ({ pot, amount: sumOf(due.filter((l) => l.pot === pot)) }))
}

function detailsOf(
  wish: OrderWish,
  split: Split,
  margin: number,
  instalments: Instalments | null,
  isForeign: boolean,
): OrderDetails {
  const { split: how, foreign, credit, renewal } = wish
  return {
    ...(how.by === 'pot' ? {} : { by: how.by }),
    ...(how.by === 'item'
      ? {
          items: how.items.map(({ name, amount, pot }) => ({ name, amount: amount.minor, pot })),
          shared: split.shared.map(({ kind, amount }) => ({ kind, amount: amount.minor })),
        }
      : {}),
    ...(foreign && isForeign
      ? {
          foreign: {
            currency: split.total.currency,
            amount: split.total.minor,
            home: foreign.rate.home,
            per: foreign.rate.per,
            fee: foreign.feePercent,
            from: foreign.from,
          },
        }
      : {}),
    ...(margin > 0 ? { margin } : {}),
    ...(credit && credit.minor > 0 ? { credit: credit.minor } : {}),
    ...(instalments ? { instalments } : {}),
    ...(renewal ? { renewal } : {}),
  }
}

import { type CurrencyCode, minorDigits } from '../money/currency.ts'
import { type Money, ofMinor, toDecimal } from '../money/money.ts'
import { type Book, entriesOf, isReversed } from './book.ts'
import { BookError } from './book-error.ts'
import type { CalendarDate } from './calendar-date.ts'

/**
 * What two currencies are worth to each other: `home` of the household's is as much as `per` of the shop's. Plain decimal
 * texts, so that a rate written either way round stays exact: `{home: '1.4712', per: '1'}`, `{home: '1', per: '15.6466'}`.
 */
export interface Rate {
  readonly home: string
  readonly per: string
}

/** A rate taken from a charge of the household's own; the card's fee is in it already. */
export interface SeenRate extends Rate {
  readonly currency: CurrencyCode
  readonly date: CalendarDate
}

/** What an amount abroad comes to. */
export interface Converted {
  /** At the rate alone. */
  readonly amount: Money
  /** The card's foreign fee on it. */
  readonly fee: Money
  /** What to hold. */
  readonly total: Money
}

const DECIMAL = /^\d{1,12}(\.\d{1,12})?$/

/**
 * Converts an amount into the household's currency and adds the card's fee. Each of the two is rounded once, to the
 * nearest minor unit, half of one upwards (the rule of Council Regulation (EC) 1103/97, art. 5).
 *
 * @param feePercent plain decimal text, `2.5`; `0` for none
 * @throws BookError `bad-rate`
 * @example convert(money('EUR', '100.00'), 'CAD', {home: '1.4712', per: '1'}, '2.5').total // 150.80 CAD
 */
export function convert(m: Money, to: CurrencyCode, rate: Rate, feePercent: string): Converted {
  const [home, per, fee] = [readDecimal(rate.home), readDecimal(rate.per), readDecimal(feePercent)]
  if (!home || !per || home.digits === 0n || per.digits === 0n) {
    throw new BookError(
      'bad-rate',
      `"${rate.home} for ${rate.per}" is not a rate. Write numbers above zero, such as 1.47.`,
    )
  }
  if (!fee) throw new BookError('bad-rate', `"${feePercent}" is not a fee. Write it in per cent, such as 2.5.`)
  const digits = minorDigits(to) - minorDigits(m.currency)
  // minor * (home / per), with every power of ten on one side.
  const over = BigInt(m.minor) * home.digits * 10n ** BigInt(per.places + Math.max(0, digits))
  const under = per.digits * 10n ** BigInt(home.places + Math.max(0, -digits))
  const amount = halfUp(over, under)
  const charged = halfUp(amount * fee.digits, 100n * 10n ** BigInt(fee.places))
  return { amount: of(to, amount), fee: of(to, charged), total: of(to, amount + charged) }
}

/**
 * The latest rate seen on the household's own charges in a currency, or null. No rate is ever fetched.
 */
export function lastSeenRate(book: Book, currency: CurrencyCode): SeenRate | null {
  let last: SeenRate | null = null
  for (const entry of entriesOf(book)) {
    if (entry.kind !== 'charge' || entry.foreign?.currency !== currency || isReversed(book, entry.id)) continue
    const charged = entry.lines.reduce((sum, l) => sum + l.amount, 0)
    if (charged <= 0 || entry.foreign.amount <= 0) continue
    const home = toDecimal(ofMinor(book.household.currency, charged))
    const per = toDecimal(ofMinor(currency, entry.foreign.amount))
    last = { home, per, currency, date: entry.date }
  }
  return last
}

function halfUp(over: bigint, under: bigint): bigint {
  return (2n * over + under) / (2n * under)
}

function of(currency: CurrencyCode, minor: bigint): Money {
  return ofMinor(currency, Number(minor))
}

function readDecimal(text: string): { digits: bigint; places: number } | null {
  if (!DECIMAL.test(text)) return null
  const [whole = '', fraction = ''] = text.split('.')
  return { digits: BigInt(whole + fraction), places: fraction.length }
}

import { type CalendarDate, isCalendarDate } from '../../book/calendar-date.ts'
import { isCurrencyCode } from '../../money/currency.ts'
import { add, type Money, negate } from '../../money/money.ts'
import { MonthendError } from '../monthend-error.ts'
import type { OriginalAmount } from '../statement-line.ts'
import { amountOf, convert, convertBack, inverseRate } from './amount.ts'
import { type Tag, tagAt, tagsBelow, tagsNamed, textAt } from './tag.ts'

/**
 * An `Amt` element: unsigned digits with a `Ccy` attribute.
 *
 * @throws MonthendError `bad-amount`
 */
export function camtAmount(tag: Tag): Money {
  const currency = tag.attributes.Ccy ?? ''
  if (!isCurrencyCode(currency)) {
    throw new MonthendError('bad-amount', `Line ${tag.row}: "${currency}" is not a currency.`, tag.row)
  }
  if (/^[+-]/.test(tag.text)) {
    throw new MonthendError('bad-amount', `Line ${tag.row}: "${tag.text}" has a sign; camt amounts have none.`, tag.row)
  }
  return amountOf(currency, tag.text, tag.row)
}

/** An amount with the direction that stands beside it: DBIT is negative. A reversal's direction is its own already. */
export function camtSigned(tag: Tag): Money {
  const amount = tagAt(tag, 'Amt')
  const direction = textAt(tag, 'CdtDbtInd')
  if (!amount || (direction !== 'CRDT' && direction !== 'DBIT')) {
    const what = amount ? 'direction (CdtDbtInd)' : 'amount (Amt)'
    throw new MonthendError('bad-line', `The ${tag.name} at line ${tag.row} has no ${what}.`, tag.row)
  }
  const size = camtAmount(amount)
  return direction === 'DBIT' ? negate(size) : size
}

/**
 * A day written as a date or as a date and time: the day as written, whatever its zone.
 *
 * @throws MonthendError `bad-date`
 */
export function camtDate(tag: Tag | null): CalendarDate | null {
  const text = textAt(tag, 'Dt') ?? textAt(tag, 'DtTm')
  if (text === null || !tag) return null
  const day = /^\d{4}-\d{2}-\d{2}(?=$|[T Z+-])/.exec(text)?.[0] ?? ''
  if (isCalendarDate(day)) return day
  throw new MonthendError('bad-date', `Line ${tag.row}: "${text.slice(0, 40)}" is not a day.`, tag.row)
}

/** A detail's amount in the entry's currency, unsigned; null when it is not told. */
export function detailAmount(detail: Tag, currency: string): Money | null {
  const candidates = [tagAt(detail, 'AmtDtls', 'TxAmt', 'Amt'), tagAt(detail, 'Amt')]
  const found = candidates.find((tag) => tag?.attributes.Ccy === currency)
  return found ? camtAmount(found) : null
}

/** The charges told on an element, positive when the customer pays them; null when none in that currency. */
export function chargesOn(tag: Tag, currency: string): Money | null {
  const sums = tagsNamed(tag, 'Chrgs').flatMap((charges) => {
    const records = tagsNamed(charges, 'Rcrd')
    const total = tagAt(charges, 'TtlChrgsAndTaxAmt')
    // Up to version 3 each Chrgs is one record itself.
    const parts = records.length > 0 ? records : [charges]
    const signed = parts.flatMap((part) => {
      const amount = tagAt(part, 'Amt')
      if (amount?.attributes.Ccy !== currency) return []
      return textAt(part, 'CdtDbtInd') === 'CRDT' ? [negate(camtAmount(amount))] : [camtAmount(amount)]
    })
    if (signed.length === 0 && total?.attributes.Ccy === currency) return [camtAmount(total)]
    return signed
  })
  return sums.length === 0 ? null : sums.reduce((a, b) => add(a, b))
}

/**
 * Whether charges are part of the booked amount: by arithmetic where the amount before charges is told, else by the
 * bank's own word (ChrgInclInd), else yes.
 */
export function chargesIncluded(tag: Tag, booked: Money, before: Money | null, charges: Money): boolean {
  const size = Math.abs(booked.minor)
  const signedCharges = booked.minor < 0 ? charges.minor : -charges.minor
  if (before && size === before.minor + signedCharges) return true
  if (before && size === before.minor) return false
  return !tagsBelow(tag, 'ChrgInclInd').some((said) => said.text === 'false')
}

/** What was instructed in another currency, and the rate, turned so that it is units of ours for one of theirs. */
export function instructed(detail: Tag, booked: Money): OriginalAmount | null {
  const details = tagAt(detail, 'AmtDtls')
  const candidates = [
    tagAt(detail, 'AmtDtls', 'InstdAmt', 'Amt'),
    tagAt(detail, 'AmtDtls', 'TxAmt', 'Amt'),
    tagAt(detail, 'Amt'),
  ]
  const foreign = candidates.find((tag) => tag && tag.attributes.Ccy !== booked.currency)
  if (!foreign) return null
  const size = camtAmount(foreign)
  if (size.minor === 0) return null
  const exchange = details && tagsBelow(details, 'CcyXchg')[0]
  const rate = exchange ? turned(exchange, size, booked, detailAmount(detail, booked.currency)) : null
  return { amount: booked.minor < 0 ? negate(size) : size, rate }
}

/** XchgRate is meant by UnitCcy where that is told; else the direction that comes nearer to the booked amount. */
function turned(exchange: Tag, foreign: Money, booked: Money, net: Money | null): string | null {
  const rate = textAt(exchange, 'XchgRate')
  if (rate === null) return null
  const between = ['SrcCcy', 'TrgtCcy', 'UnitCcy'].flatMap((name) => textAt(exchange, name) ?? [])
  if (between.some((code) => code !== foreign.currency && code !== booked.currency)) return null
  const unit = textAt(exchange, 'UnitCcy')
  if (unit === foreign.currency) return rate
  const target = net?.minor ?? Math.abs(booked.minor)
  const miss = (m: Money | null): number => (m ? Math.abs(m.minor - target) : Number.POSITIVE_INFINITY)
  const [straight, inverted] = [convert(foreign, rate, booked.currency), convertBack(foreign, rate, booked.currency)]
  return unit === null && miss(straight) <= miss(inverted) ? rate : inverseRate(rate)
}

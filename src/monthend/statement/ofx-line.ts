import { type CurrencyCode, isCurrencyCode } from '../../money/currency.ts'
import { type Money, negate, toDecimal } from '../../money/money.ts'
import { MonthendError } from '../monthend-error.ts'
import type { OriginalAmount, StatementLineKind } from '../statement-line.ts'
import { amountOf, convert, convertBack } from './amount.ts'
import type { DraftLine } from './draft.ts'
import { ofxDate } from './ofx-date.ts'
import type { StatementRemark } from './opened.ts'
import { type Tag, tagAt, textAt } from './tag.ts'

// TRNTYPE values of the OFX specification, from memory. CREDIT, DEBIT, DEP, DIV and OTHER say nothing of use.
const KINDS: Readonly<Record<string, StatementLineKind>> = {
  INT: 'interest',
  FEE: 'fee',
  SRVCHG: 'fee',
  ATM: 'cash',
  CASH: 'cash',
  POS: 'card',
  XFER: 'transfer',
  PAYMENT: 'transfer',
  DIRECTDEBIT: 'transfer',
  REPEATPMT: 'transfer',
  CHECK: 'check',
  DIRECTDEP: 'pay',
}

/** An amount as OFX writes it: a point or a comma before the decimals, no grouping, at most 32 characters. */
export function ofxAmount(currency: CurrencyCode, text: string, row: number): Money {
  if (/[.,].*[.,]/.test(text) || text.length > 32) {
    throw new MonthendError('bad-amount', `Line ${row}: "${text.slice(0, 40)}" is not an amount as OFX writes it.`, row)
  }
  return amountOf(currency, text.replace(',', '.'), row)
}

/**
 * Reads one STMTTRN (or STMTTRNP, a pending one) into a line.
 *
 * @throws MonthendError `bad-date`, `bad-amount`, `bad-line`, with the line of the file
 */
export function ofxLine(
  tag: Tag,
  currency: CurrencyCode,
  entry: number,
): { line: DraftLine; remarks: StatementRemark[] } {
  const pending = tag.name === 'STMTTRNP' || textAt(tag, 'TRNTYPE') === 'HOLD'
  const posted = textAt(tag, 'DTPOSTED') ?? textAt(tag, 'DTTRAN') ?? textAt(tag, 'DTUSER')
  const written = textAt(tag, 'TRNAMT')
  if (posted === null || written === null) {
    const what = posted === null ? 'date (DTPOSTED)' : 'amount (TRNAMT)'
    throw new MonthendError('bad-line', `The transaction at line ${tag.row} has no ${what}.`, tag.row)
  }
  const { amount, original, remarks } = amounts(tag, currency, written)
  const [user, available] = [textAt(tag, 'DTUSER'), textAt(tag, 'DTAVAIL')]
  const type = textAt(tag, 'TRNTYPE')?.toUpperCase() ?? ''
  const sent = tagAt(tag, 'BANKACCTTO') ?? tagAt(tag, 'CCACCTTO')
  const line: DraftLine = {
    reference: textAt(tag, 'FITID'),
    corrects: textAt(tag, 'CORRECTFITID'),
    date: ofxDate(posted, tag.row),
    valueDate: available === null ? null : ofxDate(available, tag.row),
    paidOn: user === null ? null : ofxDate(user, tag.row),
    amount,
    status: pending ? 'pending' : 'booked',
    name: textAt(tag, 'EXTDNAME') ?? textAt(tag, 'NAME') ?? textAt(tag, 'PAYEE', 'NAME') ?? '',
    text: textAt(tag, 'MEMO') ?? '',
    references: ['CHECKNUM', 'REFNUM', 'SRVRTID'].flatMap((name) => textAt(tag, name) ?? []),
    original,
    fee: null,
    reversal: false,
    kind: KINDS[type] ?? (sent ? 'transfer' : null),
    balance: null,
    batch: null,
    place: { row: tag.row, entry },
  }
  return { line, remarks }
}

/**
 * CURRENCY: the amount is in CURSYM and still to be converted. ORIGCURRENCY: it is in the account's currency already, and
 * only rate and symbol of the other are given. CURRATE is units of the account's currency for one of CURSYM.
 */
function amounts(
  tag: Tag,
  currency: CurrencyCode,
  written: string,
): { amount: Money; original: OriginalAmount | null; remarks: StatementRemark[] } {
  const [foreign, converted] = [tagAt(tag, 'CURRENCY'), tagAt(tag, 'ORIGCURRENCY')]
  if (foreign && converted) {
    const both = `The transaction at line ${tag.row} has both CURRENCY and ORIGCURRENCY, which exclude each other.`
    throw new MonthendError('bad-line', both, tag.row)
  }
  const other = foreign ?? converted
  const [symbol, rate] = [
    textAt(other, 'CURSYM')?.toUpperCase() ?? null,
    textAt(other, 'CURRATE')?.replace(',', '.') ?? '',
  ]
  if (symbol === null || symbol === currency) {
    return { amount: ofxAmount(currency, written, tag.row), original: null, remarks: [] }
  }
  if (!isCurrencyCode(symbol)) {
    if (foreign) throw new MonthendError('bad-amount', `Line ${tag.row}: "${symbol}" is not a currency.`, tag.row)
    return { amount: ofxAmount(currency, written, tag.row), original: null, remarks: [] }
  }
  if (converted) {
    const amount = ofxAmount(currency, written, tag.row)
    const original = convertBack(amount, rate, symbol)
    return { amount, original: original && { amount: original, rate }, remarks: [] }
  }
  const original = ofxAmount(symbol, written, tag.row)
  const amount = convert(original, rate, currency)
  if (amount === null) {
    const need = `Line ${tag.row}: ${written} ${symbol} cannot be turned into ${currency} by the rate "${rate}".`
    throw new MonthendError('bad-amount', need, tag.row)
  }
  const size = amount.minor < 0 ? negate(amount) : amount
  const message = `Line ${tag.row} is given in ${symbol}; by the bank's rate of ${rate} it is ${toDecimal(size)} ${currency}, which may differ by a cent from what was booked.`
  return { amount, original: { amount: original, rate }, remarks: [{ code: 'converted', message, row: tag.row }] }
}

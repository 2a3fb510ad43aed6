import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type BankLine, type BankMonth, bankLine, closingOf } from '../../demo-data/statements/model.ts'
import { writeCamt } from '../../demo-data/statements/write-camt.ts'
import { type CsvDialect, encodeWindows1252, writeCsv } from '../../demo-data/statements/write-csv.ts'
import { writeOfx } from '../../demo-data/statements/write-ofx.ts'
import {
  type CalendarDate,
  calendarDate,
  type OpenedStatement,
  openStatement,
  type StatementLine,
} from '../../src/index.ts'

/* Lines are made up, written as banks write them in many dialects, and read back: nothing may be lost or changed. */

const kinds = ['card', 'transfer', 'cash', 'check', 'fee', 'interest', 'pay', null] as const
// Letters of windows-1252, so that every dialect can hold them; a first letter keeps a text from looking like a number.
const letters = [...'abcdeXYZ éüßñ&<>;,"\'€–=+@-0123456789']
const words = fc
  .string({ unit: fc.constantFrom(...letters), maxLength: 24 })
  .map((text) => `K${text}`.replace(/\s+/g, ' ').trim())
const days = fc.integer({ min: 0, max: 27 }).map((n) => calendarDate(`2026-03-${String(n + 1).padStart(2, '0')}`))
const lineParts = fc.record({
  date: days,
  paidOn: fc.option(days),
  amount: fc.integer({ min: -9_999_999, max: 9_999_999 }).filter((minor) => minor !== 0),
  name: words,
  text: fc.oneof(fc.constant(''), words),
  kind: fc.constantFrom(...kinds),
  pending: fc.boolean(),
})
const months = fc
  .record({
    currency: fc.constantFrom('CAD', 'EUR', 'JPY', 'KWD'),
    opening: fc.integer({ min: -500_000, max: 5_000_000 }),
    // A month in which every purchase is pending, or nothing went out, leaves a CSV's sign open: one of each is added.
    lines: fc.array(lineParts, { minLength: 0, maxLength: 14 }),
  })
  .map(({ currency, opening, lines }): BankMonth => {
    const [from, to]: [CalendarDate, CalendarDate] = [calendarDate('2026-03-01'), calendarDate('2026-03-28')]
    const fixed = [
      { date: from, amount: -1_234_567, name: 'Kiosk', pending: false },
      { date: to, amount: 2_345_678, name: 'Pay', pending: false },
    ]
    const all = [...lines, ...fixed].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
    const plain = { account: 'CA-0925', owner: 'A. Ravndal', from, to } as const
    return { ...plain, currency, opening, lines: all.map(bankLine) }
  })

function told(line: StatementLine) {
  const { date, paidOn, amount, name, text, status } = line
  return { date, paidOn, amount: amount.minor, currency: amount.currency, name, text, status }
}
function wanted(month: BankMonth, line: BankLine) {
  const { date, paidOn, amount, name, text } = line
  return { date, paidOn, amount, currency: month.currency, name, text, status: line.pending ? 'pending' : 'booked' }
}

function expectMonth(opened: OpenedStatement, month: BankMonth): void {
  expect(opened.problems).toEqual([])
  expect(opened.lines.map(told)).toEqual(month.lines.map((line) => wanted(month, line)))
  expect(opened.accounts[0]?.closing?.amount.minor).toBe(closingOf(month))
  expect(opened.accounts[0]?.opening?.amount.minor).toBe(month.opening)
  expect(new Set(opened.lines.map((line) => line.id)).size).toBe(month.lines.length)
}

describe('OFX', () => {
  const dialects = fc.record({
    syntax: fc.constantFrom('sgml-bare' as const, 'sgml-closed' as const, 'xml' as const),
    decimalMark: fc.constantFrom('.' as const, ',' as const),
    dates: fc.constantFrom('day' as const, 'with-zone' as const),
  })
  it('gives back every line, in SGML with and without end tags and in XML', () => {
    fc.assert(
      fc.property(months, dialects, (month, dialect) => {
        const opened = openStatement(new TextEncoder().encode(writeOfx(month, dialect)), { currency: month.currency })
        expectMonth(opened, month)
        // A hold is written in place of the kind.
        expect(opened.lines.map((line) => line.kind)).toEqual(month.lines.map((l) => (l.pending ? null : l.kind)))
      }),
      { seed: 3, numRuns: 100 },
    )
  })
})

describe('camt.053', () => {
  const dialects = fc.record({
    version: fc.constantFrom(2 as const, 8 as const),
    prefix: fc.constantFrom('' as const, 'ns2:' as const),
  })
  it('gives back every line, in versions 2 and 8, with and without a namespace prefix', () => {
    fc.assert(
      fc.property(months, dialects, (month, dialect) => {
        const opened = openStatement(writeCamt(month, dialect), { currency: month.currency })
        expectMonth(opened, month)
        expect(opened.lines.map((line) => line.kind)).toEqual(month.lines.map((line) => line.kind))
        expect(opened.accounts[0]?.check.outcome).toBe('agrees')
      }),
      { seed: 4, numRuns: 100 },
    )
  })
})

describe('CSV', () => {
  const dialects: fc.Arbitrary<CsvDialect> = fc
    .record({
      delimiter: fc.constantFrom(';' as const, ',' as const, '\t' as const),
      lineEnd: fc.constantFrom('\r\n' as const, '\n' as const),
      decimalMark: fc.constantFrom('.' as const, ',' as const),
      grouped: fc.boolean(),
      dates: fc.constantFrom('dmy-dots' as const, 'mdy-slashes' as const, 'ymd' as const),
      amounts: fc.constantFrom('signed' as const, 'turned' as const, 'two-columns' as const, 'direction' as const),
      balance: fc.boolean(),
      newestFirst: fc.boolean(),
      preamble: fc.boolean(),
      footer: fc.boolean(),
      quoteAll: fc.boolean(),
      language: fc.constantFrom('en' as const, 'de' as const, 'fr' as const),
    })
    // Purchases written as positive can be told from a running balance alone.
    .map((dialect) => (dialect.amounts === 'turned' ? { ...dialect, balance: true } : dialect))

  it('gives back every line in every dialect, by evidence alone, in UTF-8 and in windows-1252', () => {
    fc.assert(
      fc.property(months, dialects, fc.boolean(), (month, dialect, western) => {
        const text = writeCsv(month, dialect)
        const bytes = western ? encodeWindows1252(text) : new TextEncoder().encode(text)
        // Made-up letters are no words to tell an encoding by; that is tested with words, in statement-decode.
        const encoding = western ? 'windows-1252' : 'utf-8'
        const opened = openStatement(bytes, { currency: month.currency, account: month.account, encoding })
        expect(opened.problems).toEqual([])
        expect(opened.csv?.unsure).toEqual([])
        const lines = dialect.newestFirst ? [...opened.lines].reverse() : opened.lines
        expect(lines.map(told)).toEqual(month.lines.map((line) => wanted(month, line)))
        expect(new Set(lines.map((line) => line.id)).size).toBe(lines.length)
        if (!dialect.balance) return
        const [account] = opened.accounts
        expect(account?.closing?.amount.minor).toBe(closingOf(month))
        expect(account?.opening?.amount.minor).toBe(month.opening)
        expect(account?.check.outcome).toBe('agrees')
      }),
      { seed: 5, numRuns: 150 },
    )
  }, 30_000)

  it('reads the next file of the same bank by the mapping found in the first, though it has but one line', () => {
    fc.assert(
      fc.property(months, dialects, (month, dialect) => {
        const mapping = openStatement(writeCsv(month, dialect), { currency: month.currency }).csv?.mapping
        const last = month.lines.at(-1)
        if (!mapping || !last) throw new Error('a month has lines')
        const next = { ...month, lines: [{ ...last, amount: 100, pending: false }] }
        const stored: typeof mapping = JSON.parse(JSON.stringify(mapping))
        const opened = openStatement(writeCsv(next, dialect), { currency: month.currency, remembered: [stored] })
        expect(opened.csv?.from).toBe('remembered')
        expect(opened.lines.map(told)).toEqual(next.lines.map((line) => wanted(next, line)))
      }),
      { seed: 6, numRuns: 60 },
    )
  }, 30_000)
})

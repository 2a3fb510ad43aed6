import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import {
  type AccountStatement,
  accountId,
  append,
  type Book,
  balanceOf,
  type CurrencyCode,
  calendarDate,
  explainBalance,
  fillPot,
  type Money,
  matchStatement,
  negate,
  ofMinor,
  openBook,
  openPot,
  openStatement,
  potId,
  type StatementClose,
  spendFrom,
} from '../../src/index.ts'
import { household, pot, stamp } from '../book/sample.ts'

/*
 * The published statement files against their own balances: a book that starts with a file's opening balance and takes in
 * its lines must end at the closing balance the file gives. Files: genkgo/camt (MIT) and files written for this project
 * from the formats' rules; opening balances of OFX files, which the format does not carry, as worked out beside them.
 */
const FILES = [
  { file: 'camt/genkgo-camt053.v2.multi.statement.xml', at: 0, opening: 1815, closing: 2700 },
  { file: 'camt/own-batch-charges.camt053.v2.xml', at: 0, opening: 100_000, closing: 84_820 },
  { file: 'ofx/bank-sgml.ofx', at: 0, opening: 100_000, closing: 46_751 },
  { file: 'ofx/bank-xml.ofx', at: 0, opening: 50_000, closing: 192_917 },
  { file: 'ofx/creditcard-sgml.ofx', at: 0, opening: -20_000, closing: -5107 },
] as const

const all = potId('all')

function read(file: string, at: number): AccountStatement {
  const opened = openStatement(new Uint8Array(readFileSync(new URL(file, import.meta.url))))
  const found = opened.accounts[at]
  if (!found) throw new Error(`${file} has no account.`)
  return found
}

/** A book with the file's account, at its opening balance. */
function bookAt(currency: CurrencyCode, kind: 'bank' | 'credit', opening: number): Book {
  const id = accountId('own')
  const h = household([pot('all', { sides: 'card' })], { currency, accounts: [{ id, name: 'Own', kind }] })
  const debt = opening < 0
  const start = stamp(1, calendarDate('2000-01-01'))
  const amount = ofMinor(currency, Math.abs(opening))
  const { postings, places, ...entry } = openPot(h, start, all, { card: amount })
  // A debt carried in is the same opening with the other sign.
  const turn = <T extends { amount: number }>(p: T): T => ({ ...p, amount: debt ? -p.amount : p.amount })
  return openBook(h, [{ ...entry, postings: postings.map(turn), places: places.map(turn) }])
}

const close = (statement: AccountStatement, opening: Money): StatementClose => {
  if (!statement.closing) throw new Error('The file tells no closing balance.')
  const days = statement.lines.map((l) => l.date).sort()
  const on = statement.closing.date ?? days.at(-1) ?? calendarDate('2000-01-01')
  return { account: accountId('own'), opening, closing: statement.closing.amount, on, lines: statement.lines }
}

describe('a published statement', () => {
  it.each(FILES)('$file: line by line from its opening to its closing balance', ({ file, at, opening, closing }) => {
    const statement = read(file, at)
    const { currency } = statement
    expect(statement.closing?.amount).toEqual(ofMinor(currency, closing))
    const start = bookAt(currency, statement.kind ?? 'bank', opening)
    const said = close(statement, ofMinor(currency, opening))
    const booked = statement.lines.filter((l) => l.status === 'booked')

    // Nothing posted: every booked line explains its own amount, and nothing is left.
    const before = explainBalance(start, said)
    expect(before.items.every((i) => i.code === 'not-in-book')).toBe(true)
    expect(before).toMatchObject({
      unexplained: ofMinor(currency, 0),
      difference: ofMinor(currency, closing - opening),
    })
    const found = matchStatement(statement.lines, [])
    expect(found.untagged.map((u) => u.line)).toEqual(booked.map((l) => l.id))

    // Every line posted: the book stands at the file's closing balance.
    const after = booked.reduce((book, line, n) => {
      const at = { ...stamp(10 + n, line.date), line: line.id }
      const { amount } = line
      const entry =
        amount.minor < 0
          ? spendFrom(book.household, at, all, 'card', negate(amount), line.name)
          : fillPot(book.household, at, all, { card: amount }, 'outside')
      return append(book, entry)
    }, start)
    expect(explainBalance(after, said)).toMatchObject({ items: [], isAgreed: true })
    expect(balanceOf(after, `card:${all}`)).toBe(closing)
  })
})

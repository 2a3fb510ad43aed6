/// <reference path="../../monthend/statement/papaparse.d.ts" />
import Papa from 'papaparse'
import { type Book, entriesOf, ofMinor, type PotId, toDecimal } from '../../index.ts'

/** Characters that make a spreadsheet take a cell for a formula (OWASP, CSV injection), the full-width ones included. */
const STARTS_FORMULA = /^[\s\u00a0\u200b\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/
/** Texts are always quoted: where a spreadsheet splits at `;`, a part of one could begin a cell. */
const TEXT_COLUMNS = [false, true, true]
/** Figures of our own, which stay numbers although some begin with a minus. */
const FIGURE = /^-?\d+(\.\d+)?$/

/** The words of the columns and of the two sides, in the person's language. */
export interface SheetWords {
  readonly columns: readonly [string, string, string, string, string, string, string, string, string]
  /** What an entry is, in a sentence. */
  readonly say: (entry: ReturnType<typeof entriesOf> extends Generator<infer E> ? E : never) => string
}

/**
 * Every pot's sheet as one table (RFC 4180): day, pot, what, change of cash, card and held, then cash, card and left after
 * it. Amounts are plain decimals; a text that a spreadsheet would run as a formula gets an apostrophe before it.
 */
export function sheetsCsv(book: Book, words: SheetWords): string {
  const { currency, pots } = book.household
  const text = (minor: number): string => toDecimal(ofMinor(currency, minor))
  const names = new Map<string, string>(pots.map((pot) => [pot.id, pot.name]))
  const now = new Map<PotId, { cash: number; card: number; held: number }>()
  const rows: string[][] = [words.columns.map(safeCell)]
  for (const entry of entriesOf(book)) {
    const changes = new Map<string, { cash: number; card: number; held: number }>()
    for (const { account, amount } of entry.postings) {
      const [side, pot] = account.split(':')
      if (pot === undefined || (side !== 'cash' && side !== 'card' && side !== 'held')) continue
      const change = changes.get(pot) ?? { cash: 0, card: 0, held: 0 }
      change[side] += amount
      changes.set(pot, change)
    }
    for (const pot of pots) {
      const change = changes.get(pot.id)
      if (!change) continue
      const before = now.get(pot.id) ?? { cash: 0, card: 0, held: 0 }
      const after = {
        cash: before.cash + change.cash,
        card: before.card + change.card,
        held: before.held + change.held,
      }
      now.set(pot.id, after)
      const left = after.cash + after.card - after.held
      const figures = [change.cash, change.card, change.held, after.cash, after.card, left].map(text)
      rows.push([entry.date, safeCell(names.get(pot.id) ?? pot.id), safeCell(words.say(entry)), ...figures])
    }
  }
  return `${Papa.unparse(rows, { newline: '\r\n', quotes: TEXT_COLUMNS })}\r\n`
}

/** A cell no spreadsheet runs. */
export function safeCell(text: string): string {
  return STARTS_FORMULA.test(text) && !FIGURE.test(text) ? `'${text}` : text
}

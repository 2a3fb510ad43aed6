/// <reference path="./papaparse.d.ts" />
import Papa from 'papaparse'
import { MonthendError } from '../monthend-error.ts'
import type { Progress } from './utf.ts'

/** One row of a CSV file that holds something. */
export interface CsvRow {
  readonly cells: readonly string[]
  /** Line of the file on which it starts, from 1. */
  readonly row: number
}

const PIECE = 1 << 18
const [QUOTE, LF, CR] = [0x22, 0x0a, 0x0d]

/**
 * Splits CSV into rows by RFC 4180, with what banks add: any delimiter, line ends of any kind and mixed, a quote inside an
 * unquoted cell. Spaces are data. Blank rows are left out. The parser is handed whole rows with one kind of line end,
 * since it merges rows where kinds are mixed.
 *
 * @param quoted false when a quote is a character like any other
 * @param firstRow line of the file on which the text starts
 * @throws MonthendError `broken-file` for a quote that is never closed, and for text between a closing quote and the next
 *   delimiter, with the line
 */
export function* csvRows(
  text: string,
  delimiter: string,
  quoted: boolean,
  firstRow = 1,
): Generator<Progress, CsvRow[]> {
  const rows: CsvRow[] = []
  const parser = new Papa.Parser({ delimiter, newline: '\n', quoteChar: '"', ...(quoted ? {} : { fastMode: true }) })
  let line = firstRow
  let done = 0
  for (const piece of wholeRows(text, delimiter.charCodeAt(0), quoted)) {
    const { data, errors } = parser.parse(piece.text, 0, false)
    const [error] = errors
    const starts: number[] = []
    for (const cells of data) {
      starts.push(line)
      if (cells.length > 1 || cells[0]?.trim() !== '') rows.push({ cells, row: line })
      line += 1
      for (const cell of cells) if (cell.includes('\n') || cell.includes('\r')) line += lineEnds(cell)
    }
    // A text that ends in a line end has an empty row behind it.
    if (piece.text.endsWith('\n')) line -= 1
    if (error || piece.open) throw badQuote(starts[error?.row ?? data.length - 1] ?? line)
    done += piece.text.length
    yield { stage: 'reading', done: Math.min(done, text.length), of: text.length }
  }
  return rows
}

function badQuote(row: number): MonthendError {
  const message = `The quotes of line ${row} do not match: one is never closed, or text follows a closing one. The file may be cut off; if the bank writes quotes as plain characters, read it without quoting.`
  return new MonthendError('broken-file', message, row)
}

/** Cuts a text at line ends outside quotes into pieces of whole rows, every line end outside quotes made a line feed. */
function* wholeRows(
  text: string,
  delimiter: number,
  quoted: boolean,
): Generator<{ readonly text: string; readonly open: boolean }> {
  const parts: string[] = []
  let [start, size] = [0, 0]
  let inQuotes = false
  let fieldStart = true
  const end = text.length
  for (let i = 0; i < end; i++) {
    const unit = text.charCodeAt(i)
    if (inQuotes) {
      if (unit !== QUOTE) continue
      if (text.charCodeAt(i + 1) === QUOTE) i += 1
      else inQuotes = false
    } else if (unit === LF || unit === CR) {
      parts.push(text.slice(start, i), '\n')
      size += i - start + 1
      if (unit === CR && text.charCodeAt(i + 1) === LF) i += 1
      start = i + 1
      fieldStart = true
      if (size >= PIECE) {
        yield { text: parts.splice(0).join(''), open: false }
        size = 0
      }
    } else if (unit === QUOTE && fieldStart && quoted) {
      inQuotes = true
      fieldStart = false
    } else fieldStart = unit === delimiter
  }
  parts.push(text.slice(start))
  const rest = parts.join('')
  if (rest !== '') yield { text: rest, open: inQuotes }
}

function lineEnds(cell: string): number {
  return cell.match(/\r\n?|\n/g)?.length ?? 0
}

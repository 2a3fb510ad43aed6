import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { openStatement } from '../../src/index.ts'
import { type CsvRow, csvRows } from '../../src/monthend/statement/csv-rows.ts'
import { findDelimiter } from '../../src/monthend/statement/csv-table.ts'
import { runToEnd } from '../monthend/run-to-end.ts'

/*
 * tests/published/csv: RFC 4180 section 2, the pairs of npm csv-spectrum 2.0.0 (BSD-2), edge cases and encodings written for
 * this project. The pair location_coordinates contradicts itself and is no oracle (csv-cases.json).
 */
const at = (name: string): Buffer => readFileSync(new URL(`./csv/${name}`, import.meta.url))

interface Cases {
  readonly csv_spectrum: readonly { readonly file: string }[]
  readonly edge_cases: readonly {
    readonly id: string
    readonly text: string
    readonly delimiter: string
    readonly expected: readonly (readonly string[])[] | null
  }[]
  readonly encodings: readonly { readonly file: string; readonly encoding: string; readonly expected_text: string }[]
}
const cases: Cases = JSON.parse(at('csv-cases.json').toString('utf8'))

const rowsOf = (text: string, delimiter: string): (readonly string[])[] =>
  runToEnd(csvRows(text, delimiter, true)).map((row: CsvRow) => row.cells)

describe('csv-spectrum', () => {
  const pairs = cases.csv_spectrum
    .map(({ file }) => file.replace(/^.*\/|\.csv$/g, ''))
    .filter((name) => name !== 'location_coordinates')

  it('has eleven pairs', () => expect(pairs).toHaveLength(11))

  it.each(pairs)('%s', (name) => {
    const [header = [], ...rows] = rowsOf(at(`csv-spectrum-csvs/${name}.csv`).toString('utf8'), ',')
    const theirs: unknown = JSON.parse(at(`csv-spectrum-json/${name}.json`).toString('utf8'))
    expect(rows.map((row) => Object.fromEntries(header.map((title, i) => [title, row[i]])))).toEqual(theirs)
  })
})

describe('RFC 4180 section 2, and what banks add', () => {
  // A long field is written out, and the byte order mark and the `sep=` line are taken off before rows are split.
  const written = (text: string): string =>
    text.replaceAll('<x repeated 70000>', 'x'.repeat(70_000)).replaceAll('\\r\\n', '\r\n')
  const sound = cases.edge_cases.filter((one) => one.expected !== null)

  it('covers 33 sound and two malformed cases', () => {
    expect([sound.length, cases.edge_cases.length - sound.length]).toEqual([33, 2])
  })

  it.each(sound.map((one) => [one.id, one] as const))('%s', (_, one) => {
    const text = written(one.text).replace(/^\uFEFF/, '')
    const { skipped } = findDelimiter(text)
    const expected = (one.expected ?? []).map((row) => row.map(written))
    expect(rowsOf(text.slice(skipped), one.delimiter)).toEqual(expected)
  })

  it.each(cases.edge_cases.filter((one) => one.expected === null).map((one) => [one.id, one] as const))(
    '%s is an error that names the line',
    (_, one) => {
      expect(() => rowsOf(one.text, one.delimiter)).toThrow(expect.objectContaining({ code: 'broken-file', row: 1 }))
    },
  )

  it('names the line on which a row starts, over cells with line ends and blank rows', () => {
    const rows = runToEnd(csvRows('a,b\r\n\r\n"1\r\n2\n3",x\n\ny,z\r', ',', true))
    expect(rows.map((row) => row.row)).toEqual([1, 3, 7])
  })
})

describe('csv-parse 7 (MIT) as a second reader', () => {
  const cell = fc.string({
    unit: fc.constantFrom('a', 'é', ' ', '"', ',', ';', '\n', '\r\n', '1', '-', "'"),
    maxLength: 8,
  })
  const table = fc
    .integer({ min: 2, max: 5 })
    .chain((width) => fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 12 }))

  it('reads the same cells, whatever stands in them', () => {
    fc.assert(
      fc.property(
        table,
        fc.constantFrom(',', ';', '\t', '|'),
        fc.constantFrom('\r\n', '\n'),
        (rows, delimiter, lineEnd) => {
          const text = rows
            .map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join(delimiter))
            .join(lineEnd)
          const theirs: string[][] = parse(text, { delimiter, record_delimiter: lineEnd })
          expect(rowsOf(text, delimiter)).toEqual(theirs)
          expect(theirs).toEqual(rows)
        },
      ),
      { seed: 20261125, numRuns: 300 },
    )
  })
})

describe('encodings', () => {
  it.each(cases.encodings.map((one) => [one.file, one] as const))('%s', (file, one) => {
    const bytes = new Uint8Array(at(file))
    const lines = one.expected_text.split('\r\n')
    // Two files have no amounts and are no statement: an amount is added in ASCII, which every encoding here shares.
    const complete = lines[0]?.includes('Betrag') || lines[0]?.includes('Kwota')
    const whole = complete ? bytes : withAmounts(bytes)
    const opened = openStatement(whole, { currency: 'EUR' })
    expect(opened.encoding?.name).toBe(one.encoding)
    expect(opened.lines[0]?.name).toBe(lines[1]?.split(';')[1])
    expect(opened.lines[0]?.date).toBe('2026-03-01')
    if (complete) expect(opened.lines[0]?.amount.minor).toBe(file.includes('1250') ? -100 : -1_250)
  })

  it('covers UTF-8 and UTF-16 with and without mark, and four single-byte encodings', () => {
    expect(cases.encodings.map((one) => one.encoding).sort()).toEqual([
      'cp850',
      'iso-8859-15',
      'utf-16be',
      'utf-16le',
      'utf-16le',
      'utf-8',
      'utf-8',
      'windows-1250',
      'windows-1252',
    ])
  })

  function withAmounts(bytes: Uint8Array): Uint8Array {
    const latin = Buffer.from(bytes).toString('latin1').replace('Text\r\n', 'Text;Betrag\r\n')
    return new Uint8Array(Buffer.from(latin.replace(/\r\n$/, ';-1,00\r\n'), 'latin1'))
  }
})

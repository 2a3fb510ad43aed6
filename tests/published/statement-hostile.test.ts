import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { openStatement, readStatement } from '../../src/index.ts'

/*
 * owasp.json: OWASP CheatSheetSeries (XML External Entity Prevention, XML Security) and OWASP www-community (CSV Injection).
 * Main rule for XML: disable DTDs completely.
 */
interface Owasp {
  readonly xml: { readonly test_files: readonly { readonly name: string; readonly text: string }[] }
  readonly csv_injection: { readonly test_cells: readonly string[] }
}
const owasp: Owasp = JSON.parse(readFileSync(new URL('./owasp.json', import.meta.url), 'utf8'))
const attack = (name: string): string => owasp.xml.test_files.find((file) => file.name === name)?.text ?? ''

describe('hostile XML', () => {
  it.each(['doctype', 'external', 'parameter', 'laughs-3', 'recursive'])(
    '%s is refused before it is parsed',
    (name) => {
      const text = attack(name)
      expect(text).toContain('<!DOCTYPE')
      for (const file of [
        text,
        new TextEncoder().encode(text),
        `<?xml version="1.0"?>\n${text.replace('DOCTYPE', 'docType')}`,
      ]) {
        expect(() => openStatement(file)).toThrow(expect.objectContaining({ code: 'hostile-file' }))
      }
    },
  )

  it('a quadratic bomb of 100,000 characters is refused', () => {
    const text = `<!DOCTYPE q [<!ENTITY a "${'x'.repeat(50_000)}">]><q>${'&a;'.repeat(50_000)}</q>`
    expect(() => openStatement(text)).toThrow(expect.objectContaining({ code: 'hostile-file' }))
  })

  it('a DOCTYPE in UTF-16, which a search for its bytes would miss, is refused', () => {
    for (const mark of ['\uFEFF', '']) {
      const utf16 = Buffer.from(mark + attack('doctype'), 'utf16le')
      expect(() => openStatement(new Uint8Array(utf16))).toThrow(expect.objectContaining({ code: 'hostile-file' }))
    }
  })

  it('an XInclude is an element like any other: nothing is fetched, and it is no statement', () => {
    expect(() => openStatement(attack('xinclude'))).toThrow(expect.objectContaining({ code: 'not-a-statement' }))
  })

  it('100,000 nested elements are refused, in XML and in SGML', () => {
    expect(() => openStatement('<a>'.repeat(100_000))).toThrow(expect.objectContaining({ code: 'too-deep' }))
    const sgml = `OFXHEADER:100\n\n<OFX>${'<A>'.repeat(100_000)}`
    expect(() => openStatement(sgml)).toThrow(expect.objectContaining({ code: 'too-deep' }))
  })

  it('an entity that XML does not know is an error, never expanded', () => {
    expect(() => openStatement('<Document><x>&b;</x></Document>')).toThrow(
      expect.objectContaining({ code: 'broken-file' }),
    )
  })
})

describe('CSV injection', () => {
  it('formulas are read as the texts they are: only a writer has to disarm them', () => {
    const cells = owasp.csv_injection.test_cells.filter((cell) => cell.trim() === cell && !/\s/.test(cell))
    expect(cells.length).toBeGreaterThan(8)
    const rows = cells.map((cell) => `2026-03-01,"${cell.replaceAll('"', '""')}",-1.00`)
    const lines = readStatement(['Date,Description,Amount', ...rows].join('\r\n'), { currency: 'CAD' })
    expect(lines.map((line) => line.name)).toEqual(cells)
    expect(lines.every((line) => line.amount.minor === -100)).toBe(true)
  })
})

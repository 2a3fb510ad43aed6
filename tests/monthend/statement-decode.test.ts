import fc from 'fast-check'
import iconv from 'iconv-lite'
import { describe, expect, it } from 'vitest'
import { codePages } from '../../src/monthend/statement/code-pages.ts'
import { decode } from '../../src/monthend/statement/decode.ts'
import { runToEnd } from './run-to-end.ts'

const read = (bytes: Uint8Array, asked?: string, declared?: string) => runToEnd(decode(bytes, { asked, declared }))
const upper = Uint8Array.from({ length: 128 }, (_, i) => 0x80 + i)
// WHATWG maps bytes without a meaning to control characters; here they are U+FFFD, so that they are noticed.
const meaningful = (text: string): string => text.replace(/[\u0080-\u009F]/g, '\uFFFD')

describe('single-byte encodings', () => {
  it("Node 20's own decoder is wrong for windows-1252 unless it streams: it is not relied on", () => {
    expect(new TextDecoder('windows-1252').decode(upper, { stream: true }).slice(0, 1)).toBe('€')
    expect(read(Uint8Array.of(0x80), 'windows-1252').text).toBe('€')
  })

  it.each([
    'windows-1250',
    'windows-1251',
    'windows-1252',
    'windows-1253',
    'windows-1254',
    'windows-1257',
    'iso-8859-2',
    'iso-8859-15',
    'macintosh',
  ])('%s is the table of the WHATWG Encoding Standard (TextDecoder)', (name) => {
    const theirs = new TextDecoder(name).decode(upper, { stream: true })
    expect(meaningful(read(upper, name).text)).toBe(meaningful(theirs))
  })

  it.each(['cp850', 'cp852', 'cp437', 'windows-1252'])('%s is the table of iconv-lite', (name) => {
    expect(meaningful(read(upper, name).text)).toBe(meaningful(iconv.decode(Buffer.from(upper), name)))
  })

  it('every table has 128 characters', () => {
    for (const table of Object.values(codePages)) expect(table).toHaveLength(128)
  })

  it.each([
    ['windows-1251', 'Покупка в магазине Берёзка, Москва'],
    ['windows-1253', 'Αγορά στο κατάστημα της Αθήνας'],
    ['windows-1250', 'Žluťoučký kůň úpěl ďábelské ódy'],
    ['windows-1252', 'Señor Núñez – café “crème” Çà et là œuvre'],
    ['iso-8859-2', 'Zażółć gęślą jaźń'],
    ['cp850', 'Señor Núñez café crème Çà et là'],
    ['cp852', 'Zażółć gęślą jaźń sklep Łódź'],
    ['macintosh', 'Café à Zürich, Brötchen'],
  ])('%s is told by its words (encoded by iconv-lite)', (name, text) => {
    expect(read(iconv.encode(text, name))).toMatchObject({ text, encoding: name })
  })
})

describe('Unicode', () => {
  it('reads what TextEncoder writes, and iconv-lite writes as UTF-16', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1 }), (text) => {
        expect(read(new TextEncoder().encode(text), 'utf-8').text).toBe(text.replace(/^\uFEFF/, ''))
        expect(read(iconv.encode(text, 'utf16le'), 'utf-16le').text).toBe(text.replace(/^\uFEFF/, ''))
      }),
      { seed: 1, numRuns: 300 },
    )
  })

  it('tells sound UTF-8 from any other bytes as a strict TextDecoder does', () => {
    const strict = new TextDecoder('utf-8', { fatal: true })
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 1, maxLength: 6 }), (tail) => {
        const bytes = Uint8Array.of(0x61, ...tail)
        let sound = true
        try {
          strict.decode(bytes)
        } catch {
          sound = false
        }
        expect(read(bytes, 'utf-8').sure).toBe(sound)
      }),
      { seed: 2, numRuns: 3000 },
    )
  })

  it('a few damaged bytes do not turn a UTF-8 file into another encoding', () => {
    const bytes = new TextEncoder().encode('Café Zürich Brötchen süß Rückzahlung für Käse;')
    const damaged = Uint8Array.of(...bytes, 0xff)
    const { encoding, sure, text } = read(damaged)
    expect([encoding, sure, text.endsWith(';\uFFFD')]).toEqual(['utf-8', false, true])
  })
})

describe('what is said of an encoding', () => {
  const cafe = Uint8Array.of(0x43, 0x61, 0x66, 0xe9)

  it('is obeyed when asked for, and believed of a file unless its bytes are sound UTF-8', () => {
    expect(read(cafe, 'iso-8859-2').encoding).toBe('iso-8859-2')
    expect(read(cafe, undefined, 'ISO-8859-15').encoding).toBe('iso-8859-15')
    expect(read(new TextEncoder().encode('Café'), undefined, 'windows-1252').encoding).toBe('utf-8')
  })

  it.each(['latin1', 'ISO-8859-1', 'cp1252', '1252', 'Windows-1252', 'US-ASCII'])('%s is windows-1252', (name) => {
    expect(read(cafe, name).encoding).toBe('windows-1252')
  })

  it('is refused when it is not known', () => {
    expect(() => read(cafe, 'klingon')).toThrow(expect.objectContaining({ code: 'unknown-encoding' }))
  })

  it('UTF-16 cut in the middle of a character is refused', () => {
    expect(() => read(Uint8Array.of(0xff, 0xfe, 0x41))).toThrow(expect.objectContaining({ code: 'broken-file' }))
  })
})

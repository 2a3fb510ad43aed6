import { readFileSync } from 'node:fs'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { readStatement } from '../../src/index.ts'
import { engineKey, engineText } from '../../src/ui/engine-text.ts'
import { english, flat, languages, textsOf } from './languages.ts'

const browser = vi.hoisted(() => ({ language: 'en', texts: new Map<string, string>() }))
vi.mock('webextension-polyfill', () => ({
  default: {
    i18n: { getUILanguage: () => browser.language, getMessage: (key: string) => browser.texts.get(key) ?? '' },
  },
}))

function speak(language: string): void {
  browser.language = language
  browser.texts = new Map(language === 'en' ? flat(english) : flat(textsOf(language)))
}

/** What the readers of statements can refuse or remark, from the types that list their codes. */
function codesIn(path: string): string[] {
  const text = readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')
  return [...text.matchAll(/^\s+(?:readonly code:\s+)?\| '([a-z-]+)'/gm)].map((m) => m[1] ?? '')
}

describe('what the engine says', () => {
  beforeEach(() => speak('en'))

  it('in English is its own sentence, with its details', () => {
    expect(engineText('bad-date', 'Line 7: "x" is not a day.', 7)).toBe('Line 7: "x" is not a day.')
  })

  it('in another language is what the code means, and the line', () => {
    speak('de')
    expect(engineText('bad-date', 'Line 7: "x" is not a day.', 7)).toBe('Zeile 7: Ein Datum lässt sich nicht lesen.')
    expect(engineText('empty-file', 'The file is empty.')).toMatch(/^Die Datei ist leer\./)
  })

  it('of a code without words is told in English rather than not at all', () => {
    speak('es')
    expect(engineText('no-such-code', 'A sentence.')).toBe('A sentence.')
  })

  it.each(languages)('has words in %s for every code of a statement’s or a saved book’s reader', (language) => {
    const codes = [
      'src/monthend/monthend-error.ts',
      'src/monthend/statement/opened.ts',
      'src/desk/safe/file-error.ts',
    ].flatMap(codesIn)
    expect(codes.length).toBeGreaterThan(30)
    const texts = flat(textsOf(language))
    expect(codes.filter((code) => !texts.has(engineKey(code)))).toEqual([])
  })

  it('of a real file that is none comes in the person’s language', () => {
    speak('es')
    expect(() => readStatement(new Uint8Array())).toThrow(expect.objectContaining({ code: 'empty-file' }))
    expect(engineText('empty-file', 'The file is empty.')).toBe('El archivo está vacío. Descárgalo otra vez del banco.')
  })
})

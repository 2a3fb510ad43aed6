import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it, vi } from 'vitest'
import { engineKey } from '../../src/ui/engine-text.ts'
import { errorKey } from '../../src/ui/error-text.ts'
import { messageFiles, englishMessages as messages } from '../english-messages.ts'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

const root = new URL('../../', import.meta.url)

function sources(folder: string, ending: RegExp): { path: string; text: string }[] {
  return readdirSync(new URL(folder, root), { recursive: true, withFileTypes: true })
    .filter((f) => f.isFile() && ending.test(f.name))
    .map((f) => `${f.parentPath}/${f.name}`)
    .map((path) => ({ path, text: readFileSync(path, 'utf8') }))
}

const pages = ['popup', 'src/ui', 'src/guard', 'src/desk'].flatMap((folder) => sources(folder, /\.tsx?$/))
const all = [...pages, ...sources('src/background', /\.ts$/)].map((p) => p.text).join('\n')
const manifest = readFileSync(new URL('manifest.json', root), 'utf8')
const keys = Object.keys(messages)

/** Keys made at run time, such as t(`kind_${value}`): what stands before and after the part that varies. */
const made = [...all.matchAll(/\b(?:tn?|getMessage)\(\s*`(\w*)\$\{[^`]*\}(\w*)`/g)].map(([, start = '', end = '']) => ({
  start,
  end,
}))

describe('the texts', () => {
  it('every text that is asked for is there', () => {
    const asked = [...all.matchAll(/\bt\(\s*'(\w+)'/g)].map((m) => m[1] ?? '')
    expect(asked.length).toBeGreaterThan(100)
    expect(asked.filter((key) => !keys.includes(key))).toEqual([])
    const plural = [...all.matchAll(/\btn\(\s*'(\w+)'/g)].map((m) => m[1] ?? '')
    expect(plural.filter((key) => !keys.includes(`${key}_one`) || !keys.includes(`${key}_other`))).toEqual([])
  })

  it('every text is used: by name, made from parts, by the manifest, or as the words of an error code', () => {
    const codes = [...sources('src', /\.ts$/)].flatMap(({ text }) => [
      ...text.matchAll(/'([a-z]+(?:-[a-z]+)+)'|\bcode: '([a-z]+)'/g),
    ])
    const errors = new Set(
      codes.flatMap(([, hyphened = '', plain = '']) => [errorKey, engineKey].map((key) => key(hyphened || plain))),
    )
    const isUsed = (key: string): boolean =>
      all.includes(`'${key}'`) ||
      all.includes(`'${key.replace(/_(one|other)$/, '')}'`) ||
      made.some(({ start, end }) => start !== '' && key.startsWith(start) && key.endsWith(end)) ||
      manifest.includes(`__MSG_${key}__`) ||
      errors.has(key)
    expect(keys.filter((key) => !isUsed(key))).toEqual([])
  })

  it('no text is in two files', () => {
    expect(
      Object.values(messageFiles)
        .flatMap((file) => Object.keys(file))
        .sort(),
    ).toEqual([...keys].sort())
  })

  it('every text has a note for translators, and a name a browser takes', () => {
    for (const [key, { message, description }] of Object.entries(messages)) {
      expect(key).toMatch(/^\w+$/)
      expect(message.trim()).not.toBe('')
      // A `$` would start one of the browser's own placeholders.
      expect(message).not.toContain('$')
      expect(description.trim()).not.toBe('')
    }
  })

  it('both plural forms name the same values; the count may go without saying where it is one', () => {
    const names = (text: string): string[] =>
      [...text.matchAll(/\{(\w+)\}/g)]
        .map((m) => m[1] ?? '')
        .filter((name) => name !== 'count')
        .sort()
    const texts = new Map(Object.entries(messages).map(([key, { message }]) => [key, message]))
    const bases = keys.filter((k) => k.endsWith('_one')).map((k) => k.slice(0, -'_one'.length))
    expect(bases.length).toBeGreaterThan(0)
    for (const base of bases) {
      expect(names(texts.get(`${base}_one`) ?? '')).toEqual(names(texts.get(`${base}_other`) ?? ''))
    }
  })

  it('no page has words of its own', () => {
    for (const { path, text } of pages.filter((p) => p.path.endsWith('.tsx'))) {
      const written = [...text.matchAll(/^[ \t]*([\p{L}][^<>{}=;()\n]*)$/gmu)]
        .map((m) => m[1] ?? '')
        // Lines that are nothing but words: those between tags. Names of props and values end in a comma or a bracket.
        .filter(
          (line) => /\s/.test(line.trim()) && !/[,:?]$|^(import|export|return|readonly|const|type|case)\b/.test(line),
        )
      expect([path, written]).toEqual([path, []])
      const quoted = [...text.matchAll(/\b(?:aria-label|placeholder|title|alt|label|hint)="([^"]*)"/g)].map((m) => m[1])
      expect([path, quoted.filter((value) => !value?.startsWith('figure_'))]).toEqual([path, []])
      expect([path, [...text.matchAll(/>\s*[\p{L}][\p{L} ,.]*\s*<\//gu)].map((m) => m[0])]).toEqual([path, []])
    }
  })
})

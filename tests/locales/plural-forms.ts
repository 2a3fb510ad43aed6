import { readFileSync } from 'node:fs'
import { z } from 'zod'
import { english, flat } from './languages.ts'

// CLDR 48.2's cardinal rules (see `source` in the file); a test compares them with Intl of the machine that runs it.
const { cardinal } = z
  .object({ cardinal: z.record(z.string(), z.record(z.string(), z.string())) })
  .parse(JSON.parse(readFileSync(new URL('../published/plurals.json', import.meta.url), 'utf8')))

/** The plural categories that CLDR gives a language. */
export function categories(language: string): string[] {
  const rules = cardinal[language]
  if (!rules) throw new Error(`plurals.json has no rules for ${language}.`)
  return Object.keys(rules).map((key) => key.replace('pluralRule-count-', ''))
}

/**
 * Categories a language may leave out, so that `_other` is said. French and Spanish have `many` for whole millions alone
 * ("1 000 000 de lignes"); what is counted here are a household's lines, pots and days, of which twenty years make fifty
 * thousand.
 */
export function optional(language: string): string[] {
  return language === 'fr' || language === 'es' ? ['many'] : []
}

const keys = flat(english)

/** Bases of the keys that come in plural forms: `gaps` for `gaps_one` and `gaps_other`. */
export const pluralBases = [...keys.keys()]
  .filter((key) => key.endsWith('_other') && keys.has(`${key.slice(0, -'_other'.length)}_one`))
  .map((key) => key.slice(0, -'_other'.length))

/** A key's base and plural category, or null for a key without forms: `gaps_few` is gaps and few. */
export function formOf(key: string): { readonly base: string; readonly form: string } | null {
  const [, base = '', form = ''] = /^(\w+)_(zero|one|two|few|many|other)$/.exec(key) ?? []
  return pluralBases.includes(base) ? { base, form } : null
}

/** Whether a category stands for a single number, so that its text may leave the number out. */
export function isOneNumber(language: string, form: string): boolean {
  const rules = new Intl.PluralRules(language)
  const numbers = Array.from({ length: 201 }, (_, n) => n).filter((n) => rules.select(n) === form)
  return numbers.length === 1
}

import { describe, expect, it } from 'vitest'
import { english, flat, languages, namesIn, textsOf } from './languages.ts'
import { categories, formOf, isOneNumber, optional, pluralBases } from './plural-forms.ts'

/** Keys a language must have: those of English, with the plural forms of CLDR in place of English's two. */
function wanted(keys: Iterable<string>, forms: readonly string[]): string[] {
  const own = [...keys].flatMap((key) => {
    const plural = formOf(key)
    return plural ? forms.map((form) => `${plural.base}_${form}`) : [key]
  })
  return [...new Set(own)].sort()
}

/** A text that may be the same in two languages: names, marks and figures alone, and words that both share. */
const MAY_BE_ENGLISH: Readonly<Record<string, readonly string[]>> = {
  all: ['extension_name', 'language_direction', 'quick_example', 'order_title', 'match_entry', 'paper_a6', 'sum_is'],
  es: ['match_no', 'desk_group_plan'],
  fr: [
    ...['pages', 'page_pots', 'pots_title', 'pots_heading', 'desk_page_pots', 'desk_col_pot', 'untagged_pots'],
    ...['summary_pots', 'untagged_pot', 'safe_col_pot', 'verdict_block', 'match_doubtful_other', 'importance'],
  ],
  de: ['pot_name', 'settle_bank', 'orders_shop', 'untagged_shop', 'renewal_name', 'earner_name', 'safe_passphrase'],
}

const tags = new Set(languages)

describe('the languages', () => {
  it('are named by BCP 47 tags in their canonical form', () => {
    expect(Intl.getCanonicalLocales(languages)).toEqual(languages)
    expect(tags.size).toBe(languages.length)
  })

  it('the plural categories of CLDR 48.2 (plurals.json) are those of Intl here', () => {
    for (const language of ['en', ...languages]) {
      const here = new Intl.PluralRules(language).resolvedOptions().pluralCategories
      expect([language, [...categories(language)].sort()]).toEqual([language, [...here].sort()])
    }
  })

  it('English comes in plural forms where it counts', () => expect(pluralBases.length).toBeGreaterThan(30))
})

describe.each(languages)('%s', (language) => {
  const texts = textsOf(language)
  const all = flat(texts)
  const originals = flat(english)
  const forms = categories(language)

  it('has the files and keys of English, no fewer and no more, with its own plural forms', () => {
    expect([...texts.keys()].sort()).toEqual([...english.keys()].sort())
    const free = optional(language)
    for (const [file, originals] of english) {
      const keys = [...(texts.get(file)?.keys() ?? [])]
      const must = wanted(
        originals.keys(),
        forms.filter((form) => !free.includes(form)),
      )
      const may = new Set(wanted(originals.keys(), forms))
      expect([file, 'missing', must.filter((key) => !keys.includes(key))]).toEqual([file, 'missing', []])
      expect([file, 'unknown', keys.filter((key) => !may.has(key))]).toEqual([file, 'unknown', []])
    }
  })

  it('names itself', () => {
    expect(all.get('language_tag')).toBe(language)
    expect(all.get('language_direction')).toBe(/^(ar|fa|he|ur)\b/.test(language) ? 'rtl' : 'ltr')
  })

  it('names the same values; a count may go unsaid where its form is of one number only', () => {
    const counts = ['count', 'pays']
    const rest = (names: string[]): string => names.filter((name) => !counts.includes(name)).join()
    const counted = (names: string[]): string => names.filter((name) => counts.includes(name)).join()
    const wrong = [...all].filter(([key, text]) => {
      const plural = formOf(key)
      if (!plural) return namesIn(text).join() !== namesIn(originals.get(key) ?? '').join()
      const one = namesIn(originals.get(`${plural.base}_one`) ?? '')
      const other = namesIn(originals.get(`${plural.base}_other`) ?? '')
      const own = namesIn(text)
      const isLikeEnglish = rest(own) === rest(plural.form === 'one' ? one : other)
      return !isLikeEnglish || (counted(own) !== counted(other) && !isOneNumber(language, plural.form))
    })
    expect(wrong).toEqual([])
  })

  it('has a text of its own for every key', () => {
    const allowed = new Set([...(MAY_BE_ENGLISH.all ?? []), ...(MAY_BE_ENGLISH[language] ?? [])])
    expect([...all].filter(([, text]) => text.trim() === '' || text !== text.trim())).toEqual([])
    const same = [...all].filter(([key, text]) => text === originals.get(key) && !allowed.has(key))
    expect(same.map(([key, text]) => `${key}: ${text}`)).toEqual([])
  })

  it('keeps to what browsers take: no `$`, no markup, a description of at most 132 characters', () => {
    // Chrome's manifest: "description … no more than 132 characters" (developer.chrome.com, manifest/description).
    expect([...(all.get('extension_description') ?? '')].length).toBeLessThanOrEqual(132)
    expect([...all].filter(([, text]) => /[$<>&]|\*\*|`/.test(text))).toEqual([])
    expect([...all].filter(([, text]) => text !== text.normalize('NFC'))).toEqual([])
  })
})

import { describe, expect, it } from 'vitest'
import { flat, languages, textsOf } from './languages.ts'

/*
 * How each language sets its marks. Common practice of its typographers; French after the Imprimerie nationale's rules
 * (a narrow no-break space before ; ! ? and a no-break space before the colon and within guillemets), from memory.
 */

interface Rule {
  readonly what: string
  readonly breaks: RegExp
}

const EVERYWHERE: readonly Rule[] = [
  { what: 'straight quotation marks', breaks: /["']/ },
  { what: 'three points in place of …', breaks: /\.\.\./ },
  { what: 'two spaces', breaks: / {2}/ },
  { what: 'a hyphen in place of a dash', breaks: / - / },
]

const RULES: Readonly<Record<string, readonly Rule[]>> = {
  fr: [
    { what: 'no narrow no-break space before ; ! ?', breaks: /[^\u202f?!][;!?]/ },
    { what: 'no no-break space before a colon', breaks: /[^\u00a0]:(?!\d)/ },
    { what: 'guillemets without no-break spaces', breaks: /«(?!\u00a0)|(?<!\u00a0)»/ },
    { what: 'no no-break space before %', breaks: /[\d}] ?%/ },
    { what: 'marks of other languages', breaks: /[“”„]/ },
  ],
  de: [
    { what: 'marks of other languages', breaks: /[«»]|”/ },
    { what: 'quotation marks that do not pair as „…“', breaks: /„[^“]*(?:„|$)|^[^„]*“/ },
    { what: 'no no-break space before %', breaks: /[\d}] ?%/ },
  ],
  es: [
    { what: 'a question without ¿', breaks: /^[^¿]*\?/ },
    { what: 'an exclamation without ¡', breaks: /^[^¡]*!/ },
    { what: 'marks of other languages', breaks: /[„]/ },
    { what: 'no no-break space before %', breaks: /[\d}] ?%/ },
  ],
  ar: [
    { what: 'the Latin comma, semicolon or question mark', breaks: /[\u0600-\u06ff][,;?]/ },
    { what: 'marks of other languages', breaks: /[“”„]/ },
    { what: 'guillemets that do not pair', breaks: /«[^»]*(?:«|$)|^[^«]*»/ },
  ],
}

it('there are rules for every language', () => {
  expect(languages.filter((language) => !RULES[language])).toEqual([])
})

describe.each(languages)('%s', (language) => {
  const texts = [...flat(textsOf(language))]

  it.each([...EVERYWHERE, ...(RULES[language] ?? [])])('has no $what', ({ breaks }) => {
    expect(texts.filter(([, text]) => breaks.test(text)).map(([key, text]) => `${key}: ${text}`)).toEqual([])
  })
})

import { readdir, readFile } from 'node:fs/promises'
import { describe, expect, it } from 'vitest'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import { chanceOf, halfOf, keptFor } from './workshop/chance.ts'
import { coinOf } from './workshop/coin.ts'
import { handPages } from './workshop/hand-pages.ts'
import { judge } from './workshop/judge.ts'
import { makePage, scenarios, seedsOf } from './workshop/make-page.ts'
import { speeches } from './workshop/speech/index.ts'
import { count, emptyTally, goalsOf } from './workshop/tally.ts'

// `npm run accuracy` reads many more, and prints the tables.
const SAMPLE = 48

describe('the reader on pages of the workshop', () => {
  it('meets the goals on a fixed sample of the half it is tuned on', () => {
    const tally = emptyTally()
    const wrong: string[] = []
    for (const seed of seedsOf('seen', SAMPLE)) {
      const page = makePage(seed)
      const verdict = judge(readCheckout(page.document, { url: page.url }), page.expected)
      count(tally, verdict, page.expected)
      if (verdict.total !== 'right') wrong.push(`seed ${seed}: ${verdict.read.total}, is ${page.expected.total}`)
      page.document.defaultView?.close()
    }
    expect(tally.pages).toBe(SAMPLE)
    expect(
      goalsOf(tally).filter((goal) => !goal.met),
      wrong.join('\n'),
    ).toEqual([])
  }, 60_000)
})

describe('the workshop', () => {
  it('has more than 150 pages written by hand, and pages of every kind', async () => {
    expect((await handPages()).length).toBeGreaterThan(150)
    expect(new Set(scenarios.map((scenario) => scenario.kind)).size).toBe(21)
  })

  it('speaks at least 30 languages, each with every word, and amounts where the words have a place for one', () => {
    expect(new Set(speeches.map(({ lang }) => lang.slice(0, 2))).size).toBeGreaterThanOrEqual(30)
    for (const speech of speeches) {
      for (const [key, words] of Object.entries(speech)) {
        for (const word of words.split('|')) expect(word.trim(), `${speech.lang} ${key}`).not.toBe('')
      }
      for (const key of ['saved', 'freeOver', 'instalment', 'monthly', 'giftLeft'] as const) {
        for (const words of speech[key].split('|')) expect(words, `${speech.lang} ${key}`).toContain('{}')
      }
      expect(speech.ways.split('|')).toHaveLength(3)
    }
  })

  it('takes no word from the reader: a page made of its own lists would prove nothing', async () => {
    const folder = new URL('./workshop/', import.meta.url)
    const files = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith('.ts'))
    expect(files.length).toBeGreaterThan(15)
    for (const file of files) {
      const imports = (await readFile(new URL(file, folder), 'utf8')).match(/from '[^']*src\/[^']*'/g) ?? []
      // Only the names of types: what a reading looks like.
      for (const each of imports) expect(each, file).toMatch(/src\/checkout\/reading\.ts'$/)
    }
  })

  it('makes the same page from the same seed', () => {
    const [one, two] = [makePage('41'), makePage('41')]
    expect(two.document.documentElement.outerHTML).toBe(one.document.documentElement.outerHTML)
    expect(two.expected).toEqual(one.expected)
  })

  it('parts the seeds in two halves, by the seed alone, and keeps words from the half that is tuned on', () => {
    const seen = seedsOf('seen', 500)
    expect(seen.every((seed) => halfOf(seed) === 'seen')).toBe(true)
    expect(Number(seen.at(-1))).toBeGreaterThan(900)
    expect(Number(seen.at(-1))).toBeLessThan(1100)
    expect(keptFor('seen', ['a', 'b', 'c'])).toEqual(['a', 'b'])
    expect(keptFor('unseen', ['a', 'b', 'c'])).toEqual(['a', 'b', 'c'])
  })

  it('writes amounts that mean what is expected', () => {
    // Every digit of the amount stands in the text, in order, whatever the digit system and the marks.
    for (const { lang, currency } of speeches) {
      for (let round = 0; round < 8; round += 1) {
        const coin = coinOf(chanceOf(`${lang} ${round}`), lang, currency, true)
        const amount = coin.price(123_456)
        const digits = [...coin.text(amount)]
          .filter((sign) => /\p{Nd}/u.test(sign))
          .map(digitValue)
          .join('')
        const plain = coin.plain(amount).replace(/\D/g, '')
        expect(plain.replace(/0+$/, ''), coin.text(amount)).toBe(digits.replace(/0+$/, ''))
      }
    }
  })
})

/** The value of a decimal digit of any system: systems stand in runs of ten. */
function digitValue(digit: string): number {
  let zero = digit.codePointAt(0) ?? 0
  for (let step = 0; step < 9 && /\p{Nd}/u.test(String.fromCodePoint(zero - 1)); step += 1) zero -= 1
  return (digit.codePointAt(0) ?? 0) - zero
}

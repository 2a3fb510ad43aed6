// Published price texts: tests/published/price-strings.json, facts from the tests of scrapinghub/price-parser (BSD-3-Clause),
// npm parse-price (MIT), npm price-parser (ISC), RubyMoney/monetize (MIT) and moneyphp/money (MIT); `meta` has the commits.
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { parsePrice } from '../../src/money/price-text.ts'

const Row = z.object({
  id: z.string(),
  text: z.string().nullable(),
  currency_hint: z.string().nullable(),
  amount: z.string().nullable(),
  amount_text: z.string().nullish(),
  currency_iso: z.string().nullable(),
  minor_digits: z.number().optional(),
  minor_units: z.string().optional(),
})
type Row = z.infer<typeof Row>

const file = new URL('./price-strings.json', import.meta.url)
const rows = z.object({ cases: z.array(Row) }).parse(JSON.parse(readFileSync(file, 'utf8'))).cases
const withText = rows.flatMap((row) => (row.text === null ? [] : [{ ...row, text: row.text }]))

// Rows where the table wants something our rules refuse, with the rule. `null` means that we give no price at all.
const OVERRIDDEN: readonly { readonly rule: string; readonly rows: Readonly<Record<string, string | null>> }[] = [
  {
    rule: 'a text with several different prices gives null',
    rows: nulls('pp-0022 pp-0112 pp-0162 pp-0216 pp-0383 pp-0845 pp-0933 pp-1044 npp-033 npp-035'),
  },
  { rule: 'a range gives null', rows: nulls('pp-0175 pp-0297 pp-0919 pp-0934') },
  {
    rule: 'a "from" price gives null',
    rows: nulls('pp-0114 pp-0484 pp-0523 pp-0587 pp-0640 pp-0681 pp-0781'),
  },
  {
    rule: 'words beside a bare number give null (L, K and pound may as well be litres, thousands and a weight)',
    rows: nulls('pp-0737 pp-0936 pp-0942 pp-1039 pp-1049 pp-1052 pp-1084 pp-1095 pp-1130'),
  },
  { rule: 'a rating or a percentage beside the number gives null', rows: nulls('pp-0376 npp-042') },
  { rule: 'three digits after the only mark give null when no currency and no locale tells', rows: nulls('pp-0403') },
  { rule: 'unsound grouping gives null', rows: nulls('pp-0197 pp-0198 pp-1185') },
  { rule: 'behind a symbol only two digits are cents', rows: nulls('pp-1177 pp-1179 npp-014') },
  { rule: 'decimals apart from their mark are believed only beside a currency', rows: nulls('pp-0862') },
  { rule: 'free is not a number', rows: nulls('pp-0067 pp-0889') },
  { rule: 'a hundredth (cent, penny) is not the currency itself', rows: nulls('pp-1081 pp-1161') },
  { rule: 'an abbreviated amount is rounded and never what is paid', rows: nulls('rmz-020 rmz-048 rmz-050 rmz-051') },
  { rule: 'a text without a digit gives null', rows: nulls('pp-1167 pp-1172 pp-1174 pp-1175') },
  { rule: 'two digits after the only mark are decimals in every currency', rows: { 'rmz-041': '6.53' } },
  {
    rule: 'decimals are kept as written, never rounded to the minor unit',
    rows: { 'mpd-032': '1000.50', 'mpd-038': '-1000.50', 'mpd-042': '-0.01' },
  },
  {
    rule: 'three digits after the only mark are a group when the currency has two decimals',
    rows: { 'mpd-047': '-9999', 'mpd-048': '9999' },
  },
]
// The hint of these rows is a sentence with a price in it ("Pris NOK 899,00"); our hint is a code or a symbol.
const HINT_IS_A_SENTENCE = new Set(['pp-0248', 'pp-0272', 'pp-0274', 'pp-0298', 'pp-0828'])

function nulls(ids: string): Record<string, null> {
  return Object.fromEntries(ids.split(' ').map((id) => [id, null]))
}

const overridden = new Map(
  OVERRIDDEN.flatMap(({ rule, rows: ids }) => Object.entries(ids).map((e) => [e[0], { rule, ours: e[1] }] as const)),
)
const parse = (row: { text: string; currency_hint: string | null }) =>
  parsePrice(row.text, row.currency_hint === null ? {} : { currency: row.currency_hint })

/** The table's amounts have lost their trailing zeros; moneyphp gives minor units. */
function expected(row: Row): string | null {
  if (row.minor_units === undefined) return row.amount === null ? null : trimmed(row.amount)
  if (row.text === '') return null // their parser makes zero of nothing; we never make a price of nothing
  const digits = row.minor_digits ?? 0
  const units = row.minor_units.replace('-', '').padStart(digits + 1, '0')
  const whole = digits === 0 ? units : `${units.slice(0, -digits)}.${units.slice(-digits)}`
  return trimmed(row.minor_units.startsWith('-') ? `-${whole}` : whole)
}

function trimmed(amount: string): string {
  return amount.includes('.') ? amount.replace(/\.?0+$/, '') : amount
}

describe('published price texts', () => {
  const plain = withText.filter((row) => !overridden.has(row.id))

  it.each(plain)('$id $text', (row) => {
    const got = parse(row)
    expect(got && trimmed(got.amount)).toBe(expected(row))
    if (got && row.currency_iso !== null && !HINT_IS_A_SENTENCE.has(row.id)) expect(got.currency).toBe(row.currency_iso)
    if (got && HINT_IS_A_SENTENCE.has(row.id)) expect(got.currency).toBeNull()
    // As many decimals as written: the source's own cut of the text has the same digits.
    if (got && row.amount_text) expect(digitsOf(got.amount)).toBe(digitsOf(row.amount_text))
  })

  it.each(withText.flatMap((row) => ({ row, rule: overridden.get(row.id) })).filter(({ rule }) => rule !== undefined))(
    '$row.id $row.text: $rule.rule',
    ({ row, rule }) => {
      const got = parse(row)
      expect(got?.amount ?? null).toBe(rule?.ours)
      // An override must override something: else the row belongs with the others.
      expect(got && trimmed(got.amount)).not.toBe(expected(row))
    },
  )

  it('names only rows that exist', () => {
    const ids = new Set(withText.map((row) => row.id))
    expect([...overridden.keys(), ...HINT_IS_A_SENTENCE].filter((id) => !ids.has(id))).toEqual([])
  })

  it('keeps the score', () => {
    const right = withText.filter((row) => {
      const got = parse(row)
      return (got && trimmed(got.amount)) === expected(row)
    })
    const wrong = withText.filter((row) => {
      const got = parse(row)
      return got !== null && trimmed(got.amount) !== expected(row)
    })
    // 655 rows with a text: the amount as the table has it, null where our rules are stricter, another amount by rule.
    expect({ rows: withText.length, right: right.length, other: wrong.map((row) => row.id).sort() }).toEqual({
      rows: 655,
      right: 597,
      other: ['mpd-032', 'mpd-038', 'mpd-042', 'mpd-047', 'mpd-048', 'rmz-041'],
    })
    console.info(
      `price-strings: ${right.length} of ${withText.length} amounts as published, ${overridden.size} overridden by rule`,
    )
  })
})

function digitsOf(text: string): string {
  return text.replace(/\D/g, '').replace(/^0+(?=\d)/, '')
}

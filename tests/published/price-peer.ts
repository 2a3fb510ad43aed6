// npm parse-price (MIT) beside our parsePrice on the published strings of price-strings.json. Rows of moneyphp are left
// out: they are in minor units of a currency that the peer cannot be told. The peer gives 0 where it finds nothing.
import { readFileSync } from 'node:fs'
import peer from 'parse-price'
import { z } from 'zod'
import { parsePrice } from '../../src/money/price-text.ts'

/** How many of the strings were read as published, as nothing where there is an amount, or as another amount. */
export interface PriceScore {
  readonly rows: number
  readonly right: number
  readonly none: number
  readonly wrong: number
}

const Row = z.object({
  text: z.string().nullable(),
  currency_hint: z.string().nullable(),
  amount: z.string().nullable(),
  minor_units: z.string().optional(),
})

/** Reads all strings with both. */
export function comparePeers(): { readonly ours: PriceScore; readonly peer: PriceScore } {
  const file = readFileSync(new URL('./price-strings.json', import.meta.url), 'utf8')
  const { cases } = z.object({ cases: z.array(Row) }).parse(JSON.parse(file))
  const rows = cases.flatMap(({ text, currency_hint, amount, minor_units }) =>
    text === null || minor_units !== undefined ? [] : [{ text, currency_hint, amount }],
  )
  const score = (read: (row: (typeof rows)[number]) => string | null): PriceScore => {
    let right = 0
    let none = 0
    for (const row of rows) {
      const got = read(row)
      if (got === (row.amount === null ? null : trimmed(row.amount))) right += 1
      else if (got === null) none += 1
    }
    return { rows: rows.length, right, none, wrong: rows.length - right - none }
  }
  return {
    ours: score(({ text, currency_hint }) => {
      const price = parsePrice(text, currency_hint === null ? {} : { currency: currency_hint })
      return price && trimmed(price.amount)
    }),
    peer: score(({ text }) => {
      const price = peer(text)
      return Number.isFinite(price) ? String(price) : null
    }),
  }
}

function trimmed(amount: string): string {
  return amount.includes('.') ? amount.replace(/\.?0+$/, '') : amount
}

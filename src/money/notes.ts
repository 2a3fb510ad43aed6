import type { CurrencyCode } from './currency.ts'
import { piecesOf } from './denominations.ts'
import { fewestPieces } from './fewest-pieces.ts'
import type { Money } from './money.ts'
import { MoneyError } from './money-error.ts'

/** How many notes or coins of one value, the value in minor units: `{denomination: 2000, count: 3}` is three twenties. */
export interface PieceCount {
  readonly denomination: number
  readonly count: number
}

/** Which pieces may be used. */
export interface BreakdownOptions {
  /** Values of the notes and coins in minor units, in any order. Without it the stock's values, or the currency's. */
  readonly denominations?: readonly number[]
  /** Pieces at hand by denomination; one that is absent is not at hand. Without a stock there are enough of all. */
  readonly stock?: Readonly<Record<number, number>>
}

const MOST_DENOMINATIONS = 100

/**
 * The fewest notes and coins that make an amount exactly, the largest denomination first and only those that are used;
 * null if the pieces cannot make it; an empty list for zero. Among equally few pieces it takes more of the larger ones.
 *
 * Exact for every amount and every denomination, with or without a stock: it does not simply take the largest note
 * first, which fails for 60 in notes of 20 and 50. Any currency's notes and coins take well under a millisecond, also for
 * the largest amounts. Up to 100 denominations; sets of many large values with no common measure can be too much work
 * (`search-too-large`), and it says so instead of guessing.
 *
 * @throws MoneyError `negative-amount`, `bad-denominations` (not a whole number above zero, named twice, none known for
 *   the currency, or a stock that is no whole number), `search-too-large`
 * @example breakdown(money('CAD', '60.00'), { denominations: [2000, 5000] }) // [{denomination: 2000, count: 3}]
 */
export function breakdown(m: Money, options: BreakdownOptions = {}): PieceCount[] | null {
  const stock = readStock(options.stock)
  const denominations = options.denominations ?? (stock ? [...stock.keys()] : null)
  for (const values of [options.denominations ?? [], [...(stock?.keys() ?? [])]]) checkDenominations(values)
  if (m.minor < 0) {
    throw new MoneyError(
      'negative-amount',
      'An amount below zero cannot be laid out in notes and coins. Turn its sign.',
    )
  }
  if (m.minor === 0) return []

  const supplies = [...(denominations ?? defaultDenominations(m.currency))]
    .sort((a, b) => b - a)
    .map((value) => ({ value, stock: stock ? (stock.get(value) ?? 0) : Number.POSITIVE_INFINITY }))
    .filter((supply) => supply.stock > 0)
  const counts = fewestPieces(m.minor, supplies)
  if (!counts) return null
  return supplies
    .map(({ value }, index) => ({ denomination: value, count: counts[index] ?? 0 }))
    .filter(({ count }) => count > 0)
}

function defaultDenominations(currency: CurrencyCode): number[] {
  const pieces = piecesOf(currency)
  if (!pieces) {
    throw new MoneyError('bad-denominations', `No notes and coins are known for ${currency}. Give its denominations.`)
  }
  // A value can be both a note and a coin, such as 20 pesos.
  return [...new Set([...pieces.notes, ...pieces.coins])]
}

function checkDenominations(denominations: readonly number[]): void {
  const wrong = denominations.find((value) => !Number.isSafeInteger(value) || value < 1)
  if (wrong !== undefined) {
    throw new MoneyError(
      'bad-denominations',
      `${wrong} is not a denomination. Give each note and coin as a whole number of minor units above zero.`,
    )
  }
  const twice = denominations.find((value, index) => denominations.indexOf(value) !== index)
  if (twice !== undefined) {
    throw new MoneyError('bad-denominations', `The denomination ${twice} is given twice. Give each one once.`)
  }
  if (denominations.length > MOST_DENOMINATIONS) {
    throw new MoneyError(
      'bad-denominations',
      `${denominations.length} denominations are too many. Give at most ${MOST_DENOMINATIONS}.`,
    )
  }
}

function readStock(stock: BreakdownOptions['stock']): Map<number, number> | null {
  if (!stock) return null
  const counts = new Map(Object.entries(stock).map(([value, count]) => [Number(value), count] as const))
  for (const [value, count] of counts) {
    if (!Number.isSafeInteger(count) || count < 0) {
      throw new MoneyError(
        'bad-denominations',
        `${count} pieces of ${value} cannot be at hand. Give each count as a whole number, zero or more.`,
      )
    }
  }
  return counts
}

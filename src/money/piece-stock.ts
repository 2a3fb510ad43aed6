import { cheapestPieces, type Effort, OutOfSteps } from './cheapest-pieces.ts'
import type { CurrencyCode } from './currency.ts'
import { type Pieces, piecesOf } from './denominations.ts'
import { MoneyError } from './money-error.ts'
import type { PieceCount } from './notes.ts'
import { gcd } from './piece-level.ts'

/**
 * The values of a set of notes and coins, the largest first, each once.
 *
 * @param given the household's own values; without it the currency's
 * @throws MoneyError `bad-denominations` (none known for the currency, or a value that is no whole number above zero)
 */
export function denominationsOf(currency: CurrencyCode, given?: readonly number[]): number[] {
  const known: Pieces | null = given ? { notes: given, coins: [] } : piecesOf(currency)
  if (!known || known.notes.length + known.coins.length === 0) {
    throw new MoneyError('bad-denominations', `No notes and coins are known for ${currency}. Give its denominations.`)
  }
  const all = [...new Set([...known.notes, ...known.coins])]
  const wrong = all.find((value) => !Number.isSafeInteger(value) || value < 1)
  if (wrong !== undefined) {
    throw new MoneyError(
      'bad-denominations',
      `${wrong} is not a denomination. Give each note and coin as a whole number of minor units above zero.`,
    )
  }
  return all.sort((a, b) => b - a)
}

/**
 * How many pieces of each denomination there are, in their order.
 *
 * @throws MoneyError `unknown-piece` (a value that is not among the denominations), `bad-count`
 */
export function stockOf(pieces: readonly PieceCount[], denominations: readonly number[]): number[] {
  const stock = denominations.map(() => 0)
  const seen = new Set<number>()
  for (const { denomination, count } of pieces) {
    const at = denominations.indexOf(denomination)
    if (at < 0) {
      throw new MoneyError(
        'unknown-piece',
        `There is no note or coin of ${denomination} minor units in use. Check what was counted, or add it to the denominations.`,
      )
    }
    if (seen.has(denomination)) {
      throw new MoneyError('bad-count', `The pieces of ${denomination} are given twice. Give each value once.`)
    }
    seen.add(denomination)
    if (!Number.isSafeInteger(count) || count < 0) {
      throw new MoneyError('bad-count', `${count} is not a number of pieces. Count in whole pieces, zero or more.`)
    }
    stock[at] = count
  }
  return stock
}

/** Counts as a list, the largest denomination first, without those that are zero. */
export function pieceList(denominations: readonly number[], counts: readonly number[]): PieceCount[] {
  return denominations
    .map((denomination, at) => ({ denomination, count: counts[at] ?? 0 }))
    .filter(({ count }) => count > 0)
}

/** What counts are worth together, in minor units. */
export function worthOf(denominations: readonly number[], counts: readonly number[]): number {
  return denominations.reduce((sum, value, at) => sum + value * (counts[at] ?? 0), 0)
}

const MOST_STEPS = 2_000_000

/**
 * The largest amount, up to the one given, that pieces can make exactly.
 *
 * @param most how many pieces of each denomination there may be; `Infinity` for as many as are needed
 * @throws MoneyError `search-too-large`
 * @example mostExpressible(3000, [5000, 2000], [Infinity, Infinity]) // 2000
 */
export function mostExpressible(amount: number, denominations: readonly number[], most: readonly number[]): number {
  const usable = denominations.map((value, at) => ({ value, most: most[at] ?? 0 })).filter((level) => level.most > 0)
  const unit = usable.reduce((divisor, { value }) => gcd(value, divisor), 0)
  if (unit === 0) return 0
  const wanted = Math.floor(amount / unit)
  const levels = usable.map((level) => ({
    value: level.value / unit,
    least: 0,
    most: level.most,
    slope: 0,
    corners: [],
  }))
  const rest = { value: 1, least: 0, most: Number.POSITIVE_INFINITY, slope: 1, corners: [] }
  const effort: Effort = { steps: 0, most: MOST_STEPS }
  try {
    const choice = cheapestPieces(wanted, [...levels, rest], effort).best()
    return (wanted - (choice?.cost ?? wanted)) * unit
  } catch (error) {
    if (!(error instanceof OutOfSteps)) throw error
    throw new MoneyError(
      'search-too-large',
      `How much of ${amount} minor units ${usable.length} such uneven denominations can make would take too long to work out. ` +
        'Use fewer denominations or rounder values.',
    )
  }
}

import { BookError } from '../book/book-error.ts'
import type { PotId } from '../book/ids.ts'
import type { CurrencyCode } from '../money/currency.ts'
import { piecesOf } from '../money/denominations.ts'
import { sameCurrency, toDecimal } from '../money/money.ts'
import { MoneyError } from '../money/money-error.ts'
import { denominationsOf, mostExpressible, stockOf } from '../money/piece-stock.ts'
import { type WishLimits, wishLimits } from './piece-wish.ts'
import { PlanError } from './plan-error.ts'
import type { CashFill, SlipOptions } from './withdrawal-slip.ts'

/** One pot's part of the slip, in minor units. */
export interface SlipPot {
  readonly pot: PotId
  readonly wanted: number
  /** The most of it that the household's notes and coins can express. */
  readonly rounded: number
  /** The same with what the bank gives and what is at hand, if no other pot took any of it. */
  readonly expressible: number
  readonly wish: WishLimits
  readonly wished: boolean
}

/** What the slip is made from, checked. */
export interface SlipTask {
  readonly currency: CurrencyCode
  /** Values that may go into an envelope, in minor units, the largest first. */
  readonly denominations: readonly number[]
  readonly gives: readonly boolean[]
  readonly hand: readonly number[]
  readonly pots: readonly SlipPot[]
  /** What the sum asked of the bank must be a multiple of; 1 when it may be any. */
  readonly multipleOf: number
}

/**
 * Checks what `withdrawalSlip` was given.
 *
 * @throws what `withdrawalSlip` throws
 */
export function readSlip(fills: readonly CashFill[], options: SlipOptions): SlipTask {
  const first = fills[0]
  for (const { cash } of fills) if (first) checkFill(first, cash)
  const twice = fills.find(({ pot }, index) => fills.findIndex((other) => other.pot === pot) !== index)
  if (twice) throw new BookError('bad-lines', `The pot "${twice.pot}" is given twice. Give each pot once.`)

  // Without any fill there is no currency, and none is needed.
  const currency = first?.cash.currency ?? 'EUR'
  const all = first ? denominationsOf(currency, options.denominations) : []
  const known = piecesOf(currency)
  const isCoin = (value: number): boolean => !!known?.coins.includes(value) && !known.notes.includes(value)
  const denominations = options.coins === false ? all.filter((value) => !isCoin(value)) : all
  const counted = first ? stockOf(options.atHand ?? [], all) : []
  const bankGives = first && options.bank?.gives ? givenValues(currency, options.bank.gives, all) : all
  const gives = denominations.map((value) => bankGives.includes(value))
  const hand = denominations.map((value) => counted[all.indexOf(value)] ?? 0)
  const most = denominations.map((_, at) => (gives[at] ? Number.POSITIVE_INFINITY : (hand[at] ?? 0)))
  const usable = denominations.filter((_, at) => (most[at] ?? 0) > 0)
  const pots = fills.map(({ pot, cash, wish = 'usual' }): SlipPot => {
    const rounded = mostExpressible(
      cash.minor,
      denominations,
      denominations.map(() => Number.POSITIVE_INFINITY),
    )
    const expressible = mostExpressible(rounded, denominations, most)
    return { pot, wanted: cash.minor, rounded, expressible, wish: wishLimits(wish, usable), wished: wish !== 'usual' }
  })
  // What is neither given nor at hand plays no part; without it all amounts are multiples of a larger unit.
  const there = denominations.map((_, at) => (most[at] ?? 0) > 0)
  const only = <T>(list: readonly T[]): T[] => list.filter((_, at) => there[at])
  return {
    currency,
    denominations: only(denominations),
    gives: only(gives),
    hand: only(hand),
    pots,
    multipleOf: multipleOf(options),
  }
}

function checkFill(first: CashFill, cash: CashFill['cash']): void {
  sameCurrency(first.cash, cash)
  if (cash.minor < 0) {
    throw new MoneyError(
      'negative-amount',
      `${toDecimal(cash)} cannot be put into an envelope. Give zero or more; money goes out of a pot by a spend.`,
    )
  }
}

function givenValues(currency: CurrencyCode, gives: readonly number[], all: readonly number[]): number[] {
  // A bank that gives nothing at all is an answer, not an error.
  if (gives.length === 0) return []
  const values = denominationsOf(currency, gives)
  stockOf(
    values.map((denomination) => ({ denomination, count: 0 })),
    all,
  )
  return values
}

function multipleOf({ bank }: SlipOptions): number {
  const step = bank?.kind === 'machine' ? (bank.multipleOf ?? 1) : 1
  if (Number.isSafeInteger(step) && step > 0) return step
  throw new PlanError(
    'bad-options',
    `A machine cannot give multiples of ${step}. Give a whole number of minor units above zero, such as 2000 for 20.00.`,
  )
}

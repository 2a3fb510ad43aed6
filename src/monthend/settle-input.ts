import { BookError } from '../book/book-error.ts'
import type { PotId } from '../book/ids.ts'
import type { CurrencyCode } from '../money/currency.ts'
import { sameCurrency, toDecimal } from '../money/money.ts'
import { MoneyError } from '../money/money-error.ts'
import { gcd } from '../money/piece-level.ts'
import { denominationsOf, mostExpressible, stockOf } from '../money/piece-stock.ts'
import type { EnvelopeCount, EnvelopeTarget, SettleOptions } from './settle.ts'

/** One envelope as the solver needs it: counts in the order of the denominations, amounts in minor units. */
export interface SettleEnvelope {
  readonly pot: PotId
  readonly counted: readonly number[]
  readonly target: number
  /** The most of the target that notes and coins can express. */
  readonly rounded: number
  /** The same with the pieces that are to be had, on a bank trip: the bank may not give every denomination. */
  readonly expressible: number
}

/** What is to be settled, checked and in the order of the targets. */
export interface SettleTask {
  readonly currency: CurrencyCode
  /** Values in minor units, the largest first. */
  readonly denominations: readonly number[]
  /** What all amounts are multiples of, in minor units. */
  readonly unit: number
  readonly envelopes: readonly SettleEnvelope[]
  readonly trip: boolean
  /** For each denomination, whether the bank gives it. */
  readonly gives: readonly boolean[]
  /** Final pieces of an earlier settle, in the order of the envelopes. */
  readonly goOnTo: readonly (readonly number[])[] | null
}

/**
 * Checks what `settle` was given.
 *
 * @throws what `settle` throws
 */
export function readSettle(
  counts: readonly EnvelopeCount[],
  targets: readonly EnvelopeTarget[],
  options: SettleOptions,
): SettleTask {
  const first = targets[0]
  for (const { cash } of targets) if (first) checkTarget(first, cash)
  refuseTwice(targets.map(({ pot }) => pot))
  refuseTwice(counts.map(({ pot }) => pot))
  const stray = counts.find(({ pot }) => !targets.some((target) => target.pot === pot))
  if (stray) {
    throw new BookError(
      'unknown-pot',
      `The envelope "${stray.pot}" was counted, but nothing says how much it should hold. Give it a target, 0 for none.`,
    )
  }
  // Without any envelope there is no currency, and none is needed.
  const currency = first?.cash.currency ?? 'EUR'
  const denominations = first ? denominationsOf(currency, options.denominations) : []
  const trip = options.bank !== 'none'
  const bankGives = options.bankGives ? denominationsOf(currency, options.bankGives) : denominations
  stockOf(
    bankGives.map((denomination) => ({ denomination, count: 0 })),
    denominations,
  )
  const gives = denominations.map((value) => trip && bankGives.includes(value))
  const counted = targets.map(({ pot }) =>
    stockOf(counts.find((count) => count.pot === pot)?.pieces ?? [], denominations),
  )
  const endless = denominations.map(() => Number.POSITIVE_INFINITY)
  const total = denominations.map((_, at) => counted.reduce((sum, of) => sum + (of[at] ?? 0), 0))
  const most = denominations.map((_, at) => (gives[at] ? Number.POSITIVE_INFINITY : (total[at] ?? 0)))
  // What neither lies in an envelope nor is given plays no part; without it all amounts are multiples of a larger unit.
  const there = denominations.map((_, at) => (most[at] ?? 0) > 0)
  const only = <T>(list: readonly T[]): T[] => list.filter((_, at) => there[at])
  // Without a bank the envelopes keep their sum, so one may have to end above its target: every amount counts.
  const unit = (trip ? only(denominations) : denominations).reduce((divisor, value) => gcd(value, divisor), 0) || 1
  const envelopes = targets.map(({ pot, cash }, index): SettleEnvelope => {
    const rounded = mostExpressible(cash.minor, denominations, endless)
    const expressible = trip ? mostExpressible(rounded, denominations, most) : rounded
    return { pot, counted: only(counted[index] ?? []), target: cash.minor, rounded, expressible }
  })
  const finals = goOnTo(targets, denominations, options)
  return {
    currency,
    denominations: only(denominations),
    unit,
    envelopes,
    trip,
    gives: only(gives),
    goOnTo: finals?.map(only) ?? null,
  }
}

function checkTarget(first: EnvelopeTarget, cash: EnvelopeTarget['cash']): void {
  sameCurrency(first.cash, cash)
  if (cash.minor < 0) {
    throw new MoneyError(
      'negative-amount',
      `An envelope cannot hold ${toDecimal(cash)}. Give it a target of zero; what is below zero is for the card side.`,
    )
  }
}

function refuseTwice(pots: readonly PotId[]): void {
  const twice = pots.find((pot, index) => pots.indexOf(pot) !== index)
  if (twice !== undefined) {
    throw new BookError('bad-lines', `The pot "${twice}" is given twice. Give each pot once.`)
  }
}

/** The earlier plan, or null where it does not speak of exactly these envelopes. */
function goOnTo(targets: readonly EnvelopeTarget[], denominations: readonly number[], options: SettleOptions) {
  const plan = options.goOnTo
  if (!plan || plan.length !== targets.length) return null
  const found = targets.map(({ pot }) => plan.find((of) => of.pot === pot))
  const finals = found.flatMap((of) => (of ? [stockOf(of.pieces, denominations)] : []))
  return finals.length === targets.length ? finals : null
}

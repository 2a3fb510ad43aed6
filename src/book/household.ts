import { type CurrencyCode, isCurrencyCode } from '../money/currency.ts'
import { BookError } from './book-error.ts'
import type { CalendarDate } from './calendar-date.ts'
import { planningFault } from './check-planning.ts'
import { type AccountId, isSlug, type PotId } from './ids.ts'
import { type OrderRules, type Renewal, renewalFault } from './ordering.ts'
import type { Earner, Planning, PotPlan } from './planning.ts'

/** *everyday*: a regular purpose; *sinking*: a known cost with a due date; *reserve*: for emergencies. */
export type PotKind = 'everyday' | 'sinking' | 'reserve'
/** What happens to an online order that would take the pot below zero. */
export type PotRule = 'block' | 'warn' | 'allow'
/** Where a pot keeps its money: notes in an envelope, a part of the bank balance, or both. */
export type PotSides = 'both' | 'cash' | 'card'

/** One purpose's money. Amounts are whole minor units of the household's currency. */
export interface Pot {
  readonly id: PotId
  readonly name: string
  readonly kind: PotKind
  readonly rule: PotRule
  readonly sides: PotSides
  /** What should stay in the pot; an order that leaves less is warned about. 0 means no floor. */
  readonly floor: number
  /** What each pay puts in, by side. */
  readonly fill: { readonly cash: number; readonly card: number }
  /** An archived pot keeps its history and takes no new orders or fills. */
  readonly archived: boolean
  readonly plan?: PotPlan
}

/** A bank account or a credit card with a statement of its own. */
export interface RealAccount {
  readonly id: AccountId
  readonly name: string
  readonly kind: 'bank' | 'credit'
}

/** What a book is kept for: one currency, the pots in their order, the accounts, and the pay dates ahead. */
export interface Household {
  readonly currency: CurrencyCode
  /** IANA name of the time zone in which "today" is told, such as `America/Toronto`. */
  readonly timeZone: string
  /** Day of the month on which the household's month starts, 1 to 28. */
  readonly monthStartDay: number
  readonly pots: readonly Pot[]
  readonly accounts: readonly RealAccount[]
  /** Pay dates to come, ascending (from `payDates`, or by hand); `assess` names the next fill from them. */
  readonly payDates: readonly CalendarDate[]
  /** Whose pay the household lives on; the plan room works pay dates out from them, as far ahead as it needs. */
  readonly earners?: readonly Earner[]
  readonly planning?: Planning
  /** Subscriptions and other orders that come again by themselves. */
  readonly renewals?: readonly Renewal[]
  readonly ordering?: OrderRules
}

/**
 * Refuses a household the book cannot be kept for.
 *
 * @throws BookError `bad-household`, with what is wrong and which pot or account
 */
export function checkHousehold(household: Household): void {
  const wrong = firstFault(household)
  if (wrong) throw new BookError('bad-household', wrong)
}

function firstFault(h: Household): string | null {
  if (!isCurrencyCode(h.currency)) return `"${h.currency}" is not a currency. Use a code such as CAD.`
  if (!Number.isInteger(h.monthStartDay) || h.monthStartDay < 1 || h.monthStartDay > 28) {
    return `The month cannot start on day ${h.monthStartDay}. Choose a day from 1 to 28.`
  }
  const seen = new Set<string>()
  for (const pot of h.pots) {
    if (!isSlug(pot.id)) return `"${pot.id}" cannot name a pot. Use letters, digits, - and _.`
    if (seen.has(pot.id)) return `Two pots have the id "${pot.id}". Give one of them another.`
    seen.add(pot.id)
    if (pot.name.trim() === '') return `The pot "${pot.id}" has no name. Give it one.`
    if (!Number.isSafeInteger(pot.floor) || pot.floor < 0) return `The floor of ${pot.name} must be zero or more.`
    for (const side of ['cash', 'card'] as const) {
      const amount = pot.fill[side]
      if (!Number.isSafeInteger(amount) || amount < 0) return `The fill of ${pot.name} must be zero or more.`
      if (amount > 0 && !hasSide(pot, side)) return `${pot.name} keeps no ${side} side, so nothing can be filled there.`
    }
  }
  const accounts = new Set<string>()
  for (const account of h.accounts) {
    if (!isSlug(account.id)) return `"${account.id}" cannot name an account. Use letters, digits, - and _.`
    if (accounts.has(account.id)) return `Two accounts have the id "${account.id}". Give one of them another.`
    accounts.add(account.id)
  }
  if (h.accounts.length === 0) return 'A household needs one bank account at least; add the one its card is paid from.'
  const renewal = renewalFault(h.renewals ?? [], (id) => h.pots.some((p) => p.id === id))
  if (renewal) return renewal
  for (let i = 1; i < h.payDates.length; i++) {
    if ((h.payDates[i - 1] ?? '') >= (h.payDates[i] ?? '')) return 'Pay dates must be in order, each one once.'
  }
  return planningFault(h)
}

/** Whether a pot keeps money on a side. */
export function hasSide(pot: Pot, side: 'cash' | 'card'): boolean {
  return pot.sides === 'both' || pot.sides === side
}

/**
 * Finds a pot.
 *
 * @throws BookError `unknown-pot`
 */
export function findPot(household: Household, id: PotId): Pot {
  const pot = household.pots.find((p) => p.id === id)
  if (!pot) throw new BookError('unknown-pot', `There is no pot "${id}" in this household.`)
  return pot
}

/**
 * Finds a bank account or credit card; without an id, the first of the household.
 *
 * @throws BookError `unknown-account`
 */
export function findAccount(household: Household, id?: AccountId): RealAccount {
  const account = id === undefined ? household.accounts[0] : household.accounts.find((a) => a.id === id)
  if (!account) throw new BookError('unknown-account', `There is no account "${id ?? ''}" in this household.`)
  return account
}

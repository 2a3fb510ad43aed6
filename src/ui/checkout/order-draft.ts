import { useState } from 'preact/hooks'
import type { SeenPage, WishText } from '../../background/protocol.ts'
import { type CalendarDate, isCalendarDate } from '../../book/calendar-date.ts'
import type { PotId } from '../../book/ids.ts'
import { daysFrom } from '../../book/renewal.ts'
import type { CurrencyCode } from '../../money/currency.ts'
import { type Money, toDecimal } from '../../money/money.ts'
import { readAmount } from '../amount-text.ts'
import { locale } from '../browser.ts'
import { useDrafts } from '../draft.ts'
import { itemsOf, sharedOf } from './page-items.ts'

/** What a person has said of an order beside its total and its one pot. All texts are as typed. */
export interface OrderDraft {
  readonly mode: 'one' | 'item' | 'amount' | 'share'
  /** By pot: what was typed for it. */
  readonly amounts: Readonly<Record<string, string>>
  readonly shares: Readonly<Record<string, string>>
  /** By place of the item; one that is missing goes to the pot the form takes for all. */
  readonly itemPots: Readonly<Record<string, string>>
  /** The rate was typed, the last one seen is not meant. */
  readonly rate: string | null
  readonly fee: string | null
  readonly margin: string
  readonly credit: string
  readonly parts: string
  readonly firstPart: string
  readonly every: 'week' | 'two-weeks' | 'month'
  readonly reserve: 'whole' | 'by-part'
}

export const emptyDraft: OrderDraft = {
  mode: 'one',
  amounts: {},
  shares: {},
  itemPots: {},
  rate: null,
  fee: null,
  margin: '',
  credit: '',
  parts: '',
  firstPart: '',
  every: 'month',
  reserve: 'whole',
}

/** Changes a draft, by what is new or by what is made of it as it then is. */
export type ChangeDraft = (part: Partial<OrderDraft> | ((before: OrderDraft) => Partial<OrderDraft>)) => void

/** Keeps an order's draft while the popup is closed, under the name of its place. */
export function useOrderDraft(name: string, initial: OrderDraft): [OrderDraft, ChangeDraft, () => void] {
  const drafts = useDrafts()
  const [draft, setDraft] = useState<OrderDraft>(() => ({ ...initial, ...keptDraft(drafts.read(name)) }))
  const change: ChangeDraft = (part) => {
    setDraft((before) => {
      const next = { ...before, ...(typeof part === 'function' ? part(before) : part) }
      drafts.write(name, next)
      return next
    })
  }
  const forget = (): void => {
    setDraft(initial)
    drafts.drop(name)
  }
  return [draft, change, forget]
}

/** Whether an order needs more than the one pot and the total: then it is weighed as a whole. */
export function isPlain(draft: OrderDraft, isForeign: boolean): boolean {
  return draft.mode === 'one' && !isForeign && draft.margin === '' && draft.credit === '' && draft.parts === ''
}

/** What the form knows beside the draft. */
export interface Known {
  readonly page: SeenPage | null
  readonly total: Money
  readonly home: CurrencyCode
  /** The pot that pays: for all, for the rest, for items nobody moved. */
  readonly pot: PotId | null
  readonly pots: readonly PotId[]
  readonly rate: string
  readonly isRateSeen: boolean
  readonly per: string
  readonly fee: string
}

/** The wish a draft makes; null while something is missing or cannot be read. */
export function wishOf(draft: OrderDraft, known: Known): WishText | null {
  const { total, home, pot } = known
  const split = splitOf(draft, known)
  const credit = draft.credit === '' ? null : amountOf(draft.credit, total.currency)
  const margin = draft.margin === '' ? null : plainNumber(draft.margin)
  const isForeign = total.currency !== home
  const fee = plainNumber(known.fee === '' ? '0' : known.fee)
  const rate = plainNumber(known.rate)
  const dates = draft.parts === '' ? null : partDays(draft)
  if (!split || pot === null) return null
  if ((draft.credit !== '' && credit === null) || (draft.margin !== '' && margin === null)) return null
  if ((draft.parts !== '' && dates === null) || (isForeign && (rate === null || fee === null))) return null
  return {
    total: toDecimal(total),
    currency: total.currency,
    split,
    foreign:
      isForeign && rate !== null && fee !== null
        ? { home: rate, per: known.per, fee, from: known.isRateSeen ? 'seen' : 'given' }
        : null,
    margin,
    credit,
    instalments: dates ? { reserve: draft.reserve, dates } : null,
    renewal: null,
  }
}

function splitOf(draft: OrderDraft, known: Known): WishText['split'] | null {
  const { pot, pots, total, page } = known
  if (pot === null) return null
  switch (draft.mode) {
    case 'one':
      return { by: 'pot', pot }
    case 'amount': {
      const typed = pots.filter((p) => p !== pot && (draft.amounts[p] ?? '') !== '')
      const lines = typed.map((p) => ({ pot: p, amount: amountOf(draft.amounts[p] ?? '', total.currency) }))
      const read = lines.flatMap(({ pot: p, amount }) => (amount === null ? [] : [{ pot: p, amount }]))
      return read.length === lines.length ? { by: 'amount', lines: read, rest: pot } : null
    }
    case 'share': {
      const typed = pots.filter((p) => (draft.shares[p] ?? '') !== '')
      const shares = typed.map((p) => ({ pot: p, share: plainNumber(draft.shares[p] ?? '') }))
      const read = shares.flatMap(({ pot: p, share }) => (share === null ? [] : [{ pot: p, share }]))
      return read.length === shares.length && read.length > 0 ? { by: 'share', shares: read } : null
    }
    case 'item': {
      const items = itemsOf(page, total.currency)
      if (!items) return null
      const owner = (n: number): PotId => pots.find((p) => p === draft.itemPots[n]) ?? pot
      return {
        by: 'item',
        items: items.map((item, n) => ({ name: item.name, amount: item.amount, pot: owner(n) })),
        shared: sharedOf(page, total.currency),
      }
    }
  }
}

/** The days of the instalments, or null while they are not all said. */
export function partDays({ parts, firstPart, every }: OrderDraft): CalendarDate[] | null {
  const count = Number(parts)
  if (!Number.isInteger(count) || count < 2 || count > 60 || !isCalendarDate(firstPart)) return null
  const step = { week: ['week', 1], 'two-weeks': ['week', 2], month: ['month', 1] } as const
  const [unit, times] = step[every]
  return daysFrom(firstPart, { unit, count: times }, count)
}

/** A number a person typed, with the decimal mark of any language, as a plain decimal text; null when it is none. */
export function plainNumber(typed: string): string | null {
  const text = typed.trim().replace(',', '.').replace(/%$/, '').trim()
  return /^\d{1,9}(\.\d{1,9})?$/.test(text) ? text : null
}

function amountOf(text: string, currency: CurrencyCode): string | null {
  const read = readAmount(text, currency, locale())
  return read.ok ? toDecimal(read.money) : null
}

/** What an earlier popup kept; what is not of its kind is left out. */
function keptDraft(kept: unknown): Partial<OrderDraft> {
  if (typeof kept !== 'object' || kept === null) return {}
  const of = new Map<string, unknown>(Object.entries(kept))
  const found: { -readonly [K in keyof OrderDraft]?: OrderDraft[K] } = {}
  for (const key of ['margin', 'credit', 'parts', 'firstPart'] as const) {
    const value = of.get(key)
    if (typeof value === 'string') found[key] = value
  }
  for (const key of ['rate', 'fee'] as const) {
    const value = of.get(key)
    if (typeof value === 'string' || value === null) found[key] = value
  }
  for (const key of ['amounts', 'shares', 'itemPots'] as const) {
    const value = of.get(key)
    if (typeof value !== 'object' || value === null) continue
    found[key] = Object.fromEntries(Object.entries(value).filter((pair) => typeof pair[1] === 'string'))
  }
  const [mode, every, reserve] = [of.get('mode'), of.get('every'), of.get('reserve')]
  if (mode === 'one' || mode === 'item' || mode === 'amount' || mode === 'share') found.mode = mode
  if (every === 'week' || every === 'two-weeks' || every === 'month') found.every = every
  if (reserve === 'whole' || reserve === 'by-part') found.reserve = reserve
  return found
}

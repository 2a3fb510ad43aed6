import { type CalendarDate, isCalendarDate } from '../../../book/calendar-date.ts'
import { type EntryId, entryId, isUuidV7, type PotId } from '../../../book/ids.ts'
import type { SlipBankSetting } from '../../../book/planning.ts'
import type { CurrencyCode } from '../../../money/currency.ts'
import { type Money, ofMinor } from '../../../money/money.ts'
import type { FillLine, FillPlan } from '../../../plan/plan-fill.ts'
import { type AmountProblem, readAmount } from '../../../ui/amount-text.ts'
import { editText } from '../../../ui/money-text.ts'

export type Side = 'cash' | 'card'

/** A payday while it is walked through. Amounts are texts as typed. It is kept until it is entered. */
export interface PaydayDraft {
  readonly date: CalendarDate
  readonly amount: string
  /** Money that had no pot before is placed as well. */
  readonly takesUnplaced: boolean
  /** What was changed by hand, by pot; a side that is absent is as planned. */
  readonly changes: Readonly<Record<string, { readonly cash?: string; readonly card?: string }>>
  /** Where the notes are fetched this time; null: as the household has it. */
  readonly bank: SlipBankSetting | null
  /** Pieces at hand as typed, by value in minor units. */
  readonly atHand: Readonly<Record<string, string>>
  /** Envelopes that are filled. */
  readonly ticked: readonly string[]
  /** Ids of the entries, made once, so that entering twice is one payday. */
  readonly ids: PaydayIds | null
}

/** The payday's own id and one for each pot's fill. */
export interface PaydayIds {
  readonly payday: EntryId
  readonly fills: Readonly<Record<string, EntryId>>
}

/** One pot's line as it stands now: planned or changed by hand. */
export interface DraftLine {
  readonly line: FillLine
  readonly text: Readonly<Record<Side, string>>
  /** Null while what is typed is no amount. */
  readonly cash: Money | null
  readonly card: Money | null
  readonly problem: AmountProblem | null
  readonly isChanged: boolean
}

/** All lines and how the sum is kept: pay = placed + rest. A rest below zero is more than there is. */
export interface DraftSum {
  readonly lines: readonly DraftLine[]
  readonly placed: Money
  readonly rest: Money
  readonly canGoOn: boolean
}

/** The plan with what was changed by hand. */
export function draftSum(plan: FillPlan, draft: PaydayDraft, currency: CurrencyCode, language: string): DraftSum {
  const lines = plan.lines.map((line) => draftLine(line, draft.changes[line.pot], currency, language))
  const placed = lines.reduce((sum, { cash, card }) => sum + (cash?.minor ?? 0) + (card?.minor ?? 0), 0)
  const rest = plan.pay.minor - placed
  return {
    lines,
    placed: ofMinor(currency, placed),
    rest: ofMinor(currency, rest),
    canGoOn: rest >= 0 && lines.every((line) => line.problem === null),
  }
}

function draftLine(
  line: FillLine,
  change: PaydayDraft['changes'][string] | undefined,
  currency: CurrencyCode,
  language: string,
): DraftLine {
  const text = { cash: change?.cash ?? editText(line.cash), card: change?.card ?? editText(line.card) }
  const [cash, card] = [read(text.cash), read(text.card)]
  return {
    line,
    text,
    cash: cash.ok ? cash.money : null,
    card: card.ok ? card.money : null,
    problem: !cash.ok ? cash.problem : !card.ok ? card.problem : null,
    isChanged: (cash.ok && cash.money.minor !== line.cash.minor) || (card.ok && card.money.minor !== line.card.minor),
  }

  function read(typed: string): ReturnType<typeof readAmount> {
    return typed.trim() === ''
      ? { ok: true, isSum: false, isRounded: false, money: ofMinor(currency, 0) }
      : readAmount(typed, currency, language)
  }
}

/** What was kept of a payday that was begun, or null. */
export function paydayFrom(kept: unknown): PaydayDraft | null {
  if (typeof kept !== 'object' || kept === null) return null
  const fields = new Map<string, unknown>(Object.entries(kept))
  const date = fields.get('date')
  const amount = fields.get('amount')
  if (typeof date !== 'string' || !isCalendarDate(date) || typeof amount !== 'string') return null
  const ticked = fields.get('ticked')
  return {
    date,
    amount,
    takesUnplaced: fields.get('takesUnplaced') === true,
    changes: changesFrom(fields.get('changes')),
    bank: bankFrom(fields.get('bank')),
    atHand: textsFrom(fields.get('atHand')),
    ticked: Array.isArray(ticked) ? ticked.filter((pot) => typeof pot === 'string') : [],
    ids: idsFrom(fields.get('ids')),
  }
}

function changesFrom(kept: unknown): PaydayDraft['changes'] {
  const found: Record<string, { cash?: string; card?: string }> = {}
  for (const [pot, change] of entriesOf(kept)) {
    const sides = new Map(entriesOf(change))
    const [cash, card] = [sides.get('cash'), sides.get('card')]
    found[pot] = { ...(typeof cash === 'string' ? { cash } : {}), ...(typeof card === 'string' ? { card } : {}) }
  }
  return found
}

function bankFrom(kept: unknown): SlipBankSetting | null {
  const fields = new Map(entriesOf(kept))
  const gives = fields.get('gives')
  if (!Array.isArray(gives)) return null
  const values = gives.filter((value) => typeof value === 'number')
  return { kind: fields.get('kind') === 'machine' ? 'machine' : 'counter', gives: values }
}

function textsFrom(kept: unknown): Record<string, string> {
  return Object.fromEntries(entriesOf(kept).filter((pair): pair is [string, string] => typeof pair[1] === 'string'))
}

function idsFrom(kept: unknown): PaydayIds | null {
  const fields = new Map(entriesOf(kept))
  const payday = fields.get('payday')
  if (typeof payday !== 'string' || !isUuidV7(payday)) return null
  const fills: Record<string, EntryId> = {}
  for (const [pot, id] of entriesOf(fields.get('fills'))) {
    if (typeof id === 'string' && isUuidV7(id)) fills[pot] = entryId(id)
  }
  return { payday: entryId(payday), fills }
}

function entriesOf(kept: unknown): [string, unknown][] {
  return typeof kept === 'object' && kept !== null ? Object.entries(kept) : []
}

/** A pot's change with one side typed anew. */
export function withChange(draft: PaydayDraft, pot: PotId, side: Side, text: string): PaydayDraft {
  return { ...draft, ids: null, changes: { ...draft.changes, [pot]: { ...draft.changes[pot], [side]: text } } }
}

import type { NewPot } from '../background/protocol.ts'
import type { Pot } from '../book/household.ts'
import { isSlug, type PotId, potId } from '../book/ids.ts'
import type { CurrencyCode } from '../money/currency.ts'
import { ofMinor, toDecimal } from '../money/money.ts'
import { type AmountProblem, readAmount } from './amount-text.ts'
import { editText } from './money-text.ts'
import { fold } from './pot-match.ts'
import { slugOf } from './slug-of.ts'

/** A pot while it is typed. Amounts are texts as typed; `id` is empty until the pot is first saved. */
export interface PotDraft {
  readonly id: string
  readonly name: string
  readonly kind: NewPot['kind']
  readonly rule: NewPot['rule']
  readonly sides: NewPot['sides']
  readonly floor: string
  readonly fillCash: string
  readonly fillCard: string
  readonly openCash: string
  readonly openCard: string
}

export const AMOUNT_FIELDS = ['openCash', 'openCard', 'fillCash', 'fillCard', 'floor'] as const
export type AmountField = (typeof AMOUNT_FIELDS)[number]

/** What is wrong, by field. */
export type PotProblems = { readonly name?: 'empty' | 'taken' } & { readonly [F in AmountField]?: AmountProblem }

export const KINDS = ['everyday', 'sinking', 'reserve'] as const
export const RULES = ['block', 'warn', 'allow'] as const
export const SIDES = ['both', 'cash', 'card'] as const

export const blankPot: PotDraft = {
  id: '',
  name: '',
  kind: 'everyday',
  rule: 'block',
  sides: 'both',
  floor: '',
  fillCash: '',
  fillCard: '',
  openCash: '',
  openCard: '',
}

/** A pot of the book, for changing it. */
export function draftOf(pot: Pot, currency: CurrencyCode): PotDraft {
  const text = (minor: number): string => (minor === 0 ? '' : editText(ofMinor(currency, minor)))
  const { id, name, kind, rule, sides } = pot
  const fill = { fillCash: text(pot.fill.cash), fillCard: text(pot.fill.card) }
  return { ...blankPot, id, name, kind, rule, sides, floor: text(pot.floor), ...fill }
}

/** Whether a pot keeps money where a field's amount would go. */
export function takesAmount(draft: PotDraft, field: AmountField): boolean {
  if (field === 'floor') return true
  return draft.sides === 'both' || draft.sides === (field.endsWith('Cash') ? 'cash' : 'card')
}

/**
 * Checks a typed pot.
 *
 * @param others names of the other pots: two pots of one name could not be told apart at the checkout
 * @param takenIds ids in use, for the id of a new pot
 * @returns the pot as the worker takes it, or what is wrong with it
 */
export function checkPot(
  draft: PotDraft,
  others: readonly string[],
  takenIds: readonly string[],
  currency: CurrencyCode,
  language: string,
): { readonly pot: NewPot; readonly problems: null } | { readonly pot: null; readonly problems: PotProblems } {
  const name = draft.name.trim()
  const problems: { -readonly [K in keyof PotProblems]: PotProblems[K] } = {}
  if (name === '') problems.name = 'empty'
  else if (others.some((other) => fold(other.trim()) === fold(name))) problems.name = 'taken'
  const amounts: Record<AmountField, string> = {
    openCash: '0',
    openCard: '0',
    fillCash: '0',
    fillCard: '0',
    floor: '0',
  }
  for (const field of AMOUNT_FIELDS) {
    if (draft[field].trim() === '' || !takesAmount(draft, field)) continue
    const read = readAmount(draft[field], currency, language)
    if (read.ok) amounts[field] = toDecimal(read.money)
    else problems[field] = read.problem
  }
  if (Object.keys(problems).length > 0) return { pot: null, problems }
  const id: PotId = isSlug(draft.id) ? potId(draft.id) : slugOf(name, takenIds)
  const { kind, rule, sides } = draft
  return { pot: { id, name, kind, rule, sides, ...amounts }, problems: null }
}

/** A kept draft as a pot, whatever was kept. */
export function potDraftFrom(kept: unknown): PotDraft {
  if (typeof kept !== 'object' || kept === null) return blankPot
  const fields = new Map<string, unknown>(Object.entries(kept))
  const text = (field: string): string => {
    const value = fields.get(field)
    return typeof value === 'string' ? value : ''
  }
  const one = <T extends string>(list: readonly [T, ...T[]], field: string): T =>
    list.find((item) => item === text(field)) ?? list[0]
  return {
    id: text('id'),
    name: text('name'),
    kind: one(KINDS, 'kind'),
    rule: one(RULES, 'rule'),
    sides: one(SIDES, 'sides'),
    floor: text('floor'),
    fillCash: text('fillCash'),
    fillCard: text('fillCard'),
    openCash: text('openCash'),
    openCard: text('openCard'),
  }
}

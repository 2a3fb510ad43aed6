import { type Money, ofMinor } from '../money/money.ts'
import { type Book, findEntry, historyOfOrder, isReversed } from './book.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { AdjustEntry, ChargeEntry, ConfirmEntry, Entry, OrderEntry, OrderLine } from './entry.ts'
import { convert } from './foreign.ts'
import type { EntryId, OrderId } from './ids.ts'
import { sumOf } from './spread.ts'

/** What a line of an order's story tells. */
export type StoryCode =
  | 'tagged'
  | 'adjusted'
  | 'split-item'
  | 'split-amount'
  | 'split-share'
  | 'abroad'
  | 'estimate'
  | 'gift-card'
  | 'instalments-whole'
  | 'instalments-by-part'
  | 'renewal'
  | 'went-on'
  | 'confirmed'
  | 'confirmed-page'
  | 'confirmed-number'
  | 'confirmed-total'
  | 'part-held'
  | 'charged'
  | 'charged-above'
  | 'charged-abroad'
  | 'completed'
  | 'lapsed'
  | 'not-placed'
  | 'cancelled'
  | 'released'
  | 'refund-expected'
  | 'refunded'
  | 'taken-back'

/** One line of an order's story: figures and facts, of which `sayStory` makes a sentence. */
export interface StoryLine {
  readonly code: StoryCode
  readonly entry: EntryId
  readonly date: CalendarDate
  /** The day it really happened, where that lies in a closed month and the entry therefore in the open one. */
  readonly happened: CalendarDate | null
  /** The sum the line is about. */
  readonly amount: Money
  /** A second figure: `charged-above`, `abroad` and `charged-abroad` by how much; `estimate` the margin. */
  readonly other: Money | null
  readonly lines: readonly OrderLine[]
  /** A word that is not Tillside's: an order number, a reason, a name. */
  readonly text: string
  /** A later line took it back. */
  readonly isTakenBack: boolean
}

/**
 * An order's story from its tag to its last refund, step by step, also what was taken back.
 *
 * @returns an empty list for an order the book does not have
 */
export function orderStory(book: Book, order: OrderId): StoryLine[] {
  const story: StoryLine[] = []
  let held = 0
  let abroad: OrderEntry['details'] = {}
  for (const entry of historyOfOrder(book, order)) {
    const before = held
    held += sumOf(entry.postings.filter((p) => p.account.startsWith('held:')))
    if (entry.kind === 'order' || entry.kind === 'adjust') abroad = entry.details ?? {}
    const tell = (code: StoryCode, minor: number, more: Partial<StoryLine> = {}): void => {
      story.push({
        code,
        entry: entry.id,
        date: entry.date,
        happened: entry.happened ?? null,
        amount: home(book, minor),
        other: null,
        lines: 'lines' in entry ? (entry.lines ?? []) : [],
        text: '',
        isTakenBack: isReversed(book, entry.id),
        ...more,
      })
    }
    tellEntry(book, entry, before, abroad, tell)
  }
  return story
}

type Tell = (code: StoryCode, minor: number, more?: Partial<StoryLine>) => void

function tellEntry(book: Book, entry: Entry, heldBefore: number, details: OrderEntry['details'], tell: Tell): void {
  switch (entry.kind) {
    case 'order':
    case 'adjust':
      tellTag(book, entry, tell)
      break
    case 'confirm':
      tellConfirm(entry, tell)
      break
    case 'instalment':
      tell('part-held', sumOf(entry.lines))
      break
    case 'charge':
      tellCharge(book, entry, heldBefore, details, tell)
      break
    case 'release': {
      const freed = -sumOf(entry.postings.filter((p) => p.account.startsWith('held:')))
      tell(entry.why === 'complete' ? 'completed' : (entry.why ?? 'released'), freed)
      break
    }
    case 'expect':
      tell('refund-expected', sumOf(entry.lines))
      break
    case 'refund':
      tell('refunded', sumOf(entry.lines))
      break
    case 'reversal': {
      const target = findEntry(book, entry.reverses)
      tell('taken-back', target && 'lines' in target ? sumOf(target.lines ?? []) : 0, {
        text: target?.kind ?? '',
      })
      break
    }
    default:
  }
}

function tellTag(book: Book, entry: OrderEntry | AdjustEntry, tell: Tell): void {
  const { details = {}, lines, goOnReason } = entry
  tell(entry.kind === 'order' ? 'tagged' : 'adjusted', sumOf(lines), { text: entry.kind === 'order' ? entry.shop : '' })
  if (details.by === 'item') tell('split-item', sumOf(details.items ?? []))
  if (details.by === 'amount') tell('split-amount', sumOf(lines))
  if (details.by === 'share') tell('split-share', sumOf(lines))
  if (details.foreign) {
    const { currency, amount, home: rate, per, fee } = details.foreign
    const asked = ofMinor(currency, amount)
    const came = convert(asked, book.household.currency, { home: rate, per }, fee)
    tell('abroad', came.total.minor, { amount: asked, other: came.total, text: rateText(rate, per) })
  }
  if (details.margin) tell('estimate', sumOf(lines) - details.margin, { other: home(book, details.margin) })
  if (details.credit) {
    tell('gift-card', 0, { amount: ofMinor(details.foreign?.currency ?? book.household.currency, details.credit) })
  }
  if (details.instalments) {
    const { reserve, parts } = details.instalments
    const days = parts.map((p) => p.date).join(' ')
    tell(`instalments-${reserve}`, sumOf(parts.flatMap((p) => p.lines)), { text: days })
  }
  if (details.renewal) tell('renewal', sumOf(lines), { text: details.renewal.due })
  if (goOnReason) tell('went-on', sumOf(lines), { text: goOnReason })
}

function tellConfirm(entry: ConfirmEntry, tell: Tell): void {
  const plain = entry.from === 'page' ? 'confirmed-page' : 'confirmed'
  tell(entry.number === undefined ? plain : 'confirmed-number', sumOf(entry.lines ?? []), {
    text: entry.number ?? '',
  })
  if (entry.lines) tell('confirmed-total', sumOf(entry.lines))
}

function tellCharge(
  book: Book,
  entry: ChargeEntry,
  heldBefore: number,
  details: OrderEntry['details'],
  tell: Tell,
): void {
  const charged = sumOf(entry.lines)
  const used = -sumOf(entry.postings.filter((p) => p.account.startsWith('held:')))
  if (charged > used) tell('charged-above', charged, { other: home(book, charged - used) })
  else tell('charged', charged)
  const foreign = details?.foreign
  // Said where the charge is for all of an order abroad: the rate guessed at the checkout against the true one.
  if (foreign && heldBefore > 0 && (entry.foreign?.amount ?? 0) === foreign.amount) {
    tell('charged-abroad', heldBefore, { other: home(book, charged - heldBefore) })
  }
}

function rateText(rate: string, per: string): string {
  return per === '1' ? rate : `${rate} : ${per}`
}

function home(book: Book, minor: number): Money {
  return ofMinor(book.household.currency, minor)
}

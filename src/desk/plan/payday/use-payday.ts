import { useMemo, useState } from 'preact/hooks'
import { unplaced } from '../../../book/balances.ts'
import { type Book, entriesOf, isReversed } from '../../../book/book.ts'
import { addDays, type CalendarDate } from '../../../book/calendar-date.ts'
import { add, type Money, ofMinor, toDecimal } from '../../../money/money.ts'
import { paysAhead } from '../../../plan/pays-ahead.ts'
import { type FillPlan, planFill } from '../../../plan/plan-fill.ts'
import { readAmount } from '../../../ui/amount-text.ts'
import { locale } from '../../../ui/browser.ts'
import { useDrafts } from '../../../ui/draft.ts'
import { editText } from '../../../ui/money-text.ts'
import { newEntryId } from '../../../ui/new-id.ts'
import { useHousehold } from '../../household.ts'
import { useWrite, type Write } from '../use-write.ts'
import { type DraftSum, draftSum, type PaydayDraft, type PaydayIds, paydayFrom } from './payday-draft.ts'
import { type PaydaySlip, paydaySlip } from './payday-slip.ts'

const DRAFT = 'payday'
/** A pay may come some days before or after its day. */
const NEAR_DAYS = 5

/** A payday that is being walked through, from what arrived to what is entered. */
export interface Payday {
  readonly draft: PaydayDraft
  readonly change: (draft: PaydayDraft) => void
  /** What arrived; null while what is typed is no amount. */
  readonly arrived: Money | null
  /** What is to be placed in all. */
  readonly toPlace: Money
  readonly plan: FillPlan
  readonly sum: DraftSum
  /** What the bank is asked for and how the envelopes are filled; an error where the notes and coins cannot be worked out. */
  readonly slip: PaydaySlip | { readonly error: unknown }
  /** Enters the payday in the book. Gives its ids when that is done. */
  readonly enter: () => Promise<PaydayIds | null>
  readonly write: Write
  readonly forget: () => void
}

/** The payday begun earlier, or a new one for today's pay. */
export function usePayday(): Payday {
  const { book, view } = useHousehold()
  const drafts = useDrafts()
  const { currency } = book.household
  const [draft, setDraft] = useState<PaydayDraft>(() => paydayFrom(drafts.read(DRAFT)) ?? newDraft())
  const write = useWrite()
  const change = (next: PaydayDraft): void => {
    setDraft(next)
    drafts.write(DRAFT, next)
  }
  const read = draft.amount.trim() === '' ? null : readAmount(draft.amount, currency, locale())
  const arrived = read === null ? ofMinor(currency, 0) : read.ok ? read.money : null
  const earlier = unplaced(book)
  const toPlace =
    draft.takesUnplaced && arrived ? atLeastNothing(add(arrived, earlier)) : (arrived ?? ofMinor(currency, 0))
  const plan = useMemo(() => planFill(book, toPlace, draft.date), [book, toPlace.minor, draft.date])
  const sum = draftSum(plan, draft, currency, locale())
  const bank = draft.bank ?? book.household.planning?.bank ?? null
  const cashKey = sum.lines.map((one) => one.cash?.minor ?? 0).join()
  // The slip rests on the lines' notes alone, which the key holds.
  const slip = useMemo(
    () => paydaySlip(book.household, sum.lines, bank, draft.atHand),
    [book.household, cashKey, bank, draft.atHand],
  )

  const enter = async (): Promise<PaydayIds | null> => {
    if (!arrived || !sum.canGoOn || 'error' in slip) return null
    const filled = slip.envelopes.filter(({ cash, card }) => cash.minor + card.minor > 0)
    const ids = draft.ids ?? {
      payday: newEntryId(),
      fills: Object.fromEntries(filled.map(({ pot }) => [pot, newEntryId()])),
    }
    change({ ...draft, ids })
    const fills = filled.map(({ pot, cash, card }) => ({
      id: ids.fills[pot] ?? newEntryId(),
      pot,
      cash: toDecimal(cash),
      card: toDecimal(card),
    }))
    const done = await write.write('fill.plan', { id: ids.payday, date: draft.date, amount: toDecimal(arrived), fills })
    return done ? ids : null
  }

  return { draft, change, arrived, toPlace, plan, sum, slip, enter, write, forget }

  function forget(): void {
    drafts.drop(DRAFT)
    setDraft(newDraft())
  }

  function newDraft(): PaydayDraft {
    const near = paysAhead(book.household, addDays(view.today, -NEAR_DAYS), addDays(view.today, NEAR_DAYS))
    const open = near.filter((pay) => !hasArrived(book, pay.date))
    const usual = open.filter((pay) => pay.date === open[0]?.date).reduce((all, pay) => all + pay.amount, 0)
    const amount = usual > 0 ? editText(ofMinor(currency, usual)) : ''
    const takesUnplaced = unplaced(book).minor < 0
    return {
      date: view.today,
      amount,
      takesUnplaced,
      changes: {},
      bank: null,
      atHand: {},
      ticked: [],
      ids: null,
    }
  }
}

/** Whether a pay near a pay date is in the book already. */
function hasArrived(book: Book, date: CalendarDate): boolean {
  const [from, to] = [addDays(date, -NEAR_DAYS), addDays(date, NEAR_DAYS)]
  for (const entry of entriesOf(book)) {
    if (entry.kind === 'pay' && entry.date >= from && entry.date <= to && !isReversed(book, entry.id)) return true
  }
  return false
}

function atLeastNothing(m: Money): Money {
  return m.minor < 0 ? ofMinor(m.currency, 0) : m
}

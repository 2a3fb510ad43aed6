import { potBalance } from './balances.ts'
import type { Book } from './book.ts'
import { BookError } from './book-error.ts'
import { closedThrough } from './closed-through.ts'
import type { PlaceAccount, Posting, PurposeAccount, Stamp, SweepEntry, SweepTarget } from './entry.ts'
import type { Sides } from './fill.ts'
import { findAccount, findPot, hasSide } from './household.ts'
import type { AccountId, PotId } from './ids.ts'
import { type MonthName, monthNamed } from './month.ts'
import { potMonth } from './month-figures.ts'
import { entryBase, placeOf, takeAmount } from './posting.ts'

/**
 * A month's leftover sent on: to another pot, onto a credit card's debt, or out to a debt owed to someone else. It is
 * part of closing the month: dated the month's last day, refused before the month is over and after it is closed. Only
 * what is left can go: notes that are in the envelope, and nothing that orders hold.
 *
 * @param stamp `date` is today; the entry is dated the month's last day
 * @param account the bank account the card side lies in; the household's first without it
 * @throws BookError `month-closed`, `month-not-over`, `unknown-pot`, `unknown-account`, `archived-pot`,
 *   `bad-amount` (nothing, or more than is left), `bad-lines` (to itself, or to a bank account), `bad-reason` (a debt
 *   without a name)
 */
export function sweepPot(
  book: Book,
  stamp: Stamp,
  month: MonthName,
  pot: PotId,
  sides: Sides,
  to: SweepTarget,
  account?: AccountId,
): SweepEntry {
  const { household } = book
  const { to: last } = monthNamed(household, month)
  const through = closedThrough(book)
  if (through !== null && last <= through) {
    throw new BookError('month-closed', `${month} is closed. Open it again before sweeping its leftovers.`)
  }
  if (stamp.date < last) {
    throw new BookError('month-not-over', `${month} runs to ${last}. Leftovers are swept when it is over.`)
  }
  const cash = sides.cash ? takeAmount(household, sides.cash) : 0
  const card = sides.card ? takeAmount(household, sides.card) : 0
  checkLeft(book, month, pot, cash, card)
  const { purposes, places } = target(book, pot, to, cash, card, account)
  const bank = placeOf(findAccount(household, account))
  const base = entryBase(
    // It belongs to the month; the money moves on the day of closing, which is what a bank's statement shows.
    { ...stamp, date: last, ...(stamp.date === last ? {} : { happened: stamp.date }) },
    [{ account: `cash:${pot}`, amount: -cash }, { account: `card:${pot}`, amount: -card }, ...purposes],
    joined([{ account: 'notes', amount: -cash }, { account: bank, amount: -card }, ...places]),
  )
  return { ...base, kind: 'sweep', pot, to, month }
}

/** One posting for each place: what only changes its pot stays where it is. */
function joined(places: readonly Posting<PlaceAccount>[]): Posting<PlaceAccount>[] {
  const sums = new Map<PlaceAccount, number>()
  for (const { account, amount } of places) sums.set(account, (sums.get(account) ?? 0) + amount)
  return [...sums].map(([account, amount]) => ({ account, amount }))
}

/** Where the money arrives, by purpose and by place. */
interface Side {
  readonly purposes: readonly Posting<PurposeAccount>[]
  readonly places: readonly Posting<PlaceAccount>[]
}

function target(book: Book, from: PotId, to: SweepTarget, cash: number, card: number, account?: AccountId): Side {
  const { household } = book
  if ('pot' in to) {
    const pot = findPot(household, to.pot)
    if (pot.id === from) throw new BookError('bad-lines', `${pot.name} cannot be swept into itself. Leave it as it is.`)
    if (pot.archived) throw new BookError('archived-pot', `${pot.name} is archived. Choose another pot.`)
    // A side the pot does not keep is brought to the bank, or drawn from it.
    const notes = hasSide(pot, 'cash') ? (hasSide(pot, 'card') ? cash : cash + card) : 0
    const purposes = [
      { account: `cash:${pot.id}` as const, amount: notes },
      { account: `card:${pot.id}` as const, amount: cash + card - notes },
    ]
    const places = [
      { account: 'notes' as const, amount: notes },
      { account: placeOf(findAccount(household, account)), amount: cash + card - notes },
    ]
    return { purposes, places }
  }
  const sum = cash + card
  if ('account' in to) {
    const credit = findAccount(household, to.account)
    if (credit.kind !== 'credit') {
      throw new BookError('bad-lines', `${credit.name} is no credit card, so it has no debt to sweep to.`)
    }
    return {
      purposes: [{ account: 'unplaced', amount: sum }],
      places: [{ account: placeOf(credit), amount: sum }],
    }
  }
  if (to.debt.trim() === '') throw new BookError('bad-reason', 'Name the debt this leftover goes to.')
  return {
    purposes: [{ account: 'outside', amount: sum }],
    places: [{ account: 'world', amount: sum }],
  }
}

/**
 * How much of a pot can be swept at a month's end: what it had then and has still, notes and all together, in minor
 * units. What orders hold is not left.
 *
 * @throws BookError `unknown-pot`, `bad-date`
 */
export function sweepable(book: Book, month: MonthName, id: PotId): { cash: number; left: number } {
  const now = potBalance(book, id)
  const then = potMonth(book, monthNamed(book.household, month)).find((p) => p.pot === id)
  const { cash, card } = then?.carriedOut ?? { cash: 0, card: 0 }
  return {
    cash: Math.min(now.cash.minor, cash),
    left: Math.min(now.left.minor, cash + card - (then?.held ?? 0)),
  }
}

function checkLeft(book: Book, month: MonthName, id: PotId, cash: number, card: number): void {
  const pot = findPot(book.household, id)
  const most = sweepable(book, month, id)
  if (cash + card === 0) throw new BookError('bad-amount', `Nothing of ${pot.name} is swept. Enter an amount.`)
  if (cash > most.cash || cash + card > most.left) {
    throw new BookError('bad-amount', `This is more than ${pot.name} has left of ${month}. Sweep what is left at most.`)
  }
}

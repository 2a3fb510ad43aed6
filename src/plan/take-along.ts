import { potBalance } from '../book/balances.ts'
import type { Book } from '../book/book.ts'
import { BookError } from '../book/book-error.ts'
import type { SpendEntry, Stamp } from '../book/entry.ts'
import { findPot, type Household } from '../book/household.ts'
import type { PotId } from '../book/ids.ts'
import { takeAmount } from '../book/posting.ts'
import { spendFrom } from '../book/spend.ts'
import { type Money, ofMinor, toDecimal } from '../money/money.ts'

/** One envelope of a trip. */
export interface CarriedEnvelope {
  readonly pot: PotId
  /** The notes in it; orders have already spent `spokenFor` of them, so `freeCash` (zero or more) may be spent. */
  readonly cash: Money
  readonly spokenFor: Money
  readonly freeCash: Money
}

/** A purpose of the trip whose envelope stays at home: it holds no notes, or orders have spent all of them. */
export interface LeftAtHome {
  readonly pot: PotId
  readonly code: 'no-notes' | 'all-spoken-for'
}

/** What to carry, in the order asked. Plain data, so that it can be kept until one is back. */
export interface TakeAlong {
  readonly carry: readonly CarriedEnvelope[]
  readonly stay: readonly LeftAtHome[]
}

/**
 * Going out: which envelopes to carry for a trip's purposes and how much of each may be spent. Only the purposes named,
 * since money that is left at home is not borrowed; an envelope without free cash stays at home too.
 *
 * @throws BookError `unknown-pot`, `archived-pot`, `bad-lines` (a pot named twice)
 * @example takeAlong(book, [potId('market')]).carry[0]?.freeCash
 */
export function takeAlong(book: Book, pots: readonly PotId[]): TakeAlong {
  const carry: CarriedEnvelope[] = []
  const stay: LeftAtHome[] = []
  for (const [index, pot] of pots.entries()) {
    const found = findPot(book.household, pot)
    if (found.archived) {
      throw new BookError('archived-pot', `${found.name} is archived. Bring it back before spending from it.`)
    }
    if (pots.indexOf(pot) !== index) {
      throw new BookError('bad-lines', `${found.name} is named twice. Name each purpose of the trip once.`)
    }
    const { cash, spokenFor, freeCash } = potBalance(book, pot)
    if (cash.minor <= 0) stay.push({ pot, code: 'no-notes' })
    else if (freeCash.minor <= 0) stay.push({ pot, code: 'all-spoken-for' })
    else carry.push({ pot, cash, spokenFor, freeCash })
  }
  return { carry, stay }
}

/** What came of one envelope: what was spent, or what is left in it. */
export type TripReturn =
  | { readonly pot: PotId; readonly spent: Money; readonly purpose?: string }
  | { readonly pot: PotId; readonly left: Money; readonly purpose?: string }

/** What one envelope spent. */
export interface TripSpend {
  readonly pot: PotId
  readonly amount: Money
  /** How much of it orders had already spent: more than the free cash went. */
  readonly beyondFree: Money
  readonly purpose: string
}

/** What a trip came to. Envelopes of which nothing was said are listed, not guessed. */
export interface ComeBack {
  readonly spends: readonly TripSpend[]
  readonly unsaid: readonly PotId[]
}

/**
 * Coming back: what each envelope spent, from what was spent or from what is left. An envelope that spent nothing gives
 * no line.
 *
 * @throws BookError `unknown-pot` (not carried), `bad-lines` (a pot twice), `currency-mismatch`, `bad-amount` (less than
 *   nothing, more spent than carried, more left than carried)
 * @example comeBack(household, trip, [{pot, left: money('CAD', '12.40')}]).spends[0]?.amount
 */
export function comeBack(household: Household, trip: TakeAlong, returns: readonly TripReturn[]): ComeBack {
  const spends: TripSpend[] = []
  for (const [index, back] of returns.entries()) {
    const { name } = findPot(household, back.pot)
    const carried = trip.carry.find(({ pot }) => pot === back.pot)
    if (!carried) throw new BookError('unknown-pot', `${name} was not taken along. Enter what it spent as a spend.`)
    if (returns.findIndex(({ pot }) => pot === back.pot) !== index) {
      throw new BookError('bad-lines', `${name} is entered twice. Enter each envelope once.`)
    }
    const told = takeAmount(household, 'spent' in back ? back.spent : back.left)
    const { minor: most } = carried.cash
    if (told > most) {
      const what = 'spent' in back ? 'spent from' : 'left in'
      throw new BookError(
        'bad-amount',
        `More is ${what} ${name} than the ${toDecimal(carried.cash)} that was carried. Count it again, or enter where the rest came from.`,
      )
    }
    const spent = 'spent' in back ? told : most - told
    if (spent === 0) continue
    spends.push({
      pot: back.pot,
      amount: ofMinor(household.currency, spent),
      beyondFree: ofMinor(household.currency, Math.max(0, spent - carried.freeCash.minor)),
      purpose: back.purpose ?? '',
    })
  }
  const said = new Set(returns.map(({ pot }) => pot))
  return { spends, unsaid: trip.carry.map(({ pot }) => pot).filter((pot) => !said.has(pot)) }
}

/**
 * The entries of a trip, one spend of notes per envelope.
 *
 * @param stamps one for each spend, in order
 * @throws BookError `bad-lines` (another number of stamps than spends), what `spendFrom` throws
 */
export function tripEntries(
  household: Household,
  spends: readonly TripSpend[],
  stamps: readonly Stamp[],
): SpendEntry[] {
  return spends.map(({ pot, amount, purpose }, index) => {
    const stamp = stamps[index]
    if (!stamp || stamps.length !== spends.length) {
      throw new BookError('bad-lines', `${spends.length} spends need as many stamps, but ${stamps.length} are given.`)
    }
    return spendFrom(household, stamp, pot, 'cash', amount, purpose)
  })
}

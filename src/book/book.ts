import { BookError } from './book-error.ts'
import { checkEntry } from './check-entry.ts'
import { checkOpen } from './closed-through.ts'
import type { Entry, PlaceAccount, Posting, PurposeAccount } from './entry.ts'
import { checkHousehold, type Household } from './household.ts'
import type { EntryId, OrderId } from './ids.ts'

/**
 * A household and its entries, with balances kept as entries arrive. A Book is a value: `append` gives a new one and the
 * old one still answers as before. Make it with `openBook`; read it with `balances`, `orderState`, `entriesOf`.
 */
export interface Book {
  readonly household: Household
  /** How many entries are at hand in this book. */
  readonly length: number
  /** How many earlier ones are in its balances only; 0 for a book opened with all its entries. */
  readonly before: number
  /** Every account's balance in minor units, at `slots.get(account)`. @internal */
  readonly sums: Float64Array
  /** @internal */
  readonly slots: ReadonlyMap<string, number>
  /** Shared by all books of one line; this book sees its first `length` entries. @internal */
  readonly log: Log
}

interface Log {
  readonly entries: Entry[]
  readonly byId: Map<EntryId, number>
  readonly byOrder: Map<OrderId, number[]>
  readonly reversedBy: Map<EntryId, number>
  /** Where months were closed or opened again. */
  readonly closings: number[]
}

/**
 * Opens a book: folds entries, in any order and with repeats, into balances.
 *
 * @throws BookError `bad-household`; what `append` throws, for the first entry at fault
 * @example balances(openBook(household, [])).get(potId('groceries'))
 */
export function openBook(household: Household, entries: Iterable<Entry>): Book {
  checkHousehold(household)
  const slots = slotsOf(household)
  const log = newLog()
  const sums = new Float64Array(slots.size)
  // By id is by time made, so what an entry names (an order, a reversed entry) comes before it.
  let waiting = [...entries].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
  while (waiting.length > 0) {
    const early: Entry[] = []
    let cause: unknown
    for (const entry of waiting) {
      try {
        record(log, slots, sums, entry)
      } catch (error) {
        // Unless a clock went backwards, here or on another device: then what it names may follow.
        if (!(error instanceof BookError && NAMES_ANOTHER.has(error.code))) throw error
        early.push(entry)
        cause ??= error
      }
    }
    if (early.length === waiting.length) throw cause
    waiting = early
  }
  return { household, length: log.entries.length, before: 0, sums, slots, log }
}

/**
 * Opens a book at its latest entries, from balances that were kept: in the same time for a book of any length. What
 * needs an entry that is not at hand fails as it does for one that does not exist; open the whole book for that.
 *
 * @param at the balances after the last entry, in minor units by account, and how many entries are not at hand
 * @param entries those at hand, in the order the book took them in; what they name need not be among them
 * @throws BookError `bad-household`; `unknown-pot`, `unknown-account` for a balance of none; `bad-*`, `unbalanced`
 */
export function openBookAt(
  household: Household,
  at: { readonly sums: Readonly<Record<string, number>>; readonly before: number },
  entries: Iterable<Entry>,
): Book {
  checkHousehold(household)
  const slots = slotsOf(household)
  const log = newLog()
  const folded = new Float64Array(slots.size)
  for (const entry of entries) record(log, slots, folded, entry, 'may-be-elsewhere')
  return { household, length: log.entries.length, before: at.before, sums: sumsIn(slots, at.sums), slots, log }
}

/** Every balance that is not zero, in minor units by account: what `openBookAt` starts from. */
export function sumsOf(book: Book): Record<string, number> {
  const found: Record<string, number> = {}
  for (const [account, slot] of book.slots) {
    const sum = book.sums[slot] ?? 0
    if (sum !== 0) found[account] = sum
  }
  return found
}

/**
 * The book with one more entry. An entry that is already there changes nothing and gives the same book back, so a retry
 * is harmless.
 *
 * @throws BookError `unbalanced`, `sides-disagree`, `unknown-pot`, `unknown-account`, `unknown-order`, `unknown-entry`,
 *   `already-reversed`, `not-reversible`, `id-reused` (another entry under the same id), `bad-date`, `bad-amount`,
 *   `month-closed` (dated in a closed month: date it by `datedFor`)
 */
export function append(book: Book, entry: Entry): Book {
  if (!findEntry(book, entry.id)) checkOpen(book, entry)
  const log = book.log.entries.length === book.length ? book.log : branch(book)
  const sums = book.sums.slice()
  if (!record(log, book.slots, sums, entry)) return book
  return { ...book, length: book.length + 1, sums, log }
}

/**
 * The same entries under changed household settings (a pot renamed, a rule changed, a pot added).
 *
 * @throws BookError `bad-household`; `unknown-pot`, `unknown-account` when one that entries name is gone
 */
export function withHousehold(book: Book, household: Household): Book {
  checkHousehold(household)
  const slots = slotsOf(household)
  const gone = [...book.slots.keys()].filter((account) => !slots.has(account))
  // A pot that was never used may go; one that was used is archived instead.
  if (gone.length > 0) {
    for (const entry of entriesOf(book)) {
      for (const posting of [...entry.postings, ...entry.places]) slotOf(slots, posting.account)
    }
  }
  return { ...book, household, slots, sums: sumsIn(slots, sumsOf(book)) }
}

/** The book's entries in the order they were taken in. */
export function* entriesOf(book: Book): Generator<Entry> {
  for (let i = 0; i < book.length; i++) {
    const entry = book.log.entries[i]
    if (entry) yield entry
  }
}

/** The entry of an id, or undefined. */
export function findEntry(book: Book, id: EntryId): Entry | undefined {
  const index = book.log.byId.get(id)
  return index !== undefined && index < book.length ? book.log.entries[index] : undefined
}

/** Whether a later entry took this one back. */
export function isReversed(book: Book, id: EntryId): boolean {
  const index = book.log.reversedBy.get(id)
  return index !== undefined && index < book.length
}

/** The entries of one order that still stand: not reversed, and not the reversals themselves. */
export function entriesOfOrder(book: Book, order: OrderId): Entry[] {
  const found: Entry[] = []
  for (const index of book.log.byOrder.get(order) ?? []) {
    const entry = index < book.length ? book.log.entries[index] : undefined
    if (entry && !isReversed(book, entry.id)) found.push(entry)
  }
  return found
}

/** All entries of one order, oldest first: also those that were taken back, and what took them back. */
export function historyOfOrder(book: Book, order: OrderId): Entry[] {
  const places = (book.log.byOrder.get(order) ?? []).flatMap((index) => {
    const entry = book.log.entries[index]
    const back = entry ? book.log.reversedBy.get(entry.id) : undefined
    return back === undefined ? [index] : [index, back]
  })
  return places
    .filter((index) => index < book.length)
    .sort((a, b) => a - b)
    .map((index) => book.log.entries[index])
    .filter((entry) => entry !== undefined)
}

/** An account's balance in minor units. @throws BookError `unknown-account` */
export function balanceOf(book: Book, account: PurposeAccount | PlaceAccount): number {
  return book.sums[slotOf(book.slots, account)] ?? 0
}

/**
 * The three balances of the pot at a place among the household's pots, in minor units. Their slots follow one another,
 * so that all pots are read without a search.
 */
export function sidesAt(book: Book, place: number): { cash: number; card: number; held: number } {
  const slot = COMMON.length + 3 * place
  return { cash: book.sums[slot] ?? 0, card: book.sums[slot + 1] ?? 0, held: book.sums[slot + 2] ?? 0 }
}

/** Refusals of an entry whose order or reversed entry is not there, or not yet. */
const NAMES_ANOTHER: ReadonlySet<BookError['code']> = new Set(['unknown-order', 'unknown-entry'])

/** Accounts every book has. */
const COMMON = ['on-order', 'unplaced', 'outside', 'over-short', 'notes', 'world'] as const

function slotsOf(household: Household): Map<string, number> {
  const names: string[] = [...COMMON]
  for (const pot of household.pots) names.push(`cash:${pot.id}`, `card:${pot.id}`, `held:${pot.id}`)
  for (const account of household.accounts) names.push(`${account.kind}:${account.id}`)
  return new Map(names.map((name, index) => [name, index]))
}

function slotOf(slots: ReadonlyMap<string, number>, account: string): number {
  const slot = slots.get(account)
  if (slot !== undefined) return slot
  const [kind, id] = account.split(':')
  throw kind === 'cash' || kind === 'card' || kind === 'held'
    ? new BookError('unknown-pot', `There is no pot "${id}" in this household.`)
    : new BookError('unknown-account', `There is no account "${account}" in this household.`)
}

/** Checks an entry wholly before it changes anything; false when it is there already. */
function record(
  log: Log,
  slots: ReadonlyMap<string, number>,
  sums: Float64Array,
  entry: Entry,
  named: 'must-be-here' | 'may-be-elsewhere' = 'must-be-here',
): boolean {
  const known = log.byId.get(entry.id)
  if (known !== undefined) {
    if (JSON.stringify(log.entries[known]) === JSON.stringify(entry)) return false
    throw new BookError('id-reused', `Another entry is kept under ${entry.id}. Make a new id for this one.`)
  }
  checkEntry(entry)
  const changes = [...entry.postings, ...entry.places].map((p) => [slotOf(slots, p.account), p.amount] as const)
  if (named === 'must-be-here') checkReferences(log, entry)
  const index = log.entries.length
  for (const [slot, amount] of changes) sums[slot] = (sums[slot] ?? 0) + amount
  log.entries.push(entry)
  log.byId.set(entry.id, index)
  if (entry.kind === 'reversal') log.reversedBy.set(entry.reverses, index)
  if (entry.kind === 'close' || entry.kind === 'reopen') log.closings.push(index)
  if ('order' in entry) {
    const list = log.byOrder.get(entry.order)
    if (list) list.push(index)
    else log.byOrder.set(entry.order, [index])
  }
  return true
}

function checkReferences(log: Log, entry: Entry): void {
  if (entry.kind === 'reversal') {
    const index = log.byId.get(entry.reverses)
    const target = index === undefined ? undefined : log.entries[index]
    if (!target) throw new BookError('unknown-entry', `There is no entry ${entry.reverses} to take back.`)
    if (target.kind === 'reversal') {
      throw new BookError('not-reversible', 'This entry takes another one back. Enter the first one again instead.')
    }
    if (log.reversedBy.has(target.id)) throw new BookError('already-reversed', 'This entry was taken back already.')
    if (!mirrors(target.postings, entry.postings) || !mirrors(target.places, entry.places)) {
      throw new BookError('unbalanced', `Entry ${entry.id} does not take back exactly what ${target.id} posted.`)
    }
    return
  }
  if (!('order' in entry)) return
  const standing = (log.byOrder.get(entry.order) ?? []).some((index) => {
    const earlier = log.entries[index]
    return earlier?.kind === 'order' && !log.reversedBy.has(earlier.id)
  })
  if (entry.kind === 'order' && standing) {
    throw new BookError('id-reused', `The order ${entry.order} is tagged already. Adjust it, or make a new order id.`)
  }
  if (entry.kind !== 'order' && !log.byOrder.has(entry.order)) {
    throw new BookError('unknown-order', `There is no order ${entry.order} in the book. Tag it to a pot first.`)
  }
}

function mirrors(a: readonly Posting<string>[], b: readonly Posting<string>[]): boolean {
  return a.length === b.length && a.every((p, i) => b[i]?.account === p.account && b[i]?.amount === -p.amount)
}

function branch(book: Book): Log {
  const log = newLog()
  const sums = new Float64Array(book.slots.size)
  for (const entry of entriesOf(book)) record(log, book.slots, sums, entry, 'may-be-elsewhere')
  return log
}

function newLog(): Log {
  return { entries: [], byId: new Map(), byOrder: new Map(), reversedBy: new Map(), closings: [] }
}

function sumsIn(slots: ReadonlyMap<string, number>, sums: Readonly<Record<string, number>>): Float64Array {
  const found = new Float64Array(slots.size)
  for (const [account, sum] of Object.entries(sums)) found[slotOf(slots, account)] = sum
  return found
}

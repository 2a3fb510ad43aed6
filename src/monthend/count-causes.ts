import { type Book, entriesOf, isReversed } from '../book/book.ts'
import { dayNumber } from '../book/calendar-date.ts'
import type { Entry, FillEntry, SpendEntry } from '../book/entry.ts'
import type { EntryId, PotId } from '../book/ids.ts'
import { type Money, ofMinor } from '../money/money.ts'

/**
 * What may have made an envelope differ from the book. `certainty` orders them; the figures are our own. The rule of
 * nine (a difference divisible by nine hints at swapped digits or a slipped point) is common practice, no source.
 */
export type CountCause =
  /** The same notes are too many here and missing there. */
  | { readonly code: 'other-pot'; readonly pot: PotId; readonly amount: Money }
  /** One purchase was entered twice. */
  | { readonly code: 'entered-twice'; readonly entries: readonly [EntryId, EntryId]; readonly amount: Money }
  /** Two digits of an amount changed places. */
  | { readonly code: 'swapped-digits'; readonly entry: EntryId; readonly wrote: Money; readonly meant: Money }
  /** The decimal point slipped by one place. */
  | { readonly code: 'slipped-point'; readonly entry: EntryId; readonly wrote: Money; readonly meant: Money }
  /** Paid by card, though entered as cash, or the other way round. */
  | { readonly code: 'other-side'; readonly entry: EntryId; readonly amount: Money }
  /** A fill was entered, but its notes may not have been put in. */
  | { readonly code: 'fill-not-put-in'; readonly entry: EntryId; readonly amount: Money }
  /** A purchase of a usual size may not have been entered. */
  | { readonly code: 'forgotten-spend'; readonly purpose: string; readonly amount: Money; readonly times: number }
  /** The difference is just one note or coin. */
  | { readonly code: 'one-piece'; readonly denomination: Money }
  /** Divisible by nine, though no single entry explains it. */
  | { readonly code: 'divisible-by-nine' }

/** How far back entries are looked at where the envelope was never counted before. */
const MOST_ENTRIES = 200

/**
 * The likely causes of an envelope's difference, the likelier first. Computed from the book alone: the entries of the
 * pot since its last count, and the other pots' differences.
 *
 * @param over counted less expected, in minor units: positive is over, negative is short
 * @param others the other pots' differences
 * @param pieces denominations there are, in minor units
 */
export function countCauses(
  book: Book,
  pot: PotId,
  over: number,
  others: ReadonlyMap<PotId, number>,
  pieces: readonly number[] = [],
): CountCause[] {
  if (over === 0) return []
  const of = (minor: number): Money => ofMinor(book.household.currency, minor)
  const recent = sinceLastCount(book, pot)
  const single = [
    ...otherPots(pot, over, others, of),
    ...enteredTwice(recent, over, of),
    ...misread(recent, over, of),
    ...otherSide(recent, over, of),
    ...fillNotPutIn(recent, over, of),
    ...forgotten(book, pot, over, of),
  ]
  const piece = pieces.includes(Math.abs(over))
    ? [{ code: 'one-piece', denomination: of(Math.abs(over)) } as const]
    : []
  const nine = over % 9 === 0 && !single.some(isMisread) ? [{ code: 'divisible-by-nine' } as const] : []
  return [...single, ...piece, ...nine]
}

type ToMoney = (minor: number) => Money

function isMisread(cause: CountCause): boolean {
  return cause.code === 'swapped-digits' || cause.code === 'slipped-point'
}

function otherPots(pot: PotId, over: number, others: ReadonlyMap<PotId, number>, of: ToMoney): CountCause[] {
  return [...others].flatMap(([other, theirs]) =>
    other !== pot && theirs === -over ? [{ code: 'other-pot', pot: other, amount: of(Math.abs(over)) } as const] : [],
  )
}

/** Entered twice, the book has spent more than the envelope: it is over. */
function enteredTwice(recent: readonly Entry[], over: number, of: ToMoney): CountCause[] {
  const spends = recent.filter((e): e is SpendEntry => e.kind === 'spend' && cashOf(e) === -over)
  return spends.flatMap((second, i) => {
    const first = spends.slice(0, i).find((e) => samePurchase(e, second))
    return first ? [{ code: 'entered-twice', entries: [first.id, second.id], amount: of(over) } as const] : []
  })
}

function samePurchase(a: SpendEntry, b: SpendEntry): boolean {
  const days = Math.abs(dayNumber(a.date) - dayNumber(b.date))
  return days <= 3 && (a.purpose === b.purpose || a.purpose === '' || b.purpose === '')
}

/** An entry whose amount, read rightly, would make book and envelope agree. */
function misread(recent: readonly Entry[], over: number, of: ToMoney): CountCause[] {
  return recent.flatMap((entry): CountCause[] => {
    const cash = cashOf(entry)
    if ((entry.kind !== 'spend' && entry.kind !== 'fill') || cash === 0) return []
    const [wrote, meant] = [Math.abs(cash), Math.abs(cash + over)]
    if (Math.sign(cash + over) !== Math.sign(cash)) return []
    const values = { entry: entry.id, wrote: of(wrote), meant: of(meant) }
    if (wrote === meant * 10 || meant === wrote * 10) return [{ code: 'slipped-point', ...values }]
    return hasSwappedDigits(wrote, meant) ? [{ code: 'swapped-digits', ...values }] : []
  })
}

/** Whether two whole numbers differ by one pair of neighbouring digits in each other's place. */
function hasSwappedDigits(a: number, b: number): boolean {
  const length = Math.max(String(a).length, String(b).length)
  const [x, y] = [String(a).padStart(length, '0'), String(b).padStart(length, '0')]
  for (let i = 0; i + 1 < length; i++) {
    const swapped = x.slice(0, i) + (x[i + 1] ?? '') + (x[i] ?? '') + x.slice(i + 2)
    if (swapped === y && x !== y) return true
  }
  return false
}

/** A cash spend that was paid by card leaves the envelope over; a card spend that was paid in notes leaves it short. */
function otherSide(recent: readonly Entry[], over: number, of: ToMoney): CountCause[] {
  return recent.flatMap((entry) => {
    if (entry.kind !== 'spend') return []
    const isIt = over > 0 ? cashOf(entry) === -over : cardOf(entry) === over
    return isIt ? [{ code: 'other-side', entry: entry.id, amount: of(Math.abs(over)) } as const] : []
  })
}

function fillNotPutIn(recent: readonly Entry[], over: number, of: ToMoney): CountCause[] {
  const fills = recent.filter((e): e is FillEntry => e.kind === 'fill' && cashOf(e) === -over)
  return fills.map((e) => ({ code: 'fill-not-put-in', entry: e.id, amount: of(-over) }))
}

/** Purchases of exactly this size were made before, twice at least. */
function forgotten(book: Book, pot: PotId, over: number, of: ToMoney): CountCause[] {
  if (over > 0) return []
  const times = new Map<string, number>()
  for (const entry of entriesOf(book)) {
    if (entry.kind !== 'spend' || entry.pot !== pot || cashOf(entry) !== over || isReversed(book, entry.id)) continue
    times.set(entry.purpose, (times.get(entry.purpose) ?? 0) + 1)
  }
  return [...times]
    .filter(([, count]) => count >= 2)
    .sort((a, b) => b[1] - a[1])
    .map(([purpose, count]) => ({ code: 'forgotten-spend', purpose, amount: of(-over), times: count }))
}

function sinceLastCount(book: Book, pot: PotId): Entry[] {
  let recent: Entry[] = []
  for (const entry of entriesOf(book)) {
    if (entry.kind === 'reversal' || isReversed(book, entry.id)) continue
    if (entry.kind === 'count' && entry.pot === pot) recent = []
    else if (entry.postings.some((p) => p.account === `cash:${pot}` || p.account === `card:${pot}`)) recent.push(entry)
  }
  return recent.slice(-MOST_ENTRIES)
}

function cashOf(entry: Entry): number {
  return entry.postings.reduce((sum, p) => sum + (p.account.startsWith('cash:') ? p.amount : 0), 0)
}

function cardOf(entry: Entry): number {
  return entry.postings.reduce((sum, p) => sum + (p.account.startsWith('card:') ? p.amount : 0), 0)
}

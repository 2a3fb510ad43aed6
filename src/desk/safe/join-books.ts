import { canonical } from '../../background/canonical.ts'
import {
  type Book,
  BookError,
  type Entry,
  entriesOf,
  type Household,
  openBook,
  type PotId,
  potBalance,
} from '../../index.ts'
import type { BookFile } from './book-file.ts'
import { FileError } from './file-error.ts'

/** What a restore would do, to be seen before it is done. */
export interface Preview {
  /** Entries only here, only in the file, and in both. */
  readonly onlyHere: number
  readonly onlyThere: number
  readonly inBoth: number
  /** Entries of the file dated after today. */
  readonly ahead: number
  /** The last day an entry of the file is dated. */
  readonly lastDay: string | null
  readonly pots: readonly PotChange[]
  /** The book as it would be. */
  readonly book: Book
  readonly settings: BookFile['settings']
}

/** A pot's *left* in minor units, before and after; null where there is no such pot. */
export interface PotChange {
  readonly id: PotId
  readonly name: string
  readonly before: number | null
  readonly after: number | null
}

/**
 * What the book would be with a file in its place (`replace`) or joined to it (`join`: the union of the entries of both;
 * the settings are those kept here, with the pots and accounts only the file has).
 *
 * @param here the book and settings kept here, or null where there is no household yet
 * @throws FileError `file-other-currency`, `file-conflict` (the same entry says something else in the two, or the two do
 *   not make one book)
 */
export function previewOf(
  file: BookFile,
  here: { readonly book: Book; readonly settings: BookFile['settings'] } | null,
  how: 'replace' | 'join',
  today: string,
): Preview {
  const theirs = file.entries
  const mine = here ? [...entriesOf(here.book)] : []
  const known = new Map<string, Entry>(mine.map((entry) => [entry.id, entry]))
  const shared = theirs.filter((entry) => known.has(entry.id))
  let settings = file.settings
  let entries: readonly Entry[] = theirs
  if (how === 'join' && here) {
    if (here.settings.currency !== file.settings.currency) {
      throw new FileError(
        'file-other-currency',
        `This file is kept in ${file.settings.currency}, the book here in ${here.settings.currency}. They cannot be joined.`,
      )
    }
    const other = shared.filter((entry) => canonical(entry) !== canonical(known.get(entry.id)))
    if (other.length > 0) throw conflict(other.length)
    settings = joinSettings(here.settings, file.settings)
    entries = [...mine, ...theirs.filter((entry) => !known.has(entry.id))]
  }
  const book = opened(settings, entries)
  const dates = theirs.map((entry) => entry.date).sort()
  return {
    onlyHere: mine.length - shared.length,
    onlyThere: theirs.length - shared.length,
    inBoth: shared.length,
    ahead: dates.filter((date) => date > today).length,
    lastDay: dates.at(-1) ?? null,
    pots: potChanges(here?.book ?? null, book),
    book,
    settings,
  }
}

function opened(settings: BookFile['settings'], entries: readonly Entry[]): Book {
  const { schedule: _, isDemo: __, ...household } = settings
  try {
    return openBook({ ...household, payDates: [] } satisfies Household, entries)
  } catch (cause) {
    if (!(cause instanceof BookError)) throw cause
    throw new FileError('file-conflict', `These entries do not make one book: ${cause.message} Nothing was changed.`)
  }
}

function joinSettings(mine: BookFile['settings'], theirs: BookFile['settings']): BookFile['settings'] {
  const only = <T extends { id: string }>(a: readonly T[], b: readonly T[]): T[] => [
    ...a,
    ...b.filter((item) => !a.some((known) => known.id === item.id)),
  ]
  return { ...mine, pots: only(mine.pots, theirs.pots), accounts: only(mine.accounts, theirs.accounts) }
}

function potChanges(before: Book | null, after: Book): PotChange[] {
  const pots = [...after.household.pots, ...(before?.household.pots ?? [])]
  const seen = new Set<PotId>()
  return pots.flatMap((pot) => {
    if (seen.has(pot.id)) return []
    seen.add(pot.id)
    const leftIn = (book: Book | null): number | null =>
      book?.household.pots.some((p) => p.id === pot.id) ? potBalance(book, pot.id).left.minor : null
    return [{ id: pot.id, name: pot.name, before: leftIn(before), after: leftIn(after) }]
  })
}

function conflict(count: number): FileError {
  return new FileError(
    'file-conflict',
    `${count} entries say something else in the file than here, under the same name. One of the two was changed by hand; nothing was joined.`,
  )
}

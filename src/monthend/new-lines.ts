import type { StatementLine } from './statement-line.ts'

/** A file's lines, sorted by what is known already. Every line read is in exactly one of the four. */
export interface NewLines {
  /** Not seen before. */
  readonly fresh: readonly StatementLine[]
  /** Read before and the same: an overlapping statement, or the same file again. */
  readonly known: readonly StatementLine[]
  /** Known by its identity and told differently now: a pending line that was booked, or one the bank has corrected. */
  readonly changed: readonly { readonly before: StatementLine; readonly now: StatementLine }[]
  /**
   * Not known by its identity, but like a known line of the same day and amount that this file does not name: another
   * format of the same statement, or a bank that gives new references. The person says whether it is the same.
   */
  readonly doubtful: readonly { readonly like: StatementLine; readonly line: StatementLine }[]
}

/**
 * Sorts the lines of a statement just read against the lines known already, both of one account of the household, so that
 * none is doubled and none is lost.
 *
 * @example newLines(keptLines, readStatement(bytes)).fresh
 */
export function newLines(known: readonly StatementLine[], read: readonly StatementLine[]): NewLines {
  const byId = new Map(known.map((line) => [line.id, line]))
  const named = new Set(read.flatMap((line) => [line.id, ...(line.replaces === null ? [] : [line.replaces])]))
  const unnamed = new Map<string, StatementLine[]>()
  for (const line of known) {
    if (named.has(line.id)) continue
    const like = unnamed.get(likeness(line))
    if (like) like.push(line)
    else unnamed.set(likeness(line), [line])
  }
  const fresh: StatementLine[] = []
  const same: StatementLine[] = []
  const changed: { before: StatementLine; now: StatementLine }[] = []
  const doubtful: { like: StatementLine; line: StatementLine }[] = []
  for (const line of read) {
    const before = byId.get(line.id)
    const replaced = before ?? (line.replaces === null ? undefined : byId.get(line.replaces))
    // A line that was booked is not taken back by an older file in which it is still pending.
    const isOlder = before?.status === 'booked' && line.status === 'pending'
    if (before && (isOlder || isSame(before, line))) same.push(line)
    else if (replaced) changed.push({ before: replaced, now: line })
    else {
      const like = unnamed.get(likeness(line))?.shift()
      if (like) doubtful.push({ like, line })
      else fresh.push(line)
    }
  }
  return { fresh, known: same, changed, doubtful }
}

function isSame(a: StatementLine, b: StatementLine): boolean {
  return a.status === b.status && likeness(a) === likeness(b)
}

function likeness(line: StatementLine): string {
  return `${line.date} ${line.amount.minor} ${line.amount.currency}`
}

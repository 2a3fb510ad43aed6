import type { Book } from '../book/book.ts'
import type { Pieces, SettleEnd, SettleEntry } from '../book/entry.ts'
import type { EntryId, PotId } from '../book/ids.ts'
import { countedPieces } from './count-pieces.ts'
import type { EnvelopeCount } from './settle.ts'
import type { SettleMove } from './settle-moves.ts'

/** Where settling stands: from what the list is made, and what of it was ticked. */
export interface SettleStart {
  /** The envelopes as they were counted, before any tick. */
  readonly counts: readonly EnvelopeCount[]
  /** The envelopes now, after the ticks. */
  readonly now: readonly EnvelopeCount[]
  /** Ticks since the counts, oldest first, each once. */
  readonly ticks: readonly SettleEntry[]
  /** Envelopes to count (again) first: never counted, or notes went in or out since. */
  readonly toCount: readonly PotId[]
}

/**
 * What settling can start from: the last counts of the envelopes that should hold something or do.
 *
 * @param pots the envelopes to settle
 */
export function settleStart(book: Book, pots: readonly PotId[]): SettleStart {
  const counted = countedPieces(book)
  const usable = pots.flatMap((pot) => {
    const found = counted.get(pot)
    return found && !found.isStale ? [{ pot, found }] : []
  })
  const ticks = new Map<EntryId, SettleEntry>()
  for (const { found } of usable) for (const tick of found.ticks) ticks.set(tick.id, tick)
  return {
    counts: usable.map(({ pot, found }) => ({ pot, pieces: found.count.pieces })),
    now: usable.map(({ pot, found }) => ({ pot, pieces: found.pieces })),
    ticks: [...ticks.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
    toCount: pots.filter((pot) => !usable.some((u) => u.pot === pot)),
  }
}

/**
 * Which moves of a list were ticked: for each its tick, or null. Null in all when a tick is there that the list does not
 * have: then the list is another one, and settling starts from the envelopes as they are now.
 */
export function tickedMoves(
  moves: readonly SettleMove[],
  ticks: readonly SettleEntry[],
): readonly (EntryId | null)[] | null {
  const left = [...ticks]
  const ticked = moves.map((move) => {
    const at = left.findIndex((tick) => keyOfTick(tick) === keyOfMove(move))
    const [tick] = at < 0 ? [] : left.splice(at, 1)
    return tick?.id ?? null
  })
  return left.length === 0 ? ticked : null
}

/** The pieces of a move, as its entry keeps them. */
export function piecesOfMove({ denomination, count }: SettleMove): Pieces[] {
  return [{ denomination, count }]
}

function keyOfMove({ from, to, denomination, count }: SettleMove): string {
  const place = (at: SettleMove['from']): string => (at === 'bank' ? 'bank' : `pot ${at.pot}`)
  return `${place(from)} > ${place(to)}: ${count} x ${denomination}`
}

function keyOfTick({ from, to, pieces }: SettleEntry): string {
  const place = (end: SettleEnd): string => ('pot' in end ? `pot ${end.pot}` : 'bank')
  const said = pieces.map(({ denomination, count }) => `${count} x ${denomination}`).join(', ')
  return `${place(from)} > ${place(to)}: ${said}`
}

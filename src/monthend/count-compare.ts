import { type Book, balanceOf } from '../book/book.ts'
import { findPot } from '../book/household.ts'
import type { PotId } from '../book/ids.ts'
import { takePieces } from '../book/pieces.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { type CountCause, countCauses } from './count-causes.ts'
import type { EnvelopeCount } from './settle.ts'

/** An envelope against the book. */
export interface CountFinding {
  readonly pot: PotId
  readonly expected: Money
  readonly counted: Money
  /** Counted less expected: cash over when positive, cash short when negative. */
  readonly over: Money
  /** The likelier first; empty when nothing differs or nothing is known. */
  readonly causes: readonly CountCause[]
}

/** All envelopes that were counted, and what they come to together. */
export interface CountComparison {
  readonly pots: readonly CountFinding[]
  readonly expected: Money
  readonly counted: Money
  readonly over: Money
}

/**
 * Counted envelopes against the book: cash over or short by pot, with likely causes. Nothing is posted: `countPot` does
 * that, when the person says so.
 *
 * @param counts by pot, each once
 * @param denominations the notes and coins there are, where they differ from the currency's known ones
 * @throws BookError `unknown-pot`, `unknown-piece`, `bad-count`
 * @example compareCounts(book, [{pot: potId('groceries'), pieces: [{denomination: 2000, count: 3}]}]).over
 */
export function compareCounts(
  book: Book,
  counts: readonly EnvelopeCount[],
  denominations?: readonly number[],
): CountComparison {
  const of = (minor: number): Money => ofMinor(book.household.currency, minor)
  const found = counts.map(({ pot, pieces }) => {
    findPot(book.household, pot)
    const counted = takePieces(book.household, pieces, denominations)
    const expected = balanceOf(book, `cash:${pot}`)
    return { pot, counted, expected, over: counted - expected }
  })
  const differences = new Map(found.map(({ pot, over }) => [pot, over]))
  const known = denominations ?? counts.flatMap((c) => c.pieces.map((p) => p.denomination))
  const sum = (key: 'counted' | 'expected' | 'over'): Money => of(found.reduce((all, f) => all + f[key], 0))
  return {
    pots: found.map((f) => ({
      pot: f.pot,
      expected: of(f.expected),
      counted: of(f.counted),
      over: of(f.over),
      causes: countCauses(book, f.pot, f.over, differences, known),
    })),
    expected: sum('expected'),
    counted: sum('counted'),
    over: sum('over'),
  }
}

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type PotId, potId } from '../../src/book/index.ts'
import { ofMinor } from '../../src/money/money.ts'
import { type EnvelopeCount, type EnvelopeTarget, type SettleMove, settle } from '../../src/monthend/index.ts'

const DENOMINATIONS = [5, 10, 25, 100, 200, 500, 1000, 2000, 5000]

interface Drawn {
  readonly counts: readonly EnvelopeCount[]
  readonly targets: readonly EnvelopeTarget[]
  readonly bank: 'trip' | 'none'
}

const drawn: fc.Arbitrary<Drawn> = fc
  .record({
    rows: fc.array(
      fc.record({
        counts: fc.array(fc.integer({ min: 0, max: 4 }), {
          minLength: DENOMINATIONS.length,
          maxLength: DENOMINATIONS.length,
        }),
        target: fc.integer({ min: 0, max: 12_000 }),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    bank: fc.constantFrom('trip' as const, 'none' as const),
  })
  .map(({ rows, bank }) => ({
    counts: rows.map(({ counts }, index) => ({
      pot: potId(`pot${index}`),
      pieces: DENOMINATIONS.map((denomination, at) => ({ denomination, count: counts[at] ?? 0 })),
    })),
    targets: rows.map(({ target }, index) => ({ pot: potId(`pot${index}`), cash: ofMinor('CAD', target) })),
    bank,
  }))

/** The counts after some moves were ticked off. */
function ticked(counts: readonly EnvelopeCount[], moves: readonly SettleMove[]): EnvelopeCount[] {
  const held = new Map<PotId, Map<number, number>>(
    counts.map(({ pot, pieces }) => [pot, new Map(pieces.map((p) => [p.denomination, p.count]))]),
  )
  const change = (place: SettleMove['from'], denomination: number, count: number) => {
    if (place === 'bank') return
    const pieces = held.get(place.pot)
    pieces?.set(denomination, (pieces.get(denomination) ?? 0) + count)
  }
  for (const { from, to, denomination, count } of moves) {
    change(from, denomination, -count)
    change(to, denomination, count)
  }
  return counts.map(({ pot }) => ({
    pot,
    pieces: [...(held.get(pot) ?? [])].map(([denomination, count]) => ({ denomination, count })),
  }))
}

const worth = (pieces: EnvelopeCount['pieces']) => pieces.reduce((sum, p) => sum + p.denomination * p.count, 0)

describe('settle, whatever is counted', () => {
  it('ends every envelope with what its moves make of it, exact with a bank trip', () => {
    fc.assert(
      fc.property(drawn, ({ counts, targets, bank }) => {
        const found = settle(counts, targets, { bank })
        const ends = ticked(counts, found.moves)
        for (const [index, envelope] of found.envelopes.entries()) {
          const end = ends[index]?.pieces ?? []
          expect(end.every(({ count }) => count >= 0)).toBe(true)
          expect(end.filter(({ count }) => count > 0).sort((a, b) => b.denomination - a.denomination)).toEqual(
            envelope.pieces,
          )
          expect(worth(envelope.pieces)).toBe(envelope.cash.minor)
          const told = envelope.rests.reduce((sum, r) => sum + (r.code === 'left-over' ? -1 : 1) * r.amount.minor, 0)
          expect(envelope.cash.minor + told).toBe(envelope.target.minor)
          // Every multiple of 5 can be made, so with a bank only the rest below it stays on the card side.
          if (bank === 'trip') expect(envelope.target.minor - envelope.cash.minor).toBe(envelope.target.minor % 5)
        }
        expect(found.moves.reduce((sum, { count }) => sum + count, 0)).toBe(found.moved)
        expect(found.movedAtLeast).toBeLessThanOrEqual(found.moved)
      }),
      { seed: 61, numRuns: 120 },
    )
  }, 30_000)

  it('makes and loses no money: cash and card of every pot change against each other, pieces stay at home without a bank', () => {
    fc.assert(
      fc.property(drawn, ({ counts, targets, bank }) => {
        const found = settle(counts, targets, { bank })
        for (const { pot, cash, cashChange, cardChange } of found.envelopes) {
          const before = worth(counts.find((count) => count.pot === pot)?.pieces ?? [])
          expect(cashChange.minor).toBe(cash.minor - before)
          expect(cardChange.minor).toBe(0 - cashChange.minor)
        }
        const change = found.envelopes.reduce((sum, { cashChange }) => sum + cashChange.minor, 0)
        expect(worth(found.fromBank) - worth(found.toBank)).toBe(change)
        if (bank === 'none') expect([found.fromBank, found.toBank, change]).toEqual([[], [], 0])
      }),
      { seed: 62, numRuns: 120 },
    )
  }, 30_000)

  it('goes on after any tick with no more pieces than were left to move', () => {
    fc.assert(
      fc.property(drawn, fc.nat({ max: 60 }), ({ counts, targets, bank }, ticks) => {
        const first = settle(counts, targets, { bank })
        const done = Math.min(ticks, first.moves.length)
        const left = first.moves.slice(done).reduce((sum, { count }) => sum + count, 0)
        const plan = first.envelopes.map(({ pot, pieces }) => ({ pot, pieces }))
        const counted = ticked(counts, first.moves.slice(0, done))
        const again = settle(counted, targets, { bank, goOnTo: plan })
        expect(again.moved).toBeLessThanOrEqual(left)
        expect(again.missing).toBeLessThanOrEqual(first.missing)
        // Where both are proven to be the fewest it needs no plan to go on to.
        const unaided = settle(counted, targets, { bank })
        if (unaided.proven) expect(unaided.moved).toBeLessThanOrEqual(left)
      }),
      { seed: 63, numRuns: 60 },
    )
  }, 30_000)

  it('answers the same when asked again', () => {
    fc.assert(
      fc.property(drawn, ({ counts, targets, bank }) => {
        expect(settle(counts, targets, { bank })).toEqual(settle(counts, targets, { bank }))
      }),
      { seed: 64, numRuns: 20 },
    )
  }, 30_000)
})

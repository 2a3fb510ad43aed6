import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PotBalance } from '../../src/index.ts'
import { ofMinor } from '../../src/index.ts'
import { drawSill, ruleOfSill, type SillPart, sillReach } from '../../src/ui/sill.ts'

function pot(cash: number, card: number, held: number): PotBalance {
  const of = (minor: number) => ofMinor('CAD', minor)
  const spokenFor = Math.max(0, held - card)
  return {
    cash: of(cash),
    card: of(card),
    held: of(held),
    left: of(cash + card - held),
    spokenFor: of(spokenFor),
    freeCash: of(cash - spokenFor),
  }
}

const amount = fc.integer({ min: -100_000, max: 100_000 })
const anyPot = fc.tuple(amount, amount, fc.nat(150_000)).map(([cash, card, held]) => pot(cash, card, held))

function width(balance: PotBalance, part: SillPart, before?: PotBalance): number {
  const scale = Math.max(1, sillReach(balance))
  const spans = drawSill(balance, scale, before).filter((s) => s.part === part)
  return Math.round(spans.reduce((all, s) => all + (s.to - s.from) * scale, 0))
}

describe('the bar of a pot', () => {
  it('draws the pot of the design: 38.00 notes, 12.50 card, 9.30 held, and an order of 55.90', () => {
    const before = pot(3800, 1250, 930)
    const after = pot(3800, 1250, 6520)
    expect(drawSill(before, 3800)).toEqual([
      { part: 'notes', from: -1, to: 0, isNew: false },
      { part: 'card', from: 0, to: 1250 / 3800, isNew: false },
      { part: 'held', from: 320 / 3800, to: 1250 / 3800, isNew: false },
    ])
    const scale = sillReach(after)
    expect(scale).toBe(3800 + 1470)
    expect(drawSill(after, scale, before).map(({ part, isNew }) => `${part}${isNew ? ' new' : ''}`)).toEqual([
      'notes',
      'card',
      'held',
      'held new',
      'spoken new',
      'short',
    ])
  })

  it('what stays uncovered is what is left, and what is short is drawn', () => {
    fc.assert(
      fc.property(anyPot, (p) => {
        const free = width(p, 'notes') + width(p, 'card') - width(p, 'held') - width(p, 'spoken')
        expect(free - width(p, 'short')).toBe(p.left.minor)
      }),
    )
  })

  it('the rule under the bar is as long as what is left', () => {
    fc.assert(
      fc.property(anyPot, (p) => {
        const scale = Math.max(1, sillReach(p))
        const rule = ruleOfSill(p, scale)
        const long = rule ? Math.round((rule.to - rule.from) * scale) : 0
        expect(long).toBe(Math.max(0, p.left.minor))
      }),
    )
  })

  it('notes are shown as spoken for up to what there is of them', () => {
    fc.assert(
      fc.property(anyPot, (p) => {
        expect(width(p, 'spoken')).toBe(Math.min(p.spokenFor.minor, Math.max(0, p.cash.minor)))
      }),
    )
  })

  it('every stretch lies within the bar, on its side, and has a length', () => {
    fc.assert(
      fc.property(anyPot, anyPot, (p, before) => {
        for (const { part, from, to } of drawSill(p, Math.max(1, sillReach(p)), before)) {
          expect(from).toBeGreaterThanOrEqual(-1)
          expect(to).toBeLessThanOrEqual(1)
          expect(to).toBeGreaterThan(from)
          if (part === 'card' || part === 'held') expect(from).toBeGreaterThanOrEqual(0)
          else expect(to).toBeLessThanOrEqual(0)
        }
      }),
    )
  })

  it('what an order adds is marked, as long as there is money for it to cover', () => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.nat(100_000), fc.nat(100_000), fc.nat(100_000), (cash, card, held, order) => {
        const [before, after] = [pot(cash, card, held), pot(cash, card, held + order)]
        const scale = Math.max(1, sillReach(after))
        const marked = drawSill(after, scale, before).filter((s) => s.isNew)
        const sum = Math.round(marked.reduce((all, s) => all + (s.to - s.from) * scale, 0))
        expect(sum).toBe(Math.min(order, Math.max(0, before.left.minor)))
      }),
    )
  })
})

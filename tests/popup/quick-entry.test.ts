import { describe, expect, it, vi } from 'vitest'
import { type Pot, potId } from '../../src/index.ts'
import { matchPots, typeAhead } from '../../src/ui/pot-match.ts'
import { readQuickLine } from '../../src/ui/quick-entry.ts'
import { smallHousehold } from './samples.ts'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

const pots: Pot[] = [...smallHousehold.pots.map((p) => p.name), 'Books', 'Board games', 'Crème & cake'].map(
  (name, i) => ({
    id: potId(`pot-${i}`),
    name,
    kind: 'everyday',
    rule: 'block',
    sides: 'both',
    floor: 0,
    fill: { cash: 0, card: 0 },
    archived: false,
  }),
)

const read = (line: string, currency: 'CAD' | 'JPY' = 'CAD', language = 'en-CA') => {
  const found = readQuickLine(line, pots, currency, language)
  if (found.kind !== 'ready') return found
  const [best] = found.choices
  return [found.amount.minor, best?.pot.name, best?.purpose]
}

describe('a line of quick entry', () => {
  it.each([
    ['12.50 groceries bread', [1250, 'Groceries', 'bread']],
    ['12,50 gro rye bread', [1250, 'Groceries', 'rye bread']],
    ['12.50+3 gro', [1550, 'Groceries', '']],
    ['12.50 + 3 gro', [1550, 'Groceries', '']],
    ['2x4.20 gro buns', [840, 'Groceries', 'buns']],
    ['$5 sat', [500, 'Saturday market', '']],
    ['5 € market eggs', [500, 'Saturday market', 'eggs']],
    ['60 piano lessons june', [6000, 'Piano lessons', 'june']],
    ['60 pi june', [6000, 'Piano lessons', 'june']],
    ['4 creme', [400, 'Crème & cake', '']],
    ['3 GARDEN 2 bulbs', [300, 'Garden', '2 bulbs']],
  ])('%s', (line, meant) => {
    expect(read(line)).toEqual(meant)
  })

  it('offers every pot a beginning may mean, in the household’s order', () => {
    const found = readQuickLine('5 bo', pots, 'CAD', 'en-CA')
    expect(found.kind === 'ready' && found.choices.map((c) => c.pot.name)).toEqual(['Books', 'Board games'])
  })

  it.each([
    ['', { kind: 'empty' }],
    ['   ', { kind: 'empty' }],
    ['bread', { kind: 'bad-amount', problem: 'not_a_number' }],
    ['12.505 gro', { kind: 'bad-amount', problem: 'decimals' }],
    ['0 gro', { kind: 'bad-amount', problem: 'empty' }],
    ['3-5 gro', { kind: 'bad-amount', problem: 'negative' }],
    ['12.50', { kind: 'no-pot', amount: { currency: 'CAD', minor: 1250 }, word: '' }],
    ['12.50 zebra', { kind: 'no-pot', amount: { currency: 'CAD', minor: 1250 }, word: 'zebra' }],
  ])('says what "%s" lacks', (line, lacks) => {
    expect(read(line)).toEqual(lacks)
  })

  it('reads no cents where the currency has none', () => {
    expect(read('1,200 gro', 'JPY')).toEqual([1200, 'Groceries', ''])
    expect(read('12.50 gro', 'JPY')).toEqual({ kind: 'bad-amount', problem: 'decimals' })
  })
})

describe('finding a pot by its name', () => {
  it('prefers the whole name to a beginning', () => {
    const two = ['Book club', 'Book'].flatMap((name) => pots.slice(0, 1).map((p) => ({ ...p, name })))
    expect(matchPots(two, ['book'])[0]?.pot.name).toBe('Book')
    expect(matchPots(two, ['book', 'club'])[0]?.pot.name).toBe('Book club')
  })

  it('type-ahead goes on to the next of one letter, and to the one of several letters', () => {
    const names = ['Garden', 'Groceries', 'Gifts', 'Saturday market']
    expect(typeAhead(names, 'g', -1)).toBe(0)
    expect(typeAhead(names, 'g', 0)).toBe(1)
    expect(typeAhead(names, 'gg', 1)).toBe(2)
    expect(typeAhead(names, 'gr', 0)).toBe(1)
    expect(typeAhead(names, 'ma', 0)).toBe(3)
    expect(typeAhead(names, 'x', 0)).toBe(-1)
  })
})

import { accountId, addDays, calendarDate, entryId, money } from '../../src/index.ts'
import type { EntryToMatch, OrderToMatch } from '../../src/monthend/match-types.ts'
import type { StatementLine } from '../../src/monthend/statement-line.ts'
import { uuid } from '../book/sample.ts'
import { held, line, pots } from './statement-lines.ts'

const SYLLABLES = 'cor vid fin ch her on lam wren ow la pli mo ta ber gul dun ro bin tal sku'.split(' ')

/** A year of an invented household: lines and orders, with what truly belongs to what. */
export interface Year {
  readonly lines: readonly StatementLine[]
  readonly orders: readonly OrderToMatch[]
  readonly entries: readonly EntryToMatch[]
  /** `line order` for every true charge. */
  readonly truth: ReadonlySet<string>
}

/** Park and Miller's generator: the same year every time. */
export function generator(seed: number): (below: number) => number {
  let state = seed
  return (below) => {
    state = (state * 48_271) % 2_147_483_647
    return state % below
  }
}

/**
 * 1,000 orders at 100 shops and 2,400 lines: plain charges, part shipments, joined charges, refunds, orders never charged,
 * purchases no one tagged, and withdrawals the book has.
 */
export function yearOfLines(orderCount = 1000, lineCount = 2400): Year {
  const next = generator(20_261_125)
  const shops = Array.from({ length: 100 }, (_, i) => {
    const syllable = (): string => SYLLABLES[next(SYLLABLES.length)] ?? ''
    return `${syllable()}${syllable()}${syllable()}-${syllable()}${syllable()}${i}.example`
  })
  const start = calendarDate('2026-01-01')
  const lines: StatementLine[] = []
  const orders: OrderToMatch[] = []
  const entries: EntryToMatch[] = []
  const truth = new Set<string>()
  const text = (shop: string): string => {
    const words = shop.replace('.example', '').toUpperCase().split('-')
    const forms = [
      words.join(' '),
      words.map((w) => w.slice(0, 6)).join(' '),
      `${words.join('').slice(0, 12)}*${next(9999)}`,
    ]
    return `${forms[next(3)]} ${next(9999)} TORONTO ON`
  }
  const add = (day: number, minor: number, name: string, more: Partial<StatementLine> = {}): string => {
    const id = `L${lines.length}`
    const amount = (minor / 100).toFixed(2)
    lines.push(line(id, addDays(start, Math.min(day, 364)), amount, name, { ...more, amount: money('CAD', amount) }))
    return id
  }
  for (let n = 1; n <= orderCount; n++) {
    const shop = shops[Math.min(next(100), next(100))] ?? ''
    const day = next(350)
    const cents = 499 + 50 * next(300) + (next(3) === 0 ? next(50) : 0)
    const order = held(n, addDays(start, day), (cents / 100).toFixed(2), shop, { pots: pots(`p${next(12)}`) })
    orders.push(order)
    const fate = next(100)
    const charge = (after: number, minor: number): void => {
      truth.add(`${add(day + after, -minor, text(shop))} ${order.order}`)
    }
    if (fate < 6) continue
    if (fate < 14) {
      const first = 100 + next(cents - 200)
      charge(1 + next(3), first)
      charge(3 + next(6), cents - first)
    } else charge(next(4), cents)
    if (fate > 95) add(day + 10 + next(10), cents, text(shop))
  }
  for (let n = 0; n < 104; n++) {
    const day = 3 + Math.floor((n * 7) / 2)
    const minor = 2000 * (1 + next(20))
    const amount = money('CAD', (-minor / 100).toFixed(2))
    entries.push({
      entry: entryId(uuid(n + 1)),
      account: accountId('main'),
      date: addDays(start, day),
      amount,
      text: '',
      kind: 'cash',
    })
    add(day + next(2), -minor, 'ABM WITHDRAWAL', { kind: 'cash' })
  }
  while (lines.length < lineCount)
    add(next(365), -(150 + next(12_000)), `${text(shops[next(100)] ?? '').slice(2, 9)} MARKET ${next(99)}`)
  lines.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  return { lines, orders, entries, truth }
}

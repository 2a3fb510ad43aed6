import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Book,
  calendarDate,
  type FillPlan,
  money,
  ofMinor,
  type Pot,
  planFill,
  potId,
  sayFillLine,
  sayShare,
} from '../../src/index.ts'
import { cad, household, pot } from '../book/sample.ts'
import { bookOf, day, fortnightly, monthly, paid } from './sample.ts'

const fill = (cash: number, card: number) => ({ fill: { cash, card } })
/** Bread cannot be done without, books can wait, the rest lies between; the boiler is due on 1 June. */
const pots: readonly Pot[] = [
  pot('bread', { ...fill(10_000, 0), plan: { importance: 1 } }),
  pot('boiler', { kind: 'sinking', plan: { goal: { target: 30_000, due: day('2026-06-01') } } }),
  pot('outings', fill(3_000, 1_000)),
  pot('books', { ...fill(0, 6_000), plan: { importance: 3 } }),
  pot('attic'),
]
const book = bookOf(paid(pots, [fortnightly]), [['2026-01-01', 'fill', 'boiler', '0', '150.00']])
const today = day('2026-01-02')
const gets = (plan: FillPlan): Record<string, string> =>
  Object.fromEntries(plan.lines.map((line) => [line.pot, (line.gets.minor / 100).toFixed(2)]))
const line = (plan: FillPlan, id: string) => {
  const found = plan.lines.find((l) => l.pot === id)
  if (!found) throw new Error(`no line for ${id}`)
  return found
}

describe('planFill', () => {
  it('every pot gets what it wants; what no pot wants is unplaced', () => {
    const plan = planFill(book, cad('400.00'), today)
    // 150.00 are missing; 2 January to 22 May are 11 pays, this one counted: 13.64 each, rounded up to the cent.
    expect(gets(plan)).toEqual({ bread: '100.00', boiler: '13.64', outings: '40.00', books: '60.00', attic: '0.00' })
    expect([plan.wants, plan.unplaced, plan.short]).toEqual([cad('213.64'), cad('186.36'), cad('0')])
    expect(line(plan, 'attic').reason).toEqual({ code: 'no-budget' })
    expect(line(plan, 'outings')).toMatchObject({ cash: cad('30.00'), card: cad('10.00') })
  })

  it('a short pay: by importance, sinking funds first or after what cannot be done without', () => {
    const short = planFill(book, cad('110.00'), today)
    expect(gets(short)).toEqual({ bread: '100.00', boiler: '10.00', outings: '0.00', books: '0.00', attic: '0.00' })
    expect([short.short, short.unplaced]).toEqual([cad('103.64'), cad('0')])
    const planning = { sinkingFunds: 'first', roundTo: 1 } as const
    const first = planFill({ ...book, household: { ...book.household, planning } }, cad('110.00'), today)
    expect(gets(first)).toMatchObject({ bread: '96.36', boiler: '13.64' })
  })

  it('pots of one importance share a short pay in proportion', () => {
    const h = paid([pot('a', fill(0, 3_000)), pot('b', fill(0, 1_000))], [fortnightly])
    expect(gets(planFill(bookOf(h, []), cad('10.00'), today))).toEqual({ a: '7.50', b: '2.50' })
  })

  it('a pot of notes alone gets no odd cent: it goes to another, or stays unplaced and is named', () => {
    const notes = pot('market', { sides: 'cash', ...fill(2_000, 0) })
    const two = paid([notes, pot('b', fill(0, 1_000))], [fortnightly])
    // In proportion 6.67 and 3.33; Canadian tills know no cents.
    expect(gets(planFill(bookOf(two, []), cad('10.00'), today))).toEqual({ market: '6.65', b: '3.35' })
    const one = planFill(bookOf(paid([notes], [fortnightly]), []), cad('10.02'), today)
    expect([gets(one), one.unplaced]).toEqual([{ market: '10.00' }, cad('0.02')])
  })

  it('the earliest due comes first, and going short says what becomes of the date', () => {
    const fund = (id: string, target: number, due: string) =>
      pot(id, { kind: 'sinking', plan: { goal: { target, due: day(due) } } })
    const h = paid([fund('later', 10_000, '2026-02-13'), fund('sooner', 6_000, '2026-01-10')], [fortnightly])
    const plan = planFill(bookOf(h, []), cad('70.00'), today)
    expect(gets(plan)).toEqual({ later: '10.00', sooner: '60.00' })
    // 100.00 over the pays of 2, 16 and 30 January and 13 February is 25.00 each.
    expect(line(plan, 'later')).toMatchObject({ wants: cad('25.00'), short: cad('15.00') })
    expect(line(plan, 'later').effect).toEqual({
      code: 'goal-later',
      due: '2026-02-13',
      paysLeft: 3,
      laterEach: cad('30.00'),
      reachedOn: '2026-02-27',
    })
    expect(sayFillLine(h, line(plan, 'later'), today)).toBe(
      '25.00 a fortnight: 100.00 by 13 February, 4 pays left with this one, 0.00 in. 15.00 short. ' +
        'Then each of the 3 pays left to 13 February must bring 30.00. ' +
        'With 25.00 a pay as before it is reached on 27 February.',
    )
    const nothing = planFill(bookOf(h, []), cad('0'), today)
    expect(line(nothing, 'sooner').effect).toEqual({ code: 'goal-missed', due: '2026-01-10', missing: cad('60.00') })
    expect(sayFillLine(h, line(nothing, 'sooner'), today)).toContain(
      'No pay comes before 10 January: 60.00 will be missing then.',
    )
  })

  it("a month's budget is spread over the month's pays, less what they put in already", () => {
    const h = paid([pot('bread', { plan: { monthly: 30_000 } })], [fortnightly])
    // January 2026 has pays on the 2nd, 16th and 30th: three.
    const first = planFill(bookOf(h, []), cad('500.00'), today)
    expect([gets(first), line(first, 'bread').reason]).toEqual([
      { bread: '100.00' },
      { code: 'month', budget: cad('300.00'), filled: cad('0'), paysLeft: 3 },
    ])
    const second = planFill(
      bookOf(h, [['2026-01-02', 'fill', 'bread', '0', '80.00']]),
      cad('500.00'),
      day('2026-01-16'),
    )
    expect(gets(second)).toEqual({ bread: '110.00' })
    expect(sayFillLine(h, line(second, 'bread'), day('2026-01-16'))).toBe(
      '110.00 now: 300.00 a month, 80.00 in already, 2 pays left with this one.',
    )
    const over = planFill(bookOf(h, [['2026-01-02', 'fill', 'bread', '0', '320.00']]), cad('500.00'), day('2026-01-16'))
    expect(gets(over)).toEqual({ bread: '0.00' })
    const short = planFill(bookOf(h, []), cad('20.00'), day('2026-01-30'))
    expect(line(short, 'bread').effect).toEqual({ code: 'month-short', missing: cad('280.00') })
  })

  it('a pay that a weekend moved into the month before is for its own month', () => {
    const schedule = { rhythm: 'monthly', first: day('2026-01-01'), day: 1, weekend: 'before' } as const
    const h = paid([pot('bread', { plan: { monthly: 30_000 } })], [schedule])
    // 1 August 2026 is a Saturday: its pay comes on Friday 31 July, when July has had its budget.
    const then = bookOf(h, [['2026-07-01', 'fill', 'bread', '0', '300.00']])
    expect(gets(planFill(then, cad('900.00'), day('2026-07-31')))).toEqual({ bread: '300.00' })
    const after = bookOf(h, [['2026-07-31', 'fill', 'bread', '0', '300.00']])
    expect(gets(planFill(after, cad('900.00'), day('2026-08-12')))).toEqual({ bread: '0.00' })
  })

  it('rounds what a goal needs up to a note', () => {
    const planning = { sinkingFunds: 'after-essentials', roundTo: 500 } as const
    const plan = planFill({ ...book, household: { ...book.household, planning } }, cad('400.00'), today)
    expect(gets(plan)).toMatchObject({ boiler: '15.00' })
  })

  it('a reserve is filled until it holds its months of spending', () => {
    const reserve = pot('reserve', { kind: 'reserve', ...fill(0, 5_000), plan: { reserveMonths: 2 } })
    const h = paid([pot('bread'), reserve], [monthly])
    const spent = (month: string, amount: string) => [`2026-${month}-20`, 'card', 'bread', amount] as const
    const months = [spent('01', '100.00'), spent('02', '140.00'), spent('03', '90.00')]
    const start = ['2026-01-01', 'fill', 'reserve', '0', '170.00'] as const
    const plan = planFill(bookOf(h, [start, ...months]), cad('500.00'), day('2026-04-15'))
    // The median month is 100.00, so 200.00 are wanted and 30.00 are missing.
    expect(gets(plan)).toMatchObject({ reserve: '30.00' })
    expect(sayFillLine(h, line(plan, 'reserve'), day('2026-04-15'))).toBe(
      '50.00 a month until 200.00 is in: 2 times the 100.00 that a month takes (median of 3 months). 170.00 is in.',
    )
    const early = planFill(bookOf(h, [start]), cad('500.00'), day('2026-02-15'))
    expect(line(early, 'reserve').reason).toMatchObject({ need: { from: 'budgets' } })
  })

  it('the side: one side only, all on one side, as set, or as it was spent in the last three months', () => {
    const learned = (id: string) => pot(id, { ...fill(5_000, 5_000), plan: { split: 'learned' } })
    const h = paid(
      [
        pot('notes', { sides: 'cash', ...fill(2_000, 0) }),
        pot('cards', { sides: 'card', ...fill(0, 2_000) }),
        pot('purse', { ...fill(1_000, 1_000), plan: { split: 'cash' } }),
        pot('wire', { ...fill(1_000, 1_000), plan: { split: 'card' } }),
        learned('shop'),
        learned('quiet'),
      ],
      [fortnightly],
      { planning: { sinkingFunds: 'after-essentials', roundTo: 500 } },
    )
    const spent = bookOf(h, [
      ['2026-01-05', 'cash', 'shop', '90.00'], // more than three months ago
      ['2026-02-20', 'cash', 'shop', '30.00'],
      ['2026-03-02', 'order', 'shop', '70.00'],
    ])
    const plan = planFill(spent, cad('600.00'), day('2026-04-10'))
    const sides = (id: string) => [line(plan, id).cash, line(plan, id).card, line(plan, id).share.rule]
    expect(sides('notes')).toEqual([cad('20.00'), cad('0'), 'only-side'])
    expect(sides('cards')).toEqual([cad('0'), cad('20.00'), 'only-side'])
    expect(sides('purse')).toEqual([cad('20.00'), cad('0'), 'all-cash'])
    expect(sides('wire')).toEqual([cad('0'), cad('20.00'), 'all-card'])
    expect(sides('shop')).toEqual([cad('30.00'), cad('70.00'), 'learned'])
    expect(sides('quiet')).toEqual([cad('50.00'), cad('50.00'), 'nothing-spent'])
    expect(sayShare(h, line(plan, 'shop'), day('2026-04-10'))).toBe(
      '30% in notes, as it was spent in the last three months.',
    )
  })

  it('a yearly cost repeats by itself once it is spent; one that comes once does not', () => {
    const goal = { target: 12_000, due: day('2026-03-10') }
    const yearly = (everyYears?: number) =>
      paid([pot('tyres', { kind: 'sinking', plan: { goal: everyYears ? { ...goal, everyYears } : goal } })], [monthly])
    const happened = [
      ['2026-01-15', 'fill', 'tyres', '0', '120.00'],
      ['2026-03-05', 'card', 'tyres', '115.00'],
    ] as const
    const again = planFill(bookOf(yearly(1), happened), cad('500.00'), day('2026-03-15'))
    // 115.00 left 5.00; 15 March to 15 February 2027 are twelve pays: 9.59 each, rounded up.
    expect(line(again, 'tyres').reason).toMatchObject({
      code: 'goal',
      due: '2027-03-10',
      paysLeft: 12,
      in: cad('5.00'),
    })
    expect(gets(again)).toEqual({ tyres: '9.59' })
    const once = planFill(bookOf(yearly(), happened), cad('500.00'), day('2026-03-15'))
    expect(line(once, 'tyres').reason.code).toBe('goal-spent')
    const unpaid = planFill(
      bookOf(yearly(1), [['2026-01-15', 'fill', 'tyres', '0', '20.00']]),
      cad('500.00'),
      day('2026-03-15'),
    )
    expect(line(unpaid, 'tyres')).toMatchObject({ wants: cad('100.00'), reason: { code: 'goal-overdue' } })
  })

  it('bad input: less than nothing, another currency; a pay of zero says what goes short', () => {
    expect(() => planFill(book, ofMinor('CAD', -1), today)).toThrow(expect.objectContaining({ code: 'bad-pay' }))
    expect(() => planFill(book, money('EUR', '1.00'), today)).toThrow(
      expect.objectContaining({ code: 'currency-mismatch' }),
    )
    const zero = planFill(book, cad('0'), today)
    expect([zero.unplaced, zero.short]).toEqual([cad('0'), cad('213.64')])
  })

  it('a household without earners plans with the pay dates it wrote down', () => {
    const h = household(
      [pot('boiler', { kind: 'sinking', plan: { goal: { target: 4_000, due: day('2026-02-28') } } })],
      {
        payDates: [day('2026-01-20'), day('2026-02-10'), day('2026-02-28'), day('2026-03-20')],
      },
    )
    expect(gets(planFill(bookOf(h, []), cad('100.00'), today))).toEqual({ boiler: '10.00' })
  })

  it('every cent is placed or named unplaced, no pot gets more than it wants, sides sum, whatever the pots', () => {
    const anyPot = fc.record({
      kind: fc.constantFrom('everyday' as const, 'sinking' as const, 'reserve' as const),
      sides: fc.constantFrom('both' as const, 'cash' as const, 'card' as const),
      cash: fc.integer({ min: 0, max: 20_000 }),
      card: fc.integer({ min: 0, max: 20_000 }),
      importance: fc.constantFrom(1 as const, 2 as const, 3 as const),
      monthly: fc.option(fc.integer({ min: 0, max: 60_000 }), { nil: undefined }),
      goal: fc.option(
        fc.record({ target: fc.integer({ min: 1, max: 500_000 }), days: fc.integer({ min: -30, max: 900 }) }),
      ),
      split: fc.constantFrom('cash' as const, 'card' as const, 'learned' as const, undefined),
    })
    fc.assert(
      fc.property(
        fc.array(anyPot, { maxLength: 40 }),
        fc.integer({ min: 0, max: 600_000 }),
        fc.constantFrom('first' as const, 'after-essentials' as const),
        fc.constantFrom(1, 500, 2_000),
        (drawn, pay, sinkingFunds, roundTo) => {
          const made = drawn.map(({ kind, sides, cash, card, importance, monthly: m, goal, split }, n) =>
            pot(`p${n}`, {
              kind,
              sides,
              fill: { cash: sides === 'card' ? 0 : cash, card: sides === 'cash' ? 0 : card },
              plan: {
                importance,
                ...(m === undefined ? {} : { monthly: m }),
                ...(split === undefined ? {} : { split }),
                ...(goal ? { goal: { target: goal.target, due: dayAfter(goal.days) } } : {}),
              },
            }),
          )
          const some: Book = bookOf(paid(made, [fortnightly], { planning: { sinkingFunds, roundTo } }), [])
          const plan = planFill(some, ofMinor('CAD', pay), today)
          const sum = (part: 'gets' | 'wants' | 'short') => plan.lines.reduce((all, l) => all + l[part].minor, 0)
          expect(sum('gets') + plan.unplaced.minor).toBe(pay)
          expect([sum('wants'), sum('short')]).toEqual([plan.wants.minor, plan.short.minor])
          expect(plan.lines).toHaveLength(made.length)
          for (const l of plan.lines) {
            expect(l.cash.minor + l.card.minor).toBe(l.gets.minor)
            // Every figure is explained, and every gap in a sentence is filled.
            const said = sayFillLine(some.household, l, today) + sayShare(some.household, l, today)
            expect(said).toMatch(/^[^{}]+\.$/)
            expect(l.gets.minor + l.short.minor).toBe(l.wants.minor)
            expect(Math.min(l.gets.minor, l.short.minor, l.cash.minor, l.card.minor)).toBeGreaterThanOrEqual(0)
            const { sides } = made.find((p) => p.id === l.pot) ?? pot('none')
            if (sides !== 'both') expect(sides === 'cash' ? l.card.minor : l.cash.minor).toBe(0)
          }
          // Money is left without a pot only when no pot goes short, but for cents that are no coin.
          if (plan.unplaced.minor >= 5 * made.length) expect(plan.short.minor).toBeLessThan(5 * made.length + 1)
        },
      ),
      { seed: 7, numRuns: 150 },
    )
  })

  it('an archived pot gets nothing and has no line', () => {
    const h = paid([pot('old', { ...fill(0, 1_000), archived: true })], [fortnightly])
    expect(planFill(bookOf(h, []), cad('10.00'), today)).toMatchObject({ lines: [], unplaced: cad('10.00') })
    expect(potId('old')).toBe('old')
  })
})

function dayAfter(days: number) {
  return calendarDate(new Date(Date.UTC(2026, 0, 2 + days)).toISOString().slice(0, 10))
}

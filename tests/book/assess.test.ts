import { describe, expect, it } from 'vitest'
import { assess, calendarDate, holdOrder, money, potId, sayReason, spendFrom, toDecimal } from '../../src/index.ts'
import { bookWith, cad, grow, household, one, order, pot, stamp, today } from './sample.ts'

const payDates = [calendarDate('2026-11-25'), calendarDate('2026-12-04'), calendarDate('2026-12-18')]
const piano = pot('piano', { name: 'Piano lessons', fill: { cash: 3500, card: 2500 } })
const pianoHousehold = household([piano], { payDates })
const pianoBook = grow(bookWith(pianoHousehold, [['piano', '38.00', '12.50']]), (b) =>
  holdOrder(b, stamp(9), order(9), one('piano', '9.30')),
)

describe('assess', () => {
  it('says what the pot has, how much is too much, and when it is filled next', () => {
    const verdict = assess(pianoBook, one('piano', '55.90'), today)
    expect(verdict.outcome).toBe('block')
    expect(verdict.reasons.map((r) => sayReason(pianoHousehold, r))).toEqual([
      'Piano lessons has 41.20 left: 38.00 cash, 12.50 card, 9.30 held. This order of 55.90 is 14.70 too much. ' +
        'Next fill: Friday 4 December, 60.00.',
    ])
  })

  it('gives the figures before and after, held growing by the order', () => {
    const [line] = assess(pianoBook, one('piano', '20.00'), today).lines
    expect(
      line && [line.before.left, line.after.left, line.after.held, line.after.cash, line.after.card].map(toDecimal),
    ).toEqual(['41.20', '21.20', '29.30', '38.00', '12.50'])
  })

  it('allows what fits only by notes and says how many become spoken for', () => {
    const verdict = assess(pianoBook, one('piano', '20.00'), today)
    expect(verdict.outcome).toBe('allow')
    expect(verdict.reasons.map((r) => r.code)).toEqual(['uses-notes'])
    // card 12.50, held 9.30 + 20.00: 16.80 of the notes are spent, none were before.
    expect(verdict.lines[0]?.notesSpokenFor).toEqual(cad('16.80'))
    expect(verdict.lines[0]?.after.freeCash).toEqual(cad('21.20'))
  })

  it('takes no notes while the card side lasts', () => {
    const verdict = assess(pianoBook, one('piano', '3.20'), today)
    expect(verdict.reasons.map((r) => r.code)).toEqual(['fits'])
    expect(verdict.lines[0]?.notesSpokenFor).toEqual(cad('0.00'))
  })

  it('lets the last cent be spent', () => {
    expect(assess(pianoBook, one('piano', '41.20'), today).outcome).toBe('allow')
    expect(assess(pianoBook, one('piano', '41.21'), today).outcome).toBe('block')
  })

  it.each(['block', 'warn', 'allow'] as const)('below zero follows the rule %s of the pot', (rule) => {
    const book = bookWith(household([pot('p', { rule })]), [['p', '5.00', '5.00']])
    const verdict = assess(book, one('p', '10.01'), today)
    expect(verdict.outcome).toBe(rule)
    expect(verdict.reasons[0]?.short).toEqual(cad('0.01'))
  })

  it('warns below the floor but not below zero, and keeps saying what the notes do', () => {
    const book = bookWith(household([pot('p', { floor: 2000 })]), [['p', '20.00', '10.00']])
    const verdict = assess(book, one('p', '12.00'), today)
    expect(verdict.outcome).toBe('warn')
    expect(verdict.reasons.map((r) => [r.code, toDecimal(r.short)])).toEqual([
      ['below-floor', '2.00'],
      ['uses-notes', '0.00'],
    ])
    expect(assess(book, one('p', '10.00'), today).outcome).toBe('allow')
  })

  it('a pot kept in notes only cannot pay online, whatever its rule', () => {
    const book = bookWith(household([pot('p', { sides: 'cash', rule: 'allow' })]), [['p', '50.00', '0.00']])
    const verdict = assess(book, one('p', '1.00'), today)
    expect([verdict.outcome, verdict.reasons[0]?.code]).toEqual(['block', 'cash-only'])
  })

  it('over several pots the worst outcome is the order', () => {
    const h = household([pot('a'), pot('b', { rule: 'warn' }), pot('c')])
    const book = bookWith(h, [
      ['a', '0.00', '10.00'],
      ['b', '0.00', '10.00'],
      ['c', '0.00', '10.00'],
    ])
    const lines = (...amounts: string[]) => ({
      shop: 's',
      lines: ['a', 'b', 'c'].map((id, i) => ({ pot: potId(id), amount: cad(amounts[i] ?? '0') })),
    })
    expect(assess(book, lines('10', '10', '10'), today).outcome).toBe('allow')
    expect(assess(book, lines('10', '11', '10'), today).outcome).toBe('warn')
    expect(assess(book, lines('10', '11', '11'), today).outcome).toBe('block')
  })

  it('two lines of one pot are judged together', () => {
    const line = { pot: potId('piano'), amount: cad('25.00') }
    expect(assess(pianoBook, { shop: 's', lines: [line, line] }, today).outcome).toBe('block')
  })

  it('replaces the hold of an order tagged before', () => {
    const book = grow(pianoBook, (b) => holdOrder(b, stamp(10), order(10), one('piano', '30.00')))
    expect(assess(book, one('piano', '35.00'), today).outcome).toBe('block')
    const again = assess(book, { ...one('piano', '35.00'), order: order(10) }, today)
    expect([again.outcome, again.lines[0] && toDecimal(again.lines[0].after.left)]).toEqual(['allow', '6.20'])
  })

  it('lets a standing hold get smaller even in a pot that fell below zero since', () => {
    const book = grow(
      pianoBook,
      (b) => holdOrder(b, stamp(10), order(10), one('piano', '30.00')),
      () => spendFrom(pianoHousehold, stamp(11), piano.id, 'cash', cad('38.00'), 'at the counter'),
    )
    expect(assess(book, { ...one('piano', '29.00'), order: order(10) }, today).outcome).toBe('allow')
    expect(assess(book, { ...one('piano', '31.00'), order: order(10) }, today).outcome).toBe('block')
  })

  it('counts the next fill from the day after today', () => {
    const verdict = assess(pianoBook, one('piano', '100.00'), calendarDate('2026-12-04'))
    expect(verdict.reasons[0]?.nextFill).toEqual({ date: '2026-12-18', amount: cad('60.00') })
    expect(assess(pianoBook, one('piano', '100.00'), calendarDate('2026-12-18')).reasons[0]?.nextFill).toBeNull()
  })

  it.each([
    [
      'another currency',
      { shop: 's', lines: [{ pot: potId('piano'), amount: money('EUR', '5.00') }] },
      'currency-mismatch',
    ],
    ['a negative total', one('piano', '-5.00'), 'bad-amount'],
    ['no pot', { shop: 's', lines: [] }, 'bad-lines'],
    ['a pot that is not there', one('organ', '5.00'), 'unknown-pot'],
  ])('refuses %s', (_, purchase, code) => {
    expect(() => assess(pianoBook, purchase, today)).toThrow(expect.objectContaining({ name: 'BookError', code }))
  })

  it('refuses an archived pot', () => {
    const book = bookWith(household([pot('old', { archived: true })]), [])
    expect(() => assess(book, one('old', '5.00'), today)).toThrow(expect.objectContaining({ code: 'archived-pot' }))
  })
})

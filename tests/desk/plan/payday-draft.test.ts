import { describe, expect, it, vi } from 'vitest'
import { draftSum, type PaydayDraft, paydayFrom, withChange } from '../../../src/desk/plan/payday/payday-draft.ts'
import { paydaySlip } from '../../../src/desk/plan/payday/payday-slip.ts'
import { entryId, money, openBook, planFill, potId } from '../../../src/index.ts'
import { cad, pot, uuid } from '../../book/sample.ts'
import { bookOf, day, fortnightly, paid } from '../../plan/sample.ts'

vi.mock('webextension-polyfill', () => import('../../popup/fake-browser.ts'))

const h = paid(
  [
    pot('bread', { fill: { cash: 8_000, card: 1_000 } }),
    pot('market', { sides: 'cash', fill: { cash: 5_500, card: 0 } }),
    pot('tyres', { sides: 'card', fill: { cash: 0, card: 2_000 } }),
  ],
  [fortnightly],
)
const plan = planFill(bookOf(h, []), cad('200.00'), day('2026-01-02'))
const draft: PaydayDraft = {
  date: day('2026-01-02'),
  amount: '200',
  takesUnplaced: false,
  changes: {},
  bank: null,
  atHand: {},
  ticked: [],
  ids: null,
}
const sum = (of: PaydayDraft) => draftSum(plan, of, 'CAD', 'en-CA')

describe('a payday as it is changed by hand', () => {
  it('as planned: placed and rest are the pay', () => {
    expect(sum(draft)).toMatchObject({ placed: cad('165.00'), rest: cad('35.00'), canGoOn: true })
    expect(sum(draft).lines.every((line) => !line.isChanged)).toBe(true)
  })

  it('a changed figure moves the difference to the rest; more than there is stops', () => {
    const more = withChange(draft, potId('bread'), 'card', '30,00')
    expect(sum(more)).toMatchObject({ placed: cad('185.00'), rest: cad('15.00'), canGoOn: true })
    expect(sum(more).lines[0]).toMatchObject({ card: cad('30.00'), isChanged: true })
    expect(sum(withChange(more, potId('tyres'), 'card', '100'))).toMatchObject({ rest: cad('-65.00'), canGoOn: false })
  })

  it('what is no amount is said and stops; an emptied field is nothing', () => {
    expect(sum(withChange(draft, potId('bread'), 'cash', 'ten'))).toMatchObject({ canGoOn: false })
    expect(sum(withChange(draft, potId('bread'), 'cash', '')).lines[0]).toMatchObject({ cash: cad('0'), problem: null })
  })

  it('a change makes new ids: another payday is another entry', () => {
    const begun = { ...draft, ids: { payday: entryId(uuid(1)), fills: { bread: entryId(uuid(2)) } } }
    expect(withChange(begun, potId('bread'), 'cash', '1').ids).toBeNull()
  })

  it('what was kept is read back; what is not whole is left out', () => {
    const whole: PaydayDraft = {
      ...draft,
      changes: { bread: { cash: '3' } },
      bank: { kind: 'machine', gives: [2000] },
      atHand: { 500: '2' },
      ticked: ['bread'],
      ids: { payday: entryId(uuid(1)), fills: { bread: entryId(uuid(2)) } },
    }
    expect(paydayFrom(JSON.parse(JSON.stringify(whole)))).toEqual(whole)
    expect(paydayFrom({ date: 'today', amount: '1' })).toBeNull()
    expect(paydayFrom({ date: '2026-01-02', amount: '1', ids: { payday: 'x' }, ticked: 'all' })).toEqual({
      ...draft,
      amount: '1',
    })
  })
})

describe('the slip of a payday', () => {
  const slipOf = (of: PaydayDraft, gives: readonly number[]) => {
    const slip = paydaySlip(h, sum(of).lines, { kind: 'machine', gives }, of.atHand)
    if ('error' in slip) throw slip.error
    return slip
  }

  it('what the machine cannot give stays on the card, or without a pot where there is no card side', () => {
    const { envelopes, slip } = slipOf(draft, [2000])
    // 80.00 is four twenties; of 55.00 two are forty, and the market keeps no card side.
    expect(slip.ask).toEqual([{ denomination: 2000, count: 6 }])
    expect(envelopes.map((e) => [e.pot, e.cash, e.card, e.onCard, e.left])).toEqual([
      ['bread', cad('80.00'), cad('10.00'), cad('0'), cad('0')],
      ['market', cad('40.00'), cad('0'), cad('0'), cad('15.00')],
      ['tyres', cad('0'), cad('20.00'), cad('0'), cad('0')],
    ])
    const fifty = slipOf(draft, [5000]).envelopes[0]
    expect(fifty).toMatchObject({ cash: cad('50.00'), card: cad('40.00'), onCard: cad('30.00') })
  })

  it('pieces at hand are used first', () => {
    const { envelopes, slip } = slipOf({ ...draft, atHand: { 500: '3', 1000: 'x' } }, [2000])
    expect(slip.fromHand).toEqual([{ denomination: 500, count: 3 }])
    expect(envelopes[1]).toMatchObject({ cash: cad('55.00'), left: cad('0') })
  })

  it('a bank that gives nothing leaves all of it on the card, and the notes of the market without a pot', () => {
    const { slip, envelopes } = slipOf(draft, [])
    expect([slip.bankServesNone, slip.ask]).toEqual([true, []])
    expect(envelopes[0]).toMatchObject({ cash: cad('0'), card: cad('90.00') })
  })

  it('where the notes of a currency are not known the envelopes are filled as planned', () => {
    const shillings = { ...h, currency: 'KES' } as const
    const planned = planFill(openBook(shillings, []), money('KES', '200.00'), day('2026-01-02'))
    const slip = paydaySlip(shillings, draftSum(planned, draft, 'KES', 'en-KE').lines, null, {})
    expect(slip).toMatchObject({ isKnown: false, slip: { ask: [] } })
    if ('error' in slip) throw slip.error
    expect(slip.envelopes.map((e) => [e.cash.minor, e.card.minor])).toEqual([
      [8_000, 1_000],
      [5_500, 0],
      [0, 2_000],
    ])
  })
})

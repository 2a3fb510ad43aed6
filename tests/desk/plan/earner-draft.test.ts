import { describe, expect, it, vi } from 'vitest'
import {
  blankEarner,
  checkEarner,
  type EarnerDraft,
  earnerDraftOf,
} from '../../../src/desk/plan/payday/earner-draft.ts'
import { type Earner, payDates } from '../../../src/index.ts'
import { day } from '../../plan/sample.ts'

vi.mock('webextension-polyfill', () => import('../../popup/fake-browser.ts'))

const ola: Earner = {
  id: 'ola',
  name: 'Ola',
  pay: 90_000,
  schedules: [
    { rhythm: 'monthly', first: day('2026-01-15'), day: 15, weekend: 'before', daysOff: [day('2026-04-15')] },
  ],
}
const check = (changes: Partial<EarnerDraft>, of: EarnerDraft = earnerDraftOf(ola, 'CAD')) =>
  checkEarner({ ...of, ...changes }, [ola], 'CAD', 'en-CA')

describe('an earner as they are typed', () => {
  it('opened and kept unchanged they are the same', () => {
    expect(check({}).earners).toEqual([ola])
    const twice: Earner = {
      id: 'ola',
      name: 'Ola',
      pay: 0,
      schedules: [{ rhythm: 'twice-a-month', first: day('2026-01-31'), days: [15, 31] }],
    }
    expect(checkEarner(earnerDraftOf(twice, 'CAD'), [twice], 'CAD', 'en-CA').earners).toEqual([twice])
  })

  it('days off move a pay, and can be added and taken out', () => {
    const first = check({ daysOff: [day('2026-04-15'), day('2026-06-15')] }).earners?.[0]
    // 2026-06-15 is a Monday: the working day before it is the Friday.
    expect(payDates(first?.schedules ?? [], day('2026-06-01'), day('2026-06-30'))).toEqual(['2026-06-12'])
    const none = check({ daysOff: [] }).earners?.[0]
    expect(none?.schedules[0]).not.toHaveProperty('daysOff')
    expect(payDates(none?.schedules ?? [], day('2026-04-01'), day('2026-04-30'))).toEqual(['2026-04-15'])
  })

  it('another first day is a change of rhythm, also in mid-month; what was before stays', () => {
    const changed = check({ rhythm: 'weekly', first: '2026-03-20', weekend: 'stays' }).earners?.[0]
    expect(payDates(changed?.schedules ?? [], day('2026-02-01'), day('2026-04-05'))).toEqual([
      '2026-02-13', // the 15th is a Sunday
      '2026-03-13',
      '2026-03-20',
      '2026-03-27',
      '2026-04-03',
    ])
  })

  it('the same first day puts the rhythm right', () => {
    expect(check({ rhythm: 'last-working-day' }).earners?.[0]?.schedules).toHaveLength(1)
  })

  it('a new one is added with an id of their own', () => {
    const added = check({ name: 'Ola', first: '2026-02-05', pay: '1,200.50' }, blankEarner).earners
    expect(added?.map((earner) => [earner.id, earner.pay])).toEqual([
      ['ola', 90_000],
      ['ola-2', 120_050],
    ])
  })

  it('says what is missing', () => {
    expect(check({ name: ' ', pay: 'some', first: '', rhythm: 'twice-a-month', otherDay: '32' }).problems).toEqual({
      name: true,
      pay: true,
      first: true,
      otherDay: true,
    })
  })
})

import { describe, expect, it, vi } from 'vitest'
import { checkPlanDraft, planDraftOf } from '../../../src/desk/plan/goals/pot-plan-draft.ts'
import { pot } from '../../book/sample.ts'
import { day } from '../../plan/sample.ts'

vi.mock('webextension-polyfill', () => import('../../popup/fake-browser.ts'))

const tyres = pot('tyres', {
  kind: 'sinking',
  sides: 'card',
  fill: { cash: 0, card: 1_250 },
  plan: { goal: { target: 60_000, due: day('2027-06-01'), everyYears: 1, yearlyRate: '0.025' }, importance: 1 },
})
const check = (changes: Partial<ReturnType<typeof planDraftOf>>, of = tyres) =>
  checkPlanDraft({ ...planDraftOf(of, 'CAD'), ...changes }, of, 'CAD', 'en-CA')

describe('what is planned for a pot, as it is typed', () => {
  it('a plan opened and kept unchanged is the same plan', () => {
    expect(check({}).ask).toEqual({ plan: tyres.plan, fill: { cash: 0, card: 1_250 } })
    const everyday = pot('bread', {
      fill: { cash: 500, card: 0 },
      plan: { importance: 3, monthly: 30_000, split: 'learned', wish: 'small' },
    })
    expect(check({}, everyday).ask).toEqual({ plan: everyday.plan, fill: everyday.fill })
    const reserve = pot('reserve', { kind: 'reserve', plan: { importance: 3, reserveMonths: 6 } })
    expect(check({}, reserve).ask?.plan).toEqual(reserve.plan)
  })

  it('interest is a rate of one year in per cent', () => {
    const rate = (interest: string) => check({ interest }).ask?.plan.goal?.yearlyRate
    expect([rate('2.5'), rate('3'), rate('12,25 %'), rate('0.1')]).toEqual(['0.025', '0.03', '0.1225', '0.001'])
    expect(check({ interest: '' }).ask?.plan.goal).toEqual({ target: 60_000, due: '2027-06-01', everyYears: 1 })
  })

  it('says what is wrong, field by field', () => {
    expect(check({ target: 'much', due: '', interest: 'high' }).problems).toEqual({
      target: 'not_a_number',
      due: true,
      interest: true,
    })
    expect(check({ budget: 'month', monthly: '' }).problems).toEqual({ monthly: 'empty' })
    expect(check({ reserveMonths: '0' }, pot('reserve', { kind: 'reserve' })).problems).toEqual({ reserveMonths: true })
  })

  it('a goal without target and date is none', () => {
    expect(check({ target: '', due: '' }).ask?.plan.goal).toBeUndefined()
  })
})

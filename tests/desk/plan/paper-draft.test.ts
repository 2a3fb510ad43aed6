import { describe, expect, it, vi } from 'vitest'
import { checkPaper, isBlank, nextDraft, type PaperDraft } from '../../../src/desk/plan/sheets/paper-draft.ts'

vi.mock('webextension-polyfill', () => import('../../popup/fake-browser.ts'))

const typed: PaperDraft = { date: '2026-11-20', purpose: 'pears', way: 'out', side: 'cash', amount: '3,20' }

describe('a line of paper as it is typed in', () => {
  it('is read as the worker takes it', () => {
    expect(checkPaper(typed, 'CAD', 'en-CA').line).toEqual({ ...typed, amount: '3.20' })
  })

  it('the next one goes on with the same day and side', () => {
    expect(nextDraft(typed)).toEqual({ ...typed, purpose: '', amount: '' })
    expect([isBlank(nextDraft(typed)), isBlank(typed)]).toEqual([true, false])
  })

  it('says what is missing', () => {
    expect(checkPaper({ ...typed, amount: '0', date: '' }, 'CAD', 'en-CA').problems).toEqual({
      date: true,
      amount: 'empty',
    })
    expect(checkPaper({ ...typed, amount: '3.205' }, 'CAD', 'en-CA').problems).toEqual({ amount: 'decimals' })
  })
})

// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { PopupPage } from '../../popup/popup-page.tsx'
import { forgetSeen } from '../../src/ui/seen.ts'
import { fresh, state } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { smallHousehold } from './samples.ts'
import { button, field, says, show, the, type, until } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

let worker: FakeWorker
const open = async (): Promise<void> => {
  await show(<PopupPage tab={null} />)
  await says('left in all')
}

beforeEach(async () => {
  forgetSeen()
  worker = fresh(new FakeWorker())
  await worker.answer({ command: 'household.create', ask: smallHousehold })
})

describe('what teaches a new household', () => {
  it('the way to the first order is shown until it is put away', async () => {
    await open()
    await says('Your first order')
    button('Got it').click()
    await until(() => !document.body.textContent?.includes('Your first order'))
    await open()
    expect(document.body.textContent).not.toContain('Your first order')
  })

  it('how to read a pot stands open the first time, and shut once it was shut', async () => {
    await open()
    const legend = () => the('.sill-legend', HTMLDetailsElement)
    expect(legend().open).toBe(true)
    legend().open = false
    legend().dispatchEvent(new Event('toggle'))
    await open()
    expect(legend().open).toBe(false)
  })
})

describe('the settings of a pot', () => {
  it('what was half typed is there when the popup opens again', async () => {
    await open()
    the('.pot-open', HTMLButtonElement, 'Groceries').click()
    await until(() => document.querySelector('.pot-form'))
    await type(field('Name'), 'Groceries and such')
    await until(() => state.session.has('draft:pot-form:groceries'))
    await open()
    expect(field('Name').value).toBe('Groceries and such')
    button('Cancel').click()
    await until(() => !document.querySelector('.pot-form'))
    expect(state.session.has('draft:pot-form:groceries')).toBe(false)
  })

  it('a change is taken back by undo', async () => {
    await open()
    the('.pot-open', HTMLButtonElement, 'Groceries').click()
    await until(() => document.querySelector('.pot-form'))
    await type(field('Name'), 'Food')
    the('.pot-form', HTMLFormElement).requestSubmit()
    await says('Saved Food.')
    button('Undo').click()
    await until(() => document.querySelector('.pot-open')?.textContent?.includes('Groceries'))
    expect(worker.book?.household.pots[0]?.name).toBe('Groceries')
  })
})

describe('leaving the demo', () => {
  it('leaves nothing of it: neither what was typed nor which hints were read', async () => {
    worker = fresh(new FakeWorker())
    await show(<PopupPage tab={null} />)
    await until(() => document.querySelector('.first-run'))
    button('Try it with a demo household').click()
    await says('left in all')
    await type(the('.quick-input', HTMLInputElement), '12.50')
    await until(() => state.session.get('draft:quick') === '12.50')
    const legend = the('.sill-legend', HTMLDetailsElement)
    legend.open = false
    legend.dispatchEvent(new Event('toggle'))
    button('Leave the demo').click()
    await until(() => document.querySelector('.first-run'))
    expect([...state.session.keys()].filter((key) => key.startsWith('draft:'))).toEqual([])
    expect(localStorage.length).toBe(0)
  })
})

// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { PopupPage } from '../../popup/popup-page.tsx'
import { tabOfAddress } from '../../popup/tab-of-address.ts'
import { fresh } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { smallHousehold } from './samples.ts'
import { button, says, show, until } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

let worker: FakeWorker

beforeEach(async () => {
  worker = fresh(new FakeWorker())
  await worker.answer({ command: 'household.create', ask: smallHousehold })
})

describe('a damaged store', () => {
  it('says what is damaged and gives what is there as a file', async () => {
    worker.damaged = 'head'
    let saved: Blob | null = null
    const makeUrl = (blob: Blob): string => {
      saved = blob
      return 'blob:test'
    }
    Object.assign(URL, { createObjectURL: makeUrl })
    const clicked: string[] = []
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
      clicked.push(this.download)
    })
    await show(<PopupPage tab={null} />)
    await says('cannot be read, or it was altered')
    await says('Nothing is written on top of it.')
    expect(document.body.textContent).not.toContain('Groceries')
    button('Save what is stored to a file').click()
    await says("handed to the browser's downloads")
    expect(clicked).toEqual(['tillside-stored.json'])
    expect(saved).toBeInstanceOf(Blob)
    click.mockRestore()
  })
})

describe('a worker that does not answer', () => {
  it('is said, and asking again draws the household', async () => {
    worker.failure = { code: 'no-answer', message: '' }
    await show(<PopupPage tab={null} />)
    await says('Tillside does not answer')
    worker.failure = null
    button('Try again').click()
    await says('left in all')
  })

  it('shows that it waits, and nothing else, until it answers', async () => {
    let letGo = (): void => {}
    worker.gate = new Promise((resolve) => {
      letGo = resolve
    })
    await show(<PopupPage tab={null} />)
    await until(() => document.querySelector('.skeleton'))
    letGo()
    await until(() => !document.querySelector('.skeleton'))
    await says('left in all')
  })

  it('a refusal is told in its own words', async () => {
    worker.failure = { code: 'unknown-piece', message: 'There is no note of 3.00.' }
    await show(<PopupPage tab={null} />)
    await says('There is no note of 3.00.')
  })
})

describe('the popup’s own address', () => {
  it.each([
    ['?tab=12', 12],
    ['', null],
    ['?tab=', null],
    ['?tab=x', null],
    ['?tab=-1', null],
  ])('%s names the tab %s', (search, tab) => {
    expect(tabOfAddress(search)).toBe(tab)
  })
})

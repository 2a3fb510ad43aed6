// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { PopupPage } from '../../popup/popup-page.tsx'
import { tabOfAddress } from '../../popup/tab-of-address.ts'
import { fresh } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { shopPage, smallHousehold } from './samples.ts'
import { button, says, show, the, type, until } from './screen.tsx'

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

describe('a store of a newer version', () => {
  it('is not called damaged, and the way on is to update', async () => {
    worker.damaged = 'newer'
    await show(<PopupPage tab={null} />)
    const all = await says('written by a newer Tillside')
    expect(all).toContain('Update Tillside in the browser')
    expect(all).not.toContain('damaged')
  })
})

describe('a page that takes long to read', () => {
  const slowly = (): (() => void) => {
    let letGo = (): void => {}
    const read = new Promise<void>((resolve) => {
      letGo = resolve
    })
    const answer = worker.answer.bind(worker)
    worker.answer = async (message, ...more) => {
      if (JSON.stringify(message).includes('checkout.look')) await read
      return answer(message, ...more)
    }
    return letGo
  }

  it('keeps nobody from the balances, and its order is turned to once it is read', async () => {
    worker.checkout = shopPage('55.90')
    const letGo = slowly()
    await show(<PopupPage tab={1} />)
    await says('left in all')
    expect(document.querySelector('.order-form')).toBeNull()
    letGo()
    await until(() => document.querySelector('.order-form'))
  })

  it('turns to no order under the hands of a person who has begun', async () => {
    worker.checkout = shopPage('55.90')
    const letGo = slowly()
    await show(<PopupPage tab={1} />)
    await says('left in all')
    await type(the('.quick-input', HTMLInputElement), '12.50 gro')
    letGo()
    await says('Spend 12.50 cash from Groceries')
    button('This order').click()
    await until(() => document.querySelector('.order-form'))
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

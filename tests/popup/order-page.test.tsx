// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { PopupPage } from '../../popup/popup-page.tsx'
import { calendarDate } from '../../src/index.ts'
import { fresh, state } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { shopPage, smallHousehold } from './samples.ts'
import { button, field, press, says, show, the, until } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

let worker: FakeWorker

beforeEach(async () => {
  worker = fresh(new FakeWorker(calendarDate('2026-12-01'), shopPage('55.90')))
  await worker.answer({ command: 'household.create', ask: smallHousehold })
})

async function open(): Promise<void> {
  await show(<PopupPage tab={7} />)
  await says('Which pot pays?')
}

describe('watching a shop', () => {
  it('asks the browser for this origin in the click itself, then the worker', async () => {
    await open()
    button('Let Tillside hold untagged orders').click()
    // Nothing was awaited yet: the browser's question must be the direct outcome of the click.
    expect(state.requested).toEqual(['https://corvid-books.example/*'])
    await says('Untagged orders on corvid-books.example are held.')
    expect(worker.watched).toEqual(['corvid-books.example'])
  })

  it('takes a no for an answer', async () => {
    state.permits = false
    await open()
    button('Let Tillside hold untagged orders').click()
    await says('The browser gave no permission')
    expect(worker.count('shop.watch')).toBe(0)
  })

  it('is ended by one click, and the permission is given back', async () => {
    worker.checkout = shopPage('55.90', { watched: true })
    await open()
    button('Stop watching').click()
    await says('Let Tillside hold untagged orders')
    expect(state.removed).toContain('https://corvid-books.example/*')
  })
})

describe('a page that cannot be read', () => {
  it('without access: says why, and the total can be typed', async () => {
    worker.checkout = shopPage(null, { page: null, unread: 'no-access' })
    await show(<PopupPage tab={7} />)
    await until(() => document.querySelector('nav'))
    button('This order').click()
    await says('Tillside may read a page only after you press its button there')
    expect(field('Order total').value).toBe('')
    worker.checkout = shopPage('55.90')
    button('Read this page').click()
    await until(() => field('Order total').value === '55.90')
  })

  it('not a web page: says that there is no order here', async () => {
    worker.checkout = new FakeWorker().checkout
    await show(<PopupPage tab={7} />)
    await until(() => document.querySelector('nav'))
    button('This order').click()
    await says('This tab shows no shop')
  })
})

describe('a basket whose total is still to come', () => {
  const cart = (changes: Parameters<typeof shopPage>[1] = {}) => {
    const look = shopPage(null, changes)
    return { ...look, page: look.page && { ...look.page, stage: 'cart' as const, placeOrderCount: 0 } }
  }

  it('is said to be for a pot, which then comes chosen, until it is taken back', async () => {
    worker.checkout = cart()
    await open()
    await press('3', the('.chooser input', HTMLInputElement))
    button('Tag later: only note that this basket is for Garden').click()
    await says('This basket is for Garden, until')
    expect(worker.asked.filter((each) => each.command === 'order.ahead')).toEqual([
      { command: 'order.ahead', ask: { tab: 7, pot: 'garden' } },
    ])
    expect(worker.count('order.tag')).toBe(0)

    worker.checkout = { ...cart(), ahead: worker.checkout.ahead }
    await open()
    await until(() => the('input[value=garden]', HTMLInputElement).checked)
    button('Forget it').click()
    await until(() => !document.body.textContent.includes('This basket is for'))
  })

  it('asks nothing on a page that has neither cart nor checkout', async () => {
    const look = shopPage(null)
    worker.checkout = { ...look, page: look.page && { ...look.page, stage: 'product' } }
    await show(<PopupPage tab={7} />)
    await until(() => document.querySelector('nav'))
    button('This order').click()
    await says('Which pot pays?')
    await press('3', the('.chooser input', HTMLInputElement))
    await until(() => the('input[value=garden]', HTMLInputElement).checked)
    expect(document.body.textContent).not.toContain('Tag later')
  })
})

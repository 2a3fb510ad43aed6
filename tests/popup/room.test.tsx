// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { PopupPage } from '../../popup/popup-page.tsx'
import { storageTold } from '../../src/ui/browser.ts'
import { lowRoom } from '../../src/ui/room.ts'
import { fresh } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { smallHousehold } from './samples.ts'
import { button, says, show } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

const MB = 1_000_000

describe('the room that is left', () => {
  it.each([
    ['plenty', { quota: 9000 * MB, used: 20 * MB, book: 10 * MB }, null],
    ['just enough', { quota: 120 * MB, used: 20 * MB, book: 10 * MB }, null],
    ['little', { quota: 119 * MB, used: 20 * MB, book: 10 * MB }, 99 * MB],
    ['none', { quota: 20 * MB, used: 21 * MB, book: 10 * MB }, 0],
    ['less than a restore of a long book takes', { quota: 400 * MB, used: 250 * MB, book: 80 * MB }, 150 * MB],
    ['untold', { quota: null, used: null, book: 10 * MB }, null],
    ['untold for the book', { quota: 50 * MB, used: 10 * MB, book: null }, 40 * MB],
  ])('%s', (_, told, low) => {
    expect(lowRoom(told)).toBe(low)
  })
})

describe('the popup', () => {
  let worker: FakeWorker
  beforeEach(async () => {
    worker = fresh(new FakeWorker())
    await worker.answer({ command: 'household.create', ask: smallHousehold })
  })
  afterEach(() => void Reflect.deleteProperty(navigator, 'storage'))

  function disk(quota: number, usage: number): void {
    Object.defineProperty(navigator, 'storage', {
      value: { estimate: async () => ({ quota, usage }) },
      configurable: true,
    })
  }

  it('says that room runs out before it does, with what to do', async () => {
    disk(60 * MB, 20 * MB)
    await show(<PopupPage tab={null} />)
    await says('Only 40 MB of room is left')
    expect(button('Save a backup').disabled).toBe(false)
  })

  it('says nothing of it where there is enough, or where the browser does not tell', async () => {
    for (const quota of [9000 * MB, null]) {
      if (quota !== null) disk(quota, 20 * MB)
      else Reflect.deleteProperty(navigator, 'storage')
      await show(<PopupPage tab={null} />)
      await says('left in all')
      // What the notice waits for, and the drawing after it.
      await storageTold()
      await new Promise((done) => setTimeout(done))
      expect(document.body.textContent).not.toContain('room')
    }
  })

  it('a spend the full disk refused says that nothing was written', async () => {
    worker.failure = { code: 'store-full', message: 'x' }
    await show(<PopupPage tab={null} />)
    await says('Nothing was written, and nothing of the book is lost.')
  })
})

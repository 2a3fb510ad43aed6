// @vitest-environment jsdom
import { afterAll, afterEach, beforeAll, beforeEach, expect, it, vi } from 'vitest'
import { en } from '../../src/checkout/lexicon/en.ts'

/*
 * The gate and the reader together on a page that draws itself anew at every key, with the clock in the test's hand: how
 * often the page is read, when, and what the reading asks of the layout.
 */

const asked: { command: string; ask: { page?: { total: unknown } } }[] = []
/** `write` for each drawing by the page, `ask` for each question of ours that makes the browser lay it out. */
const done: ('write' | 'ask')[] = []
const observers: MutationObserver[] = []
let reads = 0

beforeAll(async () => {
  vi.useFakeTimers()
  vi.stubGlobal('chrome', {
    runtime: {
      id: 'tillside',
      onMessage: { addListener: () => {} },
      sendMessage: async (message: (typeof asked)[number]) => {
        asked.push(message)
        return { ok: true, value: { watched: true, pass: null, currency: 'CAD' } }
      },
    },
    i18n: { getMessage: (key: string) => key },
  })
  const observe = MutationObserver.prototype.observe
  vi.spyOn(MutationObserver.prototype, 'observe').mockImplementation(function (this: MutationObserver, ...what) {
    observers.push(this)
    observe.apply(this, what)
  })
  globalThis.tillsideLexicons = [en]
  draw('0.00')
  // In the order of a page: the gate is there from the start, and makes sure that the reader's name is free.
  await import('../../src/guard/gate.ts')
  await import('../../src/guard/reader.ts')
  const reader = globalThis.tillsideReader
  if (!reader) throw new Error('The reader did not come.')
  globalThis.tillsideReader = {
    ...reader,
    seen(currency) {
      reads += 1
      return reader.seen(currency)
    },
  }
  await vi.advanceTimersByTimeAsync(1_000)
  const style = window.getComputedStyle.bind(window)
  vi.spyOn(window, 'getComputedStyle').mockImplementation((element) => {
    done.push('ask')
    return style(element)
  })
  const box = Element.prototype.getBoundingClientRect
  vi.spyOn(Element.prototype, 'getBoundingClientRect').mockImplementation(function (this: Element) {
    done.push('ask')
    return box.call(this)
  })
  // The modules are made ready in here, which takes its time on a busy machine.
}, 60_000)

beforeEach(() => {
  reads = 0
  asked.length = 0
  done.length = 0
})

afterEach(() => vi.clearAllTimers())
// A page that is put away is a change too, and nobody is there any more to see it.
afterAll(() => {
  for (const observer of observers) observer.disconnect()
})

function draw(total: string): void {
  done.push('write')
  document.body.innerHTML = `<h1>Checkout</h1><input name="coupon"><dl><dt>Order total</dt><dd>$${total}</dd></dl>
    <input autocomplete="cc-number"><button>Place order</button>`
}

const seenTotals = (): unknown[] =>
  asked.flatMap(({ command, ask }) => (command === 'page.seen' ? [ask.page?.total] : []))

it('is read once the keys have come to rest, and never between them', async () => {
  for (let key = 1; key <= 40; key += 1) {
    draw(`${key}.00`)
    document.querySelector('input')?.dispatchEvent(new Event('input', { bubbles: true }))
    await vi.advanceTimersByTimeAsync(60)
  }
  expect(reads).toBe(0)
  expect(done).toEqual(Array(40).fill('write'))
  await vi.advanceTimersByTimeAsync(1_000)
  expect(reads).toBe(1)
  expect(seenTotals()).toEqual([{ amount: '40.00', currency: 'CAD' }])
})

it('makes the browser lay the page out at most once for each reading: it asks, and never writes between', async () => {
  for (let round = 1; round <= 3; round += 1) {
    draw(`${round}.50`)
    await vi.advanceTimersByTimeAsync(1_000)
  }
  expect(done.filter((each) => each === 'ask').length).toBeGreaterThan(0)
  // A layout is forced where a question follows a write.
  const forced = done.filter((each, index) => each === 'ask' && done[index - 1] === 'write')
  expect(forced).toHaveLength(3)
  expect(reads).toBe(3)
  expect(seenTotals()).toEqual(['1.50', '2.50', '3.50'].map((amount) => ({ amount, currency: 'CAD' })))
})

it('does not read again while nothing changed, and does when only a style hides the total', async () => {
  draw('7.00')
  await vi.advanceTimersByTimeAsync(1_000)
  done.length = 0
  expect(globalThis.tillsideReader?.seen('CAD').total).toEqual({ amount: '7.00', currency: 'CAD' })
  expect(globalThis.tillsideReader?.seen('CAD').total).toEqual({ amount: '7.00', currency: 'CAD' })
  expect(done).toEqual([])
  const sheet = document.createElement('style')
  sheet.textContent = 'dd { display: none }'
  document.head.append(sheet)
  expect(globalThis.tillsideReader?.seen('CAD').total).toBeNull()
  sheet.remove()
  expect(globalThis.tillsideReader?.seen('CAD').total).toEqual({ amount: '7.00', currency: 'CAD' })
})

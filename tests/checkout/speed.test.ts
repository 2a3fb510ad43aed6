import { JSDOM } from 'jsdom'
import { expect, it } from 'vitest'
import { en } from '../../src/checkout/lexicon/en.ts'
import { createPageReader } from '../../src/checkout/page-reader.ts'
import { readCheckout } from '../../src/checkout/read-checkout.ts'

// A browser reads such a page in some tens of milliseconds; jsdom's getters are many times slower, and the machines that
// run this are shared. The bound catches a reader whose time grows faster than the page, not a slow afternoon.
const BOUND_MS = 5_000

const card = (number: number): string =>
  `<li><a href="/p/${number}"><h3>Thing number ${number}</h3></a><p>Was <del>$${number}.50</del> now <b>$${number}.00</b>, save $0.50</p><span>Free shipping on orders over $50.00</span><button>Add to cart</button></li>`

it('reads a page of 20,000 nodes in time that grows with the page', () => {
  const body = `<h1>Checkout</h1><ul>${Array.from({ length: 1_250 }, (_, index) => card(index + 1)).join('')}</ul>
    <div><span>Subtotal</span><span>$45.00</span></div><div><span>HST</span><span>$5.85</span></div><div><span>Total</span><span>$50.85</span></div>
    <input autocomplete="cc-number"><button>Place order</button>`
  const { document } = new JSDOM(`<html lang="en-CA"><body>${body}</body></html>`).window
  const walker = document.createTreeWalker(document, 0xffffffff)
  let nodes = 0
  while (walker.nextNode()) nodes += 1
  expect(nodes).toBeGreaterThan(20_000)

  const start = performance.now()
  const reading = readCheckout(document, { url: 'https://thimble.example/checkout' })
  expect(performance.now() - start).toBeLessThan(BOUND_MS)
  expect(reading.total).toEqual({ amount: '50.85', currency: 'CAD' })
  expect(reading.placeOrder).toHaveLength(1)
}, 30_000)

it('asks for the style of few elements only', () => {
  const rows = Array.from({ length: 400 }, (_, index) => card(index + 1)).join('')
  const { window } = new JSDOM(
    `<html lang="en-CA"><body><ul>${rows}</ul><p>Total: $50.85</p><button>Place order</button></body></html>`,
  )
  const ask = window.getComputedStyle.bind(window)
  let asked = 0
  window.getComputedStyle = (element) => {
    asked += 1
    return ask(element)
  }
  const reading = readCheckout(window.document, { url: 'https://thimble.example/checkout' })
  expect(reading.total).toEqual({ amount: '50.85', currency: 'CAD' })
  expect(asked).toBeGreaterThan(0)
  expect(asked).toBeLessThan(500)
})

it('looks again only at what changed: a re-read asks few elements anything, however large the page', () => {
  const rows = Array.from({ length: 400 }, (_, index) => card(index + 1)).join('')
  const { window } = new JSDOM(
    `<html lang="en-CA"><body><ul>${rows}</ul><p>Order total: <strong>$50.85</strong></p><button>Place order</button></body></html>`,
  )
  const { document } = window
  const reader = createPageReader(document)
  const observer = new window.MutationObserver(() => {})
  observer.observe(document, { childList: true, subtree: true, characterData: true, attributes: true })
  let walked = 0
  const ask = window.Element.prototype.hasAttributes
  window.Element.prototype.hasAttributes = function () {
    walked += 1
    return ask.call(this)
  }
  const read = (): string | undefined => reader.read({ url: 'https://thimble.example/checkout' }, [en]).total?.amount
  expect(read()).toBe('50.85')
  expect(walked).toBeGreaterThan(2_000)

  walked = 0
  const sum = document.querySelector('strong')
  if (sum) sum.textContent = '$61.20'
  reader.changed(observer.takeRecords())
  expect(read()).toBe('61.20')
  expect(walked).toBeGreaterThan(0)
  expect(walked).toBeLessThan(20)
})

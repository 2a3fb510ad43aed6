import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import type { CheckoutReading } from '../../src/checkout/reading.ts'

// The bad input that the reader must bear: never a hang, never an exception, never a figure that nobody can see. A limit
// stands for "no hang": many times what such a page takes, so that it fails on a hang and not on a slow machine.
const url = 'https://sly.example/checkout'
const PAY = '<input autocomplete="cc-number"><button>Place order</button>'
const REAL = '<p>Subtotal: CA$40.00</p><p>Shipping: CA$6.00</p><p>Total: CA$46.00</p>'
const FORTY_SIX = { amount: '46.00', currency: 'CAD' }
const NO_HANG = 20_000

function read(body: string): CheckoutReading {
  const { document } = new JSDOM(`<!doctype html><html lang="en"><body>${body}</body></html>`, { url }).window
  return readDocument(document)
}

function readDocument(document: Document): CheckoutReading {
  const start = performance.now()
  const reading = readCheckout(document, { url })
  expect(performance.now() - start).toBeLessThan(NO_HANG)
  // A reading that gave up would pass every check of "does not throw".
  expect(reading.evidence.some(({ why }) => why.startsWith('The page could not be read'))).toBe(false)
  return reading
}

describe('large pages', () => {
  it('reads past a megabyte of text before the sums', () => {
    expect(read(`<p>${'words and words, '.repeat(62_000)}</p>${REAL}${PAY}`).total).toEqual(FORTY_SIX)
  })

  it('reads past thousands of prices', () => {
    const prices = Array.from({ length: 2000 }, (_, at) => `<li><a href="/p">Thing ${at}</a> <b>CA$${at}.99</b></li>`)
    const reading = read(`${REAL}${PAY}<ul>${prices.join('')}</ul>`)
    expect(reading.total).toEqual(FORTY_SIX)
    expect(reading.placeOrder).toHaveLength(1)
  }, 60_000)

  it('reads past a megabyte of script, comments and data', () => {
    const noise = `<script>${'total("CA$0.01");'.repeat(30_000)}</script><!-- ${'Total: CA$0.01 '.repeat(30_000)}--><script type="application/ld+json">${'['.repeat(200_000)}</script>`
    expect(read(`${noise}${REAL}${PAY}`).total).toEqual(FORTY_SIX)
  })

  it('takes hundreds of rows that all say total, and names none of them', () => {
    const rows = Array.from({ length: 300 }, (_, at) => `<p>Total: CA$${at + 1}.00</p>`)
    expect(read(`${rows.join('')}${PAY}`).total).toBeNull()
  }, 60_000)
})

describe('broken markup', () => {
  it.each([
    '<table><td>Total<td>CA$46.00</table></div></p></table><b><i></b>',
    '<p>Total: <b>CA$46.00</p></b></span></div>',
    '<dl><dd>CA$46.00<dt>x</dl><div Total="CA$1.00"><p>Total: CA$46.00',
    '<select><option>CA$1.00<p>Total: CA$46.00</select><p>Total: CA$46.00</p>',
    '<p title="<b>Total: CA$1.00</b>">Total: CA$46.00</p><p\u0000 hidden>Total: CA$2.00</p>',
    '<svg><text>Total: CA$1.00</text></svg><math><mi>Total: CA$1.00</mi></math><p>Total: CA$46.00</p>',
    '<noscript><p>Total: CA$1.00</p></noscript><textarea>Total: CA$1.00</textarea><p>Total: CA$46.00</p>',
  ])('%s', (html) => {
    expect(read(`${html}${PAY}`).total).toEqual(FORTY_SIX)
  })
})

describe('texts that show something else than they say', () => {
  it.each([
    ['a right-to-left override turns the digits', '<p>Total: CA$\u202e00.64\u202c</p>'],
    ['an element that overrides direction', '<p>Total: CA$<bdo dir="rtl">00.64</bdo></p>'],
    [
      'a style that overrides direction',
      '<p>Total: CA$<span style="unicode-bidi: bidi-override; direction: rtl">00.64</span></p>',
    ],
    ['letters that look like digits', '<p>Total: CA$4б.OO</p>'],
    ['a letter O for a nought', '<p>Total: CA$46.O0</p>'],
    ['a letter l for a one', '<p>Total: CA$l46.00</p>'],
  ])('%s: no answer rather than a wrong one', (_, html) => {
    expect(read(`${html}${PAY}`).total).toBeNull()
  })

  it.each([
    ['full-width digits', '<p>Total: CA$４６.００</p>'],
    ['mathematical digits', '<p>Total: CA$𝟒𝟔.𝟎𝟎</p>'],
    ['marks of direction that change nothing', '<p>\u200eTotal: \u2068CA$46.00\u2069</p>'],
    ['zero-width signs between digits', '<p>Total: CA$4\u200b6.0\u20600</p>'],
  ])('%s mean what they show', (_, html) => {
    expect(read(`${html}${PAY}`).total).toEqual(FORTY_SIX)
  })
})

describe('a hidden "Total: 0.00"', () => {
  it.each([
    ['white on white', '<p style="color: #fff; background-color: #fff">Amount due: CA$0.00</p>'],
    [
      'white on the white of its box',
      '<div style="background-color: white"><p style="color: white">Amount due: CA$0.00</p></div>',
    ],
    ['no size', '<p style="font-size: 0">Amount due: CA$0.00</p>'],
    ['no height', '<div style="height: 0; overflow: hidden"><p>Amount due: CA$0.00</p></div>'],
    ['no place', '<p style="position: absolute; left: -9999px">Amount due: CA$0.00</p>'],
    ['no opacity', '<p style="opacity: 0">Amount due: CA$0.00</p>'],
    ['in a comment', '<!-- Amount due: CA$0.00 -->'],
    ['in a template', '<template><p>Amount due: CA$0.00</p></template>'],
    ['in a hidden field', '<label>Amount due <input type="hidden" value="CA$0.00"></label>'],
    ['in an attribute', '<p data-total="0.00" title="Amount due: CA$0.00">Thank you</p>'],
    ['in a closed shadow root that nobody can look into', '<x-sum></x-sum>'],
  ])('%s', (_, html) => {
    const { document } = new JSDOM(`<!doctype html><html lang="en"><body>${html}${REAL}${PAY}</body></html>`, { url })
      .window
    const host = document.querySelector('x-sum')
    if (host) host.attachShadow({ mode: 'closed' }).innerHTML = '<p>Amount due: CA$0.00</p>'
    expect(readDocument(document).total).toEqual(FORTY_SIX)
  })
})

it('says at each reading what the page shows then, when a total flips between two values', () => {
  const { document } = new JSDOM(
    `<!doctype html><html lang="en"><body><p>Total: <b id="t">CA$46.00</b></p>${PAY}</body></html>`,
    {
      url,
    },
  ).window
  const shown = document.getElementById('t')
  for (let round = 0; round < 6; round += 1) {
    const amount = round % 2 === 0 ? '46.00' : '0.01'
    if (shown) shown.textContent = `CA$${amount}`
    expect(readDocument(document).total).toEqual({ amount, currency: 'CAD' })
  }
})

it('names none of two totals that are shown at once', () => {
  expect(read(`<p>Total: CA$46.00</p><p>Total: CA$0.01</p>${PAY}`).total).toBeNull()
})

import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { mayBeCheckout } from '../../src/checkout/may-be-checkout.ts'

const page = (body: string): Document => new JSDOM(`<body>${body}</body>`).window.document

// That it says yes to every cart, checkout and confirmation among the pages is checked beside each of them.
describe('the first look', () => {
  it.each([
    [
      'an article',
      'https://journal.example/2026/spring',
      '<h1>Spring in the hills</h1><p>Some 300 people came, and 12 sheep.</p>',
    ],
    ['a product', 'https://thimble.example/mug', '<h1>Enamel mug</h1><p>$15.00</p><button>Add to my shelf</button>'],
    ['a list of products', 'https://thimble.example/mugs', '<ul><li>Mug $15.00</li><li>Sock $9.00</li></ul>'],
    ['nothing', 'https://thimble.example/', ''],
  ])('says no to %s', (_, url, body) => {
    expect(mayBeCheckout(page(body), url)).toBe(false)
  })

  it.each([
    ['an address', 'https://thimble.example/kasse', ''],
    ['a card field', 'https://thimble.example/x', '<input autocomplete="section-a cc-number">'],
    ['a total', 'https://thimble.example/x', '<p>Total</p><p>$55.90</p>'],
    ['a total in Japanese', 'https://thimble.example/x', '<p>合計</p><p>5,590円</p>'],
    ['a total with Arabic digits', 'https://thimble.example/x', '<p>الإجمالي</p><p>١٬٢٣٤٫٥٠ ج.م</p>'],
    ['an order button', 'https://thimble.example/x', '<input type="submit" value="Place order">'],
  ])('says yes to %s', (_, url, body) => {
    expect(mayBeCheckout(page(body), url)).toBe(true)
  })

  it('looks into open shadow roots', () => {
    const document = page('<shop-sum></shop-sum>')
    const root = document.querySelector('shop-sum')?.attachShadow({ mode: 'open' })
    if (root) root.innerHTML = '<p>Order total: $55.90</p>'
    expect(mayBeCheckout(document, 'https://thimble.example/x')).toBe(true)
  })
})

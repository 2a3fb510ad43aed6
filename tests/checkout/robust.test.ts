import fc from 'fast-check'
import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { mayBeCheckout } from '../../src/checkout/may-be-checkout.ts'
import { readCheckout } from '../../src/checkout/read-checkout.ts'

const url = 'https://thimble.example/checkout'
const failed = 'The page could not be read'

function read(document: Document) {
  const reading = readCheckout(document, { url })
  // A reading that gave up would pass every check of "does not throw".
  expect(reading.evidence.some(({ why }) => why.startsWith(failed))).toBe(false)
  return reading
}

describe('a reader that cannot be upset', () => {
  it('reads a document that has no window', () => {
    const { DOMParser } = new JSDOM('').window
    const document = new DOMParser().parseFromString(
      '<p>Total: CA$55.90</p><p hidden>Amount due: CA$1.00</p><input autocomplete="cc-number"><button>Pay now</button>',
      'text/html',
    )
    expect(read(document).total).toEqual({ amount: '55.90', currency: 'CAD' })
  })

  it('reads an empty document, and one without any element', () => {
    const { document } = new JSDOM('').window
    expect(read(document).total).toBeNull()
    document.documentElement.remove()
    expect(read(document)).toMatchObject({ total: null, placeOrder: [] })
    expect(mayBeCheckout(document, 'https://thimble.example/x')).toBe(false)
  })

  it.each(['', 'about:blank', 'not a url', 'https://[', 'data:text/html,x', 'https://thimble.example/%E0%A4%A'])(
    'takes the address "%s"',
    (address) => {
      const { document } = new JSDOM('<p>Total: CA$5.00</p>').window
      expect(readCheckout(document, { url: address }).evidence.length).toBeGreaterThan(0)
    },
  )

  it.each(['xx', 'en-', '-', 'x'.repeat(500), 'en_US.UTF-8', '日本'])('takes the language "%s"', (lang) => {
    const { document } = new JSDOM(`<html lang="${lang}"><body><p>Total: CA$5.00</p></body></html>`).window
    expect(read(document).total).toEqual({ amount: '5.00', currency: 'CAD' })
  })

  it('comes to an end in a page nested deeper than any parser nests', () => {
    const { document } = new JSDOM('<p>Total: CA$5.00</p><button>Pay now</button>').window
    let at: Element = document.body
    for (let depth = 0; depth < 1_200; depth += 1) at = at.appendChild(document.createElement('div'))
    at.textContent = 'Total: CA$1.00'
    expect(read(document).total).toEqual({ amount: '5.00', currency: 'CAD' })
  })

  it('comes to an end in one text of a megabyte', () => {
    const { document } = new JSDOM('<p>Total: CA$5.00</p><p id="x"></p>').window
    const long = document.getElementById('x')
    if (long) long.textContent = '$1 - ( 9,9 '.repeat(90_000)
    expect(read(document).total).toEqual({ amount: '5.00', currency: 'CAD' })
  })

  it('leaves the page as it was', () => {
    const html =
      '<form><p>Total: CA$5.00</p><input readonly value="CA$5.00"><details><p>x</p></details><button>Pay now</button></form>'
    const { document } = new JSDOM(html).window
    const before = document.documentElement.outerHTML
    read(document)
    expect(document.documentElement.outerHTML).toBe(before)
  })

  it('gives evidence that can be sent in a message, but for the elements', () => {
    const { document } = new JSDOM(
      '<p>Total: CA$5.00</p><p>Shipping: CA$1.00</p><input autocomplete="cc-number"><button>Pay now</button>',
    ).window
    const { evidence } = read(document)
    const plain = evidence.map(({ element: _, ...rest }) => rest)
    expect(structuredClone(plain)).toEqual(plain)
    expect(evidence.filter(({ figure, used }) => figure === 'total' && used)).toHaveLength(1)
  })

  const tag = fc.constantFrom(
    'div',
    'span',
    'table',
    'tr',
    'td',
    'th',
    'dl',
    'dt',
    'dd',
    'ul',
    'li',
    'button',
    'a',
    'form',
    'label',
    'select',
    'option',
    'sup',
    'del',
    'details',
    'iframe',
    'x-y',
    'svg',
    'template',
    'dialog',
    'slot',
  )
  const text = fc.oneof(
    fc.constantFrom(
      'Total',
      'Subtotal',
      '$',
      '55',
      '.',
      '90',
      '$5.00',
      '(',
      ')',
      'incl.',
      'Order number',
      '#12',
      '× 2',
      '-',
      'Place order',
      '%',
      'CAD',
      '١٢',
      '円',
    ),
    fc.string({ maxLength: 12 }),
  )
  const attributes = fc.constantFrom(
    {},
    { hidden: '' },
    { style: 'display:none' },
    { 'aria-hidden': 'true' },
    { 'aria-label': 'Total: $1' },
    { id: 'a' },
    { for: 'a' },
    { 'aria-labelledby': 'a b' },
    { role: 'row' },
    { href: '#' },
    { name: 'parentNode' },
    { itemprop: 'price', content: '1,0' },
    { itemscope: '', itemtype: 'x' },
    { popover: '' },
  )
  const { tree } = fc.letrec<{ tree: Tree }>((tie) => ({
    tree: fc.oneof(
      { maxDepth: 6 },
      text.map((words): Tree => words),
      fc.record({ tag, attributes, children: fc.array(tie('tree'), { maxLength: 5 }) }),
    ),
  }))

  it('never throws and never gives up on random pages', () => {
    const { document } = new JSDOM('').window
    fc.assert(
      fc.property(fc.array(tree, { maxLength: 8 }), (trees) => {
        document.body.replaceChildren(...trees.map((each) => grow(document, each)))
        read(document)
        mayBeCheckout(document, 'https://thimble.example/x')
      }),
      { numRuns: 80 },
    )
  }, 60_000)
})

type Tree = string | { tag: string; attributes: Readonly<Record<string, string>>; children: Tree[] }

function grow(document: Document, tree: Tree): Node {
  if (typeof tree === 'string') return document.createTextNode(tree)
  const element = document.createElement(tree.tag)
  for (const [name, value] of Object.entries(tree.attributes)) element.setAttribute(name, value)
  element.append(...tree.children.map((child) => grow(document, child)))
  return element
}

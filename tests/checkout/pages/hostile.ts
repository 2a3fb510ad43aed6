import type { ShopPage } from './page.ts'

const REAL = `<div class="real"><div><span>Subtotal</span><span>$40.00</span></div><div><span>Shipping</span><span>$6.00</span></div>
  <div><span>Total</span><span>$46.00</span></div></div>`
const PAY = '<input autocomplete="cc-number"><button>Place order</button>'

function hiding(name: string, html: string, head = ''): ShopPage {
  return {
    name,
    url: 'https://sly.example/checkout',
    lang: 'en-CA',
    head,
    body: `${html}${REAL}${PAY}`,
    stage: 'checkout',
    total: '46.00 CAD',
    placeOrder: ['Place order'],
  }
}

/** Pages of a shop that wants the guard to read a smaller sum than it charges, or another button than its own. */
export const hostile: readonly ShopPage[] = [
  hiding('the hidden attribute', '<p hidden>Amount due: $0.00</p>'),
  hiding('display: none in a style attribute', '<p style="display: none">Amount due: $0.00</p>'),
  hiding('display: none in a style sheet', '<p class="x">Amount due: $0.00</p>', '<style>.x{display:none}</style>'),
  hiding(
    'display: none on an ancestor',
    '<div class="x"><div><p>Amount due: $0.00</p></div></div>',
    '<style>.x{display:none}</style>',
  ),
  hiding('visibility: hidden', '<p class="x">Amount due: $0.00</p>', '<style>.x{visibility:hidden}</style>'),
  hiding('opacity: 0', '<div class="x"><p>Amount due: $0.00</p></div>', '<style>.x{opacity:0}</style>'),
  hiding(
    'a clipped box',
    '<p class="x">Amount due: $0.00</p>',
    '<style>.x{position:absolute;clip:rect(0 0 0 0)}</style>',
  ),
  hiding('a clip path', '<p class="x">Amount due: $0.00</p>', '<style>.x{clip-path:inset(50%)}</style>'),
  hiding(
    'a box without height',
    '<div class="x"><p>Amount due: $0.00</p></div>',
    '<style>.x{height:0;overflow:hidden}</style>',
  ),
  hiding(
    'far off to the left',
    '<p class="x">Amount due: $0.00</p>',
    '<style>.x{position:absolute;left:-9999px}</style>',
  ),
  hiding(
    'an indent that moves the text away',
    '<p class="x">Amount due: $0.00</p>',
    '<style>.x{text-indent:-9999px}</style>',
  ),
  hiding('letters without size', '<p class="x">Amount due: $0.00</p>', '<style>.x{font-size:0}</style>'),
  hiding('letters without colour', '<p class="x">Amount due: $0.00</p>', '<style>.x{color:transparent}</style>'),
  hiding('shrunk to nothing', '<p class="x">Amount due: $0.00</p>', '<style>.x{transform:scale(0)}</style>'),
  hiding('a closed details', '<details><summary>More</summary><p>Amount due: $0.00</p></details>'),
  hiding('a closed dialog', '<dialog><p>Amount due: $0.00</p></dialog>'),
  hiding('a template', '<template><p>Amount due: $0.00</p></template>'),
  hiding('an aria-hidden copy', '<div aria-hidden="true"><span>Amount due</span><span>$0.00</span></div>'),
  hiding(
    'words for screen readers only',
    '<p class="x">Amount due: $0.00</p>',
    '<style>.x{position:absolute;width:1px;height:1px;overflow:hidden}</style>',
  ),
  hiding(
    'a hidden field',
    '<input type="hidden" name="total" value="0.00"><input type="hidden" autocomplete="transaction-amount" value="0.00">',
  ),
  hiding(
    'a hidden label before a visible small amount',
    '<div><span class="x">Amount due</span><span>$0.01</span></div>',
    '<style>.x{display:none}</style>',
  ),
  hiding(
    'structured data that disagrees with the page',
    '',
    '<script type="application/ld+json">{"@type":"Order","price":"0.01","priceCurrency":"CAD"}</script>',
  ),
  hiding(
    'broken and absurd structured data',
    '',
    '<script type="application/ld+json">{"@type":"Order",,,</script><script type="application/ld+json">[[[[[null]]]]]</script>',
  ),
  hiding('a zero total under a bare label', '<div><span>Total</span><span>$0.00</span></div>'),
  hiding('a comment and a script', '<!-- Amount due: $0.00 --><script>"Amount due: $0.00"</script>'),
  {
    name: 'form fields that hide the methods of their form',
    url: 'https://sly.example/checkout',
    lang: 'en-CA',
    body: `<form><input name="getAttribute"><input name="children"><input name="parentNode"><input name="style"><input name="closest"><input name="matches">
      <input name="localName"><input name="nodeType">${REAL}${PAY}</form>`,
    stage: 'checkout',
    total: '46.00 CAD',
    placeOrder: ['Place order'],
  },
  {
    name: 'hidden buttons that order, and a visible one that goes on',
    url: 'https://sly.example/checkout',
    lang: 'en-CA',
    body: `${REAL}<input autocomplete="cc-number"><button hidden>Place order</button><div style="opacity:0"><button>Pay now</button></div><div inert><button>Pay now</button></div><button>Continue</button>`,
    stage: 'checkout',
    total: '46.00 CAD',
    placeOrder: [],
  },
  {
    name: 'an order button that says pay, on a page that is otherwise a product',
    url: 'https://sly.example/product/1',
    lang: 'en-CA',
    body: '<h1>Lamp</h1><p>$46.00</p><button>Add to cart</button><button>Buy now</button>',
    stage: 'product',
    total: null,
    placeOrder: [],
  },
]

import type { ShopPage } from './page.ts'

const SUM = '<p>Subtotal: $50.00</p><p>Shipping: $5.90</p><p>Order total: $55.90</p>'

function buttons(name: string, html: string, placeOrder: readonly string[], more: Partial<ShopPage> = {}): ShopPage {
  return {
    name,
    url: 'https://thimble.example/checkout/payment',
    lang: 'en-CA',
    body: `${SUM}<input autocomplete="cc-number">${html}`,
    stage: 'checkout',
    total: '55.90 CAD',
    placeOrder,
    ...more,
  }
}

/** What places an order, and what only looks like it. */
export const controls: readonly ShopPage[] = [
  buttons('a link made to look like a button', '<a href="#" role="button" class="btn">Place order</a>', [
    'Place order',
  ]),
  buttons('a box that plays a button', '<div role="button" tabindex="0">Pay CA$55.90</div>', ['Pay CA$55.90']),
  buttons('an input of type button', '<input type="button" value="Buy now">', ['Buy now']),
  buttons('a picture with words', '<input type="image" alt="Complete order" src="x.png">', ['Complete order']),
  buttons('an icon named by its label', '<button aria-label="Place order"><svg></svg></button>', ['Place order']),
  buttons('a custom element whose inside is closed', '<pay-button>Pay now</pay-button>', ['Pay now'], {
    prepare: (document) => {
      const root = document.querySelector('pay-button')?.attachShadow({ mode: 'closed' })
      if (root) root.innerHTML = '<button><slot></slot></button>'
    },
  }),
  buttons('a button packed in a custom element', '<pay-area><button>Pay now</button></pay-area>', ['Pay now']),
  buttons(
    'a button above and outside the form',
    '<button form="f">Place order</button><form id="f"><input name="note"></form>',
    ['Place order'],
  ),
  buttons('express buttons beside the real one', '<button>Pay with QuickPurse</button><button>Place order</button>', [
    'Pay with QuickPurse',
    'Place order',
  ]),
  buttons(
    'only going on',
    '<button>Continue to payment</button><button>Proceed to checkout</button><a href="/">Continue shopping</a><button>Back</button>',
    [],
  ),
  buttons(
    'other intents of the same form',
    '<form><button>Apply coupon</button><button>Update cart</button><button>Remove</button><button>Place order</button></form>',
    ['Place order'],
  ),
  buttons('confirm, where nothing else says more', '<button>Confirm</button>', ['Confirm']),
  buttons('confirm beside a button that says more', '<button>Confirm</button><button>Pay now</button>', ['Pay now']),
  buttons('completing without a word of paying', '<button>Complete booking</button>', ['Complete booking']),
  buttons('a subscription', '<button>Start membership</button><button>Sign up for our newsletter</button>', [
    'Start membership',
  ]),
  buttons(
    'withdrawing is not ordering',
    '<button>Withdraw from contract here</button><button>Cancel order</button><button>Track your order</button>',
    [],
  ),
  buttons('words beside the button do not count', '<p>Place order</p><button>Next</button>', []),
  buttons(
    'a heading of a payment method that opens',
    '<button aria-expanded="false">Pay with card</button><button role="tab" aria-selected="true">Pay by invoice</button><button>Pay now</button>',
    ['Pay now'],
  ),
  buttons('a menu that says order', '<nav><a href="/order">Order now</a></nav><button>Place order</button>', [
    'Place order',
  ]),
  buttons('capitals, arrows and no-break spaces', '<button>PLACE\u00a0ORDER →</button>', ['PLACE ORDER →']),
  buttons(
    'a long sentence is no button',
    '<a href="/terms">By placing your order you agree to pay and to our terms and conditions of sale</a><button>Pay now</button>',
    ['Pay now'],
  ),
]

function done(name: string, html: string, orderNumber: string | null, more: Partial<ShopPage> = {}): ShopPage {
  return {
    name,
    url: 'https://thimble.example/checkout/complete',
    lang: 'en-CA',
    body: `<h1>Thank you for your order!</h1>${html}`,
    stage: 'confirmation',
    total: null,
    ...(orderNumber === null ? {} : { orderNumber }),
    ...more,
  }
}

/** How an order's number is written. */
export const numbers: readonly ShopPage[] = [
  done('in a sentence', '<p>Your order number is 100045.</p>', '100045'),
  done('with a number sign', '<p>Order #1001</p>', '1001'),
  done('with a prefix, after "order no."', '<p>Order no.: <b>W-2026-0099</b></p>', 'W-2026-0099'),
  done('with slashes', '<dl><dt>Order reference</dt><dd>AB/2026/55</dd></dl>', 'AB/2026/55'),
  done(
    'leading zeros in a cell',
    '<table><tr><th>Order number</th><td>00000815</td></tr><tr><th>Date</th><td>12/05/2026</td></tr></table>',
    '00000815',
  ),
  done('letters only', '<p>Confirmation number: <strong>QWXRTK</strong></p>', 'QWXRTK'),
  done('in "your order ... has been placed"', '<p>Your order 778812 has been placed.</p>', '778812'),
  done(
    'between other numbers',
    '<p>Tracking number: 1Z999</p><p>Customer number: 4411</p><p>Order number: 5522</p><p>Transaction ID: 9981</p><p>Phone: 555-0100</p>',
    '5522',
  ),
  done('none at all', '<p>We will send a message to odile@maple.example.</p><p>Order date: 12 May 2026</p>', null),
  done('only in structured data', '<p>We are packing it.</p>', '123-4567890-1234567', {
    head: '<script type="application/ld+json">{"@context":"http://schema.org","@type":"Order","orderNumber":"123-4567890-1234567","priceCurrency":"USD","price":"29.99","acceptedOffer":{"@type":"Offer","itemOffered":{"@type":"Product","name":"Lamp"},"price":"29.99","priceCurrency":"USD"}}</script>',
  }),
  done(
    'in French, with a sign for "number" glued to nothing',
    '<p>Votre commande <b>nº 004181</b> est confirmée.</p><p>Montant payé <b>45,53 $</b></p>',
    '004181',
    {
      lang: 'fr-CA',
      url: 'https://cabane-laine.example/merci/004181',
      total: '45.53 CAD',
    },
  ),
  done(
    'with the sum in a sentence',
    '<p>Order number: 5522</p><p>Your card ending in 0017 pays <b>$37.64</b>.</p>',
    '5522',
    { total: '37.64 CAD' },
  ),
  done('under its label', '<div><div>Order ID</div><div>MT-77-1</div></div>', 'MT-77-1'),
  done(
    'with the sum, and nothing left to pay',
    '<p>Order number: 5522</p><p>Total: CA$55.90</p><p>Paid: CA$55.90</p><p>Balance due: CA$0.00</p>',
    '5522',
    { total: '55.90 CAD' },
  ),
]

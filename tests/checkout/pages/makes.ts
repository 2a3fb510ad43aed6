import type { ShopPage } from './page.ts'

const CARD = '<input autocomplete="cc-number">'
const BUTTON = '<button>Place order</button>'

function sum(name: string, html: string, total: string | null, more: Partial<ShopPage> = {}): ShopPage {
  return {
    name,
    url: 'https://thimble.example/checkout',
    lang: 'en-CA',
    body: `${html}${CARD}${BUTTON}`,
    stage: 'checkout',
    total,
    placeOrder: ['Place order'],
    ...more,
  }
}

/** Ways to write a label and its amount. */
export const makes: readonly ShopPage[] = [
  sum('a heading with the amount in it', '<h3>Total: $55.90</h3>', '55.90 CAD'),
  sum('a heading above the amount', '<section><h3>Total</h3><p>2 items</p><p>$55.90</p></section>', '55.90 CAD'),
  sum('a label in an element, the amount a bare text node', '<div><span>Total</span> $55.90</div>', '55.90 CAD'),
  sum('a bare label, the amount in an element', '<div>Total <span>$55.90</span></div>', '55.90 CAD'),
  sum('a count in brackets between them', '<div>Total (2 items): <b>$55.90</b></div>', '55.90 CAD'),
  sum('all in one cell', '<table><tr><td colspan="2">Total: $55.90</td></tr></table>', '55.90 CAD'),
  sum('a dash between label and amount', '<p>Order total - $55.90</p>', '55.90 CAD'),
  sum('the code in an element before the amount', '<p>Total <small>CAD</small> <b>$55.90</b></p>', '55.90 CAD', {
    lang: 'en',
  }),
  sum('the code as a text node behind the amount', '<p>Total <b>55.90</b> CAD</p>', '55.90 CAD', { lang: 'en' }),
  sum('the sign as a text node before the amount', '<p>Total: $<b>55.90</b></p>', '55.90 CAD'),
  sum('the code in the label, a bare number', '<p>Total (CAD)</p><p>55.90</p>', '55.90 CAD', { lang: 'en' }),
  sum(
    'whole, mark and cents in boxes of their own',
    '<div>Total <div class="p"><div>$</div><div>55</div><div>.</div><div>90</div></div></div>',
    '55.90 CAD',
  ),
  sum('whole with its mark, then cents', '<p>Total <span>$55.</span><span>90</span></p>', '55.90 CAD'),
  sum('cents raised, sign behind', '<p>Total <span>55</span><sup>90</sup> $</p>', '55.90 CAD'),
  sum(
    'one element for each digit',
    '<p>Total <span>$</span><span>5</span><span>5</span><span>.</span><span>9</span><span>0</span></p>',
    '55.90 CAD',
  ),
  sum(
    'an output with a label of its own',
    '<label for="t">Total</label><div><output id="t">$55.90</output></div>',
    '55.90 CAD',
  ),
  sum(
    'named by aria-labelledby',
    '<span id="l">Amount due</span><p>Some words that stand between the two.</p><b aria-labelledby="l">$55.90</b>',
    '55.90 CAD',
  ),
  sum(
    'named by aria-label alone',
    '<div role="group" aria-label="Order total: $55.90"><b>$55.90</b></div>',
    '55.90 CAD',
  ),
  sum(
    'a sticky bar beside the button',
    '<div class="sticky"><div><small>Total</small><b>$55.90</b></div></div>',
    '55.90 CAD',
  ),
  sum(
    'custom elements',
    '<sum-line><line-label>Total</line-label><line-amount>$55.90</line-amount></sum-line>',
    '55.90 CAD',
  ),
  sum(
    'a table whose heads are the labels',
    '<table><tr><th>Subtotal</th><th>Shipping</th><th>Total</th></tr><tr><td>$50.00</td><td>$5.90</td><td>$55.90</td></tr></table>',
    '55.90 CAD',
    {
      parts: ['items 50.00', 'shipping 5.90'],
    },
  ),
  sum(
    'a flat run of labels and amounts',
    '<div><span>Subtotal</span><span>$50.00</span><span>Tax</span><span>$5.90</span><span>Total</span><span>$55.90</span></div>',
    '55.90 CAD',
    {
      parts: ['items 50.00', 'tax 5.90'],
    },
  ),
  sum(
    'a flat run of amounts and labels',
    '<div><b>$50.00</b><i>Subtotal</i><b>$5.90</b><i>Tax</i><b>$55.90</b><i>Total</i></div>',
    '55.90 CAD',
    {
      parts: ['items 50.00', 'tax 5.90'],
    },
  ),
  sum('lines broken by br', '<p>Subtotal: $50.00<br>Shipping: $5.90<br>Total: $55.90</p>', '55.90 CAD', {
    parts: ['items 50.00', 'shipping 5.90'],
  }),
  sum('one sentence of text', '<p>Subtotal $50.00 + shipping $5.90 = total $55.90</p>', '55.90 CAD'),
  sum(
    'an old total struck through by style',
    '<p>Total <span class="o">$64.00</span> <span>$55.90</span></p>',
    '55.90 CAD',
    { head: '<style>.o{text-decoration:line-through}</style>' },
  ),
  sum('an old total struck through by markup, behind', '<p>Total <span>$55.90</span> <s>$64.00</s></p>', '55.90 CAD'),
  sum(
    'a copy for screen readers without any style sheet',
    '<p>Total <span class="visually-hidden">$55.90</span><span aria-hidden="true">$55<sup>90</sup></span></p>',
    '55.90 CAD',
  ),
  sum('large amounts grouped', '<p>Total: CA$12,345.60</p>', '12345.60 CAD'),
  sum('a free order', '<p>Subtotal: $20.00</p><p>Voucher: -$20.00</p><p>Total: $0.00</p>', '0.00 CAD'),
  sum('a same-origin frame holds the sums', '<iframe id="f"></iframe>', '55.90 CAD', {
    prepare: (document) => {
      const inner = document.querySelector('iframe')?.contentDocument
      if (inner?.body) inner.body.innerHTML = '<p>Subtotal: $50.00</p><p>Shipping: $5.90</p><p>Total: $55.90</p>'
    },
  }),
]

/** Figures near the total that are not it. */
export const decoys: readonly ShopPage[] = [
  sum(
    'points beside the total',
    '<p>Total: <b>$55.90</b> <small>earn 559 points</small></p><p>You earn $0.56 in rewards</p>',
    '55.90 CAD',
  ),
  sum(
    'a later, recurring sum',
    '<p>Total due today: $9.99</p><p>Then $29.99 / month</p><p>Recurring total: $29.99</p>',
    '9.99 CAD',
  ),
  sum(
    'a free trial',
    '<p>Subtotal: $29.99</p><p>Trial discount: -$29.99</p><p>Due today: $0.00</p><p>Renews at $29.99 per month</p>',
    '0.00 CAD',
  ),
  sum(
    'sums of several sellers',
    '<div><p>Seller A total: $20.00</p></div><div><p>Seller B total: $30.00</p></div><div><p>Order total: $50.00</p></div>',
    '50.00 CAD',
  ),
  sum(
    'a total in every line of the items',
    '<table><tr><td>Mug</td><td>Qty: 2</td><td><span>Total</span> $40.00</td></tr><tr><td>Sock</td><td>Qty: 1</td><td><span>Total</span> $10.00</td></tr></table><p>Shipping: $5.90</p><p>Total: $55.90</p>',
    '55.90 CAD',
    {
      items: ['2 Mug 40.00', '1 Sock 10.00'],
    },
  ),
  sum(
    'every line that a large shop shows',
    '<p>Items (2): $50.00</p><p>Shipping & handling: $5.90</p><p>Total before tax: $55.90</p><p>Estimated tax to be collected: $7.27</p><p>Order total: $63.17</p>',
    '63.17 CAD',
  ),
  sum(
    'savings that are larger than the total',
    '<p>Total savings: $80.00</p><p>You saved $80.00!</p><p>Total: $55.90</p>',
    '55.90 CAD',
  ),
  sum(
    'a threshold behind the total',
    '<p>Total: $55.90</p><p>Free shipping on orders over $75.00</p><p>Minimum order: $10.00</p>',
    '55.90 CAD',
  ),
  sum('an instalment plan in words', '<p>Total: $55.90</p><p>4 interest-free payments of $13.98</p>', '55.90 CAD'),
  sum(
    'a deposit due now',
    '<p>Order total: $500.00</p><p>Due now: $100.00</p><p>Balance due later: $400.00</p>',
    '100.00 CAD',
  ),
  sum(
    'what the card is charged, in another currency than the shop shows',
    '<p>Total: €40.00</p><p>You will be charged: CA$58.40</p>',
    '58.40 CAD',
  ),
  sum(
    'reviews, years and sizes',
    '<p>4.85 (1,204 reviews)</p><p>© 2026</p><p>Size 12.50 cm</p><p>Total: $55.90</p>',
    '55.90 CAD',
  ),
  sum(
    'other things to buy',
    '<p>Total: $55.90</p><ul><li>Mug <b>$12.00</b> <button>Add to cart</button></li><li>Sock <b>$9.00</b> <button>Add to cart</button></li></ul>',
    '55.90 CAD',
  ),
  sum('two prices with a dash', '<p>Total: $50.00 - $60.00</p>', null),
  sum('shipping alone', '<p>Shipping total: $5.90</p><p>Tax total: $1.00</p>', null),
]

/** Which money a sign means. */
export const signs: readonly ShopPage[] = [
  sum('the end of the host name', '<p>Total: $55.90</p>', '55.90 AUD', {
    lang: 'en',
    url: 'https://thimble-example.com.au/checkout',
  }),
  sum('the host outweighs a language that themes ship with', '<p>Total: $55.90</p>', '55.90 CAD', {
    lang: 'en-US',
    url: 'https://thimble-example.ca/checkout',
  }),
  sum(
    'the names of taxes',
    '<p>Subtotal: $50.00</p><p>GST (5%): $2.50</p><p>QST: $4.99</p><p>Total: $57.49</p>',
    '57.49 CAD',
    { lang: 'en' },
  ),
  sum('structured data', '<p>Total: $55.90</p>', '55.90 NZD', {
    lang: 'en',
    head: '<script type="application/ld+json">{"@graph":[{"@type":"WebPage"},{"@type":"Product","offers":{"price":"55.90","priceCurrency":"NZD"}}]}</script>',
  }),
  sum(
    'the autofill token',
    '<input type="hidden" autocomplete="transaction-currency" value="SGD"><p>Total: $55.90</p>',
    '55.90 SGD',
    { lang: 'en' },
  ),
  sum('another amount that names it', '<p>Subtotal: CA$50.00</p><p>Total: $55.90</p>', '55.90 CAD', { lang: 'en' }),
  sum('Swedish crowns', '<p>Subtotal: 500 kr</p><p>Shipping: 49 kr</p><p>Total: 549 kr</p>', '549 SEK', { lang: 'sv' }),
  sum('Norwegian crowns with a dash for the cents', '<p>Total: kr 549,-</p>', '549 NOK', { lang: 'nb-NO' }),
  sum('Danish crowns by the host', '<p>Total: 1.549,00 kr.</p>', '1549.00 DKK', {
    lang: 'en',
    url: 'https://thimble-example.dk/checkout',
  }),
  sum('yen by the host', '<p>Total: ¥1,200</p>', '1200 JPY', {
    lang: 'en',
    url: 'https://thimble-example.jp/checkout',
  }),
  sum('pounds', '<p>Total: £55.90</p>', '55.90 GBP', { lang: 'en' }),
  sum('crowns that nothing explains', '<p>Total: 549 kr</p>', null, { lang: 'en' }),
  sum('a household currency that the sign cannot mean', '<p>Total: 549 kr</p>', null, { lang: 'en', currency: 'CAD' }),
  sum('a household currency that the sign can mean', '<p>Total: 549 kr</p>', '549 DKK', {
    lang: 'en',
    currency: 'DKK',
  }),
  sum('the page outweighs the household', '<p>Total: $55.90</p>', '55.90 CAD', { currency: 'USD' }),
  sum('a bare number with nothing at all', '<p>Total: 55.90</p>', null, { lang: 'en', currency: 'CAD' }),
  sum('rupees grouped the Indian way', '<p>Total: ₹1,29,900.00</p>', '129900.00 INR', { lang: 'en-IN' }),
  sum('a language that contradicts the host', '<p>Total: $55.90</p>', '55.90 CAD', {
    lang: 'en-CA',
    url: 'https://thimble-example.com.au/checkout',
  }),
]

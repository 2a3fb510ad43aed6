import type { ShopPage } from './page.ts'

function sum(name: string, html: string, total: string | null, lang = 'en-CA'): ShopPage {
  return {
    name,
    url: 'https://thimble.example/checkout',
    lang,
    body: `${html}<input autocomplete="cc-number"><button>Place order</button>`,
    stage: 'checkout',
    total,
    placeOrder: ['Place order'],
  }
}

/** More ways in which a total is written, one at a time. */
export const odd: readonly ShopPage[] = [
  sum(
    'cells named by an attribute alone',
    '<table><tr><td data-title="Subtotal">$50.00</td><td data-title="Total">$55.90</td></tr></table>',
    '55.90 CAD',
  ),
  sum('text nodes parted by comments', '<p>Total: <!-- -->$<!-- -->55.90</p>', '55.90 CAD'),
  sum(
    'an amount in four text nodes',
    '<div><span>Total</span><span>CA$<!-- -->1,055<!-- -->.<!-- -->90</span></div>',
    '1055.90 CAD',
  ),
  sum('a sentence', '<p>Your order total is $55.90 including taxes.</p>', '55.90 CAD'),
  sum('the currency in words', '<p>Total: 55.90 Canadian dollars</p>', '55.90 CAD', 'en'),
  sum(
    'the sign beside a field',
    '<label>Total</label><span class="addon">$</span><input readonly value="55.90">',
    '55.90 CAD',
  ),
  sum('a note under the label', '<dl><dt>Total<br><small>Tax included</small></dt><dd>$55.90</dd></dl>', '55.90 CAD'),
  sum(
    'the code in a cell of its own',
    '<table><tr><td>Subtotal</td><td>CAD</td><td>50.00</td></tr><tr><td>Shipping</td><td>CAD</td><td>5.90</td></tr><tr><td>Total</td><td>CAD</td><td>55.90</td></tr></table>',
    '55.90 CAD',
    'en',
  ),
  sum('the amount in the row below', '<table><tr><td>Total</td></tr><tr><td>$55.90</td></tr></table>', '55.90 CAD'),
  sum(
    'a button between label and amount',
    '<div><span>Total</span><button aria-label="info">Info</button><span>$55.90</span></div>',
    '55.90 CAD',
  ),
  sum(
    'a hint between label and amount',
    '<div><span>Total</span><span role="tooltip">Includes all taxes and fees and shipping costs to your address</span><b>$55.90</b></div>',
    '55.90 CAD',
  ),
  sum(
    'a booking, part of it paid now',
    '<p>Total for 3 nights: $300.00</p><p>Due at property: $250.00</p><p>Pay now: $50.00</p>',
    '50.00 CAD',
  ),
  sum('a code before the amount', '<p>Total: USD 55.90</p>', '55.90 USD'),
  sum(
    'tables in tables',
    '<table><tr><td><table><tr><td>Items</td><td>$50.00</td></tr></table></td></tr><tr><td><table><tr><td>Total</td><td>$50.00</td></tr></table></td></tr></table>',
    '50.00 CAD',
  ),
  sum(
    'a note that names the currency',
    '<div class="total"><span>Total</span><span>$55.90</span><span>CAD</span></div><p>Prices in Canadian dollars.</p>',
    '55.90 CAD',
    'en',
  ),
  sum(
    'a remark with an amount, between',
    '<div><div>Total</div><div>Including $5.08 in taxes</div><div>$55.90</div></div>',
    '55.90 CAD',
  ),
  sum(
    'a remark with an amount, under the label',
    '<div><div><div>Total</div><div>Including $5.08 in taxes</div></div><div>$55.90</div></div>',
    '55.90 CAD',
  ),
  sum('a colon between two elements', '<p><strong>Total</strong>: <strong>$55.90</strong></p>', '55.90 CAD'),
  sum('capitals and no-break spaces', '<p>TOTAL&nbsp;DUE&nbsp;&nbsp;$55.90</p>', '55.90 CAD'),
  sum('"US $"', '<p>Total <span>US $55.90</span></p>', '55.90 USD'),
  sum('"$ CA"', '<p>Total : 55,90 $ CA</p>', '55.90 CAD', 'fr'),
  sum('the sign behind', '<p>Total: 55.90$</p>', '55.90 CAD'),
  sum('less than one', '<p>Total: $0.90</p>', '0.90 CAD'),
  sum('no cents', '<p>Total: $55</p>', '55 CAD'),
  sum('a no-break space for thousands', '<p>Total : 1 055,90 $</p>', '1055.90 CAD', 'fr-CA'),
  sum('footnotes raised', '<p>Total<sup>1</sup>: $55.90<sup>2</sup></p>', '55.90 CAD'),
  sum('footnotes as stars', '<p>Total* $55.90*</p>', '55.90 CAD'),
  sum(
    'a button that repeats the total for screen readers',
    '<button aria-label="Total $55.90, show details">Details</button><p>Total <b>$55.90</b></p>',
    '55.90 CAD',
  ),
  sum(
    'a discount in percent',
    '<p>Subtotal $60.00</p><p>You save 10% -$6.00</p><p>Shipping $1.90</p><p>Total $55.90</p>',
    '55.90 CAD',
  ),
  sum('a former price in words', '<p>Total <small>was $64.00</small> <b>$55.90</b></p>', '55.90 CAD'),
  sum('a date near by', '<p>Amount due: $55.90</p><p>Due on 12.05.2026</p>', '55.90 CAD'),
  sum(
    'an item row before the total',
    '<table><tr><td>Mug</td><td>2</td><td>$10.00</td><td>$20.00</td></tr><tr><td colspan=3>Total</td><td>$20.00</td></tr></table>',
    '20.00 CAD',
  ),
  sum('a total of things', '<p>Total items: 3</p><p>Total: $55.90</p>', '55.90 CAD'),
  sum(
    'cards and balances',
    '<p>Visa ending in 4242</p><p>Order total</p><p>$55.90</p><p>Gift card balance $12.00</p>',
    '55.90 CAD',
  ),
  sum('paying in four', '<p>Total $55.90</p><p>Pay in 4 interest-free payments of $13.98</p>', '55.90 CAD'),
  sum('free shipping', '<p>Subtotal $55.90</p><p>Shipping FREE</p><p>Total $55.90</p>', '55.90 CAD'),
  sum(
    'the total before the items',
    '<div><b>Total</b><b>$55.90</b></div><ul><li>Mug $50.00</li><li>Shipping $5.90</li></ul>',
    '55.90 CAD',
  ),
  sum('a tax on a base', '<p>Subtotal $50.00</p><p>Tax 5% on $50.00: $2.50</p><p>Total $52.50</p>', '52.50 CAD'),
  sum(
    'taxes and their sum',
    '<p>Subtotal $50.00</p><p>GST $2.50</p><p>QST $4.99</p><p>Taxes $7.49</p><p>Total $57.49</p>',
    '57.49 CAD',
  ),
  sum('character references', '<p>Total&colon; &dollar;55.90</p>', '55.90 CAD'),
  sum('direction marks', '<p>Total: \u200e$\u200e55.90</p>', '55.90 CAD'),
  sum('a deposit on bottles', '<p>Bottle deposit $1.00</p><p>Items $54.90</p><p>Total $55.90</p>', '55.90 CAD'),
  sum(
    'a table made of roles',
    '<div role="row"><div role="rowheader">Total</div><div role="cell">$55.90</div></div>',
    '55.90 CAD',
  ),
  sum('a data element', '<p>Total <data value="55.90">$55.90</data></p>', '55.90 CAD'),
  sum('a hidden summary first', '<div hidden><p>Total $1.00</p></div><p>Total $55.90</p>', '55.90 CAD'),
  sum('about so much', '<p>Total: approx. $55.90</p>', null),
  sum('to be determined', '<p>Subtotal $50.00</p><p>Total TBD</p>', null),
]

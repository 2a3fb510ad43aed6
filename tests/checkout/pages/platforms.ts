import type { ShopPage } from './page.ts'

const price = (whole: string, cents: string): string =>
  `<span class="amount"><bdi><span class="sign">$</span>${whole}.${cents}</bdi></span>`

/** Pages in the manner of whole shop systems, with everything around the sums that such pages have. */
export const platforms: readonly ShopPage[] = [
  {
    name: 'a review table with shipping options inside the sums and payment methods below',
    url: 'https://maple-thimble.example/checkout/',
    lang: 'en-CA',
    title: 'Checkout – Maple & Thimble',
    body: `<header><nav><a href="/">Home</a><a href="/shop">Shop</a><a href="/cart">Cart ${price('30', '00')} <span>2 items</span></a></nav></header>
      <main><h1>Checkout</h1><form name="checkout">
      <h3>Billing details</h3><input autocomplete="given-name" name="first"><input autocomplete="address-line1" name="street"><input autocomplete="postal-code" name="code">
      <h3>Your order</h3>
      <table><thead><tr><th>Product</th><th>Subtotal</th></tr></thead>
        <tbody><tr><td>Enamel mug&nbsp; <strong>×&nbsp;2</strong></td><td>${price('30', '00')}</td></tr></tbody>
        <tfoot><tr><th>Subtotal</th><td>${price('30', '00')}</td></tr>
          <tr><th>Shipping</th><td><ul><li><input type="radio" name="ship" id="s1"><label for="s1">By drone: ${price('12', '00')}</label></li>
            <li><input type="radio" name="ship" id="s2" checked><label for="s2">Flat rate: ${price('5', '00')}</label></li></ul></td></tr>
          <tr><th>HST</th><td>${price('4', '55')}</td></tr>
          <tr><th>Total</th><td><strong>${price('39', '55')}</strong></td></tr></tfoot></table>
      <ul><li><input type="radio" name="payment_method" id="p1" checked><label for="p1">Bank transfer</label></li><li><input type="radio" name="payment_method" id="p2"><label for="p2">Card</label></li></ul>
      <p>By placing your order you agree to our <a href="/terms">terms and conditions</a>.</p>
      <button type="submit" id="place_order" name="place" value="Place order">Place order</button></form></main>
      <footer><p>Free shipping on orders over $75.00</p><p>© 2026</p></footer>`,
    stage: 'checkout',
    total: '39.55 CAD',
    placeOrder: ['Place order'],
    parts: ['items 30.00', 'shipping 5.00', 'tax 4.55'],
    items: ['2 Enamel mug 30.00'],
  },
  {
    name: 'a confirmation with an overview list and the same sums in a table',
    url: 'https://maple-thimble.example/checkout/order-received/4711/?key=abc',
    lang: 'en-CA',
    body: `<main><p>Thank you. Your order has been received.</p>
      <ul><li>Order number: <strong>4711</strong></li><li>Date: <strong>May 12, 2026</strong></li><li>Email: <strong>odile@maple.example</strong></li><li>Total: <strong>${price('39', '55')}</strong></li><li>Payment method: <strong>Bank transfer</strong></li></ul>
      <h2>Order details</h2><table><thead><tr><th>Product</th><th>Total</th></tr></thead><tbody><tr><td><a href="/mug">Enamel mug</a> <strong>×&nbsp;2</strong></td><td>${price('30', '00')}</td></tr></tbody>
      <tfoot><tr><th>Subtotal:</th><td>${price('30', '00')}</td></tr><tr><th>Shipping:</th><td>${price('5', '00')} <small>via Flat rate</small></td></tr><tr><th>HST:</th><td>${price('4', '55')}</td></tr><tr><th>Payment method:</th><td>Bank transfer</td></tr><tr><th>Total:</th><td>${price('39', '55')}</td></tr></tfoot></table>
      <h2>Our bank details</h2><p>Account number: 1234567</p></main>`,
    stage: 'confirmation',
    total: '39.55 CAD',
    orderNumber: '4711',
    parts: ['items 30.00', 'shipping 5.00', 'tax 4.55'],
    items: ['2 Enamel mug 30.00'],
  },
  {
    name: 'two columns, items with badges, a discount field, a total with its currency before it',
    url: 'https://pay.harbour-tin.example/checkouts/c/9f8e/information',
    lang: 'en-US',
    body: `<main><h1 class="sr-only">Checkout</h1><h2>Contact</h2><input autocomplete="email"><h2>Delivery</h2><input autocomplete="postal-code"><h2>Payment</h2><iframe title="Field container for: Card number"></iframe>
      <button type="submit"><span>Pay now</span></button></main>
      <aside><div class="row"><div><span>2</span><img alt=""></div><div><p>Tin lantern</p><p>Blue</p></div><div><p><s>$60.00</s></p><p>$50.00</p></div></div>
        <input placeholder="Discount code"><button>Apply</button>
        <div role="table"><div role="row"><div>Subtotal · 2 items</div><div>$50.00</div></div>
        <div role="row"><div>Shipping</div><div>$7.95</div></div>
        <div role="row"><div>Estimated taxes</div><div>$4.13</div></div>
        <div role="row"><div><strong>Total</strong></div><div><div><abbr>USD</abbr><strong>$62.08</strong></div></div></div>
        <div role="row"><div><strong>TOTAL SAVINGS</strong></div><div>$10.00</div></div></div></aside>`,
    stage: 'checkout',
    total: '62.08 USD',
    placeOrder: ['Pay now'],
    parts: ['items 50.00', 'shipping 7.95', 'tax 4.13'],
  },
  {
    name: 'a one-page checkout with steps, sums in a card, the total with its tax below',
    url: 'https://verger.example/fr/commande',
    lang: 'fr-FR',
    body: `<section><h1>1 Informations personnelles</h1></section><section><h1>2 Adresses</h1><input autocomplete="street-address"></section>
      <section><h1>3 Mode de livraison</h1><div><label><input type="radio" name="l" checked><span>Transporteur</span><span>Demain</span><span>7,00 € TTC</span></label></div><div><label><input type="radio" name="l"><span>Retrait</span><span>gratuit</span></label></div></section>
      <section><h1>4 Paiement</h1><div><input type="radio" name="payment-option" id="o1" checked><label for="o1">Payer par carte</label></div><div><input type="checkbox" id="cgv"><label for="cgv">J'ai lu les conditions générales de vente</label></div>
      <button class="btn">Commander</button></section>
      <aside class="card"><p>2 articles</p><ul><li><span>Pommes</span><span>x1</span><span>11,90 €</span></li><li><span>Poires</span><span>x2</span><span>28,00 €</span></li></ul>
      <div><span>Sous-total</span><span>39,90 €</span></div><div><span>Livraison</span><span>7,00 €</span></div>
      <div><span>Total&nbsp;TTC</span><span>46,90 €</span></div><div><span>Taxes incluses</span><span>7,82 €</span></div></aside>`,
    stage: 'checkout',
    total: '46.90 EUR',
    placeOrder: ['Commander'],
    parts: ['items 39.90', 'shipping 7.00'],
    items: ['1 Pommes 11.90', '2 Poires 28.00'],
  },
  {
    name: 'a German last page: list head, item with its tax, sums as list, button below',
    url: 'https://lindgruen.example/checkout/confirm',
    lang: 'de-DE',
    title: 'Bestellung abschließen',
    body: `<main><h1>Bestellung abschließen</h1><div><input type="checkbox" id="tos" required><label for="tos">Ich habe die AGB gelesen und akzeptiert.</label></div>
      <h2>Zahlungsart</h2><label><input type="radio" name="paymentMethodId" checked> Rechnung</label>
      <ul><li><a href="/krug">Krug, grün</a><select name="quantity"><option selected>2</option><option>3</option></select><span>inkl. 19 % MwSt.</span><span>24,95 €*</span><span>49,90 €*</span></li></ul>
      <dl><dt>Summe</dt><dd>49,90 €*</dd><dt>Versandkosten</dt><dd>+4,90 €*</dd><dt>Gesamtsumme</dt><dd>54,80 €</dd><dt>Gesamtnettosumme</dt><dd>46,05 €</dd><dt>zzgl. 19 % MwSt.</dt><dd>8,75 €</dd></dl>
      <button>Zahlungspflichtig bestellen</button></main>`,
    stage: 'checkout',
    total: '54.80 EUR',
    placeOrder: ['Zahlungspflichtig bestellen'],
    items: ['2 Krug, grün 49.90'],
  },
  {
    name: 'a cart with a summary that already knows shipping and tax',
    url: 'https://maple-thimble.example/checkout/cart/',
    lang: 'en-CA',
    body: `<h1>Shopping Cart</h1><table><thead><tr><th>Item</th><th>Price</th><th>Qty</th><th>Subtotal</th></tr></thead><tbody><tr><td><strong><a href="/mug">Enamel mug</a></strong></td><td>$15.00</td><td><input type="number" name="cart[1][qty]" value="2"></td><td>$30.00</td></tr></tbody></table>
      <div class="summary"><strong>Summary</strong><table><tbody><tr><th>Subtotal</th><td>$30.00</td></tr><tr><th>Discount (SPRING)</th><td>-$3.00</td></tr><tr><th>Shipping (Flat Rate - Fixed)</th><td>$5.00</td></tr><tr><th>Tax</th><td>$4.16</td></tr><tr><th><strong>Order Total</strong></th><td><strong>$36.16</strong></td></tr></tbody></table>
      <button>Proceed to Checkout</button></div>`,
    stage: 'cart',
    total: '36.16 CAD',
    placeOrder: [],
    parts: ['items 30.00', 'discount -3.00', 'shipping 5.00', 'tax 4.16'],
    items: ['2 Enamel mug 30.00'],
  },
]

import type { ShopPage } from './page.ts'

// Invented shops: Maple & Thimble (Canada), Pinwheel Books (Britain), Harbour Tin (United States), Wombat Outfitters
// (Australia). All people and things are invented.
export const english: readonly ShopPage[] = [
  {
    name: 'a table of sums with the total in its foot, standing before the body',
    url: 'https://maple-thimble.example/checkout/review',
    lang: 'en-CA',
    title: 'Review your order - Maple & Thimble',
    body: `<h1>Review your order</h1>
      <table>
        <thead><tr><th>Product</th><th>Qty</th><th>Price</th><th>Total</th></tr></thead>
        <tfoot>
          <tr><th colspan="3">Subtotal</th><td>$45.00</td></tr>
          <tr><th colspan="3">Shipping</th><td>$5.00</td></tr>
          <tr><th colspan="3">GST/HST (13%)</th><td>$6.50</td></tr>
          <tr><th colspan="3">Order total</th><td><strong>$56.50</strong></td></tr>
        </tfoot>
        <tbody>
          <tr><td>Enamel mug, blue</td><td>2</td><td>$15.00</td><td>$30.00</td></tr>
          <tr><td>Wool socks</td><td>1</td><td>$15.00</td><td>$15.00</td></tr>
        </tbody>
      </table>
      <form action="/checkout/place" method="post">
        <label><input type="radio" name="payment_method" checked> Card</label>
        <a href="/checkout/payment">Back</a>
        <button type="submit">Place order</button>
      </form>`,
    stage: 'checkout',
    total: '56.50 CAD',
    placeOrder: ['Place order'],
    parts: ['items 45.00', 'shipping 5.00', 'tax 6.50'],
    items: ['2 Enamel mug, blue 30.00', '1 Wool socks 15.00'],
  },
  {
    name: 'terms and descriptions, price split into symbol, whole and raised cents',
    url: 'https://harbour-tin.example/pay',
    lang: 'en-US',
    body: `<main><h2>Payment</h2>
      <input autocomplete="cc-number" name="card">
      <dl>
        <dt>Items:</dt><dd><span>$</span><span>40</span><sup>00</sup></dd>
        <dt>Delivery:</dt><dd><span>$</span><span>6</span><sup>50</sup></dd>
        <dt>Amount due:</dt><dd><span>$</span><span>46</span><sup>50</sup></dd>
      </dl>
      <button>Pay now</button></main>`,
    stage: 'checkout',
    total: '46.50 USD',
    placeOrder: ['Pay now'],
    parts: ['items 40.00', 'shipping 6.50'],
  },
  {
    name: 'sibling spans, the amount on the button, and a saving that looks like money',
    url: 'https://pinwheel-books.example/checkout',
    lang: 'en-GB',
    body: `<div class="summary">
        <div><span>Subtotal (3 items)</span><span>£31.97</span></div>
        <div><span>Voucher SPRING</span><span>-£3.20</span></div>
        <div><span>Delivery</span><span>£2.99</span></div>
        <div><span>Total</span><span>£31.76</span></div>
        <p>You save £3.20 on this order!</p>
        <p>or 3 payments of £10.59 with no interest</p>
      </div>
      <form><input autocomplete="street-address"><label><input type="checkbox"> I accept the terms and conditions</label>
      <input type="submit" value="Pay £31.76"><input type="submit" value="Apply voucher"></form>`,
    stage: 'checkout',
    total: '31.76 GBP',
    placeOrder: ['Pay £31.76'],
    parts: ['items 31.97', 'discount -3.20', 'shipping 2.99'],
  },
  {
    name: 'the amount stands before its label',
    url: 'https://wombat-outfitters.example/checkout/payment',
    lang: 'en-AU',
    body: `<section>
        <div><b>$120.00</b> <small>Items</small></div>
        <div><b>$10.00</b> <small>Shipping</small></div>
        <div><b>$130.00</b> <small>Total (incl. GST)</small></div>
      </section>
      <iframe title="Secure card payment"></iframe>
      <button>Complete purchase</button>`,
    stage: 'checkout',
    total: '130.00 AUD',
    placeOrder: ['Complete purchase'],
    parts: ['items 120.00', 'shipping 10.00'],
  },
  {
    name: 'labels in one column, amounts in another',
    url: 'https://maple-thimble.example/checkout',
    lang: 'en',
    body: `<h2>Checkout</h2><div class="sums"><div><p>Merchandise</p><p>Freight</p><p>QST</p><p>To pay</p></div>
      <div><p>CA$80.00</p><p>CA$9.00</p><p>CA$8.88</p><p>CA$97.88</p></div></div>
      <input autocomplete="cc-csc"><button type="button">Confirm and pay</button>`,
    stage: 'checkout',
    total: '97.88 CAD',
    placeOrder: ['Confirm and pay'],
    parts: ['items 80.00', 'shipping 9.00', 'tax 8.88'],
  },
  {
    name: 'an early step that has no total yet: never the subtotal',
    url: 'https://maple-thimble.example/checkout/information',
    lang: 'en-CA',
    body: `<h2>Contact</h2><input autocomplete="email"><input autocomplete="address-line1"><input autocomplete="postal-code">
      <div><span>Subtotal</span> <span>$45.00</span></div>
      <div><span>Shipping</span> <span>Calculated at next step</span></div>
      <button>Continue to payment</button>`,
    stage: 'checkout',
    total: null,
    placeOrder: [],
    parts: ['items 45.00'],
  },
  {
    name: 'an early step whose total is only the items, with shipping still to come',
    url: 'https://maple-thimble.example/checkout/shipping',
    lang: 'en-CA',
    body: `<div><span>Subtotal</span> <span>$45.00</span></div>
      <div><span>Shipping</span> <span>Calculated at next step</span></div>
      <div><span>Total</span> <span>$45.00</span></div>
      <input autocomplete="address-line1"><button>Continue</button>`,
    stage: 'checkout',
    total: null,
    placeOrder: [],
  },
  {
    name: 'a cart with a quantity field, a threshold and a button to the checkout',
    url: 'https://harbour-tin.example/cart',
    lang: 'en-US',
    body: `<h1>Your cart</h1>
      <p>Spend $12.00 more for free shipping</p>
      <ul><li><a href="/p/1">Tin lantern</a> <input type="number" name="qty" value="2"> <span>$19.00</span> <b>$38.00</b> <button>Remove</button></li></ul>
      <p>Total: <b>$38.00</b></p>
      <a href="/checkout" class="btn">Proceed to checkout</a>`,
    stage: 'cart',
    total: '38.00 USD',
    placeOrder: [],
    items: ['2 Tin lantern 38.00'],
  },
  {
    name: 'a cart that can say only "calculated at checkout"',
    url: 'https://harbour-tin.example/basket',
    lang: 'en-US',
    body: `<h1>Shopping basket</h1><div>Subtotal <span>$38.00</span></div><p>Taxes and shipping calculated at checkout</p>
      <button>Check out</button>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a product page with one-click words and a structured offer',
    url: 'https://harbour-tin.example/products/lantern',
    lang: 'en-US',
    head: `<script type="application/ld+json">{"@context":"https://schema.org","@type":"Product","name":"Tin lantern",
      "offers":{"@type":"Offer","price":"19.00","priceCurrency":"USD"}}</script>`,
    body: `<h1>Tin lantern</h1><p>Price: <b>$19.00</b></p><button>Add to cart</button><button>Buy now</button>
      <div>Total: <span>$19.00</span></div>`,
    stage: 'product',
    total: null,
    placeOrder: [],
  },
  {
    name: 'a confirmation with an order number split over nodes and a payment reference before it',
    url: 'https://maple-thimble.example/checkout/thank-you',
    lang: 'en-CA',
    body: `<h1>Thank you for your order, Odile!</h1>
      <p>Payment reference: <b>PAY-99812</b></p>
      <p>Order number: <span>MT-</span><span>000</span><span>471</span></p>
      <p>Questions? Call us: <a href="tel:+15555550123">555-0123</a></p>
      <table><tr><th>Subtotal</th><td>$45.00</td></tr><tr><th>HST</th><td>$5.85</td></tr><tr><th>Total</th><td>$50.85</td></tr></table>`,
    stage: 'confirmation',
    total: '50.85 CAD',
    orderNumber: 'MT-000471',
  },
  {
    name: 'a confirmation with a number in letters only and no amount',
    url: 'https://wombat-outfitters.example/order/complete',
    lang: 'en-AU',
    body: `<h1>Order confirmed</h1><dl><dt>Order reference</dt><dd>XKJDFT</dd><dt>Email</dt><dd>ned@wombat.example</dd></dl>`,
    stage: 'confirmation',
    total: null,
    orderNumber: 'XKJDFT',
  },
  {
    name: 'a page titled "order confirmation" that comes before the order',
    url: 'https://pinwheel-books.example/order/confirm',
    lang: 'en-GB',
    title: 'Order confirmation',
    body: `<h1>Order confirmation</h1><table><tr><td>Goods total</td><td>£20.00</td></tr><tr><td>Postage</td><td>£3.00</td></tr>
      <tr><td>Total to pay</td><td>£23.00</td></tr></table>
      <form><label><input type="checkbox"> I agree to the terms of sale</label><button>Confirm order</button></form>`,
    stage: 'checkout',
    total: '23.00 GBP',
    placeOrder: ['Confirm order'],
  },
  {
    name: 'a gift card after the total: the smaller sum is charged',
    url: 'https://maple-thimble.example/checkout/payment',
    lang: 'en-CA',
    body: `<div class="row"><span>Subtotal</span><span>$50.00</span></div>
      <div class="row"><span>Shipping</span><span>$5.90</span></div>
      <div class="row"><span>Total</span><span>$55.90</span></div>
      <div class="row"><span>Gift card (ending 4411)</span><span>-$20.00</span></div>
      <div class="row"><span>Amount due</span><span>$35.90</span></div>
      <p>Left on your gift card: $5.00</p>
      <input name="payment" type="radio" checked><button>Pay now</button>`,
    stage: 'checkout',
    total: '35.90 CAD',
    placeOrder: ['Pay now'],
  },
  {
    name: 'a credit taken off after the total, with no word of what remains',
    url: 'https://maple-thimble.example/checkout/payment',
    lang: 'en-CA',
    body: `<div><span>Subtotal</span><span>$50.00</span></div><div><span>Shipping</span><span>$5.90</span></div>
      <div><span>Total</span><span>$55.90</span></div><div><span>Store credit</span><span>-$20.00</span></div>
      <input autocomplete="cc-number"><button>Place order</button>`,
    stage: 'checkout',
    total: null,
    placeOrder: ['Place order'],
  },
  {
    name: 'due today against the value of the order and a later sum',
    url: 'https://wombat-outfitters.example/checkout',
    lang: 'en-AU',
    body: `<dl><dt>Order total</dt><dd>A$120.00</dd><dt>Due today</dt><dd>A$40.00</dd><dt>Due on delivery</dt><dd>A$80.00</dd></dl>
      <input autocomplete="cc-number"><button>Place order</button>`,
    stage: 'checkout',
    total: '40.00 AUD',
    placeOrder: ['Place order'],
  },
  {
    name: 'gross, net and tax in any order; net after gross',
    url: 'https://pinwheel-books.example/checkout/summary',
    lang: 'en-GB',
    body: `<table><tr><td>Total (incl. VAT)</td><td>£60.00</td></tr><tr><td>Total excl. VAT</td><td>£50.00</td></tr>
      <tr><td>VAT 20%</td><td>£10.00</td></tr></table><input autocomplete="cc-exp"><button>Pay securely</button>`,
    stage: 'checkout',
    total: '60.00 GBP',
    placeOrder: ['Pay securely'],
  },
  {
    name: 'copies for screen readers are read once, old prices set aside',
    url: 'https://harbour-tin.example/checkout',
    lang: 'en-US',
    head: `<style>.sr-only{position:absolute;width:1px;height:1px;overflow:hidden;clip:rect(0 0 0 0)}</style>`,
    body: `<h2>Checkout</h2><div><span>Order total</span> <del>$60.00</del>
      <span class="sr-only">$48.00</span><span aria-hidden="true"><sup>$</sup><span>48</span><sup>00</sup></span></div>
      <input autocomplete="cc-number"><button>Place your order</button>`,
    stage: 'checkout',
    total: '48.00 USD',
    placeOrder: ['Place your order'],
  },
  {
    name: 'included tax between the label and the amount',
    url: 'https://pinwheel-books.example/checkout',
    lang: 'en-GB',
    body: `<p><span>Total</span> <small>(incl. £4.00 VAT)</small> <b>£24.00</b></p><input autocomplete="cc-number"><button>Pay now</button>`,
    stage: 'checkout',
    total: '24.00 GBP',
    placeOrder: ['Pay now'],
  },
  {
    name: 'another currency restated beside the total',
    url: 'https://maple-thimble.example/checkout',
    lang: 'en-CA',
    body: `<table><tr><td>Subtotal</td><td>$50.00 CAD</td></tr><tr><td>Shipping</td><td>$5.00 CAD</td></tr>
      <tr><td>Total</td><td>$55.00 CAD</td><td>≈ €37.10</td></tr></table>
      <input autocomplete="cc-number"><button>Place order</button>`,
    stage: 'checkout',
    total: '55.00 CAD',
    placeOrder: ['Place order'],
  },
  {
    name: 'shipping options not chosen and tips on offer are no parts',
    url: 'https://wombat-outfitters.example/checkout/delivery',
    lang: 'en-AU',
    body: `<fieldset><legend>Delivery</legend>
        <label><input type="radio" name="d" checked> Standard <span>$8.00</span></label>
        <label><input type="radio" name="d"> Express delivery <span>$18.00</span></label></fieldset>
      <button>Add $5.00 tip</button>
      <div><div>Items</div><div>$92.00</div></div><div><div>Delivery</div><div>$8.00</div></div>
      <div><div>Total</div><div>$100.00</div></div>
      <input autocomplete="cc-number"><button>Place order</button>`,
    stage: 'checkout',
    total: '100.00 AUD',
    placeOrder: ['Place order'],
    parts: ['items 92.00', 'shipping 8.00'],
  },
  {
    name: 'a small cart in the head shows an old sum',
    url: 'https://harbour-tin.example/checkout/payment',
    lang: 'en-US',
    body: `<header><a href="/cart">Cart total: $19.00</a></header>
      <main><div>Subtotal: $38.00</div><div>Sales tax: $3.04</div><div>Order total: $41.04</div>
      <input autocomplete="cc-number"><button>Place order</button></main>`,
    stage: 'checkout',
    total: '41.04 USD',
    placeOrder: ['Place order'],
    parts: ['items 38.00', 'tax 3.04'],
  },
  {
    name: 'a list of earlier orders has no total',
    url: 'https://harbour-tin.example/account/orders',
    lang: 'en-US',
    body: `<h1>Your orders</h1><ul>
      <li>Order #1001 <span>Total: $38.00</span></li><li>Order #1002 <span>Total: $12.50</span></li><li>Order #1003 <span>Total: $99.00</span></li></ul>`,
    stage: 'other',
    total: null,
  },
  {
    name: 'a total in an open shadow root, with the button in another and its words slotted',
    url: 'https://wombat-outfitters.example/checkout',
    lang: 'en-AU',
    body: `<shop-summary></shop-summary><input autocomplete="cc-number"><shop-button>Place order</shop-button>`,
    prepare: (document) => {
      const summary = document.querySelector('shop-summary')?.attachShadow({ mode: 'open' })
      if (summary) {
        summary.innerHTML = `<div><span>Subtotal</span><span>$20.00</span></div><sum-row></sum-row>`
        const row = summary.querySelector('sum-row')?.attachShadow({ mode: 'open' })
        if (row)
          row.innerHTML = `<div><span>Shipping</span><span>$5.00</span></div><div><span>Total</span><output>$25.00</output></div>`
      }
      const button = document.querySelector('shop-button')?.attachShadow({ mode: 'open' })
      if (button) button.innerHTML = '<button><slot></slot></button>'
    },
    stage: 'checkout',
    total: '25.00 AUD',
    placeOrder: ['Place order'],
    parts: ['items 20.00', 'shipping 5.00'],
  },
  {
    name: 'a total in a field that cannot be changed, labelled by id',
    url: 'https://pinwheel-books.example/pay',
    lang: 'en-GB',
    body: `<form><label for="sum">Amount to pay</label> <input id="sum" readonly value="£12.40">
      <label for="tip">Tip</label> <input id="tip" value="£2.00"><input autocomplete="cc-number"><input type="image" alt="Pay now" src="pay.png"></form>`,
    stage: 'checkout',
    total: '12.40 GBP',
    placeOrder: ['Pay now'],
  },
  {
    name: 'a dollar sign that nothing explains, with a household currency that fits',
    url: 'https://thimble.example/checkout',
    lang: 'en',
    body: `<div>Total: $18.00</div><input autocomplete="cc-number"><button>Pay now</button>`,
    currency: 'CAD',
    stage: 'checkout',
    total: '18.00 CAD',
    placeOrder: ['Pay now'],
  },
  {
    name: 'a dollar sign that nothing explains',
    url: 'https://thimble.example/checkout',
    lang: 'en',
    body: `<div>Total: $18.00</div><input autocomplete="cc-number"><button>Pay now</button>`,
    currency: 'EUR',
    stage: 'checkout',
    total: null,
    placeOrder: ['Pay now'],
  },
  {
    name: 'bare numbers, with the currency named once',
    url: 'https://harbour-tin.example/checkout/confirm-order',
    lang: 'en',
    body: `<p>All prices in USD</p><table><tr><td>Subtotal</td><td>1,040.00</td></tr><tr><td>Shipping</td><td>20.00</td></tr>
      <tr><td>Total</td><td>1,060.00</td></tr></table><label><input type="checkbox"> I accept the terms</label><button>Submit order</button>`,
    stage: 'checkout',
    total: '1060.00 USD',
    placeOrder: ['Submit order'],
  },
  {
    name: 'the label "total amount" is the items; what is paid has other words',
    url: 'https://harbour-tin.example/checkout',
    lang: 'en-US',
    body: `<ul class="sums"><li>Total amount <b>$40.00</b></li><li>Freight <b>$6.00</b></li><li>Promo code <b>-$4.00</b></li><li>Actual payment <b>$42.00</b></li></ul>
      <input autocomplete="cc-number"><button>Submit order</button>`,
    stage: 'checkout',
    total: '42.00 USD',
    placeOrder: ['Submit order'],
  },
  {
    name: 'a payable row that no lexicon knows, found by the arithmetic',
    url: 'https://harbour-tin.example/checkout',
    lang: 'en-US',
    body: `<dl><dt>Subtotal</dt><dd>$40.00</dd><dt>Shipping</dt><dd>$6.00</dd><dt>Your treat today</dt><dd>$46.00</dd></dl>
      <input autocomplete="cc-number"><button>Place order</button>`,
    stage: 'checkout',
    total: '46.00 USD',
    placeOrder: ['Place order'],
  },
  {
    name: 'two totals that contradict each other, with nothing to decide',
    url: 'https://harbour-tin.example/checkout',
    lang: 'en-US',
    body: `<div><p>Total: $40.00</p></div><div><p>Total: $60.00</p></div><input autocomplete="cc-number"><button>Place order</button>`,
    stage: 'checkout',
    total: null,
    placeOrder: ['Place order'],
  },
  {
    name: 'several payment methods, each with its own button, one visible; one only calls itself disabled',
    url: 'https://maple-thimble.example/checkout/payment',
    lang: 'en-CA',
    body: `<p>Order total: <b>CAD 61.00</b></p><div style="display:none"><button>Place order</button></div>
      <div><button aria-disabled="true">Place order</button></div><div><button disabled>Place order</button></div>
      <fieldset disabled><button>Pay now</button></fieldset><input autocomplete="cc-number">
      <button aria-expanded="false">Pay by card</button><a href="/help">How to place an order</a>`,
    stage: 'checkout',
    total: '61.00 CAD',
    placeOrder: ['Place order'],
  },
  {
    name: 'one total in two copies, for wide and narrow screens',
    url: 'https://maple-thimble.example/checkout/payment',
    lang: 'en-CA',
    body: `<aside class="narrow"><button aria-expanded="false">Show order summary <span>$56.50</span></button></aside>
      <aside class="wide"><div><span>Subtotal</span><span>$50.00</span></div><div><span>HST</span><span>$6.50</span></div><div><strong>Total</strong><span><small>CAD</small> <strong>$56.50</strong></span></div></aside>
      <input autocomplete="cc-number"><button>Pay now</button>`,
    stage: 'checkout',
    total: '56.50 CAD',
    placeOrder: ['Pay now'],
    parts: ['items 50.00', 'tax 6.50'],
  },
]

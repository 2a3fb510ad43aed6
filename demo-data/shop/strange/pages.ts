import { fernhillLayout } from '../fernhill/layout.ts'
import { type Html, html } from '../html.ts'
import { strangeTotals } from './cases.ts'
import { drawnAmount } from './drawn-amount.ts'

/** A checkout whose total is no text: drawn as strokes, or said to be in a letter. */
export function noTotalPage(as: string | null): Html {
  const told =
    as === 'letter'
      ? html`<p>The price is in the letter we sent you.</p>`
      : html`${drawnAmount(`$${strangeTotals['no-total']}`)}`
  return checkout(
    'Confirm your survey',
    html`<p>Hedge survey, by appointment, with a written planting plan.</p><h2>Total to pay</h2>${told}
<form method="post" action="/strange/order"><input type="hidden" name="case" value="no-total">
<button class="button wide" type="submit">Place order</button></form>`,
  )
}

/** A checkout whose total goes from 40.00 to 45.00 in place when gift wrap is added, and back. */
export function changingPage(): Html {
  return checkout(
    'Review your order',
    html`<table class="totals"><tbody><tr><th scope="row">Winter wreath</th><td>$31.05</td></tr>
<tr><th scope="row">Shipping</th><td>$8.95</td></tr>
<tr id="wrap-row" hidden><th scope="row">Gift wrap</th><td>$5.00</td></tr></tbody>
<tfoot><tr class="order-total"><th scope="row">Order total</th><td id="total">$${strangeTotals.changing}</td></tr></tfoot></table>
<p class="note">Prices include GST.</p>
<p><button class="button plain" type="button" id="wrap">Add gift wrap</button></p>
<form method="post" action="/strange/order"><input type="hidden" name="case" id="case" value="changing">
<button class="button wide" type="submit">Place order</button></form>
<script src="/strange/changing.js"></script>`,
  )
}

/** A checkout whose button lies outside the form; a page script submits the form by requestSubmit, a moment later. */
export function scriptSubmitPage(): Html {
  return checkout(
    'One last look',
    html`<table class="totals"><tbody><tr><th scope="row">Sweet pea collection</th><td>$22.05</td></tr>
<tr><th scope="row">Shipping</th><td>$5.25</td></tr></tbody>
<tfoot><tr class="order-total"><th scope="row">Order total</th><td>$${strangeTotals['script-submit']}</td></tr></tfoot></table>
<form id="order" method="post" action="/strange/order"><input type="hidden" name="case" value="script-submit"></form>
<button class="button wide" type="button" id="send">Place order</button>
<script src="/strange/script-submit.js"></script>`,
  )
}

/** A checkout without any button: Enter in its only text field places the order. */
export function enterPage(): Html {
  return checkout(
    'Quick order',
    html`<table class="totals"><tbody><tr><th scope="row">Seed potato sampler</th><td>$14.40</td></tr>
<tr><th scope="row">Shipping</th><td>$4.50</td></tr></tbody>
<tfoot><tr class="order-total"><th scope="row">Order total</th><td>$${strangeTotals.enter}</td></tr></tfoot></table>
<form method="post" action="/strange/order"><input type="hidden" name="case" value="enter">
<label class="field">Your customer word <input type="text" name="word" required autocomplete="off"></label>
<p class="note">Press Enter to place the order and pay.</p></form>`,
  )
}

/** A checkout of the nursery across the sea, which asks euros. */
export function abroadPage(): Html {
  return checkout(
    'Order from our sister nursery',
    html`<table class="totals"><tbody><tr><th scope="row">Dahlia tubers, six</th><td>€21.50</td></tr>
<tr><th scope="row">Shipping</th><td>€6.90</td></tr></tbody>
<tfoot><tr class="order-total"><th scope="row">Order total</th><td>€${strangeTotals.abroad}</td></tr></tfoot></table>
<form method="post" action="/strange/order"><input type="hidden" name="case" value="abroad">
<button class="button wide" type="submit">Place order</button></form>`,
  )
}

/** The order of a strange page has arrived. */
export function strangeThanksPage(number: string, total: string, sign = '$'): Html {
  return checkout(
    'Thank you for your order',
    html`<p>Your order number is <strong class="order-number">${number}</strong>.</p><p>Your card ending in 0017 pays ${sign}${total}.</p>`,
  )
}

/** The answer to the newsletter form. */
export function newsletterThanksPage(): Html {
  return checkout('You are on the list', html`<p>The next Almanac comes with the first snowdrops.</p>`)
}

function checkout(title: string, content: Html): Html {
  return fernhillLayout({
    title,
    basket: '',
    quiet: true,
    body: html`<section class="panel narrow"><h1>${title}</h1>${content}</section>`,
  })
}

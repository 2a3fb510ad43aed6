import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { isPlaceOrder, submitsOrder } from '../../src/checkout/is-place-order.ts'
import { readCheckout } from '../../src/checkout/read-checkout.ts'

function open(body: string) {
  const { document } = new JSDOM(
    `<html lang="en-CA"><body><p>Total: $55.90</p><input autocomplete="cc-number">${body}</body></html>`,
  ).window
  const find = (selector: string): Element => {
    const found = document.querySelector(selector)
    if (!found) throw new Error(`The page has no ${selector}.`)
    return found
  }
  return { document, find, read: () => readCheckout(document, { url: 'https://thimble.example/checkout' }) }
}

describe('whether an element places the order', () => {
  it('says so for the control and what is inside it', () => {
    const { find, read } = open('<button><span><i>→</i> Place order</span></button><a href="/help">Help</a>')
    const reading = read()
    expect(isPlaceOrder(reading, find('button'))).toBe(true)
    expect(isPlaceOrder(reading, find('i'))).toBe(true)
    expect(isPlaceOrder(reading, find('a'))).toBe(false)
    expect(isPlaceOrder(reading, find('body'))).toBe(false)
  })

  it('sees out of a shadow root and through a slot', () => {
    const { find, read } = open('<shop-button><b>Place order</b></shop-button>')
    const root = find('shop-button').attachShadow({ mode: 'open' })
    root.innerHTML = '<button><slot></slot><i></i></button>'
    const reading = read()
    expect(reading.placeOrder).toEqual([root.querySelector('button')])
    expect(isPlaceOrder(reading, find('b'))).toBe(true)
    const icon = root.querySelector('i')
    expect(icon && isPlaceOrder(reading, icon)).toBe(true)
  })
})

// HTML standard, form submission: Enter "clicks" the first submit button even if it is hidden (implicit submission,
// 4.10.22.2), and a form without one is submitted with no submitter at all. See html-submission.md, facts 14 to 19.
describe('whether submitting a form places the order', () => {
  const page =
    '<form id="f"><button hidden id="first"></button><button id="coupon">Apply coupon</button><button id="pay">Pay now</button></form><form id="g"><input><button id="news">Subscribe to our newsletter</button></form>'

  function form(find: (selector: string) => Element, selector: string): HTMLFormElement {
    const found = find(selector)
    if (!('requestSubmit' in found) || !isForm(found)) throw new Error(`${selector} is no form.`)
    return found
  }
  const isForm = (element: Element): element is HTMLFormElement => element.localName === 'form'

  it('goes by the submitter', () => {
    const { find, read } = open(page)
    const reading = read()
    expect(submitsOrder(reading, form(find, '#f'), find('#pay'))).toBe(true)
    expect(submitsOrder(reading, form(find, '#f'), find('#coupon'))).toBe(false)
  })

  it('takes a hidden wordless first button, and none at all, for the control of the same form', () => {
    const { find, read } = open(page)
    const reading = read()
    expect(submitsOrder(reading, form(find, '#f'), find('#first'))).toBe(true)
    expect(submitsOrder(reading, form(find, '#f'), null)).toBe(true)
  })

  it('leaves other forms alone', () => {
    const { find, read } = open(page)
    const reading = read()
    expect(submitsOrder(reading, form(find, '#g'), find('#news'))).toBe(false)
    expect(submitsOrder(reading, form(find, '#g'), null)).toBe(false)
  })

  it('knows a button outside by its form attribute', () => {
    const { find, read } = open('<button form="f" id="pay">Pay now</button><form id="f"><input></form>')
    expect(submitsOrder(read(), form(find, '#f'), null)).toBe(true)
  })
})

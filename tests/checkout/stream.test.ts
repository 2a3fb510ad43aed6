import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { readPageText } from '../../src/checkout/page-text.ts'
import { createPricer } from '../../src/checkout/pricer.ts'
import { readStream } from '../../src/checkout/stream.ts'

function read(html: string, currency: string | null = null, lang = 'en') {
  const page = readPageText(new JSDOM(html).window.document)
  const pricer = createPricer(currency, lang)
  return readStream(page).items.map((item) => (item.kind === 'words' ? item.text : Number(pricer.amount(item))))
}

describe('words and amounts of a page', () => {
  it.each([
    ['<p>Total: $55.90</p>', ['Total:', 55.9]],
    ['<p>Total: $<b>55.90</b></p>', ['Total:', 55.9]],
    ['<p>Total: <b>$</b><b>55</b><sup>90</sup></p>', ['Total:', 55.9]],
    ['<p>Total: <b>$55</b><small>.90</small></p>', ['Total:', 55.9]],
    ['<p>Total: <i>55</i><i>€</i><sup>90</sup></p>', ['Total:', 55.9]],
    ['<p><span>$</span><span>1</span><span>2</span><span>.</span><span>5</span><span>0</span></p>', [12.5]],
    ['<div><div>$</div><div>1,055</div><div>90</div></div>', [1055.9]],
    ['<p>-$5.00</p><p>− $5.00</p><p>$-5.00</p><p>5.00- €</p>', [-5, -5, -5, -5]],
    ['<p>Order total - $55.90</p>', ['Order total -', 55.9]],
    ['<table><tr><td>2</td><td>$10.00</td><td>$20.00</td></tr></table>', [2, 10, 20]],
    ['<p><b>$10.00</b><b>$20.00</b></p>', [10, 20]],
    ['<p>Qty 2 $10.00</p>', ['Qty 2', 10]],
    ['<p>5 € 10 €</p>', [5, 10]],
    ['<p><span>300</span><span>,-</span> <span>Kč</span></p>', [300]],
    ['<p>CA$55.90 CAD</p>', [55.9]],
    ['<p>$5.00 - $10.00</p>', ['$5.00 - $10.00']],
    ['<p>9,975 % of it</p>', ['9,975 % of it']],
    ['<p>On 12.05.2026 at 12:30, call 555-0100</p>', ['On 12.05.2026 at 12:30, call 555-0100']],
    ['<p>Version 2.10 of 3.50 kg</p>', ['Version 2.10 of 3.50 kg']],
    ['<p>TOTAL 3 ITEMS</p>', ['TOTAL 3 ITEMS']],
    ['<p>Total (incl. $5.00 tax) $55.90</p>', ['Total', 5, 55.9]],
    ['<p><b>Sub</b>total</p><p><b>Heron</b>Waltz</p>', ['Subtotal', 'Heron Waltz']],
  ])('%s', (html, expected) => {
    expect(read(html)).toEqual(expected)
  })

  it('reads the amounts of other scripts and marks', () => {
    expect(read('<p>合計￥5,590</p>', 'JPY', 'ja')).toEqual(['合計', 5590])
    expect(read('<p>5,590円（税込）</p>', 'JPY', 'ja')).toEqual([5590, '(税込)'])
    expect(read('<p>\u200F١٬٢٣٤٫٥٠\u00A0ج.م.\u200F</p>', 'EGP', 'ar')).toEqual([1234.5])
    expect(read('<p>kr 499,-</p>', 'NOK', 'nb')).toEqual([499])
    expect(read("<p>CHF 1'250.–</p>", 'CHF', 'de-CH')).toEqual([1250])
  })

  it('reads what fields show, and not what the buyer could change', () => {
    expect(
      read(
        '<input value="$5.00"><input readonly value="$6.00"><input disabled value="$7.00"><select><option>a<option selected>b</select>',
      ),
    ).toEqual([6, 7, 'b'])
  })
})

import { describe, expect, it } from 'vitest'
import { type PriceHints, parsePrice } from '../../src/money/price-text.ts'

type Case = readonly [text: string, read: string | null, hints?: PriceHints]

/** `12.50 CAD`, `12.50 -` when the currency is open, null when there is no price. */
function read(text: string, hints?: PriceHints): string | null {
  const price = parsePrice(text, hints)
  return price && `${price.amount} ${price.currency ?? '-'}`
}

function table(name: string, cases: readonly Case[]): void {
  describe(name, () => {
    it.each(cases.map(([text, expected, hints = {}]) => ({ text, expected, hints })))(
      '$text is $expected $hints',
      ({ text, expected, hints }) => {
        expect(read(text, hints)).toBe(expected)
      },
    )
  })
}

// The rules are the design's ("Decided") and the docstring's; the shapes are common practice, no source, unless said.
table('the currency', [
  ['$12.50', '12.50 -'],
  ['$12.50', '12.50 CAD', { currency: 'CAD' }],
  ['$12.50', '12.50 CAD', { currency: 'cad' }],
  ['$12.50', '12.50 -', { currency: 'EUR' }],
  ['$12.50', '12.50 CAD', { region: 'CA' }],
  ['$12.50', '12.50 CAD', { locale: 'fr-CA' }],
  ['$12.50', '12.50 CAD', { locale: 'fr_CA' }],
  ['$12.50', '12.50 -', { locale: 'en' }],
  ['$12.50', '12.50 -', { locale: 'not a locale' }],
  ['$12.50', '12.50 CAD', { currency: 'CAD', locale: 'en-US', region: 'AU' }],
  ['€12.50', '12.50 EUR', { currency: 'USD', region: 'US' }],
  ['12.50', '12.50 CAD', { currency: 'CAD' }],
  ['12.50', '12.50 -', { region: 'CA' }],
  ['12.50', '12.50 -', { currency: 'XYZ' }],
  ['12.50', '12.50 PLN', { currency: 'zł' }],
  ['12,50 kr', '12.50 -'],
  ['12,50 kr', '12.50 SEK', { currency: 'SEK' }],
  ['12,50 kr', '12.50 NOK', { region: 'NO' }],
  ['12,50 kr', '12.50 DKK', { locale: 'da' }],
  ['¥1200', '1200 -'],
  ['￥1,200', '1200 JPY', { locale: 'ja-JP' }],
  ['¥1200', '1200 CNY', { currency: 'CNY' }],
  ['¥1200', '1200 -', { locale: 'zh-TW' }],
  ['£12', '12 GBP'],
  ['£12', '12 EGP', { region: 'EG' }],
  ['Rs. 500', '500 -'],
  ['Rs. 500', '500 PKR', { locale: 'ur-PK' }],
  ['C$5', '5 CAD'],
  ['C$5', '5 NIO', { region: 'NI' }],
  ['12 pesos', '12 MXN', { region: 'MX' }],
  ['12 pesos argentinos', '12 -', { region: 'MX' }],
  ['12.50 £E', '12.50 -'],
])

table('two names for one currency', [
  ['$1,190.00 AUD', '1190.00 AUD'],
  ['NZD $100.70', '100.70 NZD'],
  ['$ SGD4.90', '4.90 SGD'],
  ['£94.50 GBP', '94.50 GBP'],
  ['CAD$1.23', '1.23 CAD'],
  ['$ 12 EUR', null],
  ['USD 5 CAD', null],
  ['USD/CAD 1.35', null],
])

table('names and symbols', [
  ['US$5', '5 USD'],
  ['US $5', '5 USD'],
  ['5,00 $ US', '5.00 USD'],
  ['U$S 5', '5 USD'],
  ['CA$5', '5 CAD'],
  ['C $5', '5 CAD'],
  ['A$5', '5 AUD'],
  ['NT$ 1,160', '1160 TWD'],
  ['R$ 1.500,00', '1500.00 BRL'],
  ['5,00 zł', '5.00 PLN'],
  ['299 Kč', '299 CZK'],
  ['3 990 Ft', '3990 HUF'],
  ['230 лв.', '230 BGN'],
  ['850 руб.', '850 RUB'],
  ['850 руб.', '850 BYN', { region: 'BY' }],
  ['199,00 грн', '199.00 UAH'],
  ['3,500円', '3500 JPY'],
  ['3500元', '3500 CNY'],
  ['3500元', '3500 TWD', { region: 'TW' }],
  ['12,000원', '12000 KRW'],
  ['34.50 د.إ', '34.50 AED'],
  ['د.إ.\u200f 34.50', '34.50 AED'],
  ['₹12,34,567.89', '1234567.89 INR'],
  ['Rs.1,599.00', '1599.00 INR', { currency: 'INR' }],
  ['Rs. 500/-', '500 -'],
  ['Rs. 500.50/-', '500.50 -'],
  ['500/= KSh', '500 KES'],
  ['฿ 120', '120 THB'],
  ['R 1 234,50', '1234.50 ZAR'],
  ['RM50', '50 MYR'],
  ['Rp 31.500', '31500 IDR'],
  ['69,50 TL', '69.50 TRY'],
  ['99 lei', '99 -'],
  ['99 lei', '99 RON', { locale: 'ro' }],
  ['140,00 pln', '140.00 PLN'],
  ['749,00 euro', '749.00 EUR'],
  ['53.45 US Dollars', '53.45 USD'],
  ['1.234,50 Schweizer Franken', '1234.50 CHF'],
  ['12,50 dollars canadiens', '12.50 CAD', { locale: 'fr' }],
  ['5 000 F CFA', '5000 -'],
  ['5 000 F CFA', '5000 XOF', { region: 'SN' }],
])

// A toman is ten rials; marks and francs have no ISO 4217 code any more; pence and cents are hundredths.
table('money that is not what it looks like', [
  ['30,000 تومان', '30000 -', { currency: 'IRR' }],
  ['170 000 DEM', '170000 -', { currency: 'EUR' }],
  ['0.015 ₿', '0.015 -'],
  ['13800 ₶', '13800 -', { currency: 'EUR' }],
  ['99¢', null],
  ['99p', null],
  ['125 GBp', null],
  ['5 pounds', null],
  ['5 ft', null],
  ['30 sek', null],
  ['30 SEK', '30 SEK'],
])

table('three digits after the only mark', [
  ['1.234', null],
  ['1,234', null],
  ['1.234 €', '1234 EUR'],
  ['1.234 €', '1234 EUR', { locale: 'en-US' }],
  ['$1,234', '1234 -'],
  ['1.234', '1234 CAD', { currency: 'CAD' }],
  ['1,234 JPY', '1234 JPY'],
  ['1.234 KWD', '1.234 KWD'],
  ['1,234', '1.234 TND', { currency: 'TND' }],
  ['BHD 1,234', '1234 BHD', { locale: 'en' }],
  ['1,234 BHD', '1.234 BHD', { locale: 'de' }],
  ['1.234', '1234 -', { locale: 'de-DE' }],
  ['1.234', '1.234 -', { locale: 'en-GB' }],
  ['1,234', '1234 -', { locale: 'en-GB' }],
  ['1.234', null, { locale: 'fr-FR' }], // France groups with spaces: the point is neither
  ['1.234', null, { region: 'DE' }],
  ['25,000 IQD', null], // three decimals by ISO 4217, none in practice (CLDR)
  ['25,000 IQD', '25000 IQD', { locale: 'en' }],
  ['0.750', '0.750 -'],
  ['1234.567', '1234.567 -'],
  ['1.234.567', '1234567 -'],
])

table('decimals as written', [
  ['34.992001 GBP', '34.992001 GBP'],
  ['1000.50 JPY', '1000.50 JPY'],
  ['12,5', '12.5 -'],
  ['6,53 USD', '6.53 USD', { locale: 'en-US' }],
  ['.99', '0.99 -'],
  ['99.', '99 -'],
  ['000009.99', '9.99 -'],
  ['1.234,5678', '1234.5678 -'],
])

table('no cents', [
  ['12,- €', '12 EUR'],
  ['CHF 12.—', '12 CHF'],
  ['12,–', '12 -'],
  ['12,-- €', '12 EUR'],
  ['1.299,- kr.', '1299 -'],
  ['1 299:- kr', '1299 -'],
  ["CHF 1'299.-", '1299 CHF'],
])

table('cents in other places', [
  ['1 234:50', '1234.50 -'],
  ['12:50 kr', '12.50 -'],
  ['12:50', null],
  ['1250€60', '1250.60 EUR'],
  ['35€ 99', '35.99 EUR'],
  ['12€5', null],
  ['12⁹⁹ €', '12.99 EUR'],
  ['1.234⁹⁹ €', '1234.99 EUR'],
  ['€ 12 99', '12.99 EUR'],
  ['$12 99', '12.99 -'],
  ['12 99 €', null], // twelve at 99?
  ['$12\n99', null],
  ['1200円50', null],
  ['130, 38 zł', '130.38 PLN'],
  ['12, 50', null],
])

table('grouping', [
  ["1'234'567.89", '1234567.89 -'],
  ['1’234.50 CHF', '1234.50 CHF'],
  ['1\u00a0234\u00a0567,89', '1234567.89 -'],
  ['12\u202f345,00\u00a0€', '12345.00 EUR'],
  ['12\u2009345,00 €', '12345.00 EUR'],
  ['12,34,567.89', '1234567.89 -'],
  ['1&nbsp;490,00 руб.', '1490.00 RUB'],
  ['1,23,4567.89', null],
  ['12.34.56 USD', null],
  ['1234,567.89', null],
  ['1,234,56', null],
  ['0,123,456', null],
  ['1 2345 €', null],
  ['1.234 567,00', null],
  ['1\n234,50 €', null],
  ['1..2', null],
  ['₹.500', null], // half a rupee, or five hundred behind a point?
  ['KD .500', '0.500 KWD'],
])

table('digits of other scripts', [
  ['٣٤٫٥٠ ر.س', '34.50 SAR'],
  ['١٬٢٣٤٫٥٠', '1234.50 -'],
  ['١٢،٥٠ ر.س', '12.50 SAR'],
  ['۱۲٬۳۴۵ ریال', '12345 IRR'],
  ['₹१२,३४,५६७.८९', '1234567.89 INR'],
  ['১২,৩৪,৫৬৭.৮৯৳', '1234567.89 BDT'],
  ['๑๒๓ บาท', '123 THB'],
  ['￥１，２３４', '1234 JPY', { locale: 'ja' }],
  ['𞥑⹁𞥒𞥓𞥔.𞥕𞥖', '1234.56 -'],
  ['五元', null],
])

table('below zero', [
  ['-$5.00', '-5.00 -'],
  ['$-5.00', '-5.00 -'],
  ['−5,00 €', '-5.00 EUR'],
  ['–5,00 €', '-5.00 EUR'],
  ['€ -5,00', '-5.00 EUR'],
  ['- 40.99 USD', '-40.99 USD'],
  ['5,00-', '-5.00 -'],
  ['€ 5,00-', '-5.00 EUR'],
  ['5.00- EUR', '-5.00 EUR'],
  ['($5.00)', '-5.00 -'],
  ['USD (5.00)', '-5.00 USD'],
  ['(5.00)', '-5.00 -'],
  ['(-$5.00)', '-5.00 -'],
  ['Discount: -$5.00', '-5.00 -'],
  ['Discount -$5.00', '-5.00 -'],
  ['\u061c-\u200f٥٫٠٠ ر.س', '-5.00 SAR'],
  ['+5.00', '5.00 -'],
  ['-0,00 €', '0.00 EUR'],
  ['(3)', null], // a count
  ['-$5.95-', null],
  ['--5', null],
  ['-(5.00)', null],
  ['Total - $5.00', null],
  ['minus 5 €', null],
  ['50- Kč', null],
  ['5 € – limited offer', '5 EUR'],
])

table('beside the price', [
  ['Total: $55.90', '55.90 -'],
  ['Total$55.90', '55.90 -'],
  ['Total (USD): 55.90', '55.90 USD'],
  ['55.90 (CAD)', '55.90 CAD'],
  ['119,00 € inkl. MwSt.', '119.00 EUR'],
  ['119,00 € (inkl. MwSt.)', '119.00 EUR'],
  ['119,00 €*', '119.00 EUR'],
  ['119,00 € **', '119.00 EUR'],
  ['119,00 €¹⁾', '119.00 EUR'],
  ['119,00*', '119.00 -'],
  ['合計1,200円（税込）', '1200 JPY'],
  ['$15.95/mo', '15.95 -'],
  ['Vitamin C $12.99', '12.99 -'],
  ['Total QR 50', '50 QAR', { currency: 'QAR' }],
  ['QR code 50', null],
  ['R 12 months', null],
  ['Q4', null],
  ['Q 50', '50 GTQ', { region: 'GT' }],
  ['Price 29', null],
  ['29 items', null],
  ['$5!', '5 -'],
])

table('two prices', [
  ['AED 8000 (USD 2179)', '8000 AED'],
  ['12 € (ca. 13 $)', '12 EUR'],
  ['12 € (12 €)', '12 EUR'],
  ['12 € (10 €)', null],
  ['$12 (US$9)', null], // the same dollar, or another?
  ['$12 (US$9)', '12 CAD', { currency: 'CAD' }],
  ['$5 (was $6)', null],
  ['10 € / 19,56 лв.', null],
  ['3,49 zł 1,75 zł', null],
  ['$12.50 $12.50', '12.50 -'],
  ['Price: $12.50 Price: $12.50', '12.50 -'],
  ['12.50 12.50', null],
  ['$12.50$', '12.50 -'],
])

table('no price', [
  ['', null],
  [' ', null],
  ['$', null],
  ['Free', null],
  ['Gratis!', null],
  ['$5 - $10', null],
  ['$5-10', null],
  ['5–10 €', null],
  ['from $5', null],
  ['From: $14.97', null],
  ['ab 5 €', null],
  ['à partir de 5 €', null],
  ['Pris från 172 kr', null],
  ['od 5 zł', null],
  ['1,200円から', null],
  ['12,000원부터', null],
  ['up to $5', null],
  ['$5 or more', null],
  ['$5+', null],
  ['~ $5', null],
  ['≈5 €', null],
  ['< $5', null],
  ['15%', null],
  ['-15 %', null],
  ['$40.00 -20%', null],
  ['2026-05-01', null],
  ['01.05.2026', null],
  ['1/5/2026', null],
  ['12.10.', null],
  ['July, 2004', null],
  ['555-123-4567', null],
  ['(555) 123-4567', null],
  ['+1 555 123 4567', null],
  ['612 345 678', null],
  ['5551234567', null],
  ['0301234567', null],
  ['#12345', null],
  ['3 kg', null],
  ['500 ml', null],
  ['x 3', null],
  ['3x', null],
  ['2 × $5', null],
  ['12K', null],
  ['$1.26K', null],
  ['$5 million', null],
  ['Rp 50 rb', null],
  ['3万円', null],
  ['¥3万', null],
  ['3만원', null],
  ['½ €', null],
  ['€1½', null],
  ['XY$5', null],
  ['A12', null],
  ['1e3 USD', null],
  ['<b>$5</b>', null],
  ["This £ doesn't 50 look like price", null],
  [`${'word '.repeat(50)}$5`, null],
])

describe('locale marks', () => {
  it('reads the dollar sign as decimal mark where the locale writes it so', () => {
    expect(read('1\u00a0234$50\u00a0\u200b', { locale: 'pt-CV' })).toBe('1234.50 -')
    expect(read('1234$50 EUR', { locale: 'pt-CV' })).toBe('1234.50 EUR')
  })

  it('does not change with what was asked before', () => {
    const before = read('1,234', { locale: 'de' })
    for (const locale of ['en', 'fr', 'hi', 'ar', 'pl', 'sv', 'ja']) read('1.234,50 unbekannte Taler', { locale })
    expect(read('1,234', { locale: 'de' })).toBe(before)
    expect(before).toBe('1.234 -')
  })
})

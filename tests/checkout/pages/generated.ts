import fc from 'fast-check'

/** A made-up checkout: its markup, and what a person reading it would say. */
export interface Generated {
  readonly html: string
  readonly lang: string
  readonly url: string
  readonly amount: string
  readonly currency: string
  readonly button: string
}

interface Speech {
  readonly lang: string
  readonly currency: string
  readonly money: (cents: number) => string
  readonly items: readonly string[]
  readonly shipping: readonly string[]
  readonly tax: readonly string[]
  readonly discount: readonly string[]
  readonly credit: readonly string[]
  readonly total: readonly string[]
  readonly due: readonly string[]
  readonly pay: readonly string[]
  readonly noise: readonly ((money: string) => string)[]
  /** Said under a total that contains its tax. */
  readonly contained: string
  /** Said above ways of sending that can be chosen. */
  readonly ways: readonly [string, string, string]
  readonly cart: string
}

function written(cents: number, decimal: string, group: string): string {
  const digits = String(Math.abs(cents)).padStart(3, '0')
  const whole = digits.slice(0, -2).replace(/\B(?=(\d{3})+$)/g, group)
  return `${whole}${decimal}${digits.slice(-2)}`
}

const sign = (cents: number): string => (cents < 0 ? '-' : '')

const SPEECHES: readonly Speech[] = [
  {
    lang: 'en-CA',
    currency: 'CAD',
    money: (cents) => `${sign(cents)}$${written(cents, '.', ',')}`,
    items: ['Subtotal', 'Items (3):', 'Item subtotal', 'Merchandise', 'Sub-total'],
    shipping: ['Shipping', 'Shipping & handling:', 'Delivery', 'Postage'],
    tax: ['GST/HST', 'Estimated tax', 'Tax (13%)', 'Sales tax:'],
    discount: ['Discount', 'Promo code SPRING', 'Voucher', 'Coupon: SPRING'],
    credit: ['Gift card', 'Store credit', 'Points redeemed'],
    total: ['Total', 'Order total', 'Grand total:', 'Total (incl. tax)', 'TOTAL', 'Total price'],
    due: ['Amount due', 'To pay', 'Total to pay:', 'You pay', 'Balance due'],
    pay: ['Place order', 'Pay now', 'Confirm and pay', 'Complete purchase'],
    noise: [
      (money) => `You save ${money}`,
      (money) => `Free shipping on orders over ${money}`,
      (money) => `or 4 payments of ${money}`,
      (money) => `${money} / month`,
      (money) => `Gift card balance: ${money}`,
      (money) => `Minimum order ${money}`,
    ],
    contained: 'Includes tax',
    ways: ['Shipping method', 'By post', 'By courier'],
    cart: 'Cart total',
  },
  {
    lang: 'fr-FR',
    currency: 'EUR',
    money: (cents) => `${sign(cents)}${written(cents, ',', '\u202f')}\u00a0€`,
    items: ['Sous-total', 'Total des articles', 'Articles', 'Sous-total :'],
    shipping: ['Livraison', 'Frais de port', "Frais d'expédition :"],
    tax: ['TVA', 'TVA (20 %)', 'Taxes'],
    discount: ['Remise', 'Code promo', 'Réduction :'],
    credit: ['Carte cadeau', 'Avoir utilisé'],
    total: ['Total', 'Total TTC', 'Total de la commande', 'Montant total :'],
    due: ['Net à payer', 'À payer', 'Reste à payer :', 'Montant à régler'],
    pay: ['Payer', 'Valider et payer', 'Payer maintenant', 'Commander'],
    noise: [
      (money) => `Vous économisez ${money}`,
      (money) => `Livraison gratuite dès ${money}`,
      (money) => `ou 3 versements de ${money}`,
      (money) => `Solde de la carte cadeau : ${money}`,
      (money) => `Plus que ${money} pour profiter de la livraison offerte`,
    ],
    contained: 'dont TVA',
    ways: ['Mode de livraison', 'Par la poste', 'Par coursier'],
    cart: 'Total du panier',
  },
  {
    lang: 'de-DE',
    currency: 'EUR',
    money: (cents) => `${sign(cents)}${written(cents, ',', '.')} €`,
    items: ['Zwischensumme', 'Warenwert', 'Summe der Artikel:', 'Artikel'],
    shipping: ['Versandkosten', 'Versand', 'Lieferung:'],
    tax: ['MwSt.', 'zzgl. 19 % MwSt.', 'Umsatzsteuer'],
    discount: ['Rabatt', 'Gutschein', 'Aktionscode FRUEHLING'],
    credit: ['Geschenkkarte', 'Guthaben'],
    total: ['Gesamtsumme', 'Gesamt', 'Summe', 'Gesamtbetrag:', 'Gesamtsumme (inkl. MwSt.)'],
    due: ['Zu zahlen', 'Zahlbetrag', 'Rechnungsbetrag:', 'Noch zu zahlen'],
    pay: ['Zahlungspflichtig bestellen', 'Jetzt kaufen', 'Kostenpflichtig bestellen'],
    noise: [
      (money) => `Sie sparen ${money}`,
      (money) => `Versandkostenfrei ab ${money}`,
      (money) => `Noch ${money} bis zum kostenlosen Versand`,
      (money) => `${money} pro Monat`,
      (money) => `Restguthaben: ${money}`,
      (money) => `inkl. 19 % MwSt. ${money}`,
    ],
    contained: 'inkl. 19 % MwSt.',
    ways: ['Versandart', 'Mit der Post', 'Mit dem Kurier'],
    cart: 'Warenkorb gesamt',
  },
]

type Row = readonly [label: string, money: string]
type Layout = (rows: readonly Row[]) => string

const LAYOUTS: readonly Layout[] = [
  (rows) => `<table>${rows.map(([l, m]) => `<tr><td>${l}</td><td>${m}</td></tr>`).join('')}</table>`,
  (rows) =>
    `<table><tbody>${rows
      .slice(0, -1)
      .map(([l, m]) => `<tr><th>${l}</th><td>${m}</td></tr>`)
      .join('')}</tbody><tfoot>${rows
      .slice(-1)
      .map(([l, m]) => `<tr><th>${l}</th><td><strong>${m}</strong></td></tr>`)
      .join('')}</tfoot></table>`,
  (rows) => `<dl>${rows.map(([l, m]) => `<dt>${l}</dt><dd>${m}</dd>`).join('')}</dl>`,
  (rows) => rows.map(([l, m]) => `<div><span>${l}</span><span>${m}</span></div>`).join(''),
  (rows) => rows.map(([l, m]) => `<div>${l} <b>${m}</b></div>`).join(''),
  (rows) => `<ul>${rows.map(([l, m]) => `<li><div><p>${l}</p></div><div><p>${m}</p></div></li>`).join('')}</ul>`,
  (rows) => `<div>${rows.map(([l, m]) => `<span>${l}</span> <span>${m}</span>`).join(' ')}</div>`,
  (rows) =>
    `<div class="l">${rows.map(([l]) => `<p>${l}</p>`).join('')}</div><div class="m">${rows.map(([, m]) => `<p>${m}</p>`).join('')}</div>`,
  (rows) => `<p>${rows.map(([l, m]) => `${l} ${m}`).join('<br>')}</p>`,
  (rows) => rows.map(([l, m]) => `<div><strong>${m}</strong><small>${l}</small></div>`).join(''),
]

// How an amount may be split over nodes, or doubled for screen readers.
const CUTS: readonly ((money: string) => string)[] = [
  (money) => money,
  (money) => money.replace(/^(-?)(\$)/, '$1<span>$2</span>').replace(/(€)$/, '<span>$1</span>'),
  (money) => money.replace(/^(.*\d)([.,])(\d\d)(\D*)$/, '<span>$1</span><span>$2</span><sup>$3</sup><span>$4</span>'),
  (money) => `<span class="visually-hidden">${money}</span><span aria-hidden="true">${money}</span>`,
  (money) => `<bdi>${money}</bdi>`,
]

/** Pages with random sums, labels, layouts and decoys. The arithmetic of each is right, as a shop's would be. */
export const generatedPage: fc.Arbitrary<Generated> = fc
  .record({
    speech: fc.constantFrom(...SPEECHES),
    layout: fc.constantFrom(...LAYOUTS),
    cut: fc.constantFrom(...CUTS),
    items: fc.integer({ min: 1, max: 3_000_000 }),
    shipping: fc.option(fc.integer({ min: 0, max: 5_000 })),
    tax: fc.option(fc.integer({ min: 1, max: 90_000 })),
    discount: fc.boolean(),
    credit: fc.boolean(),
    named: fc.infiniteStream(fc.nat()),
    noise: fc.array(fc.integer({ min: 1, max: 900_000 }), { maxLength: 4 }),
    noiseFirst: fc.boolean(),
    onButton: fc.boolean(),
    taxContained: fc.boolean(),
    copy: fc.boolean(),
    options: fc.boolean(),
    lines: fc.boolean(),
    smallCart: fc.option(fc.integer({ min: 1, max: 900_000 })),
    wraps: fc.integer({ min: 0, max: 3 }),
    hidden: fc.option(fc.integer({ min: 0, max: 900_000 })),
  })
  .map((made) => {
    const { speech } = made
    const pick = <T>(list: readonly T[]): T => {
      const index = made.named.next().value % list.length
      const picked = list[index]
      if (picked === undefined) throw new RangeError('A list of words is empty.')
      return picked
    }
    const money = (cents: number): string => made.cut(speech.money(cents))
    const discount = made.discount ? Math.floor(made.items / 10) : 0
    const contained = made.taxContained && made.tax !== null && made.tax < made.items
    const gross = made.items + (made.shipping ?? 0) + (contained ? 0 : (made.tax ?? 0)) - discount
    const credit = made.credit ? Math.floor(gross / 3) : 0
    const rows: [string, string][] = [[pick(speech.items), money(made.items)]]
    if (made.shipping !== null) rows.push([pick(speech.shipping), money(made.shipping)])
    if (made.tax !== null && !contained) rows.push([pick(speech.tax), money(made.tax)])
    if (discount > 0) rows.push([pick(speech.discount), money(-discount)])
    rows.push([pick(speech.total), money(gross)])
    if (contained) rows.push([speech.contained, money(made.tax ?? 0)])
    if (credit > 0) rows.push([pick(speech.credit), money(-credit)], [pick(speech.due), money(gross - credit)])
    const noise = made.noise.map((cents) => `<p>${pick(speech.noise)(speech.money(cents))}</p>`).join('')
    const wrap = (html: string): string => '<div>'.repeat(made.wraps) + html + '</div>'.repeat(made.wraps)
    const section = `<section>${wrap(made.layout(rows))}</section>`
    const sums = made.copy ? `${section}<aside class="narrow">${made.layout(rows)}</aside>` : section
    const [legend, one, two] = speech.ways
    const way = (name: string, cents: number, on: boolean): string =>
      `<label><input type="radio" name="way"${on ? ' checked' : ''}> ${name} <span>${speech.money(cents)}</span></label>`
    const options = made.options
      ? `<fieldset><legend>${legend}</legend>${way(one, made.shipping ?? 0, true)}${way(two, 1995, false)}</fieldset>`
      : ''
    const half = Math.floor(made.items / 2)
    const line = (name: string, cents: number): string =>
      `<li><a href="/x">${name}</a> <span>× 1</span> <b>${money(cents)}</b></li>`
    const lines =
      made.lines && half > 0 ? `<ul>${line('Teapot, green', half)}${line('Kettle', made.items - half)}</ul>` : ''
    const head =
      made.smallCart === null
        ? ''
        : `<header><a href="/cart">${speech.cart} ${speech.money(made.smallCart)}</a></header>`
    const hidden =
      made.hidden === null
        ? ''
        : `<div style="display:none"><p>${pick(speech.due)} ${speech.money(made.hidden)}</p></div>`
    const button = pick(speech.pay)
    const amount = written(gross - credit, '.', '')
    const words = made.onButton ? `${button} ${speech.money(gross - credit)}` : button
    const around = made.noiseFirst ? noise + hidden + options + lines + sums : lines + options + sums + hidden + noise
    const html = `${head}<main>${around}<input autocomplete="cc-number"><button>${words}</button></main>`
    return {
      html,
      lang: speech.lang,
      url: 'https://shop.example/checkout',
      amount,
      currency: speech.currency,
      button: words,
    }
  })

import type { ShopPage } from '../page.ts'

// Invented shops: Mėlynas Ąsotis (pottery), Rugiagėlė (seeds), Knygų Kiemas (books).
export const ltPages: readonly ShopPage[] = [
  {
    name: 'a checkout with the words of the law',
    url: 'https://asotis.example/apmokejimas',
    lang: 'lt-LT',
    title: 'Apmokėjimas',
    body: `<h1>Apmokėjimas</h1><table><tr><th>Tarpinė suma</th><td>36,00 €</td></tr><tr><th>Pristatymas</th><td>3,49 €</td></tr>
      <tr><th>Iš viso</th><td><b>39,49 €</b></td></tr><tr><td>Įskaitant PVM 21%</td><td>6,85 €</td></tr></table>
      <label><input type="checkbox"> Sutinku su pirkimo taisyklėmis</label><button>Užsakymas su mokėjimo pareiga</button>`,
    stage: 'checkout',
    total: '39.49 EUR',
    placeOrder: ['Užsakymas su mokėjimo pareiga'],
    parts: ['items 36.00', 'shipping 3.49'],
  },
  {
    name: 'a cart whose delivery is not known yet',
    url: 'https://asotis.example/krepselis',
    lang: 'lt',
    title: 'Krepšelis',
    body: `<h1>Prekių krepšelis</h1><table><tr><th>Prekė</th><th>Kaina</th><th>Kiekis</th><th>Suma</th></tr>
      <tr><td>Molinis puodelis</td><td>9,00 €</td><td>2</td><td>18,00 €</td></tr></table>
      <div><span>Tarpinė suma</span><b>18,00 €</b></div><div><span>Pristatymas</span><i>bus apskaičiuotas kitame žingsnyje</i></div>
      <a href="/apmokejimas">Pereiti prie apmokėjimo</a><a href="/">Tęsti apsipirkimą</a>`,
    stage: 'cart',
    total: null,
    items: ['2 Molinis puodelis 18.00'],
  },
  {
    name: 'a confirmation; the parcel has another number',
    url: 'https://asotis.example/aciu',
    lang: 'lt',
    title: 'Ačiū',
    body: `<h1>Ačiū už užsakymą!</h1><p>Siuntos numeris: 700911</p><p>Jūsų užsakymo numeris: <b>MA-2291</b></p>
      <dl><dt>Prekių suma</dt><dd>36,00 €</dd><dt>Pristatymas</dt><dd>3,49 €</dd><dt>Bendra suma</dt><dd>39,49 €</dd></dl>`,
    stage: 'confirmation',
    total: '39.49 EUR',
    orderNumber: 'MA-2291',
  },
  {
    name: 'savings, instalments, a threshold and points',
    url: 'https://rugiagele.example/kasa',
    lang: 'lt',
    title: 'Užsakymo peržiūra',
    body: `<p>Iki nemokamo pristatymo trūksta 12,00 €</p>
      <div><span>Prekės</span><span>28,00 €</span></div><div><span>Nuolaida</span><span>-2,80 €</span></div><div><span>Pristatymas</span><span>2,80 €</span></div>
      <div><span>Mokėtina suma</span><strong>28,00 €</strong></div><p>Sutaupėte 2,80 €</p><p>arba 2,33 € / mėn.</p><p>Gausite 28 taškus (0,28 €)</p>
      <label><input type="radio" name="payment_method" checked> Kortelė</label><button>Pateikti užsakymą</button><button>Pritaikyti kuponą</button>`,
    stage: 'checkout',
    total: '28.00 EUR',
    placeOrder: ['Pateikti užsakymą'],
    parts: ['items 28.00', 'discount -2.80', 'shipping 2.80'],
  },
  {
    name: 'net sum, tax, sum to pay; groups parted by spaces',
    url: 'https://kiemas.example/mokejimas',
    lang: 'lt',
    body: `<h1>Mokėjimas</h1><dl><dt>Suma be PVM</dt><dd>1 000,00 Eur</dd><dt>PVM 21%</dt><dd>210,00 Eur</dd><dt>Iš viso mokėti</dt><dd>1 210,00 Eur</dd></dl>
      <input autocomplete="cc-number"><button>Mokėti 1 210,00 Eur</button><a href="/krepselis">Grįžti į krepšelį</a>`,
    stage: 'checkout',
    total: '1210.00 EUR',
    placeOrder: ['Mokėti 1 210,00 Eur'],
  },
  {
    name: 'cards with split amounts, a gift voucher used up and what is left on it',
    url: 'https://kiemas.example/checkout',
    lang: 'lt',
    body: `<section><div class="r"><span>Prekės iš viso</span><span>24<sup>90</sup> €</span></div><div class="r"><span>Dovanų kuponas</span><span>−10,00 €</span></div>
      <div class="r"><span>Liko mokėti</span><span>14<sup>90</sup> €</span></div><p>Dovanų kupono likutis: 5,00 €</p></section>
      <iframe title="Card payment"></iframe><input type="submit" value="Užsakyti ir apmokėti">`,
    stage: 'checkout',
    total: '14.90 EUR',
    placeOrder: ['Užsakyti ir apmokėti'],
    parts: ['items 24.90', 'credit -10.00'],
  },
]

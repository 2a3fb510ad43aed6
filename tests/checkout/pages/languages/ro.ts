import type { ShopPage } from '../page.ts'

// Invented shops: Atelierul Sânziana, Ceainăria Negura, Papetăria Vrăbiuța (Moldova).
export const roPages: readonly ShopPage[] = [
  {
    name: 'products, delivery, voucher; the legal words on the button',
    url: 'https://sanziana.example/checkout',
    lang: 'ro-RO',
    body: `<h1>Sumar comandă</h1><table>
      <tr><td>Total produse</td><td>1.349,00 lei</td></tr><tr><td>Cost livrare</td><td>19,99 lei</td></tr>
      <tr><td>Cupon de reducere</td><td>-50,00 lei</td></tr><tr><td>Total de plată</td><td><b>1.318,99 lei</b></td></tr></table>
      <label><input type="checkbox"> Sunt de acord cu termenii și condițiile</label><button>Comandă cu obligație de plată</button>`,
    stage: 'checkout',
    total: '1318.99 RON',
    placeOrder: ['Comandă cu obligație de plată'],
    parts: ['items 1349.00', 'shipping 19.99', 'discount -50.00'],
  },
  {
    name: 'a cart whose delivery is calculated in the next step',
    url: 'https://sanziana.example/cos',
    lang: 'ro',
    body: `<h1>Coșul tău</h1><table><tr><th>Produs</th><th>Cantitate</th><th>Preț unitar</th><th>Total</th></tr>
      <tr><td>Cană pictată</td><td>2</td><td>49,00 lei</td><td>98,00 lei</td></tr></table>
      <div><span>Livrare</span><span>se calculează la pasul următor</span></div>
      <div><span>Total</span><span>98,00 lei</span></div><a href="/checkout">Continuă spre finalizare</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 Cană pictată 98.00'],
  },
  {
    name: 'a confirmation with a parcel number; accents left out',
    url: 'https://negura.example/comanda/multumim',
    lang: 'ro',
    body: `<h1>Iti multumim pentru comanda!</h1><p>Numarul comenzii tale este <b>NG-10442</b>.</p><p>AWB: 2088120034</p>
      <dl><dt>Produse</dt><dd>120,00 RON</dd><dt>Transport</dt><dd>18,00 RON</dd><dt>Total comanda</dt><dd>138,00 RON</dd></dl>`,
    stage: 'confirmation',
    total: '138.00 RON',
    orderNumber: 'NG-10442',
  },
  {
    name: 'decoys: threshold, saving, instalments, points, tax contained behind the total',
    url: 'https://negura.example/checkout/plata',
    lang: 'ro',
    body: `<p>Mai adaugă produse de 35,50 lei pentru livrare gratuită</p>
      <ul><li><span>Subtotal</span> <span>164,50 lei</span></li><li><span>Taxă de livrare</span> <span>17,50 lei</span></li>
      <li><span>Total (TVA inclus)</span> <strong>182,00 lei</strong></li><li><span>din care TVA 21%</span> <span>31,59 lei</span></li></ul>
      <p>Economisești 12,00 lei</p><p>sau 4 rate de 45,50 lei fără dobândă</p><p>Primești 18 puncte de fidelitate</p>
      <label><input type="radio" name="payment" checked> Ramburs</label><button>Trimite comanda</button>`,
    stage: 'checkout',
    total: '182.00 RON',
    placeOrder: ['Trimite comanda'],
    parts: ['items 164.50', 'shipping 17.50'],
  },
  {
    name: 'bani set small behind the lei, amount before its label',
    url: 'https://sanziana.example/checkout/finalizare',
    lang: 'ro',
    body: `<div><p><b>45<sup>,50</sup> Lei</b> <span>Valoare produse</span></p><p><b>14<sup>,50</sup> Lei</b> <span>Curier</span></p>
      <p><b>60<sup>,00</sup> Lei</b> <span>De achitat</span></p></div>
      <input autocomplete="cc-number"><input type="submit" value="Plătește 60,00 Lei">`,
    stage: 'checkout',
    total: '60.00 RON',
    placeOrder: ['Plătește 60,00 Lei'],
  },
  {
    name: 'Moldova: another currency, named by its code',
    url: 'https://vrabiuta.example/checkout',
    lang: 'ro-MD',
    body: `<dl><dt>Produse</dt><dd>240 MDL</dd><dt>Livrare prin curier</dt><dd>50 MDL</dd><dt>Suma totală</dt><dd>290 MDL</dd></dl>
      <label><input type="checkbox"> Accept termenii și condițiile</label><button>Plasează comanda</button>`,
    stage: 'checkout',
    total: '290 MDL',
    placeOrder: ['Plasează comanda'],
  },
]

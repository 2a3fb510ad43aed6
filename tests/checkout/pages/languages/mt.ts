import type { ShopPage } from '../page.ts'

// Invented shops: Ħanut tal-Għasel (honey), Fuħħar Żejtuni (pottery).
export const mtPages: readonly ShopPage[] = [
  {
    name: 'the words of the Court of Justice on the button',
    url: 'https://ghasel.example/checkout',
    lang: 'mt',
    body: `<h1>Ħlas</h1><table><tr><td>Subtotal</td><td>€24.00</td></tr><tr><td>Spejjeż tal-konsenja</td><td>€4.50</td></tr><tr><td>Skont</td><td>-€3.00</td></tr>
      <tr><td>Total tal-ordni</td><td><b>€25.50</b></td></tr></table><label><input type="checkbox"> Naqbel mat-termini u l-kundizzjonijiet</label>
      <button>Ordni b’obbligu ta’ pagament</button>`,
    stage: 'checkout',
    total: '25.50 EUR',
    placeOrder: ['Ordni b’obbligu ta’ pagament'],
    parts: ['items 24.00', 'shipping 4.50', 'discount -3.00'],
  },
  {
    name: 'a cart whose delivery is worked out at the next step',
    url: 'https://ghasel.example/cart',
    lang: 'mt-MT',
    body: `<h1>Il-karrettun tiegħek</h1><table><tr><th>Prodott</th><th>Kwantità</th><th>Prezz</th></tr><tr><td>Għasel tas-sagħtar</td><td>2</td><td>€24.00</td></tr></table>
      <p>Konsenja b’xejn għal ordnijiet ta’ aktar minn €40.00</p><p>Subtotal: <b>€24.00</b></p><p>Konsenja: <i>ikkalkulata fil-pass li jmiss</i></p><a href="/checkout">Għaddi għall-ħlas</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 Għasel tas-sagħtar 24.00'],
  },
  {
    name: 'a confirmation with its number',
    url: 'https://ghasel.example/checkout/success',
    lang: 'mt',
    body: `<h1>Grazzi tal-ordni tiegħek!</h1><p>Numru tal-ordni: GH-00412</p><p>Numru tal-klijent: 7731</p>
      <dl><dt>Subtotal</dt><dd>€24.00</dd><dt>Konsenja</dt><dd>€4.50</dd><dt>Total</dt><dd>€28.50</dd></dl>`,
    stage: 'confirmation',
    total: '28.50 EUR',
    orderNumber: 'GH-00412',
  },
  {
    name: 'a saving, points and monthly payments, the tax contained after the sum',
    url: 'https://fuhhar.example/checkout/payment',
    lang: 'mt',
    body: `<h2>Metodu ta’ ħlas</h2><input autocomplete="cc-number"><div><span>Ammont dovut</span><b>€59.00</b></div><div><span>Inkluża l-VAT</span><span>€9.00</span></div>
      <p>Tiffranka €11.00</p><p>6 pagamenti ta’ €9.83 fix-xahar</p><p>Taqla 59 punt</p><button>Ħallas issa</button><button>Applika</button>`,
    stage: 'checkout',
    total: '59.00 EUR',
    placeOrder: ['Ħallas issa'],
  },
  {
    name: 'net, tax, gross in a list of terms, the sign behind the amount',
    url: 'https://fuhhar.example/checkout/review',
    lang: 'mt',
    body: `<dl><dt>Total mingħajr VAT</dt><dd>50.00 €</dd><dt>VAT 18%</dt><dd>9.00 €</dd><dt>Total li għandek tħallas</dt><dd>59.00 €</dd></dl>
      <label><input type="radio" name="payment" checked>Karta</label><button>Ordna u ħallas</button>`,
    stage: 'checkout',
    total: '59.00 EUR',
    placeOrder: ['Ordna u ħallas'],
    parts: ['tax 9.00'],
  },
]

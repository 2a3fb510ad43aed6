import type { ShopPage } from '../page.ts'

// Invented shops: Siopa na Coille (books), Potaireacht Chrannóg (pottery).
export const gaPages: readonly ShopPage[] = [
  {
    name: 'items, delivery, a discount, and the sum',
    url: 'https://nacoille.example/checkout',
    lang: 'ga',
    body: `<h1>Seiceáil amach</h1><table><tr><td>Fo-iomlán</td><td>€32.00</td></tr><tr><td>Seachadadh</td><td>€5.00</td></tr><tr><td>Lascaine</td><td>-€4.00</td></tr>
      <tr><td>Iomlán an ordaithe</td><td><b>€33.00</b></td></tr></table><label><input type="checkbox"> Aontaím leis na téarmaí agus coinníollacha</label><button>Íoc anois</button>`,
    stage: 'checkout',
    total: '33.00 EUR',
    placeOrder: ['Íoc anois'],
    parts: ['items 32.00', 'shipping 5.00', 'discount -4.00'],
  },
  {
    name: 'a cart whose delivery is worked out at the next step',
    url: 'https://nacoille.example/cart',
    lang: 'ga-IE',
    body: `<h1>Do chiseán</h1><table><tr><th>Táirge</th><th>Cainníocht</th><th>Praghas</th></tr><tr><td>Scéalta Sí</td><td>2</td><td>€32.00</td></tr></table>
      <p>Seachadadh saor in aisce ar orduithe os cionn €50.00</p><p>Fo-iomlán: <b>€32.00</b></p><p>Seachadadh: <i>ríomhfar sa chéad chéim eile</i></p><a href="/checkout">Ar aghaidh chuig an tseiceáil amach</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 Scéalta Sí 32.00'],
  },
  {
    name: 'a confirmation with its number',
    url: 'https://nacoille.example/checkout/success',
    lang: 'ga',
    body: `<h1>Go raibh maith agat as d’ordú!</h1><p>Uimhir ordaithe: NC-00412</p><p>Uimhir chustaiméara: 7731</p>
      <dl><dt>Fo-iomlán</dt><dd>€32.00</dd><dt>Postas</dt><dd>€5.00</dd><dt>Iomlán</dt><dd>€37.00</dd></dl>`,
    stage: 'confirmation',
    total: '37.00 EUR',
    orderNumber: 'NC-00412',
  },
  {
    name: 'a saving, points and monthly payments, the tax contained after the sum',
    url: 'https://crannog.example/checkout/payment',
    lang: 'ga',
    body: `<h2>Modh íocaíochta</h2><input autocomplete="cc-number"><div><span>Iomlán le híoc</span><b>€61.50</b></div><div><span>CBL san áireamh</span><span>€11.50</span></div>
      <p>Sábhálann tú €8.00</p><p>6 ghála de €10.25 sa mhí</p><p>Pointí le saothrú: 61</p><button>Déan an t-ordú</button><button>Cuir i bhfeidhm</button>`,
    stage: 'checkout',
    total: '61.50 EUR',
    placeOrder: ['Déan an t-ordú'],
  },
  {
    name: 'net, tax, gross in cards, each amount before its label',
    url: 'https://crannog.example/checkout/review',
    lang: 'ga',
    body: `<div><p><b>€50.00</b><span>Iomlán gan CBL</span></p><p><b>€11.50</b><span>CBL 23%</span></p><p><b>€61.50</b><span>Mórlán</span></p></div>
      <label><input type="radio" name="payment" checked>Cárta</label><button>Ordaigh agus íoc</button>`,
    stage: 'checkout',
    total: '61.50 EUR',
    placeOrder: ['Ordaigh agus íoc'],
    parts: ['tax 11.50'],
  },
]

import type { ShopPage } from '../page.ts'

// Invented shops: Fjordlampa (lamps), Viddas Ull (wool), Nynorskheimen (books, in Nynorsk).
export const nbPages: readonly ShopPage[] = [
  {
    name: 'a checkout whose parts add up, crowns before the number',
    url: 'https://fjordlampa.example/kassen',
    lang: 'nb-NO',
    body: `<h1>Kasse</h1><table><tr><td>Delsum</td><td>kr 1 499,00</td></tr><tr><td>Frakt</td><td>kr 99,00</td></tr><tr><td>Rabatt</td><td>-kr 150,00</td></tr>
      <tr><td>Totalt</td><td><strong>kr 1 448,00</strong></td></tr><tr><td>Herav mva.</td><td>kr 289,60</td></tr></table>
      <label><input type="checkbox"> Jeg har lest og godtar kjøpsvilkårene</label><button>Fullfør kjøp</button>`,
    stage: 'checkout',
    total: '1448.00 NOK',
    placeOrder: ['Fullfør kjøp'],
    parts: ['items 1499.00', 'shipping 99.00', 'discount -150.00'],
  },
  {
    name: 'a page that calls its language no; a dash for the øre',
    url: 'https://viddasull.example/checkout/betaling',
    lang: 'no',
    body: `<div><span>Sum varer</span><span>kr 798,-</span></div><div><span>Levering</span><span>kr 79,-</span></div><div><span>Gavekort</span><span>-kr 200,-</span></div>
      <div><span>Å betale</span><span>kr 677,-</span></div><p>Igjen på gavekortet: kr 50,-</p>
      <label><input type="radio" name="betalingsmaate" checked>Kort</label><input autocomplete="cc-number"><button>Bestill og betal</button>`,
    stage: 'checkout',
    total: '677 NOK',
    placeOrder: ['Bestill og betal'],
    parts: ['items 798', 'shipping 79', 'credit -200'],
  },
  {
    name: 'a cart that leaves the freight for later',
    url: 'https://viddasull.example/handlekurv',
    lang: 'nb',
    body: `<h1>Handlekurv</h1><ul><li><a href="/p/genser">Genser</a><span>Antall: 1</span><span>kr 899,00</span></li></ul>
      <div><span>Delsum</span><span>kr 899,00</span></div><div><span>Frakt</span><span>Beregnes i kassen</span></div><div><span>Totalt</span><span>kr 899,00</span></div>
      <a href="/kasse">Gå til kassen</a>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a confirmation in a page that calls its language no',
    url: 'https://viddasull.example/checkout/ferdig',
    lang: 'no',
    body: `<h1>Takk for handelen!</h1><p>Ordrenummer <b>VU-55021</b></p><p>Kundenummer 1290</p>
      <div><span>Delsum</span><span>kr 899,00</span></div><div><span>Frakt</span><span>kr 79,00</span></div><div><span>Totalsum</span><span>kr 978,00</span></div>`,
    stage: 'confirmation',
    total: '978.00 NOK',
    orderNumber: 'VU-55021',
  },
  {
    name: 'decoys: free freight, part payment, points, savings, the tax after the sum',
    url: 'https://fjordlampa.example/kassen/oppsummering',
    lang: 'nb-NO',
    body: `<p>Handle for kr 201,00 til for å få fri frakt</p><p>Veil. pris kr 999,00</p>
      <dl><dt>Varer</dt><dd>kr 799,00</dd><dt>Fraktkostnad</dt><dd>kr 89,00</dd><dt>Å betale</dt><dd>kr 888,00</dd><dt>MVA (25 %) utgjør</dt><dd>kr 177,60</dd></dl>
      <p>Du sparer kr 200,00</p><p>Delbetal fra kr 99,00 per måned</p><p>Du tjener 88 poeng</p>
      <label><input type="checkbox"> Jeg godtar vilkårene og angreretten</label><a href="/">Fortsett å handle</a><button>Bestilling med betalingsplikt</button>`,
    stage: 'checkout',
    total: '888.00 NOK',
    placeOrder: ['Bestilling med betalingsplikt'],
  },
  {
    name: 'Nynorsk, in a page that says so',
    url: 'https://nynorskheimen.example/kassa',
    lang: 'nn-NO',
    body: `<h1>Kassa</h1><p><span>Sum varar</span> <span>349,00 kr</span></p><p><span>Frakt</span> <span>49,00 kr</span></p><p><span>Sum å betale</span> <b>398,00 kr</b></p>
      <label><input type="checkbox"> Eg godtek vilkåra</label><button>Stadfest og betal</button>`,
    stage: 'checkout',
    total: '398.00 NOK',
    placeOrder: ['Stadfest og betal'],
    parts: ['items 349.00', 'shipping 49.00'],
  },
  {
    name: 'Nynorsk: a confirmation',
    url: 'https://nynorskheimen.example/kassa/kvittering',
    lang: 'nn',
    body: `<h1>Takk for tinginga</h1><p>Ordrenummer: <b>7741</b></p><p><span>Sum varar</span> <span>349,00 kr</span></p><p><span>Frakt</span> <span>49,00 kr</span></p><p><span>Til saman</span> <b>398,00 kr</b></p>`,
    stage: 'confirmation',
    total: '398.00 NOK',
    orderNumber: '7741',
  },
]

import type { ShopPage } from '../page.ts'

// Invented shops: Fjällgarn (Sweden), Skärgårdskeramik (Finland, in Swedish).
export const svPages: readonly ShopPage[] = [
  {
    name: 'a checkout whose parts add up, crowns after the number',
    url: 'https://fjallgarn.example/kassa/betalning',
    lang: 'sv-SE',
    body: `<h1>Kassa</h1><table><tr><td>Delsumma</td><td>1 249,00 kr</td></tr><tr><td>Frakt (PostNord)</td><td>59,00 kr</td></tr>
      <tr><td>Rabatt (HÖST10)</td><td>-124,90 kr</td></tr><tr><td>Totalsumma</td><td><b>1 183,10 kr</b></td></tr><tr><td>varav moms 25 %</td><td>236,62 kr</td></tr></table>
      <label><input type="checkbox"> Jag godkänner köpvillkoren</label><button>Slutför köp</button>`,
    stage: 'checkout',
    total: '1183.10 SEK',
    placeOrder: ['Slutför köp'],
    parts: ['items 1249.00', 'shipping 59.00', 'discount -124.90'],
  },
  {
    name: 'the words of the directive on the button; a bonus cheque is used up',
    url: 'https://skargardskeramik.example/fi/sv/kassa',
    lang: 'sv-FI',
    body: `<dl><dt>Varor</dt><dd>48,00 €</dd><dt>Leveranskostnad</dt><dd>6,90 €</dd><dt>Presentkort</dt><dd>−20,00 €</dd><dt>Att betala</dt><dd>34,90 €</dd></dl>
      <p>Kvar på presentkortet: 5,00 €</p><input autocomplete="cc-number"><button>Beställning förenad med betalningsskyldighet</button>`,
    stage: 'checkout',
    total: '34.90 EUR',
    placeOrder: ['Beställning förenad med betalningsskyldighet'],
    parts: ['items 48.00', 'shipping 6.90', 'credit -20.00'],
  },
  {
    name: 'a cart that leaves the freight for later',
    url: 'https://fjallgarn.example/varukorg',
    lang: 'sv',
    body: `<h1>Din varukorg</h1><ul><li><a href="/p/vante">Lovikkavante</a> <span>2 st</span> <span>398 kr</span></li></ul>
      <div><span>Delsumma</span><span>398 kr</span></div><div><span>Frakt</span><span>Beräknas i kassan</span></div>
      <div><span>Totalt</span><span>398 kr</span></div><a href="/kassa">Till kassan</a>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a confirmation with other numbers about it',
    url: 'https://fjallgarn.example/kassa/klar',
    lang: 'sv',
    body: `<h1>Tack för din beställning!</h1><p>Ditt ordernummer är <strong>FG-104882</strong></p><p>Kundnummer: 77120</p><p>OCR-nummer: 9928831120</p>
      <div><span>Delsumma</span><span>1 249,00 kr</span></div><div><span>Frakt</span><span>0,00 kr</span></div><div><span>Totalsumma</span><span>1 249,00 kr</span></div>`,
    stage: 'confirmation',
    total: '1249.00 SEK',
    orderNumber: 'FG-104882',
  },
  {
    name: 'decoys: free freight, part payment, points, savings, the former price, the tax after the sum',
    url: 'https://fjallgarn.example/kassa',
    lang: 'sv-SE',
    body: `<p>Handla för 150 kr till för fri frakt</p><div>Ordinarie pris: <s>449 kr</s></div>
      <div><span>Artiklar (1)</span><span>349 kr</span></div><div><span>Fraktkostnad</span><span>49 kr</span></div>
      <div><b>Summa att betala</b><b>398 kr</b></div><div><span>Moms ingår med</span><span>79,60 kr</span></div>
      <p>Du sparar 100 kr</p><p>Delbetala från 45 kr/mån</p><p>Du får 398 poäng, värda 4 kr</p>
      <label><input type="checkbox"> Jag har läst villkoren och ångerrätten</label>
      <a href="/">Fortsätt handla</a><button>Betala nu</button><button>Prenumerera</button>`,
    stage: 'checkout',
    total: '398 SEK',
    placeOrder: ['Betala nu'],
  },
  {
    name: 'the number in pieces, the currency as a code, a booking',
    url: 'https://stugby.example/checkout',
    lang: 'sv',
    body: `<section><h2>Betalningssätt</h2><label><input type="radio" name="payment_method" checked>Swish</label></section>
      <aside><h2>Sammanfattning</h2><p><span>Stuga, 2 nätter</span><span>2 400 <small>SEK</small></span></p><p><span>Bokningsavgift</span><span>95 <small>SEK</small></span></p>
      <p><span>Totalt belopp</span><strong>2 495 <small>SEK</small></strong></p></aside><button>Bekräfta och betala 2 495 SEK</button>`,
    stage: 'checkout',
    total: '2495 SEK',
    placeOrder: ['Bekräfta och betala 2 495 SEK'],
  },
  {
    name: 'a step that only goes on to the payment',
    url: 'https://fjallgarn.example/kassa/adress',
    lang: 'sv',
    body: `<h1>Leveransadress</h1><input autocomplete="street-address"><div><span>Delsumma</span><b>398 kr</b></div><div><span>Frakt</span><i>beräknas i nästa steg</i></div>
      <button>Fortsätt till betalning</button>`,
    stage: 'checkout',
    total: null,
  },
]

import type { ShopPage } from '../page.ts'

// Invented shops: Klitrosen (tea), Havnens Garn (yarn).
export const daPages: readonly ShopPage[] = [
  {
    name: 'a checkout whose parts add up, points for thousands',
    url: 'https://klitrosen.example/kassen',
    lang: 'da-DK',
    body: `<h1>Kassen</h1><table><tr><th>Subtotal</th><td>1.180,00 kr.</td></tr><tr><th>Levering</th><td>39,00 kr.</td></tr>
      <tr><th>Rabat: EFTERÅR</th><td>-118,00 kr.</td></tr><tr><th>I alt</th><td><strong>1.101,00 kr.</strong> <small>(heraf 220,20 kr. moms)</small></td></tr></table>
      <label><input type="checkbox"> Jeg accepterer handelsbetingelserne</label><button>Afgiv ordre</button>`,
    stage: 'checkout',
    total: '1101.00 DKK',
    placeOrder: ['Afgiv ordre'],
    parts: ['items 1180.00', 'shipping 39.00', 'discount -118.00'],
  },
  {
    name: 'the words of the directive on the button, a gift card used up',
    url: 'https://havnensgarn.example/checkout/betaling',
    lang: 'da',
    body: `<div><span>Varer i alt</span><span>DKK 420,00</span></div><div><span>Fragt</span><span>DKK 49,00</span></div><div><span>Gavekort</span><span>DKK -100,00</span></div>
      <div><span>At betale</span><span>DKK 369,00</span></div><p>Tilbage på gavekortet: DKK 50,00</p>
      <input autocomplete="cc-number"><button>Ordre med betalingsforpligtelse</button>`,
    stage: 'checkout',
    total: '369.00 DKK',
    placeOrder: ['Ordre med betalingsforpligtelse'],
    parts: ['items 420.00', 'shipping 49.00', 'credit -100.00'],
  },
  {
    name: 'a cart that leaves the freight for later',
    url: 'https://klitrosen.example/kurv',
    lang: 'da',
    body: `<h1>Indkøbskurv</h1><table><tr><th>Vare</th><th>Antal</th><th>Pris</th></tr><tr><td>Kamillete</td><td>2</td><td>110,00 kr.</td></tr></table>
      <div><span>Subtotal</span><span>110,00 kr.</span></div><div><span>Fragt</span><span>Beregnes ved kassen</span></div><div><span>I alt</span><span>110,00 kr.</span></div>
      <a href="/kassen">Gå til kassen</a>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a confirmation',
    url: 'https://klitrosen.example/kassen/tak',
    lang: 'da',
    body: `<h1>Tak for din ordre</h1><p>Ordrenummer: <b>20417</b></p><p>Fakturanummer: 88121</p>
      <table><tr><td>Subtotal</td><td>110,00 kr.</td></tr><tr><td>Fragt</td><td>39,00 kr.</td></tr><tr><td>I alt</td><td>149,00 kr.</td></tr></table>`,
    stage: 'confirmation',
    total: '149.00 DKK',
    orderNumber: '20417',
  },
  {
    name: 'decoys: free freight, part payment, savings, points, the tax contained after the sum',
    url: 'https://havnensgarn.example/checkout',
    lang: 'da-DK',
    body: `<p>Køb for 81,00 kr. mere og få gratis fragt</p><p>Førpris 499,00 kr.</p>
      <dl><dt>Varer</dt><dd>419,00 kr.</dd><dt>Fragt</dt><dd>45,00 kr.</dd><dt>Total inkl. moms</dt><dd>464,00 kr.</dd><dt>Heraf moms</dt><dd>92,80 kr.</dd></dl>
      <p>Du sparer 80,00 kr.</p><p>eller 4 rater af 116,00 kr.</p><p>Du optjener 46 point</p>
      <label><input type="checkbox"> Jeg har læst vilkårene</label><button>Betal senere</button><button>Gennemfør køb</button>`,
    stage: 'checkout',
    total: '464.00 DKK',
    placeOrder: ['Gennemfør køb'],
  },
  {
    name: 'cards: the amount before its label, a dash for the øre',
    url: 'https://havnensgarn.example/kassen/godkend',
    lang: 'da-DK',
    body: `<h1>Gennemse din ordre</h1><div class="card"><strong>kr. 350,-</strong> <span>Varer</span></div><div class="card"><strong>kr. 49,-</strong> <span>Levering</span></div>
      <div class="card"><strong>kr. 399,-</strong> <span>Samlet beløb</span></div>
      <label><input type="checkbox"> Jeg accepterer betingelserne</label><button>Godkend og betal</button>`,
    stage: 'checkout',
    total: '399 DKK',
    placeOrder: ['Godkend og betal'],
  },
]

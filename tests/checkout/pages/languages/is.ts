import type { ShopPage } from '../page.ts'

// Invented shops: Lopapeysan (wool), Hraunkaffi (coffee).
export const isPages: readonly ShopPage[] = [
  {
    name: 'a checkout whose parts add up; crowns without cents',
    url: 'https://lopapeysan.example/checkout',
    lang: 'is-IS',
    body: `<h1>Afgreiðsla</h1><table><tr><td>Millisamtala</td><td>24.900 kr.</td></tr><tr><td>Sendingarkostnaður</td><td>1.490 kr.</td></tr><tr><td>Afsláttur</td><td>-2.490 kr.</td></tr>
      <tr><td>Samtals</td><td><b>23.900 kr.</b></td></tr><tr><td>Þar af VSK 24%</td><td>4.626 kr.</td></tr></table>
      <label><input type="checkbox"> Ég samþykki skilmálana</label><button>Staðfesta og greiða</button>`,
    stage: 'checkout',
    total: '23900 ISK',
    placeOrder: ['Staðfesta og greiða'],
    parts: ['items 24900', 'shipping 1490', 'discount -2490'],
  },
  {
    name: 'a gift card used up, the code as currency',
    url: 'https://hraunkaffi.example/checkout/greidsla',
    lang: 'is',
    body: `<dl><dt>Vörur</dt><dd>8.700 ISK</dd><dt>Heimsending</dt><dd>990 ISK</dd><dt>Gjafabréf</dt><dd>-5.000 ISK</dd><dt>Til greiðslu</dt><dd>4.690 ISK</dd></dl>
      <p>Eftir á gjafabréfi: 2.000 ISK</p><input autocomplete="cc-number"><button>Pöntun með greiðsluskyldu</button>`,
    stage: 'checkout',
    total: '4690 ISK',
    placeOrder: ['Pöntun með greiðsluskyldu'],
    parts: ['items 8700', 'shipping 990', 'credit -5000'],
  },
  {
    name: 'a cart that leaves the delivery for later',
    url: 'https://lopapeysan.example/cart',
    lang: 'is',
    body: `<h1>Karfan þín</h1><ul><li><a href="/vara/vettlingar">Vettlingar</a> <span>Magn: 2</span> <span>7.980 kr.</span></li></ul>
      <div><span>Millisamtala</span><span>7.980 kr.</span></div><div><span>Sending</span><span>Reiknast í næsta skrefi</span></div><div><span>Samtals</span><span>7.980 kr.</span></div>
      <a href="/afgreidsla">Fara í afgreiðslu</a>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a confirmation',
    url: 'https://lopapeysan.example/checkout/takk',
    lang: 'is',
    body: `<h1>Takk fyrir pöntunina</h1><p>Pöntunarnúmer: <b>LP-8830</b></p><p>Kennitala: 010190-2939</p>
      <div><span>Millisamtala</span><span>7.980 kr.</span></div><div><span>Sendingarkostnaður</span><span>1.490 kr.</span></div><div><span>Samtals</span><span>9.470 kr.</span></div>`,
    stage: 'confirmation',
    total: '9470 ISK',
    orderNumber: 'LP-8830',
  },
  {
    name: 'decoys: free delivery, instalments, points, savings, the tax contained after the sum',
    url: 'https://hraunkaffi.example/checkout/greida',
    lang: 'is-IS',
    body: `<p>Bættu við 1.300 kr. til að fá fría heimsendingu</p><p>Fullt verð: 10.700 kr.</p>
      <div><span>Vörur samtals</span><span>8.700 kr.</span></div><div><span>Sendingargjald</span><span>990 kr.</span></div>
      <div><b>Heildarupphæð</b><b>9.690 kr.</b></div><div><span>Þar af virðisaukaskattur</span><span>960 kr.</span></div>
      <p>Þú sparar 2.000 kr.</p><p>Raðgreiðslur frá 1.650 kr. á mánuði</p><p>Þú færð 96 punkta</p>
      <label><input type="checkbox"> Ég hef lesið viðskiptaskilmálana</label><a href="/">Halda áfram að versla</a><button>Greiða síðar</button><button>Ganga frá kaupum</button>`,
    stage: 'checkout',
    total: '9690 ISK',
    placeOrder: ['Ganga frá kaupum'],
  },
  {
    name: 'the amount before its label; the crown before the number',
    url: 'https://hraunkaffi.example/checkout/stadfesta',
    lang: 'is',
    body: `<h2>Greiðslumáti</h2><label><input type="radio" name="payment" checked>Kort</label><div><strong>kr. 4.350</strong> <span>Vörur</span></div><div><strong>kr. 890</strong> <span>Afhending</span></div>
      <div><strong>kr. 5.240</strong> <span>Samtals með VSK</span></div><button>Klára kaup</button>`,
    stage: 'checkout',
    total: '5240 ISK',
    placeOrder: ['Klára kaup'],
  },
]

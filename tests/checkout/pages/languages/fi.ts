import type { ShopPage } from '../page.ts'

// Invented shops: Saunatuokkonen, Järvikirja.
export const fiPages: readonly ShopPage[] = [
  {
    name: 'a checkout whose parts add up',
    url: 'https://saunatuokkonen.example/kassa',
    lang: 'fi-FI',
    body: `<h1>Kassa</h1><table><tr><td>Välisumma</td><td>1 129,00 €</td></tr><tr><td>Toimituskulut</td><td>12,90 €</td></tr><tr><td>Alennus (SYKSY)</td><td>−100,00 €</td></tr>
      <tr><td>Yhteensä</td><td><b>1 041,90 €</b></td></tr><tr><td>Sis. ALV 25,5 %</td><td>211,70 €</td></tr></table>
      <label><input type="checkbox"> Olen lukenut toimitusehdot</label><button>Tilaa ja maksa</button>`,
    stage: 'checkout',
    total: '1041.90 EUR',
    placeOrder: ['Tilaa ja maksa'],
    parts: ['items 1129.00', 'shipping 12.90', 'discount -100.00'],
  },
  {
    name: 'the words of the directive on the button, a gift card used up',
    url: 'https://jarvikirja.example/checkout',
    lang: 'fi',
    body: `<dl><dt>Tuotteet yhteensä</dt><dd>45,80 €</dd><dt>Postikulut</dt><dd>4,90 €</dd><dt>Lahjakortti</dt><dd>-20,00 €</dd><dt>Maksettavaa</dt><dd>30,70 €</dd></dl>
      <p>Lahjakorttia jäljellä 5,00 €</p><input autocomplete="cc-number"><button>Tilaukseen liittyy maksuvelvollisuus</button>`,
    stage: 'checkout',
    total: '30.70 EUR',
    placeOrder: ['Tilaukseen liittyy maksuvelvollisuus'],
    parts: ['items 45.80', 'shipping 4.90', 'credit -20.00'],
  },
  {
    name: 'a cart that leaves the delivery for later',
    url: 'https://jarvikirja.example/ostoskori',
    lang: 'fi',
    body: `<h1>Ostoskori</h1><table><tr><th>Tuote</th><th>Määrä</th><th>Hinta</th></tr><tr><td>Muistikirja</td><td>2</td><td>19,80 €</td></tr></table>
      <p><span>Välisumma</span> <span>19,80 €</span></p><p><span>Toimitus</span> <span>Lasketaan kassalla</span></p><p><span>Yhteensä</span> <span>19,80 €</span></p>
      <a href="/kassa">Siirry kassalle</a>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a confirmation',
    url: 'https://saunatuokkonen.example/kassa/kiitos',
    lang: 'fi',
    body: `<h1>Kiitos tilauksestasi!</h1><p>Tilausnumerosi on <b>ST20261</b>.</p><p>Viitenumero: 1009 2281</p>
      <div><span>Välisumma</span><span>89,00 €</span></div><div><span>Toimituskulut</span><span>5,90 €</span></div><div><span>Loppusumma</span><span>94,90 €</span></div>`,
    stage: 'confirmation',
    total: '94.90 EUR',
    orderNumber: 'ST20261',
  },
  {
    name: 'decoys: free delivery, part payment, bonus, the former price, the tax contained after the sum',
    url: 'https://saunatuokkonen.example/tilaus/vahvistus',
    lang: 'fi-FI',
    body: `<p>Osta vielä 11,00 € ja saat ilmaisen toimituksen</p><p>Norm. hinta 109,00 €</p>
      <div><span>Tuotteet (1 kpl)</span><span>89,00 €</span></div><div><span>Toimitustapa: Postipaketti</span><span>5,90 €</span></div>
      <div><b>Maksettava yhteensä</b><b>94,90 €</b></div><div><span>ALV:n osuus</span><span>19,28 €</span></div>
      <p>Säästät 20,00 €</p><p>Osamaksulla alkaen 9,90 €/kk</p><p>Kerrytät bonusta 0,95 €</p>
      <label><input type="checkbox"> Hyväksyn tilausehdot</label><button>Jatka ostoksia</button><button>Vahvista tilaus</button>`,
    stage: 'checkout',
    total: '94.90 EUR',
    placeOrder: ['Vahvista tilaus'],
  },
  {
    name: 'prices in pieces; the button carries the sum; the tax-free sum before it',
    url: 'https://jarvikirja.example/kassa/maksu',
    lang: 'fi',
    body: `<div class="row"><div>Veroton summa</div><div><span>40</span><sup>00</sup> €</div></div><div class="row"><div>ALV 14 %</div><div><span>5</span><sup>60</sup> €</div></div>
      <div class="row"><div>Verollinen summa</div><div><span>45</span><sup>60</sup> €</div></div><iframe title="Payment card"></iframe><button>Maksa 45,60 €</button>`,
    stage: 'checkout',
    total: '45.60 EUR',
    placeOrder: ['Maksa 45,60 €'],
  },
]

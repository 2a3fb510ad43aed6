import type { ShopPage } from '../page.ts'

// Invented shops: Rabamari (preserves), Kadaka Puit (wood).
export const etPages: readonly ShopPage[] = [
  {
    name: 'a checkout whose parts add up',
    url: 'https://rabamari.example/kassa',
    lang: 'et-EE',
    body: `<h1>Kassa</h1><table><tr><td>Vahesumma</td><td>52,40 €</td></tr><tr><td>Tarne: pakiautomaat</td><td>3,49 €</td></tr><tr><td>Soodustus</td><td>-5,24 €</td></tr>
      <tr><td>Kokku</td><td><b>50,65 €</b></td></tr><tr><td>sh käibemaks 24%</td><td>9,80 €</td></tr></table>
      <label><input type="checkbox"> Nõustun müügitingimustega</label><button>Telli ja maksa</button>`,
    stage: 'checkout',
    total: '50.65 EUR',
    placeOrder: ['Telli ja maksa'],
    parts: ['items 52.40', 'shipping 3.49', 'discount -5.24'],
  },
  {
    name: 'the words of the directive on the button, a gift card used up',
    url: 'https://kadakapuit.example/checkout',
    lang: 'et',
    body: `<dl><dt>Tooted kokku</dt><dd>118.00 €</dd><dt>Transport</dt><dd>9.90 €</dd><dt>Kinkekaart</dt><dd>-50.00 €</dd><dt>Tasuda</dt><dd>77.90 €</dd></dl>
      <p>Kinkekaardi jääk: 10.00 €</p><input autocomplete="cc-number"><button>Tellimus koos maksekohustusega</button>`,
    stage: 'checkout',
    total: '77.90 EUR',
    placeOrder: ['Tellimus koos maksekohustusega'],
    parts: ['items 118.00', 'shipping 9.90', 'credit -50.00'],
  },
  {
    name: 'a cart that leaves the delivery for later',
    url: 'https://rabamari.example/ostukorv',
    lang: 'et',
    body: `<h1>Ostukorv</h1><table><tr><th>Toode</th><th>Kogus</th><th>Hind</th></tr><tr><td>Jõhvikamoos</td><td>3</td><td>17,70 €</td></tr></table>
      <p><span>Vahesumma</span> <span>17,70 €</span></p><p><span>Tarne</span> <span>Arvutatakse kassas</span></p><p><span>Kokku</span> <span>17,70 €</span></p>
      <a href="/kassa">Suundu kassasse</a>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a confirmation',
    url: 'https://rabamari.example/kassa/tehtud',
    lang: 'et',
    body: `<h1>Aitäh tellimuse eest!</h1><p>Tellimuse number: <b>RM-3307</b></p><p>Viitenumber: 880012</p>
      <div><span>Vahesumma</span><span>17,70 €</span></div><div><span>Tarne</span><span>3,49 €</span></div><div><span>Kokku</span><span>21,19 €</span></div>`,
    stage: 'confirmation',
    total: '21.19 EUR',
    orderNumber: 'RM-3307',
  },
  {
    name: 'decoys: free delivery, instalments, points, savings, the tax contained after the sum',
    url: 'https://kadakapuit.example/kassa/kinnitamine',
    lang: 'et-EE',
    body: `<p>Tasuta tarneni on veel 12,00 €</p><p>Tavahind 149,00 €</p>
      <div><span>Kaup kokku</span><span>118,00 €</span></div><div><span>Kuller</span><span>6,90 €</span></div>
      <div><b>Kokku tasuda</b><b>124,90 €</b></div><div><span>Summa sisaldab käibemaksu</span><span>24,17 €</span></div>
      <p>Säästad 31,00 €</p><p>Järelmaks alates 11,20 € kuus</p><p>Kogud 124 punkti</p>
      <label><input type="checkbox"> Nõustun ostutingimustega</label><a href="/">Jätka ostlemist</a><button>Esita tellimus</button>`,
    stage: 'checkout',
    total: '124.90 EUR',
    placeOrder: ['Esita tellimus'],
  },
  {
    name: 'net sum, tax and the sum with tax; the button only finishes the order',
    url: 'https://kadakapuit.example/kassa/makse',
    lang: 'et',
    body: `<h2>Makseviis</h2><label><input type="radio" name="makseviis" checked>Pangalink</label><ul><li><span>Summa km-ta</span> <em>100,00 EUR</em></li><li><span>Käibemaks 24%</span> <em>24,00 EUR</em></li>
      <li><span>Summa km-ga</span> <em>124,00 EUR</em></li></ul><label><input type="checkbox"> Olen tutvunud tingimustega</label><button>Kinnita tellimus</button>`,
    stage: 'checkout',
    total: '124.00 EUR',
    placeOrder: ['Kinnita tellimus'],
  },
]

import type { ShopPage } from '../page.ts'

// Invented shops: Kékfazék (kitchen ware), Erdőszéli Méhes (honey), Tollforgató (pens).
export const huPages: readonly ShopPage[] = [
  {
    name: 'a checkout with cash on delivery, and the tax contained after the total',
    url: 'https://kekfazek.example/penztar',
    lang: 'hu-HU',
    title: 'Pénztár – Kékfazék',
    body: `<h1>Pénztár</h1><table>
      <tr><th>Részösszeg</th><td>15 990 Ft</td></tr><tr><th>Szállítási költség</th><td>1 490 Ft</td></tr>
      <tr><th>Utánvét kezelési díj</th><td>390 Ft</td></tr><tr><th>Fizetendő végösszeg</th><td><b>17 870 Ft</b></td></tr>
      <tr><td>Az ár 27% áfát tartalmaz</td><td>3 799 Ft</td></tr></table>
      <label><input type="checkbox"> Elolvastam és elfogadom az ÁSZF-et és az általános szerződési feltételeket</label>
      <button>Fizetési kötelezettséggel járó megrendelés</button>`,
    stage: 'checkout',
    total: '17870 HUF',
    placeOrder: ['Fizetési kötelezettséggel járó megrendelés'],
    parts: ['items 15990', 'shipping 1490', 'fee 390'],
  },
  {
    name: 'a cart whose shipping is not known yet',
    url: 'https://kekfazek.example/kosar',
    lang: 'hu',
    title: 'Kosár',
    body: `<h1>Kosár</h1><table><tr><th>Termék</th><th>Egységár</th><th>Mennyiség</th><th>Összesen</th></tr>
      <tr><td>Zománcos bögre</td><td>2 490 Ft</td><td>2</td><td>4 980 Ft</td></tr></table>
      <div><span>Részösszeg</span><span>4 980 Ft</span></div><div><span>Szállítás</span><span>A következő lépésben kerül kiszámításra</span></div>
      <a href="/penztar">Tovább a pénztárhoz</a><a href="/">Vásárlás folytatása</a>`,
    stage: 'cart',
    total: null,
    items: ['2 Zománcos bögre 4980'],
  },
  {
    name: 'a confirmation with a number and a customer number',
    url: 'https://kekfazek.example/koszonjuk',
    lang: 'hu',
    title: 'Köszönjük',
    body: `<h1>Köszönjük a rendelésed!</h1><p>Rendelésszám: <strong>KF-20418</strong></p><p>Ügyfélszám: 88120</p>
      <dl><dt>Termékek összesen</dt><dd>15 990 Ft</dd><dt>Szállítás</dt><dd>1 490 Ft</dd><dt>Rendelés összesen</dt><dd>17 480 Ft</dd></dl>`,
    stage: 'confirmation',
    total: '17480 HUF',
    orderNumber: 'KF-20418',
  },
  {
    name: 'savings, instalments, a threshold and points beside the sum',
    url: 'https://mehes.example/penztar/osszegzes',
    lang: 'hu',
    title: 'Rendelés ellenőrzése',
    body: `<p>Még 5 010 Ft hiányzik az ingyenes szállításhoz</p><ul>
      <li><span>Termékek ára</span><span>14 990,- Ft</span></li><li><span>Kupon (TAVASZ)</span><span>-1 500,- Ft</span></li>
      <li><span>Futárszolgálat</span><span>990,- Ft</span></li><li><span>Összesen</span><span>14 480,- Ft</span></li>
      <li><span>ebből ÁFA</span><span>3 078,- Ft</span></li></ul>
      <p>Ennyit spórolsz: 1 500 Ft</p><p>A vásárlás után 144 hűségpontot kapsz, értéke 144 Ft</p>
      <p>Havi részlet: 1 207 Ft</p><label><input type="radio" name="payment_method" checked> Bankkártya</label>
      <button>Megrendelés elküldése</button>`,
    stage: 'checkout',
    total: '14480 HUF',
    placeOrder: ['Megrendelés elküldése'],
    parts: ['items 14990', 'discount -1500', 'shipping 990'],
  },
  {
    name: 'net sum, tax and gross sum in a list; the card is paid at once',
    url: 'https://tollforgato.example/penztar/fizetes',
    lang: 'hu',
    body: `<dl><dt>Nettó összesen</dt><dd>HUF 10.000</dd><dt>ÁFA (27%)</dt><dd>HUF 2.700</dd><dt>Bruttó végösszeg</dt><dd>HUF 12.700</dd></dl>
      <input autocomplete="cc-number" aria-label="Kártyaszám"><button>Fizetés</button><a href="/kosar">Vissza a kosárhoz</a>`,
    stage: 'checkout',
    total: '12700 HUF',
    placeOrder: ['Fizetés'],
  },
  {
    name: 'cards with split amounts, a gift card used up and what is left on it',
    url: 'https://tollforgato.example/checkout',
    lang: 'hu',
    body: `<section><h2>Rendelés összegzése</h2>
      <div class="line"><span>Kosár értéke</span><span><span>9 800</span> <small>Ft</small></span></div>
      <div class="line"><span>Ajándékkártya</span><span>−5 000 Ft</span></div>
      <div class="line"><span>Még fizetendő</span><span><span>4 800</span> <small>Ft</small></span></div>
      <p>Ajándékkártya egyenlege: 2 500 Ft</p></section>
      <iframe title="Card payment"></iframe><button>Megrendelem és fizetek</button>`,
    stage: 'checkout',
    total: '4800 HUF',
    placeOrder: ['Megrendelem és fizetek'],
  },
  {
    name: 'an amount before its label, and a deposit due now',
    url: 'https://mehes.example/checkout/osszegzes',
    lang: 'hu',
    body: `<ul><li><b>60 000 Ft</b> Végösszeg</li><li><b>15 000 Ft</b> Most fizetendő</li><li><b>45 000 Ft</b> A helyszínen fizetendő</li></ul>
      <label><input type="checkbox"> Elfogadom a vásárlási feltételeket</label><button>Foglalás és fizetés</button>`,
    stage: 'checkout',
    total: '15000 HUF',
    placeOrder: ['Foglalás és fizetés'],
  },
  {
    name: 'a cart whose control says only "order"',
    url: 'https://mehes.example/kosar',
    lang: 'hu',
    title: 'Kosár',
    body: `<h1>A kosarad tartalma</h1><p>Akácméz, 2 db</p><p>Összesen: 4 200 Ft</p><a href="/penztar">Megrendelés</a>`,
    stage: 'cart',
    total: '4200 HUF',
  },
]

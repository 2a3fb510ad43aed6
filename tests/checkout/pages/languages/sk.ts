import type { ShopPage } from '../page.ts'

// Invented shops: Dielňa Pod Lipou, Čajovňa Skorá hmla, Papiernictvo Vrabec.
export const skPages: readonly ShopPage[] = [
  {
    name: "goods, delivery, discount; the directive's words on the button",
    url: 'https://podlipou.example/objednavka/suhrn',
    lang: 'sk-SK',
    body: `<h1>Súhrn objednávky</h1><table>
      <tr><td>Tovar spolu</td><td>1 248,00 €</td></tr><tr><td>Doprava</td><td>3,90 €</td></tr>
      <tr><td>Zľavový kupón JAR</td><td>-20,00 €</td></tr><tr><td>Spolu na úhradu</td><td><b>1 231,90 €</b></td></tr></table>
      <label><input type="checkbox"> Súhlasím s obchodnými podmienkami</label><button>Objednávka s povinnosťou platby</button>`,
    stage: 'checkout',
    total: '1231.90 EUR',
    placeOrder: ['Objednávka s povinnosťou platby'],
    parts: ['items 1248.00', 'shipping 3.90', 'discount -20.00'],
  },
  {
    name: 'a cart whose delivery is calculated in the next step',
    url: 'https://podlipou.example/kosik',
    lang: 'sk',
    body: `<h1>Nákupný košík</h1><table><tr><th>Tovar</th><th>Množstvo</th><th>Cena za kus</th><th>Spolu</th></tr>
      <tr><td>Hrnček s lipou</td><td>2</td><td>12,90 €</td><td>25,80 €</td></tr></table>
      <div><span>Doručenie</span><span>vypočíta sa v ďalšom kroku</span></div>
      <div><span>Spolu</span><span>25,80 €</span></div><a href="/objednavka">Pokračovať k objednávke</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 Hrnček s lipou 25.80'],
  },
  {
    name: "a confirmation; the payment's symbol is not the order's number",
    url: 'https://skorahmla.example/objednavka/dakujeme',
    lang: 'sk',
    body: `<h1>Ďakujeme za vašu objednávku</h1><p>Číslo vašej objednávky je <b>SH260117</b>.</p><p>Variabilný symbol: 77001</p>
      <dl><dt>Cena tovaru</dt><dd>17,50 €</dd><dt>Kuriér</dt><dd>4,50 €</dd><dt>Celková cena</dt><dd>22,00 €</dd></dl>`,
    stage: 'confirmation',
    total: '22.00 EUR',
    orderNumber: 'SH260117',
  },
  {
    name: 'decoys: threshold, saving, instalments, points, sums without tax behind the sum',
    url: 'https://skorahmla.example/pokladna/platba',
    lang: 'sk',
    body: `<p>Do dopravy zdarma vám chýba 12,50 €</p>
      <ul><li><span>Medzisúčet</span> <span>47,50 €</span></li><li><span>Poštovné a balné</span> <span>3,50 €</span></li>
      <li><span>Spolu s DPH</span> <strong>51,00 €</strong></li><li><span>Spolu bez DPH</span> <span>41,46 €</span></li><li><span>z toho DPH 23 %</span> <span>9,54 €</span></li></ul>
      <p>Ušetríte 5,00 €</p><p>alebo 3 splátky po 17,00 €</p><p>Za nákup získate 51 bodov</p>
      <label><input type="radio" name="payment" checked> Kartou</label><button>Objednať s povinnosťou platby</button>`,
    stage: 'checkout',
    total: '51.00 EUR',
    placeOrder: ['Objednať s povinnosťou platby'],
    parts: ['items 47.50', 'shipping 3.50'],
  },
  {
    name: 'split price, amount before its label, a voucher used up',
    url: 'https://vrabec.example/checkout',
    lang: 'sk',
    body: `<div><p><b>30,00 €</b> <span>Cena produktov</span></p><p><b>2,90 €</b> <span>Výdajné miesto</span></p><p><b>-10,00 €</b> <span>Darčeková poukážka</span></p>
      <p><b><span>22</span><sup>90</sup> <span>€</span></b> <span>Na zaplatenie</span></p></div>
      <input autocomplete="cc-number"><a href="#" role="button">Záväzne objednať</a>`,
    stage: 'checkout',
    total: '22.90 EUR',
    placeOrder: ['Záväzne objednať'],
  },
]

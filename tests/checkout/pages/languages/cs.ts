import type { ShopPage } from '../page.ts'

// Invented shops: Dílna U Jeřába, Čajovna Ranní mlha, Papírnictví Havránek.
export const csPages: readonly ShopPage[] = [
  {
    name: 'goods, delivery, cash on delivery, discount; the words of the law on the button',
    url: 'https://ujeraba.example/objednavka/souhrn',
    lang: 'cs-CZ',
    body: `<h1>Souhrn objednávky</h1><table>
      <tr><td>Zboží celkem</td><td>1 890 Kč</td></tr><tr><td>Doprava</td><td>89 Kč</td></tr><tr><td>Dobírka</td><td>35 Kč</td></tr>
      <tr><td>Slevový kupón JARO</td><td>-100 Kč</td></tr><tr><td>Celkem k úhradě</td><td><b>1 914 Kč</b></td></tr></table>
      <label><input type="checkbox"> Souhlasím s obchodními podmínkami</label><button>Objednávka zavazující k platbě</button>`,
    stage: 'checkout',
    total: '1914 CZK',
    placeOrder: ['Objednávka zavazující k platbě'],
    parts: ['items 1890', 'shipping 89', 'fee 35', 'discount -100'],
  },
  {
    name: 'a cart whose delivery is still to be chosen',
    url: 'https://ujeraba.example/kosik',
    lang: 'cs',
    body: `<h1>Nákupní košík</h1><table><tr><th>Zboží</th><th>Množství</th><th>Cena za kus</th><th>Cena</th></tr>
      <tr><td>Hrnek s jeřábem</td><td>2</td><td>320 Kč</td><td>640 Kč</td></tr></table>
      <div><span>Doprava</span><span>vypočítá se v dalším kroku</span></div>
      <div><span>Celkem</span><span>640 Kč</span></div><a href="/objednavka">Pokračovat k objednávce</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 Hrnek s jeřábem 640'],
  },
  {
    name: "a confirmation; the payment's symbol is not the order's number",
    url: 'https://rannimlha.example/objednavka/dekujeme',
    lang: 'cs',
    body: `<h1>Děkujeme za vaši objednávku</h1><p>Číslo objednávky: <b>20260042</b></p><p>Variabilní symbol: 77001</p>
      <dl><dt>Cena zboží</dt><dd>420,00 Kč</dd><dt>Zásilkovna</dt><dd>79,00 Kč</dd><dt>Celková cena</dt><dd>499,00 Kč</dd></dl>`,
    stage: 'confirmation',
    total: '499.00 CZK',
    orderNumber: '20260042',
  },
  {
    name: 'decoys: threshold, saving, instalments, points, the sum without tax behind the sum',
    url: 'https://rannimlha.example/pokladna/platba',
    lang: 'cs',
    body: `<p>Do dopravy zdarma vám chybí 310 Kč</p>
      <ul><li><span>Mezisoučet</span> <span>1 190,00 Kč</span></li><li><span>Poštovné a balné</span> <span>99,00 Kč</span></li>
      <li><span>Celkem s DPH</span> <strong>1 289,00 Kč</strong></li><li><span>Celkem bez DPH</span> <span>1 065,29 Kč</span></li><li><span>z toho DPH 21 %</span> <span>223,71 Kč</span></li></ul>
      <p>Ušetříte 150,00 Kč</p><p>nebo 10 splátek po 128,90 Kč</p><p>Za nákup získáte 12 bodů</p>
      <label><input type="radio" name="payment" checked> Kartou online</label><button>Odeslat objednávku</button>`,
    stage: 'checkout',
    total: '1289.00 CZK',
    placeOrder: ['Odeslat objednávku'],
    parts: ['items 1190.00', 'shipping 99.00'],
  },
  {
    name: 'a dash for the hellers, rounding, amount before its label, link as the button',
    url: 'https://havranek.example/checkout',
    lang: 'cs',
    body: `<div><p><b>249,50 Kč</b> <span>Cena zboží</span></p><p><b>50,- Kč</b> <span>Kurýr</span></p><p><b>0,50 Kč</b> <span>Zaokrouhlení</span></p>
      <p><b><span>300</span><span>,-</span> <span>Kč</span></b> <span>K zaplacení</span></p></div>
      <input autocomplete="cc-number"><a href="#" role="button">Objednat a zaplatit</a>`,
    stage: 'checkout',
    total: '300 CZK',
    placeOrder: ['Objednat a zaplatit'],
  },
  {
    name: 'words that do not say that they pay, at a place that does',
    url: 'https://havranek.example/checkout/rezervace',
    lang: 'cs',
    body: `<h2>Rekapitulace</h2><p>Cena za produkty: 800 Kč</p><p>Servisní poplatek: 40 Kč</p><p>Celková částka: 840 Kč</p>
      <label><input type="checkbox"> Souhlasím s podmínkami</label><button>Dokončit rezervaci</button>`,
    stage: 'checkout',
    total: '840 CZK',
    placeOrder: ['Dokončit rezervaci'],
  },
]

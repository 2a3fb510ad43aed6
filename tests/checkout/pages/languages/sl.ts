import type { ShopPage } from '../page.ts'

// Invented shops: Lipov List (tea), Gorski Rog (outdoor), Pisarna Vejica (paper).
export const slPages: readonly ShopPage[] = [
  {
    name: 'a checkout with the words of the law',
    url: 'https://lipovlist.example/blagajna',
    lang: 'sl-SI',
    title: 'Blagajna',
    body: `<h1>Zaključek nakupa</h1><table><tr><th>Vmesni seštevek</th><td>32,80 €</td></tr><tr><th>Poštnina</th><td>3,90 €</td></tr>
      <tr><th>Skupaj</th><td><b>36,70 €</b></td></tr><tr><td>Vključno z DDV 22 %</td><td>6,62 €</td></tr></table>
      <label><input type="checkbox"> Strinjam se s splošnimi pogoji poslovanja, splošne pogoje sem prebral</label><button>Oddaj naročilo z obveznostjo plačila</button>`,
    stage: 'checkout',
    total: '36.70 EUR',
    placeOrder: ['Oddaj naročilo z obveznostjo plačila'],
    parts: ['items 32.80', 'shipping 3.90'],
  },
  {
    name: 'a cart whose delivery is worked out at the till',
    url: 'https://lipovlist.example/kosarica',
    lang: 'sl',
    title: 'Košarica',
    body: `<h1>Košarica</h1><table><tr><th>Izdelek</th><th>Cena</th><th>Količina</th><th>Skupaj</th></tr>
      <tr><td>Lipov čaj</td><td>5,40 €</td><td>2</td><td>10,80 €</td></tr></table>
      <div>Vmesni seštevek <b>10,80 €</b></div><div>Dostava <i>se izračuna na blagajni</i></div>
      <a href="/blagajna">Na blagajno</a><a href="/">Nadaljuj z nakupovanjem</a>`,
    stage: 'cart',
    total: null,
    items: ['2 Lipov čaj 10.80'],
  },
  {
    name: 'a confirmation; the payment reference is another number',
    url: 'https://lipovlist.example/hvala',
    lang: 'sl',
    title: 'Hvala za naročilo',
    body: `<h1>Hvala za vaše naročilo!</h1><p>Številka naročila: <b>LL-00731</b></p><p>Sklic: SI00 55123</p>
      <table><tr><td>Izdelki skupaj</td><td>32,80 €</td></tr><tr><td>Dostava</td><td>3,90 €</td></tr><tr><td>Skupni znesek</td><td>36,70 €</td></tr></table>`,
    stage: 'confirmation',
    total: '36.70 EUR',
    orderNumber: 'LL-00731',
  },
  {
    name: 'savings, instalments, a threshold and points',
    url: 'https://gorskirog.example/blagajna/pregled',
    lang: 'sl',
    title: 'Pregled naročila',
    body: `<p>Do brezplačne dostave vam manjka še 21,00 €</p>
      <div><span>Vrednost izdelkov</span><span>79,00 EUR</span></div><div><span>Popust</span><span>-7,90 EUR</span></div><div><span>Dostava</span><span>4,90 EUR</span></div>
      <div><span>Skupaj za plačilo</span><strong>76,00 EUR</strong></div><p>Od tega DDV: 13,70 EUR</p><p>Prihranili ste 7,90 €</p>
      <p>ali 6,33 € na mesec v 12 obrokih</p><p>Prejmete 76 točk zvestobe (0,76 €)</p>
      <label><input type="radio" name="payment" checked> Plačilo po povzetju</label><button>Oddaj naročilo</button>`,
    stage: 'checkout',
    total: '76.00 EUR',
    placeOrder: ['Oddaj naročilo'],
    parts: ['items 79.00', 'discount -7.90', 'shipping 4.90'],
  },
  {
    name: 'net sum, tax, sum; the amount also on the button',
    url: 'https://vejica.example/placilo',
    lang: 'sl',
    body: `<h1>Plačilo</h1><dl><dt>Skupaj brez DDV</dt><dd>1.000,00 €</dd><dt>DDV 22 %</dt><dd>220,00 €</dd><dt>Znesek za plačilo</dt><dd>1.220,00 €</dd></dl>
      <input autocomplete="cc-number"><button>Plačaj 1.220,00 €</button><a href="/kosarica">Nazaj v košarico</a>`,
    stage: 'checkout',
    total: '1220.00 EUR',
    placeOrder: ['Plačaj 1.220,00 €'],
  },
  {
    name: 'amounts before their labels, a gift voucher, split cents',
    url: 'https://vejica.example/checkout',
    lang: 'sl',
    body: `<div class="vsote"><div><span>€ 24<sup>90</sup></span><span>Izdelki</span></div><div><span>€ −10<sup>00</sup></span><span>Darilni bon</span></div>
      <div><span>€ 14<sup>90</sup></span><span>Za plačilo</span></div></div><p>Preostanek na kartici: 5,00 €</p>
      <iframe title="Card payment"></iframe><button>Naroči in plačaj</button>`,
    stage: 'checkout',
    total: '14.90 EUR',
    placeOrder: ['Naroči in plačaj'],
  },
  {
    name: 'a confirmation whose number stands in a sentence behind an abbreviation',
    url: 'https://gorskirog.example/konec',
    lang: 'sl',
    body: `<h1>Prejeli smo vaše naročilo</h1><p>Vaše naročilo št. 731-2026 je bilo uspešno oddano.</p><p>Skupaj: 76,00 EUR</p>`,
    stage: 'confirmation',
    total: '76.00 EUR',
    orderNumber: '731-2026',
  },
]

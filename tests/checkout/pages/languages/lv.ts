import type { ShopPage } from '../page.ts'

// Invented shops: Bērzu Birzs (wood), Jūras Dzintars (jewellery), Zaļais Spalvaskāts (paper).
export const lvPages: readonly ShopPage[] = [
  {
    name: 'a checkout with the words of the law',
    url: 'https://berzi.example/kase',
    lang: 'lv-LV',
    title: 'Pasūtījuma noformēšana',
    body: `<h1>Pasūtījuma noformēšana</h1><table><tr><th>Starpsumma</th><td>27,90 €</td></tr><tr><th>Piegāde uz pakomātu</th><td>2,99 €</td></tr>
      <tr><th>Kopā</th><td><b>30,89 €</b></td></tr><tr><td>t.sk. PVN 21%</td><td>5,36 €</td></tr></table>
      <label><input type="checkbox"> Piekrītu lietošanas noteikumiem</label><button>Pasūtījums ar pienākumu maksāt</button>`,
    stage: 'checkout',
    total: '30.89 EUR',
    placeOrder: ['Pasūtījums ar pienākumu maksāt'],
    parts: ['items 27.90', 'shipping 2.99'],
  },
  {
    name: 'a cart whose delivery is not known yet',
    url: 'https://berzi.example/grozs',
    lang: 'lv',
    title: 'Grozs',
    body: `<h1>Iepirkumu grozs</h1><table><tr><th>Prece</th><th>Cena</th><th>Daudzums</th><th>Kopā</th></tr>
      <tr><td>Bērza karote</td><td>4,50 €</td><td>2</td><td>9,00 €</td></tr></table>
      <div><span>Starpsumma</span><b>9,00 €</b></div><div><span>Piegāde</span><i>tiks aprēķināta nākamajā solī</i></div>
      <a href="/kase">Noformēt pasūtījumu</a><a href="/">Turpināt iepirkties</a>`,
    stage: 'cart',
    total: null,
    items: ['2 Bērza karote 9.00'],
  },
  {
    name: 'a confirmation; the parcel and the invoice have other numbers',
    url: 'https://berzi.example/paldies',
    lang: 'lv',
    title: 'Paldies',
    body: `<h1>Paldies par pasūtījumu!</h1><p>Sūtījuma numurs: 90017</p><p>Pasūtījuma Nr. <b>BB-3318</b></p><p>Rēķina Nr. 2026-77</p>
      <dl><dt>Preču summa</dt><dd>27,90 €</dd><dt>Piegāde</dt><dd>2,99 €</dd><dt>Kopējā summa</dt><dd>30,89 €</dd></dl>`,
    stage: 'confirmation',
    total: '30.89 EUR',
    orderNumber: 'BB-3318',
  },
  {
    name: 'savings, instalments, a threshold and points',
    url: 'https://dzintars.example/kase/parskats',
    lang: 'lv',
    title: 'Pasūtījuma kopsavilkums',
    body: `<p>Līdz bezmaksas piegādei trūkst 15,00 €</p>
      <div><span>Preces kopā</span><span>85,00 €</span></div><div><span>Atlaide</span><span>-8,50 €</span></div><div><span>Piegāde</span><span>3,50 €</span></div>
      <div><span>Summa apmaksai</span><strong>80,00 €</strong></div><p>Jūs ietaupāt 8,50 €</p><p>vai 6,67 € mēnesī</p><p>Jūs saņemsiet 80 punktus (0,80 €)</p>
      <label><input type="radio" name="payment_method" checked> Karte</label><button>Apstiprināt pasūtījumu</button><button>Pievienot kuponu</button>`,
    stage: 'checkout',
    total: '80.00 EUR',
    placeOrder: ['Apstiprināt pasūtījumu'],
    parts: ['items 85.00', 'discount -8.50', 'shipping 3.50'],
  },
  {
    name: 'net sum, tax, amount to pay; groups parted by spaces',
    url: 'https://spalva.example/apmaksa',
    lang: 'lv',
    body: `<h1>Apmaksa</h1><dl><dt>Summa bez PVN</dt><dd>1 000,00 EUR</dd><dt>PVN 21%</dt><dd>210,00 EUR</dd><dt>Kopā apmaksai</dt><dd>1 210,00 EUR</dd></dl>
      <input autocomplete="cc-number"><button>Maksāt 1 210,00 EUR</button><a href="/grozs">Atpakaļ uz grozu</a>`,
    stage: 'checkout',
    total: '1210.00 EUR',
    placeOrder: ['Maksāt 1 210,00 EUR'],
  },
  {
    name: 'amounts before their labels, split cents, a gift card used up',
    url: 'https://spalva.example/checkout',
    lang: 'lv',
    body: `<div><div><span>€ 24<sup>90</sup></span><span>Preces</span></div><div><span>−10,00 €</span><span>Dāvanu karte</span></div>
      <div><span>€ 14<sup>90</sup></span><span>Jāmaksā</span></div></div><p>Dāvanu kartes atlikums: 5,00 €</p>
      <iframe title="Card payment"></iframe><button>Pasūtīt un apmaksāt</button>`,
    stage: 'checkout',
    total: '14.90 EUR',
    placeOrder: ['Pasūtīt un apmaksāt'],
  },
]

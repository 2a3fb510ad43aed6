import type { ShopPage } from '../page.ts'

// Invented shops: Bijela Lavanda (Croatia), Knjižara Vidikovac (Serbia), Medna Rosa (Bosnia and Herzegovina).
export const hrPages: readonly ShopPage[] = [
  {
    name: 'a Croatian checkout, the tax contained after the total',
    url: 'https://lavanda.example/blagajna',
    lang: 'hr-HR',
    title: 'Blagajna',
    body: `<h1>Blagajna</h1><table><tr><th>Međuzbroj</th><td>49,90 €</td></tr><tr><th>Dostava</th><td>4,50 €</td></tr>
      <tr><th>Ukupno</th><td><strong>54,40 €</strong></td></tr><tr><td>Uključujući PDV 25%</td><td>10,88 €</td></tr></table>
      <label><input type="checkbox"> Prihvaćam opće uvjete poslovanja</label><button>Narudžba s obvezom plaćanja</button>`,
    stage: 'checkout',
    total: '54.40 EUR',
    placeOrder: ['Narudžba s obvezom plaćanja'],
    parts: ['items 49.90', 'shipping 4.50'],
  },
  {
    name: 'a Croatian cart whose delivery is not known yet, with the lowest price of thirty days',
    url: 'https://lavanda.example/kosarica',
    lang: 'hr',
    title: 'Košarica',
    body: `<h1>Vaša košarica</h1><table><tr><th>Proizvod</th><th>Cijena</th><th>Količina</th><th>Ukupno</th></tr>
      <tr><td>Sapun od lavande</td><td>6,00 €</td><td>3</td><td>18,00 €</td></tr></table><p>Najniža cijena u posljednjih 30 dana: 5,40 €</p>
      <div><span>Međuzbroj</span><b>18,00 €</b></div><div><span>Dostava</span><i>Izračunava se u sljedećem koraku</i></div>
      <a href="/blagajna">Nastavi na blagajnu</a><a href="/">Nastavi kupovinu</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
  },
  {
    name: 'a Croatian confirmation; the reference of the transfer is another number',
    url: 'https://lavanda.example/hvala',
    lang: 'hr',
    title: 'Hvala na narudžbi',
    body: `<h1>Hvala na narudžbi!</h1><p>Broj narudžbe: <b>10427</b></p><p>Poziv na broj: HR00 778812</p>
      <dl><dt>Proizvodi</dt><dd>49,90 €</dd><dt>Dostava</dt><dd>4,50 €</dd><dt>Sveukupno</dt><dd>54,40 €</dd></dl>`,
    stage: 'confirmation',
    total: '54.40 EUR',
    orderNumber: '10427',
  },
  {
    name: 'a Serbian checkout in dinars with a discount, savings and a threshold',
    url: 'https://vidikovac.example/kasa',
    lang: 'sr-Latn-RS',
    title: 'Kasa',
    body: `<h2>Pregled porudžbine</h2><p>Još 1.510,00 RSD do besplatne dostave</p>
      <div><span>Vrednost proizvoda</span><span>3.490,00 RSD</span></div><div><span>Popust</span><span>-349,00 RSD</span></div>
      <div><span>Isporuka</span><span>390,00 RSD</span></div><div><span>Ukupno za plaćanje</span><span>3.531,00 RSD</span></div>
      <p>Uštedeli ste 349,00 RSD</p><label><input type="checkbox"> Prihvatam uslove kupovine</label><button>Poruči</button>`,
    stage: 'checkout',
    total: '3531.00 RSD',
    placeOrder: ['Poruči'],
    parts: ['items 3490.00', 'discount -349.00', 'shipping 390.00'],
  },
  {
    name: 'a Serbian confirmation',
    url: 'https://vidikovac.example/porudzbina/primljena',
    lang: 'sr',
    body: `<h1>Hvala vam na porudžbini!</h1><p>Broj porudžbine: 558-2026</p>
      <dl><dt>Artikli</dt><dd>3.141,00 din.</dd><dt>Poštarina</dt><dd>390,00 din.</dd><dt>Ukupno</dt><dd>3.531,00 din.</dd></dl>`,
    stage: 'confirmation',
    total: '3531.00 RSD',
    orderNumber: '558-2026',
  },
  {
    name: 'a Bosnian checkout in convertible marks',
    url: 'https://mednarosa.example/placanje',
    lang: 'bs',
    body: `<h1>Plaćanje</h1><dl><dt>Cijena artikala</dt><dd>62,00 KM</dd><dt>Dostava</dt><dd>8,00 KM</dd><dt>Ukupno</dt><dd>70,00 KM</dd></dl>
      <label><input type="radio" name="payment_method" checked> Plaćanje pouzećem</label><button>Potvrdi narudžbu</button>`,
    stage: 'checkout',
    total: '70.00 BAM',
    placeOrder: ['Potvrdi narudžbu'],
    parts: ['items 62.00', 'shipping 8.00'],
  },
  {
    name: 'instalments, points, a gift card used up and an amount split over nodes',
    url: 'https://lavanda.example/blagajna/placanje',
    lang: 'hr',
    body: `<div class="r"><span>Ukupno proizvodi</span><span>120<sup>00</sup> €</span></div><div class="r"><span>Poklon bon</span><span>−20,00 €</span></div>
      <div class="r"><span>Za platiti</span><span>100<sup>00</sup> €</span></div><p>ili 12 rata po 8,33 €</p><p>Ostvarujete 100 bodova (1,00 €)</p>
      <p>Preostalo na kartici: 5,00 €</p><input autocomplete="cc-number"><button>Plati 100,00 €</button><button>Primijeni kupon</button>`,
    stage: 'checkout',
    total: '100.00 EUR',
    placeOrder: ['Plati 100,00 €'],
    parts: ['items 120.00', 'credit -20.00'],
  },
  {
    name: 'a confirmation whose number stands in a sentence, and the old currency beside the sum',
    url: 'https://lavanda.example/kraj',
    lang: 'hr',
    body: `<h1>Zaprimili smo vašu narudžbu</h1><p>Vaša narudžba broj 10428 je zaprimljena.</p><p>Ukupno: 10,00 € (75,35 kn)</p><p>Fiksni tečaj konverzije: 1 EUR = 7,53450 HRK</p>`,
    stage: 'confirmation',
    total: '10.00 EUR',
    orderNumber: '10428',
  },
]

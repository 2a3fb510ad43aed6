import type { ShopPage } from '../page.ts'

// Invented shops: Pracownia Jarzębina, Herbaciarnia Mglisty Brzeg, Sklep Pod Kasztanem.
export const plPages: readonly ShopPage[] = [
  {
    name: 'products, delivery, discount; the words of the law on the button',
    url: 'https://jarzebina.example/zamowienie/podsumowanie',
    lang: 'pl-PL',
    body: `<h1>Podsumowanie zamówienia</h1><table>
      <tr><td>Wartość produktów</td><td>1 249,00 zł</td></tr><tr><td>Koszt dostawy</td><td>14,99 zł</td></tr>
      <tr><td>Kod rabatowy WIOSNA</td><td>-50,00 zł</td></tr><tr><td>Do zapłaty</td><td><b>1 213,99 zł</b></td></tr></table>
      <label><input type="checkbox"> Akceptuję regulamin sklepu</label><button>Zamawiam z obowiązkiem zapłaty</button>`,
    stage: 'checkout',
    total: '1213.99 PLN',
    placeOrder: ['Zamawiam z obowiązkiem zapłaty'],
    parts: ['items 1249.00', 'shipping 14.99', 'discount -50.00'],
  },
  {
    name: 'a cart whose delivery is calculated in the next step',
    url: 'https://jarzebina.example/koszyk',
    lang: 'pl',
    body: `<h1>Koszyk</h1><table><tr><th>Produkt</th><th>Ilość</th><th>Cena</th><th>Wartość</th></tr>
      <tr><td>Kubek malowany</td><td>2</td><td>39,00 zł</td><td>78,00 zł</td></tr></table>
      <div><span>Dostawa</span><span>zostanie obliczona w następnym kroku</span></div>
      <div><span>Razem</span><span>78,00 zł</span></div><a href="/zamowienie">Przejdź do kasy</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 Kubek malowany 78.00'],
  },
  {
    name: "a confirmation; the transfer's title and the parcel have numbers too",
    url: 'https://mglistybrzeg.example/zamowienie/dziekujemy',
    lang: 'pl',
    body: `<h1>Dziękujemy za zamówienie!</h1><p>Numer zamówienia: <b>MB/2026/0815</b></p><p>Numer przesyłki: 6200123987</p>
      <dl><dt>Produkty</dt><dd>96,00 zł</dd><dt>Paczkomat</dt><dd>12,00 zł</dd><dt>Razem</dt><dd>108,00 zł</dd></dl>`,
    stage: 'confirmation',
    total: '108.00 PLN',
    orderNumber: 'MB/2026/0815',
  },
  {
    name: 'decoys: lowest price of thirty days, instalments, threshold, points, tax contained',
    url: 'https://mglistybrzeg.example/checkout/platnosc',
    lang: 'pl',
    body: `<p>Do darmowej dostawy brakuje Ci 33,00 zł</p>
      <ul><li><span>Wartość koszyka</span> <span>167,00 zł</span></li><li><span>Wysyłka</span> <span>13,00 zł</span></li>
      <li><span>Łącznie do zapłaty</span> <strong>180,00 zł</strong></li><li><span>w tym VAT</span> <span>33,66 zł</span></li></ul>
      <p>Najniższa cena z 30 dni: 150,00 zł</p><p>lub 10 rat po 18,00 zł</p><p>Oszczędzasz 20,00 zł</p><p>Otrzymasz 18 punktów</p>
      <label><input type="radio" name="payment" checked> Przelew</label><button>Kupuję i płacę</button>`,
    stage: 'checkout',
    total: '180.00 PLN',
    placeOrder: ['Kupuję i płacę'],
    parts: ['items 167.00', 'shipping 13.00'],
  },
  {
    name: 'split price, amount before its label, code instead of sign',
    url: 'https://podkasztanem.example/checkout',
    lang: 'pl',
    body: `<div><p><b>45,50 PLN</b> <span>Suma częściowa</span></p><p><b>9,50 PLN</b> <span>Kurier</span></p>
      <p><b><span>55</span><sup>,00</sup> <span>PLN</span></b> <span>Kwota całkowita</span></p></div>
      <input autocomplete="cc-number"><input type="submit" value="Zapłać 55,00 PLN">`,
    stage: 'checkout',
    total: '55.00 PLN',
    placeOrder: ['Zapłać 55,00 PLN'],
  },
  {
    name: 'a net sum with its tax and the gross sum; a step that only goes on',
    url: 'https://podkasztanem.example/checkout/dostawa',
    lang: 'pl',
    body: `<h1>Dostawa i płatność</h1><input autocomplete="street-address"><dl><dt>Razem netto</dt><dd>100,00 zł</dd><dt>VAT 23%</dt><dd>23,00 zł</dd><dt>Razem brutto</dt><dd>123,00 zł</dd></dl>
      <button>Przejdź do podsumowania</button>`,
    stage: 'checkout',
    total: '123.00 PLN',
    placeOrder: [],
  },
]

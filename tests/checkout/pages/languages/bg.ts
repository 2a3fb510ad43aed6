import type { ShopPage } from '../page.ts'

// Invented shops: Розова долина (soap), Книжен фенер (books), Връх (outdoor). Prices in leva and, since 2026, in euro.
export const bgPages: readonly ShopPage[] = [
  {
    name: 'a checkout in euro with the words of the law',
    url: 'https://rozova.example/poruchka',
    lang: 'bg-BG',
    title: 'Завършване на поръчката',
    body: `<h1>Завършване на поръчката</h1><table><tr><th>Междинна сума</th><td>45,00 €</td></tr><tr><th>Доставка до офис</th><td>3,50 €</td></tr>
      <tr><th>Общо</th><td><b>48,50 €</b></td></tr><tr><td>вкл. ДДС 20%</td><td>8,08 €</td></tr></table>
      <label><input type="checkbox"> Съгласен съм с Общите условия</label><button>Поръчка със задължение за плащане</button>`,
    stage: 'checkout',
    total: '48.50 EUR',
    placeOrder: ['Поръчка със задължение за плащане'],
    parts: ['items 45.00', 'shipping 3.50'],
  },
  {
    name: 'a cart in leva whose delivery is not known yet',
    url: 'https://fener.example/kolichka',
    lang: 'bg',
    title: 'Количка',
    body: `<h1>Вашата количка</h1><table><tr><th>Продукт</th><th>Ед. цена</th><th>Количество</th><th>Общо</th></tr>
      <tr><td>Карта на Родопите</td><td>14,00 лв.</td><td>2</td><td>28,00 лв.</td></tr></table>
      <div><span>Междинна сума</span><b>28,00 лв.</b></div><div><span>Доставка</span><i>изчислява се на следващата стъпка</i></div>
      <a href="/kasa">Към касата</a><a href="/">Продължи пазаруването</a>`,
    stage: 'cart',
    total: null,
    items: ['2 Карта на Родопите 28.00'],
  },
  {
    name: 'a confirmation; the consignment note is another number',
    url: 'https://fener.example/blagodarim',
    lang: 'bg',
    title: 'Благодарим',
    body: `<h1>Благодарим за поръчката!</h1><p>Номер на поръчката: <b>100583</b></p><p>Товарителница: 6612003</p>
      <dl><dt>Стойност на продуктите</dt><dd>28,00 лв.</dd><dt>Доставка</dt><dd>5,90 лв.</dd><dt>Обща сума</dt><dd>33,90 лв.</dd></dl>`,
    stage: 'confirmation',
    total: '33.90 BGN',
    orderNumber: '100583',
  },
  {
    name: 'savings, instalments, a threshold, a coupon',
    url: 'https://vrah.example/kasa',
    lang: 'bg',
    title: 'Каса',
    body: `<h2>Преглед на поръчката</h2><p>Остават ви 11,00 € до безплатна доставка</p>
      <div><span>Продукти</span><span>89,00 €</span></div><div><span>Отстъпка</span><span>-8,90 €</span></div><div><span>Доставка</span><span>4,00 €</span></div>
      <div><span>Сума за плащане</span><strong>84,10 €</strong></div><p>Спестявате 8,90 €</p><p>или 12 вноски по 7,01 €</p><p>Ще получите 84 точки (0,84 €)</p>
      <label><input type="radio" name="payment_method" checked> Наложен платеж</label><button>Потвърди поръчката</button><button>Приложи купон</button>`,
    stage: 'checkout',
    total: '84.10 EUR',
    placeOrder: ['Потвърди поръчката'],
    parts: ['items 89.00', 'discount -8.90', 'shipping 4.00'],
  },
  {
    name: 'the sum in euro with the same sum in leva behind it in brackets',
    url: 'https://rozova.example/checkout',
    lang: 'bg',
    body: `<ul><li>Продукти: 45,00 € (88,01 лв.)</li><li>Доставка: 3,50 € (6,85 лв.)</li><li>Крайна сума: 48,50 € (94,86 лв.)</li></ul>
      <iframe title="Card payment"></iframe><button>Поръчай и плати</button>`,
    stage: 'checkout',
    total: '48.50 EUR',
    placeOrder: ['Поръчай и плати'],
  },
  {
    name: 'net sum and tax; the euro before the amount',
    url: 'https://vrah.example/plashtane',
    lang: 'bg',
    body: `<h1>Плащане</h1><dl><dt>Данъчна основа</dt><dd>€1 000.00</dd><dt>ДДС 20%</dt><dd>€200.00</dd><dt>Общо за плащане</dt><dd>€1 200.00</dd></dl>
      <input autocomplete="cc-number"><button>Плати сега</button><a href="/">Назад</a>`,
    stage: 'checkout',
    total: '1200.00 EUR',
    placeOrder: ['Плати сега'],
  },
  {
    name: 'a confirmation whose number stands in a sentence; leva first, the euro in brackets',
    url: 'https://fener.example/kraj',
    lang: 'bg',
    body: `<h1>Получихме вашата поръчка</h1><p>Номерът на вашата поръчка е 100584.</p><p>Общо: 94,86 лв. (48,50 €)</p><p>Фиксиран курс: 1 EUR = 1,95583 BGN</p>`,
    stage: 'confirmation',
    total: '94.86 BGN',
    orderNumber: '100584',
  },
]

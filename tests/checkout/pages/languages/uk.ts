import type { ShopPage } from '../page.ts'

// Invented shops: Глиняна хата, Карпатський мед (Ukraine).
export const ukPages: readonly ShopPage[] = [
  {
    name: 'parts that add up, hryvnias with a comma',
    url: 'https://hata.example/checkout',
    lang: 'uk-UA',
    body: `<h1>Оформлення замовлення</h1><table><tr><td>Вартість товарів</td><td>1\u00a0250,00 ₴</td></tr><tr><td>Доставка</td><td>80,00 ₴</td></tr>
      <tr><td>Знижка</td><td>-125,00 ₴</td></tr><tr><td>До сплати</td><td><b>1\u00a0205,00 ₴</b></td></tr></table>
      <label><input type="radio" name="payment" checked> Карткою</label><button>Замовлення підтверджую</button>`,
    stage: 'checkout',
    total: '1205.00 UAH',
    placeOrder: ['Замовлення підтверджую'],
    parts: ['items 1250.00', 'shipping 80.00', 'discount -125.00'],
  },
  {
    name: 'a cart whose delivery follows the carrier',
    url: 'https://hata.example/cart',
    lang: 'uk',
    body: `<h1>Кошик</h1><table><tr><th>Товар</th><th>Кількість</th><th>Ціна</th><th>Сума</th></tr><tr><td>Миска</td><td>3</td><td>240 грн</td><td>720 грн</td></tr></table>
      <p>Доставка: за тарифами перевізника</p><p>Разом: <b>720 грн</b></p><a href="/checkout">Перейти до оформлення</a>`,
    stage: 'cart',
    total: null,
    items: ['3 Миска 720'],
  },
  {
    name: 'a confirmation; the parcel has a number too',
    url: 'https://hata.example/checkout/success',
    lang: 'uk',
    body: `<h1>Дякуємо за замовлення!</h1><p>ТТН: 20450000111122</p><p>Номер замовлення: <strong>GH-3308</strong></p>
      <dl><dt>Товари</dt><dd>720,00 грн</dd><dt>Доставка</dt><dd>65,00 грн</dd><dt>Усього</dt><dd>785,00 грн</dd></dl>`,
    stage: 'confirmation',
    total: '785.00 UAH',
    orderNumber: 'GH-3308',
  },
  {
    name: 'decoys: saving, payment in parts, bonuses, free delivery, the tax within',
    url: 'https://hata.example/checkout/payment',
    lang: 'uk',
    body: `<p>До безкоштовної доставки залишилося 280 грн</p><div><span>Товари</span><span>720 грн</span></div><div><span>Доставка</span><span>65 грн</span></div>
      <div><span>Загальна сума</span><span>785 грн</span></div><div><span>у т. ч. ПДВ</span><span>130,83 грн</span></div><p>Ви заощадили 90 грн</p><p>3 платежі по 262 грн</p>
      <p>Буде нараховано 15 бонусів</p><input autocomplete="cc-number"><button>Сплатити</button>`,
    stage: 'checkout',
    total: '785 UAH',
    placeOrder: ['Сплатити'],
    parts: ['items 720', 'shipping 65'],
  },
  {
    name: 'another make: cards, the whole and the kopiykas apart, a gift certificate',
    url: 'https://karpatskyi.example/order/checkout',
    lang: 'uk',
    body: `<section><div class="card"><p>Проміжний підсумок</p><p><span>430</span><span>,</span><span>50</span> <span>грн</span></p></div><div class="card"><p>Вартість доставки</p><p><span>70</span><span>,</span><span>00</span> <span>грн</span></p></div>
      <div class="card"><p>Подарунковий сертифікат</p><p>−100,00 грн</p></div><div class="card"><p>Разом до оплати</p><p><span>400</span><span>,</span><span>50</span> <span>грн</span></p></div></section>
      <label><input type="checkbox"> Приймаю умови публічної оферти</label><button>Замовити та оплатити</button>`,
    stage: 'checkout',
    total: '400.50 UAH',
    placeOrder: ['Замовити та оплатити'],
    parts: ['items 430.50', 'shipping 70.00', 'credit -100.00'],
  },
]

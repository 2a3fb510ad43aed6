import type { ShopPage } from '../page.ts'

// Invented shops: Самоварная лавка (Russia), Льняной двор (Belarus), Степной чай (Kazakhstan).
export const ruPages: readonly ShopPage[] = [
  {
    name: 'parts that add up, roubles with a no-break space, a comma for the kopecks',
    url: 'https://samovarnaya.example/checkout',
    lang: 'ru-RU',
    body: `<h1>Оформление заказа</h1><table>
      <tr><td>Товары (3)</td><td>4\u00a0590,00\u00a0₽</td></tr><tr><td>Доставка курьером</td><td>350,00\u00a0₽</td></tr>
      <tr><td>Скидка по промокоду</td><td>−459,00\u00a0₽</td></tr><tr><td>Итого к оплате</td><td><b>4\u00a0481,00\u00a0₽</b></td></tr></table>
      <label><input type="checkbox"> Я принимаю условия публичной оферты</label><button>Подтвердить заказ</button>`,
    stage: 'checkout',
    total: '4481.00 RUB',
    placeOrder: ['Подтвердить заказ'],
    parts: ['items 4590.00', 'shipping 350.00', 'discount -459.00'],
  },
  {
    name: 'a cart whose delivery is worked out later',
    url: 'https://samovarnaya.example/cart',
    lang: 'ru',
    body: `<h1>Корзина</h1><table><tr><th>Товар</th><th>Количество</th><th>Цена</th><th>Сумма</th></tr>
      <tr><td>Чайник заварной</td><td>2</td><td>1 290 ₽</td><td>2 580 ₽</td></tr></table>
      <p>Доставка: рассчитывается при оформлении заказа</p><p>Итого: <b>2 580 ₽</b></p><a href="/checkout">Перейти к оформлению</a>`,
    stage: 'cart',
    total: null,
    items: ['2 Чайник заварной 2580'],
  },
  {
    name: 'a confirmation with the number sign',
    url: 'https://samovarnaya.example/checkout/success',
    lang: 'ru',
    body: `<h1>Спасибо за заказ!</h1><p>Номер заказа: <b>СЛ-20417</b></p><p>Телефон: +7 900 000-00-00</p>
      <dl><dt>Стоимость товаров</dt><dd>4 590 руб.</dd><dt>Доставка</dt><dd>350 руб.</dd><dt>Оплачено</dt><dd>4 940 руб.</dd></dl>`,
    stage: 'confirmation',
    total: '4940 RUB',
    orderNumber: 'СЛ-20417',
  },
  {
    name: 'decoys: the gain, payment in parts, bonuses, the way to free delivery, the tax within',
    url: 'https://samovarnaya.example/checkout/payment',
    lang: 'ru',
    body: `<p>До бесплатной доставки осталось 410 ₽</p><div><span>Товары на сумму</span><span>2 590 ₽</span></div><div><span>Доставка</span><span>199 ₽</span></div>
      <div><span>К оплате</span><strong>2 789 ₽</strong></div><div><span>в т. ч. НДС 20%</span><span>464,83 ₽</span></div><p>Ваша выгода: 300 ₽</p>
      <p>4 платежа по 697,25 ₽</p><p>Будет начислено 77 бонусов</p><input autocomplete="cc-number"><button>Оплатить 2 789 ₽</button>`,
    stage: 'checkout',
    total: '2789 RUB',
    placeOrder: ['Оплатить 2 789 ₽'],
    parts: ['items 2590', 'shipping 199'],
  },
  {
    name: 'another make: kopecks raised in a node of their own, Belarusian roubles, a list of terms',
    url: 'https://lnyanoy.example/checkout/order',
    lang: 'ru-BY',
    body: `<h2>Проверьте ваш заказ</h2><dl><dt>Промежуточный итог</dt><dd>84<sup>50</sup> BYN</dd><dt>Стоимость доставки</dt><dd>6<sup>00</sup> BYN</dd>
      <dt>Сумма заказа</dt><dd>90<sup>50</sup> BYN</dd></dl><label><input type="radio" name="payment" checked> Картой онлайн</label>
      <input type="submit" value="Заказать и оплатить">`,
    stage: 'checkout',
    total: '90.50 BYN',
    placeOrder: ['Заказать и оплатить'],
    parts: ['items 84.50', 'shipping 6.00'],
  },
  {
    name: 'the amount before its label, tenge, bonuses used up',
    url: 'https://stepnoy.example/checkout',
    lang: 'ru-KZ',
    body: `<h1>Оплата</h1><ul><li><b>12 400 ₸</b> <span>Товары</span></li><li><b>1 500 ₸</b> <span>Доставка</span></li><li><b>−900 ₸</b> <span>Списано бонусов</span></li>
      <li><b>13 000 ₸</b> <span>Всего к оплате</span></li></ul><label><input type="radio" name="paymentMethod" checked> Карта</label><button>Оформить и оплатить</button>`,
    stage: 'checkout',
    total: '13000 KZT',
    placeOrder: ['Оформить и оплатить'],
    parts: ['items 12400', 'shipping 1500', 'credit -900'],
  },
]

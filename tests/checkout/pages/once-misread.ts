import type { ShopPage } from './page.ts'

/** Pages of invented shops in many languages that an earlier reader got wrong. */
export const onceMisread: readonly ShopPage[] = [
  {
    name: 'the short name of the shekel with a straight quote',
    url: 'https://hahof.example/checkout/pay',
    lang: 'he',
    body: `<div dir="rtl"><dl><dt>סה"כ מוצרים</dt><dd>120 ש"ח</dd><dt>דמי משלוח</dt><dd>30 ש"ח</dd><dt>סה"כ לתשלום</dt><dd>150 ש"ח</dd></dl>
      <input autocomplete="cc-number"><button>בצע תשלום</button></div>`,
    stage: 'checkout',
    total: '150 ILS',
    placeOrder: ['בצע תשלום'],
    parts: ['items 120', 'shipping 30'],
  },
  {
    name: 'parts that add up, lakh grouping',
    url: 'https://mittighar.example/checkout',
    lang: 'hi-IN',
    body: `<h1>चेकआउट</h1><table><tr><td>आइटम का योग</td><td>₹1,04,500.00</td></tr><tr><td>डिलीवरी शुल्क</td><td>₹499.00</td></tr><tr><td>कूपन छूट</td><td>-₹4,500.00</td></tr>
      <tr><td>कुल देय राशि</td><td><b>₹1,00,499.00</b></td></tr></table><label><input type="radio" name="payment" checked> यूपीआई</label><button>ऑर्डर दें</button>`,
    stage: 'checkout',
    total: '100499.00 INR',
    placeOrder: ['ऑर्डर दें'],
    parts: ['items 104500.00', 'shipping 499.00', 'discount -4500.00'],
  },
  {
    name: 'decoys: saving, instalments, points, free delivery, the tax within',
    url: 'https://mittighar.example/checkout/payment',
    lang: 'hi',
    body: `<p>₹999 से अधिक के ऑर्डर पर मुफ़्त डिलीवरी</p><div><span>वस्तुओं का मूल्य</span><span>₹850.00</span></div><div><span>डिलीवरी शुल्क</span><span>₹50.00</span></div>
      <div><span>कुल राशि</span><span>₹900.00</span></div><div><span>जीएसटी सहित</span><span>₹137.29</span></div><p>आपकी कुल बचत: ₹150.00</p><p>ईएमआई से शुरू ₹150.00 प्रति माह</p>
      <p>आप कमाएंगे 90 अंक</p><input autocomplete="cc-number"><button>₹900.00 का भुगतान करें</button>`,
    stage: 'checkout',
    total: '900.00 INR',
    placeOrder: ['₹900.00 का भुगतान करें'],
    parts: ['items 850.00', 'shipping 50.00'],
  },
  {
    name: 'another make: amounts before labels, two halves of the tax, rounding',
    url: 'https://chaibagh.example/checkout/review',
    lang: 'hi',
    body: `<ul><li><b>₹300.00</b> <span>कर से पहले कुल</span></li><li><b>₹7.50</b> <span>CGST 2.5%</span></li><li><b>₹7.50</b> <span>SGST 2.5%</span></li><li><b>₹40.00</b> <span>शिपिंग शुल्क</span></li><li><b>₹355.00</b> <span>कुल भुगतान राशि</span></li></ul>
      <label><input type="checkbox"> मैं नियम और शर्तों से सहमत हूं</label><button>पुष्टि करें और भुगतान करें</button>`,
    stage: 'checkout',
    total: '355.00 INR',
    placeOrder: ['पुष्टि करें और भुगतान करें'],
  },
  {
    name: 'rupees in letters, the dot below left out, a gift card',
    url: 'https://chaibagh.example/checkout/order',
    lang: 'hi',
    body: `<h2>अपने ऑर्डर की समीक्षा करें</h2><dl><dt>उत्पादों का मूल्य</dt><dd>450 रुपये</dd><dt>कूरियर शुल्क</dt><dd>50 रुपये</dd><dt>गिफ्ट कार्ड</dt><dd>-100 रुपये</dd><dt>अंतिम राशि</dt><dd>400 रुपये</dd></dl>
      <label><input type="radio" name="payment" checked> कैश ऑन डिलीवरी</label><input type="submit" value="खरीदारी पूरी करें">`,
    stage: 'checkout',
    total: '400 INR',
    placeOrder: ['खरीदारी पूरी करें'],
    parts: ['items 450', 'shipping 50', 'credit -100'],
  },
  {
    name: 'a cart whose delivery follows the carrier',
    url: 'https://hata.example/cart',
    lang: 'uk',
    body: `<h1>Кошик</h1><table><tr><th>Товар</th><th>Кількість</th><th>Ціна</th><th>Сума</th></tr><tr><td>Миска</td><td>3</td><td>240 грн</td><td>720 грн</td></tr></table>
      <p>Доставка: за тарифами перевізника</p><p>Разом: <b>720 грн</b></p><a href="/checkout">Оформити замовлення</a>`,
    stage: 'cart',
    total: null,
    items: ['3 Миска 720'],
  },
  {
    name: 'another make: kopecks raised in a node of their own, Belarusian roubles, a list of terms',
    url: 'https://lnyanoy.example/checkout/order',
    lang: 'ru-BY',
    body: `<h2>Проверьте ваш заказ</h2><dl><dt>Промежуточный итог</dt><dd>84<sup>50</sup> руб.</dd><dt>Стоимость доставки</dt><dd>6<sup>00</sup> руб.</dd>
      <dt>Сумма заказа</dt><dd>90<sup>50</sup> руб.</dd></dl><label><input type="radio" name="payment" checked> Картой онлайн</label>
      <input type="submit" value="Заказать и оплатить">`,
    stage: 'checkout',
    total: '90.50 BYN',
    placeOrder: ['Заказать и оплатить'],
    parts: ['items 84.50', 'shipping 6.00'],
  },
  {
    name: 'a confirmation',
    url: 'https://nakheel.example/checkout/success',
    lang: 'ar',
    body: `<div dir="rtl"><h1>شكراً لطلبك</h1><p>رقم الطلب: <b>NK-70012</b></p><p>رقم التتبع: 998877665</p>
      <dl><dt>المنتجات</dt><dd>240.00 ريال سعودي</dd><dt>الشحن</dt><dd>20.00 ريال سعودي</dd><dt>المجموع الكلي</dt><dd>260.00 ريال سعودي</dd></dl></div>`,
    stage: 'confirmation',
    total: '260.00 SAR',
    orderNumber: 'NK-70012',
  },
  {
    name: 'a cart that leaves the freight for later',
    url: 'https://viddasull.example/handlekurv',
    lang: 'nb',
    body: `<h1>Handlekurv</h1><ul><li><a href="/p/genser">Genser</a><span>Antall: 1</span><span>kr 899,00</span></li></ul>
      <div><span>Delsum</span><span>kr 899,00</span></div><div><span>Frakt</span><span>Beregnes i kassen</span></div><div><span>Sum</span><span>kr 899,00</span></div>
      <a href="/kasse">Gå til kassen</a>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a cart that leaves the delivery for later, with a button that also means ordering',
    url: 'https://rabamari.example/ostukorv',
    lang: 'et',
    body: `<h1>Ostukorv</h1><table><tr><th>Toode</th><th>Kogus</th><th>Hind</th></tr><tr><td>Jõhvikamoos</td><td>3</td><td>17,70 €</td></tr></table>
      <p><span>Vahesumma</span> <span>17,70 €</span></p><p><span>Tarne</span> <span>Arvutatakse kassas</span></p><p><span>Kokku</span> <span>17,70 €</span></p>
      <a href="/kassa">Vormista tellimus</a>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a cart that leaves the delivery for later',
    url: 'https://lopapeysan.example/karfa',
    lang: 'is',
    body: `<h1>Karfan þín</h1><ul><li><a href="/vara/vettlingar">Vettlingar</a> <span>Magn: 2</span> <span>7.980 kr.</span></li></ul>
      <div><span>Millisamtala</span><span>7.980 kr.</span></div><div><span>Sending</span><span>Reiknast í næsta skrefi</span></div><div><span>Samtals</span><span>7.980 kr.</span></div>
      <a href="/afgreidsla">Ganga frá pöntun</a>`,
    stage: 'cart',
    total: null,
  },
  {
    name: 'a confirmation',
    url: 'https://lopapeysan.example/afgreidsla/takk',
    lang: 'is',
    body: `<h1>Takk fyrir pöntunina</h1><p>Pöntunarnúmer: <b>LP-8830</b></p><p>Kennitala: 010190-2939</p>
      <div><span>Millisamtala</span><span>7.980 kr.</span></div><div><span>Sendingarkostnaður</span><span>1.490 kr.</span></div><div><span>Samtals</span><span>9.470 kr.</span></div>`,
    stage: 'confirmation',
    total: '9470 ISK',
    orderNumber: 'LP-8830',
  },
  {
    name: 'decoys: free delivery, instalments, points, savings, the tax contained after the sum',
    url: 'https://hraunkaffi.example/greida',
    lang: 'is-IS',
    body: `<p>Bættu við 1.300 kr. til að fá fría heimsendingu</p><p>Fullt verð: 10.700 kr.</p>
      <div><span>Vörur samtals</span><span>8.700 kr.</span></div><div><span>Sendingargjald</span><span>990 kr.</span></div>
      <div><b>Heildarupphæð</b><b>9.690 kr.</b></div><div><span>Þar af virðisaukaskattur</span><span>960 kr.</span></div>
      <p>Þú sparar 2.000 kr.</p><p>Raðgreiðslur frá 1.650 kr. á mánuði</p><p>Þú færð 96 punkta</p>
      <label><input type="checkbox"> Ég hef lesið viðskiptaskilmálana</label><a href="/">Halda áfram að versla</a><button>Greiða síðar</button><button>Ganga frá kaupum</button>`,
    stage: 'checkout',
    total: '9690 ISK',
    placeOrder: ['Ganga frá kaupum'],
  },
  {
    name: 'a checkout whose parts add up; crowns without cents',
    url: 'https://lopapeysan.example/afgreidsla',
    lang: 'is-IS',
    body: `<h1>Afgreiðsla</h1><table><tr><td>Millisamtala</td><td>24.900 kr.</td></tr><tr><td>Sendingarkostnaður</td><td>1.490 kr.</td></tr><tr><td>Afsláttur</td><td>-2.490 kr.</td></tr>
      <tr><td>Samtals</td><td><b>23.900 kr.</b></td></tr><tr><td>Þar af VSK 24%</td><td>4.626 kr.</td></tr></table>
      <label><input type="checkbox"> Ég samþykki skilmálana</label><button>Staðfesta og greiða</button>`,
    stage: 'checkout',
    total: '23900 ISK',
    placeOrder: ['Staðfesta og greiða'],
    parts: ['items 24900', 'shipping 1490', 'discount -2490'],
  },
]

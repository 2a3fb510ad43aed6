import type { ShopPage } from './page.ts'

const CARD = '<input autocomplete="cc-number">'

function pay(
  name: string,
  lang: string,
  html: string,
  total: string | null,
  button: string,
  more: Partial<ShopPage> = {},
): ShopPage {
  return {
    name,
    url: 'https://lanternhouse.example/checkout',
    lang,
    body: `${html}${CARD}<button>${button}</button>`,
    stage: 'checkout',
    total,
    placeOrder: [button],
    ...more,
  }
}

function done(name: string, lang: string, html: string, orderNumber: string, more: Partial<ShopPage> = {}): ShopPage {
  return {
    name,
    url: 'https://lanternhouse.example/x',
    lang,
    body: html,
    stage: 'confirmation',
    total: null,
    orderNumber,
    ...more,
  }
}

/** What made pages, or pages of real ways to write, once showed to be misread. Expectations by general knowledge. */
export const gaps: readonly ShopPage[] = [
  pay(
    'a dash for the cents and no currency anywhere: the country of the page',
    'da-DK',
    '<p>Varer 350,-</p><p>Fragt 50,-</p><p>I alt 400,-</p>',
    '400 DKK',
    'Betal nu',
  ),
  pay(
    'a colon and a dash, the text node split by a comment',
    'sv-SE',
    '<p>Varor 3<!-- -->:- SEK</p><p>Att betala 1 965<!-- -->:- SEK</p>',
    '1965 SEK',
    'Slutför köp',
  ),
  pay('złoty and grosz', 'pl-PL', '<p>Do zapłaty: 55 zł 20 gr</p>', '55.20 PLN', 'Zamawiam i płacę'),
  pay('roubles and kopecks', 'ru-RU', '<p>К оплате: 1 055 руб. 20 коп.</p>', '1055.20 RUB', 'Оплатить'),
  pay(
    'instalments are no count of things',
    'pt-BR',
    '<ul><li><a href="/p">Bule</a> <span>3x de R$ 20,00</span> <b>R$ 60,00</b></li></ul><p>Total: R$ 60,00</p><p>3x de R$ 20,00 sem juros</p>',
    '60.00 BRL',
    'Finalizar pedido',
    { items: [] },
  ),
  pay(
    'a total at nought percent of tax is a net sum',
    'fi-FI',
    '<p>Yhteensä (alv 0 %): 80,00 €</p><p>ALV 25,5 %: 20,40 €</p><p>Yhteensä: 100,40 €</p>',
    '100.40 EUR',
    'Vahvista tilaus',
  ),
  pay('and alone it is no answer', 'fi-FI', '<p>Yhteensä (alv 0 %): 80,00 €</p>', null, 'Vahvista tilaus'),
  pay(
    'a total with postage included',
    'it-IT',
    '<p>Totale, spese di spedizione incluse: 45,00 €</p>',
    '45.00 EUR',
    'Paga ora',
  ),
  pay(
    'the name of the tax before "included"',
    'es-ES',
    '<p>Total IVA incluido 45,00 €</p>',
    '45.00 EUR',
    'Pagar ahora',
  ),
  pay('dinars in letters', 'sr-RS', '<p>Ukupno: 1.250,00 din.</p>', '1250.00 RSD', 'Naruči'),
  pay('marks of Bosnia in two letters', 'bs-BA', '<p>Ukupno: 25,90 KM</p>', '25.90 BAM', 'Naruči i plati'),
  pay(
    'a number in its own element, won glued behind',
    'ko-KR',
    '<dl><dt>결제 금액</dt><dd><em>12,500</em>원입니다</dd></dl>',
    '12500 KRW',
    '결제하기',
  ),
  pay(
    'digits one by one, a space between thousands',
    'uk-UA',
    '<p>До сплати <i>7</i>&nbsp;<i>6</i><i>8</i><i>2</i>,<i>0</i><i>0</i> ₴</p>',
    '7682.00 UAH',
    'Сплатити',
  ),
  pay(
    'the sign of a footnote is no amount',
    'en-US',
    '<p>Amount due<sup>1</sup> USD 236.32</p>',
    '236.32 USD',
    'Place order',
  ),
  pay(
    'a deposit and a rest that nothing names: no answer rather than the whole',
    'en-GB',
    '<p>Total £120.00</p><p>Thing one £40.00</p><p>Thing two £80.00</p>',
    null,
    'Pay now',
  ),
  pay(
    'words that stand in the column of values',
    'en-GB',
    '<div><div><p>Way</p><p>Goods</p><p>Delivery</p><p>Total</p></div><div><p>By post</p><p>£20.00</p><p>£3.00</p><p>£23.00</p></div></div>',
    '23.00 GBP',
    'Pay now',
    { parts: ['items 20.00', 'shipping 3.00'] },
  ),
  pay(
    'custom elements that lay out the sums order nothing',
    'fr-FR',
    '<sum-list><sum-line><sum-label>Articles</sum-label><sum-value>45,00 €</sum-value></sum-line><sum-line><sum-label>Montant à payer</sum-label><sum-value>45,00 €</sum-value></sum-line></sum-list>',
    '45.00 EUR',
    'Payer',
  ),
  pay(
    'one that is a button by name',
    'en-CA',
    '<p>Total CA$5.00</p><pay-button>Pay now</pay-button>',
    '5.00 CAD',
    'Place order',
    { placeOrder: ['Pay now', 'Place order'] },
  ),
  ...(
    [
      ['pl-PL', 'Bezpieczna płatność kartą', 'Razem 55,90 zł', '55.90 PLN', 'Zamawiam i płacę'],
      ['cs-CZ', 'Zabezpečená platba kartou', 'Celkem 55 Kč', '55 CZK', 'Objednat'],
      ['ja', 'カード決済フォーム', '合計 5,590円', '5590 JPY', '確定する'],
      ['ar-SA', 'الدفع الآمن بالبطاقة', 'الإجمالي 55.00 ر.س', '55.00 SAR', 'تأكيد الطلب'],
    ] as const
  ).map(
    ([lang, title, sum, total, button]): ShopPage => ({
      name: `a payment frame named in ${lang}, on an address that says nothing`,
      url: 'https://lanternhouse.example/k',
      lang,
      body: `<p>${sum}</p><iframe title="${title}"></iframe><button>${button}</button>`,
      stage: 'checkout',
      total,
      placeOrder: [button],
    }),
  ),
  {
    name: 'a romanised address of a Japanese shop',
    url: 'https://lanternhouse.example/chumon/kakunin',
    lang: 'ja',
    body: '<p>合計 5,000円</p><button>注文する</button>',
    stage: 'checkout',
    total: '5000 JPY',
    placeOrder: ['注文する'],
  },
  done('short thanks in Chinese', 'zh-CN', '<p>下单成功</p><p>订单号：20261125001</p>', '20261125001'),
  done('short thanks in Korean', 'ko-KR', '<div>주문 완료</div><p>주문번호 20261125001</p>', '20261125001'),
  done(
    'a number before its word, Hungarian',
    'hu-HU',
    '<h1>Köszönjük a rendelését!</h1><p>A 10045 számú rendelését megkaptuk.</p>',
    '10045',
  ),
  done(
    'a number before its word, Turkish',
    'tr-TR',
    '<h1>Siparişiniz için teşekkürler</h1><p>100458 numaralı siparişiniz alındı.</p>',
    '100458',
  ),
  done(
    'a number that begins like money',
    'nb-NO',
    '<h1>Takk for bestillingen</h1><p>Ordrenummer: TK20261125</p><p>Sum 871,-</p>',
    'TK20261125',
    { total: '871 NOK' },
  ),
  done(
    'a footnote on the word for the number',
    'fr-FR',
    '<h1>Merci pour votre achat</h1><table><tr><th>Numéro de commande<sup>1</sup></th><td>QWXRTK</td></tr></table>',
    'QWXRTK',
  ),
  done(
    'letters alone behind a short word for number',
    'sk-SK',
    '<h1>Ďakujeme za objednávku</h1><div><div>Objednávka č.:</div><div>QWXRTK</div></div>',
    'QWXRTK',
  ),
]

import type { ShopPage } from '../page.ts'

// Invented shops: 青波茶舗 (tea), 木漏れ日雑貨店 (household goods).
export const jaPages: readonly ShopPage[] = [
  {
    name: 'the last check before ordering: items, postage, fee, a coupon, and the sum with its tax in brackets',
    url: 'https://aonami-cha.example/shopping/confirm',
    lang: 'ja',
    body: `<h1>ご注文内容の確認</h1><table><tr><th>商品小計</th><td>4,320円</td></tr><tr><th>送料</th><td>660円</td></tr>
      <tr><th>代引き手数料</th><td>330円</td></tr><tr><th>クーポン値引き</th><td>-310円</td></tr>
      <tr><th>お支払い合計</th><td><strong>5,000円</strong>（うち消費税 370円）</td></tr></table>
      <label><input type="checkbox"> 利用規約に同意する</label><button>注文を確定する</button><a href="/cart">カートに戻る</a>`,
    stage: 'checkout',
    total: '5000 JPY',
    placeOrder: ['注文を確定する'],
    parts: ['items 4320', 'shipping 660', 'fee 330', 'discount -310'],
  },
  {
    name: 'a cart whose postage comes later, with what is missing for free delivery',
    url: 'https://aonami-cha.example/cart',
    lang: 'ja',
    body: `<h1>ショッピングカート</h1><table><tr><th>商品名</th><th>価格</th><th>数量</th><th>小計</th></tr>
      <tr><td>玉露 100g</td><td>1,620円</td><td>2</td><td>3,240円</td></tr></table>
      <p>あと1,760円で送料無料</p><dl><dt>商品合計（2点）</dt><dd>3,240円(税込)</dd><dt>送料</dt><dd>次の画面で計算されます</dd></dl>
      <button>レジに進む</button>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 玉露 100g 3240'],
  },
  {
    name: 'thanks with an order number, and the number of the parcel',
    url: 'https://aonami-cha.example/shopping/complete',
    lang: 'ja',
    body: `<h1>ご注文ありがとうございました</h1><dl><dt>ご注文番号</dt><dd>20260412-0087</dd><dt>お問い合わせ伝票番号</dt><dd>4417-2093-5518</dd>
      <dt>商品合計</dt><dd>￥3,240</dd><dt>送料</dt><dd>￥660</dd><dt>お支払い金額</dt><dd>￥3,900</dd></dl>`,
    stage: 'confirmation',
    total: '3900 JPY',
    orderNumber: '20260412-0087',
  },
  {
    name: 'points used and points to be had, instalments, savings, and the tax after the total',
    url: 'https://komorebi-zakka.example/checkout/payment',
    lang: 'ja-JP',
    body: `<h2>お支払い方法</h2><input autocomplete="cc-number">
      <ul><li><span>小計</span><span>¥12,800</span></li><li><span>配送料</span><span>¥0</span></li><li><span>ポイント利用</span><span>-¥800</span></li>
      <li><span>ご請求金額</span><span>¥12,000</span></li><li><span>（内消費税）</span><span>¥1,090</span></li></ul>
      <p>12,000円以上のご注文で送料無料</p><p>獲得予定ポイント 120ポイント</p><p>通常価格 ¥15,800（¥3,000お得）</p><p>分割払い：月々 ¥1,000 × 12回</p>
      <button>この内容で注文する</button>`,
    stage: 'checkout',
    total: '12000 JPY',
    placeOrder: ['この内容で注文する'],
    parts: ['items 12800', 'shipping 0', 'credit -800'],
  },
  {
    name: 'net lines, two rates of tax, the sum in cards with the sign in a node of its own',
    url: 'https://komorebi-zakka.example/order/kakunin',
    lang: 'ja',
    body: `<section><div class="card"><p>税抜合計</p><p><span>10,500</span><span>円</span></p></div>
      <div class="card"><p>消費税（10%）</p><p><span>1,000</span><span>円</span></p></div><div class="card"><p>消費税（8%）</p><p><span>40</span><span>円</span></p></div>
      <div class="card total"><p>総合計</p><p><span>11,540</span><span>円</span></p></div></section>
      <label><input type="radio" name="payment" checked>クレジットカード</label><input type="submit" value="上記の内容で注文する">`,
    stage: 'checkout',
    total: '11540 JPY',
    placeOrder: ['上記の内容で注文する'],
    parts: ['tax 1000', 'tax 40'],
  },
  {
    name: 'a page for the address: a sum so far and a button that goes on',
    url: 'https://komorebi-zakka.example/checkout/address',
    lang: 'ja',
    body: `<h1>お届け先</h1><input autocomplete="postal-code"><p>小計 <b>¥2,400</b></p><p>送料 次のステップで計算</p><button>次へ進む</button><button>戻る</button>`,
    stage: 'checkout',
    total: null,
  },
]

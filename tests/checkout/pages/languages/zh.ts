import type { ShopPage } from '../page.ts'

// Invented shops: 云杉书店 (mainland China), 青瓷小鋪 (Taiwan), 海風雜貨 (Hong Kong).
export const zhPages: readonly ShopPage[] = [
  {
    name: 'mainland China: goods, postage, an offer, and what is to be paid',
    url: 'https://yunshan.example/order/confirm',
    lang: 'zh-CN',
    body: `<h2>确认订单信息</h2><div><span>商品总额</span><span>¥268.00</span></div><div><span>运费</span><span>¥12.00</span></div>
      <div><span>优惠券</span><span>-¥30.00</span></div><div><span>应付总额：</span><b>¥250.00</b></div>
      <label><input type="radio" name="payment" checked>货到付款</label><button>提交订单</button><a href="/cart">返回购物车</a>`,
    stage: 'checkout',
    total: '250.00 CNY',
    placeOrder: ['提交订单'],
    parts: ['items 268.00', 'shipping 12.00', 'discount -30.00'],
  },
  {
    name: 'a cart whose postage is worked out at the checkout',
    url: 'https://yunshan.example/cart',
    lang: 'zh',
    body: `<h1>购物车</h1><table><tr><th>商品</th><th>单价</th><th>数量</th><th>小计</th></tr><tr><td>山居笔记</td><td>45.00元</td><td>2</td><td>90.00元</td></tr></table>
      <p>还差9.00元包邮</p><p>商品小计：<b>90.00元</b></p><p>运费：<i>结算时计算</i></p><button>去结算</button>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 山居笔记 90.00'],
  },
  {
    name: 'Taiwan: a confirmation with order number, amounts without decimals',
    url: 'https://qingci.example/checkout/success',
    lang: 'zh-TW',
    body: `<h1>感謝您的訂購！</h1><p>訂單編號：2604120035</p><p>付款代碼：99310028</p>
      <table><tr><td>商品小計</td><td>NT$1,180</td></tr><tr><td>運費</td><td>NT$80</td></tr><tr><td>訂單總金額</td><td>NT$1,260</td></tr></table>`,
    stage: 'confirmation',
    total: '1260 TWD',
    orderNumber: '2604120035',
  },
  {
    name: 'Taiwan: instalments, points, a saving and a threshold around the sum, the tax after it',
    url: 'https://qingci.example/checkout',
    lang: 'zh-Hant-TW',
    body: `<h2>付款方式</h2><label><input type="radio" name="payment" checked>信用卡</label>
      <dl><dt>商品金額</dt><dd>$2,400</dd><dt>運費</dt><dd>$0</dd><dt>購物金折抵</dt><dd>-$200</dd><dt>應付金額</dt><dd>$2,200</dd><dt>（內含營業稅）</dt><dd>$105</dd></dl>
      <p>滿$1,500免運費</p><p>已為您節省 $300</p><p>可獲得 22 點紅利點數</p><p>分期付款：每期 $733 / 3期零利率</p>
      <label><input type="checkbox"> 我同意服務條款</label><button>送出訂單</button>`,
    stage: 'checkout',
    total: '2200 TWD',
    placeOrder: ['送出訂單'],
    parts: ['items 2400', 'shipping 0', 'credit -200'],
  },
  {
    name: 'Hong Kong: cards with split amounts, the button pays',
    url: 'https://hoifung.example/checkout/payment',
    lang: 'zh-HK',
    body: `<div class="row"><div>小計</div><div><sup>HK$</sup><span>320</span><sup>00</sup></div></div><div class="row"><div>送貨費用</div><div><sup>HK$</sup><span>45</span><sup>50</sup></div></div>
      <div class="row"><div>總計</div><div><sup>HK$</sup><span>365</span><sup>50</sup></div></div><input autocomplete="cc-number"><button>立即付款</button>`,
    stage: 'checkout',
    total: '365.50 HKD',
    placeOrder: ['立即付款'],
    parts: ['items 320.00', 'shipping 45.50'],
  },
  {
    name: 'one line of words and amounts: the sum at its end',
    url: 'https://yunshan.example/checkout/pay',
    lang: 'zh-CN',
    body: `<p>共3件商品，商品合计：¥99.00</p><p>运费：¥0.00</p><p>实付款：<em>¥99.00</em></p><label><input type="radio" name="payment" checked>银行卡</label>
      <button>确认支付</button><button>取消订单</button>`,
    stage: 'checkout',
    total: '99.00 CNY',
    placeOrder: ['确认支付'],
    parts: ['items 99.00', 'shipping 0.00'],
  },
  {
    name: 'a confirmation whose sum follows the count of its goods',
    url: 'https://yunshan.example/order/success',
    lang: 'zh-CN',
    body: `<h1>支付成功</h1><p>订单编号：<span>99203311</span></p><p>快递单号：7755003120</p><p>共3件商品，合计：<b>¥99.00</b></p><a href="/">继续购物</a>`,
    stage: 'confirmation',
    total: '99.00 CNY',
    orderNumber: '99203311',
  },
]

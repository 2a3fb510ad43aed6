import type { ShopPage } from '../page.ts'

// Invented shops: خانه سفال, کتاب کوچه (Iran), بازار کابل نو (Afghanistan).
export const faPages: readonly ShopPage[] = [
  {
    name: 'parts that add up, rials in Persian digits',
    url: 'https://sofal.example/checkout',
    lang: 'fa-IR',
    body: `<div dir="rtl"><h1>تسویه حساب</h1><table><tr><td>قیمت کالاها</td><td>۲٬۴۵۰٬۰۰۰ ریال</td></tr><tr><td>هزینه ارسال</td><td>۳۵۰٬۰۰۰ ریال</td></tr><tr><td>تخفیف</td><td>−۲۰۰٬۰۰۰ ریال</td></tr>
      <tr><td>مبلغ قابل پرداخت</td><td><b>۲٬۶۰۰٬۰۰۰ ریال</b></td></tr></table><label><input type="radio" name="payment" checked> پرداخت اینترنتی</label><button>پرداخت و ثبت نهایی سفارش</button></div>`,
    stage: 'checkout',
    total: '2600000 IRR',
    placeOrder: ['پرداخت و ثبت نهایی سفارش'],
    parts: ['items 2450000', 'shipping 350000', 'discount -200000'],
  },
  {
    name: 'a cart whose delivery depends on the address',
    url: 'https://sofal.example/cart',
    lang: 'fa',
    body: `<div dir="rtl"><h1>سبد خرید</h1><table><tr><th>محصول</th><th>تعداد</th><th>قیمت</th><th>جمع</th></tr><tr><td>کاسه لعابی</td><td>۲</td><td>۴۵۰٬۰۰۰ ریال</td><td>۹۰۰٬۰۰۰ ریال</td></tr></table>
      <p>هزینه ارسال: در مرحله بعد محاسبه می‌شود</p><p>جمع سبد خرید: <b>۹۰۰٬۰۰۰ ریال</b></p><a href="/checkout">ادامه فرآیند خرید</a></div>`,
    stage: 'cart',
    total: null,
    items: ['2 کاسه لعابی 900000'],
  },
  {
    name: 'a confirmation; the payment has a number too',
    url: 'https://sofal.example/checkout/success',
    lang: 'fa',
    body: `<div dir="rtl"><h1>سفارش شما با موفقیت ثبت شد</h1><p>کد پیگیری پرداخت: 5544332211</p><p>شماره سفارش: <b>SF-14021</b></p>
      <dl><dt>جمع کالاها</dt><dd>900,000 ریال</dd><dt>هزینه ارسال</dt><dd>350,000 ریال</dd><dt>جمع کل</dt><dd>1,250,000 ریال</dd></dl></div>`,
    stage: 'confirmation',
    total: '1250000 IRR',
    orderNumber: 'SF-14021',
  },
  {
    name: 'decoys: gain, instalments, points, free delivery, the tax within; Arabic ye and kaf',
    url: 'https://sofal.example/checkout/payment',
    lang: 'fa',
    body: `<div dir="rtl"><p>ارسال رایگان برای خرید بالای ۵٬۰۰۰٬۰۰۰ ریال</p><div><span>جمع كالاها</span><span>۱٬۲۰۰٬۰۰۰ ریال</span></div><div><span>هزينه ارسال</span><span>۳۵۰٬۰۰۰ ریال</span></div>
      <div><span>جمع كل</span><span>۱٬۵۵۰٬۰۰۰ ریال</span></div><div><span>شامل مالیات بر ارزش افزوده</span><span>۱۴۰٬۰۰۰ ریال</span></div><p>سود شما از خرید: ۱۰۰٬۰۰۰ ریال</p>
      <p>مبلغ هر قسط: ۳۸۷٬۵۰۰ ریال</p><p>امتیاز این خرید: ۱۵۵</p><button>پرداخت نهایی</button></div>`,
    stage: 'checkout',
    total: '1550000 IRR',
    placeOrder: ['پرداخت نهایی'],
    parts: ['items 1200000', 'shipping 350000'],
  },
  {
    name: 'another make: amounts before labels, a wallet used, its balance is no part',
    url: 'https://kuche.example/checkout/review',
    lang: 'fa',
    body: `<ul dir="rtl"><li><b>۸۰۰٬۰۰۰ ریال</b> <span>مجموع کالاها</span></li><li><b>۲۵۰٬۰۰۰ ریال</b> <span>هزینه پست</span></li><li><b>-۳۰۰٬۰۰۰ ریال</b> <span>کسر از کیف پول</span></li><li><b>۷۵۰٬۰۰۰ ریال</b> <span>مبلغ نهایی</span></li></ul>
      <p>موجودی کیف پول: ۵۰٬۰۰۰ ریال</p><label><input type="checkbox"> قوانین و مقررات را می‌پذیرم</label><button>تایید و پرداخت</button>`,
    stage: 'checkout',
    total: '750000 IRR',
    placeOrder: ['تایید و پرداخت'],
    parts: ['items 800000', 'shipping 250000', 'credit -300000'],
  },
  {
    name: 'afghanis, the order is placed without a word of paying',
    url: 'https://kabulnaw.example/checkout',
    lang: 'fa-AF',
    body: `<div dir="rtl"><h2>آدرس تحویل</h2><dl><dt>جمع محصولات</dt><dd>1,800 ؋</dd><dt>حمل و نقل</dt><dd>200 ؋</dd><dt>مجموع کل</dt><dd>2,000 ؋</dd></dl>
      <label><input type="radio" name="payment" checked> پرداخت در محل</label><button>ثبت سفارش</button></div>`,
    stage: 'checkout',
    total: '2000 AFN',
    placeOrder: ['ثبت سفارش'],
    parts: ['items 1800', 'shipping 200'],
  },
]

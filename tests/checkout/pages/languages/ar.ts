import type { ShopPage } from '../page.ts'

// Invented shops: دكان النخيل (Saudi Arabia), بيت الورق (Egypt), زيت الجبل (Jordan). Bidi marks as shops leave them in prices.
export const arPages: readonly ShopPage[] = [
  {
    name: 'parts that add up, riyals, tax before the total',
    url: 'https://nakheel.example/checkout',
    lang: 'ar-SA',
    body: `<div dir="rtl"><h1>إتمام الطلب</h1><table><tr><td>المجموع الفرعي</td><td>240.00 ر.س</td></tr><tr><td>رسوم التوصيل</td><td>20.00 ر.س</td></tr>
      <tr><td>ضريبة القيمة المضافة 15%</td><td>39.00 ر.س</td></tr><tr><td>الإجمالي</td><td><b>299.00 ر.س</b></td></tr></table>
      <label><input type="radio" name="payment" checked> مدى</label><button>تأكيد الطلب</button></div>`,
    stage: 'checkout',
    total: '299.00 SAR',
    placeOrder: ['تأكيد الطلب'],
    parts: ['items 240.00', 'shipping 20.00', 'tax 39.00'],
  },
  {
    name: 'a cart with Arabic digits whose shipping is worked out later',
    url: 'https://waraq.example/cart',
    lang: 'ar-EG',
    body: `<div dir="rtl"><h1>سلة التسوق</h1><table><tr><th>المنتج</th><th>الكمية</th><th>السعر</th><th>الإجمالي</th></tr>
      <tr><td>دفتر جلد</td><td>٢</td><td>‏١٥٠٫٠٠ ج.م.‏</td><td>‏٣٠٠٫٠٠ ج.م.‏</td></tr></table>
      <p>الشحن: يُحسب عند الدفع</p><p>المجموع: <b>‏٣٠٠٫٠٠ ج.م.‏</b></p><a href="/checkout">المتابعة لإتمام الشراء</a></div>`,
    stage: 'cart',
    total: null,
    items: ['2 دفتر جلد 300.00'],
  },
  {
    name: 'a confirmation',
    url: 'https://nakheel.example/checkout/success',
    lang: 'ar-SA',
    body: `<div dir="rtl"><h1>شكراً لطلبك</h1><p>رقم الطلب: <b>NK-70012</b></p><p>رقم التتبع: 998877665</p>
      <dl><dt>المنتجات</dt><dd>240.00 ريال سعودي</dd><dt>الشحن</dt><dd>20.00 ريال سعودي</dd><dt>المجموع الكلي</dt><dd>260.00 ريال سعودي</dd></dl></div>`,
    stage: 'confirmation',
    total: '260.00 SAR',
    orderNumber: 'NK-70012',
  },
  {
    name: 'decoys: saving, instalments, points, free shipping, the tax within; hamza left out',
    url: 'https://nakheel.example/checkout/payment',
    lang: 'ar',
    body: `<div dir="rtl"><p>شحن مجاني للطلبات فوق 300 ر.س</p><div><span>إجمالي المنتجات</span><span>250.00 ر.س</span></div><div><span>الشحن</span><span>25.00 ر.س</span></div>
      <div><span>الاجمالى</span><span>275.00 ر.س</span></div><div><span>شامل ضريبة القيمة المضافة</span><span>35.87 ر.س</span></div><p>لقد وفرت 40.00 ر.س</p>
      <p>4 دفعات بقيمة 68.75 ر.س</p><p>ستكسب 27 نقطة</p><input autocomplete="cc-number"><button>ادفع الآن</button></div>`,
    stage: 'checkout',
    total: '275.00 SAR',
    placeOrder: ['ادفع الآن'],
    parts: ['items 250.00', 'shipping 25.00'],
  },
  {
    name: 'another make: three decimals of a dinar, amounts before labels, a discount',
    url: 'https://zayt.example/checkout/review',
    lang: 'ar-JO',
    body: `<ul dir="rtl"><li><b>18.500 د.أ</b> <span>قيمة المنتجات</span></li><li><b>2.000 د.أ</b> <span>تكلفة التوصيل</span></li><li><b>-1.500 د.أ</b> <span>خصم الكوبون</span></li><li><b>19.000 د.أ</b> <span>المبلغ المستحق</span></li></ul>
      <label><input type="checkbox"> أوافق على الشروط والأحكام</label><button>تأكيد ودفع</button>`,
    stage: 'checkout',
    total: '19.000 JOD',
    placeOrder: ['تأكيد ودفع'],
    parts: ['items 18.500', 'shipping 2.000', 'discount -1.500'],
  },
  {
    name: 'Egyptian pounds split over nodes, with the name before the figures',
    url: 'https://waraq.example/checkout/order',
    lang: 'ar-EG',
    body: `<div dir="rtl"><h2>مراجعة الطلب</h2><dl><dt>الاجمالى الفرعى</dt><dd><span>جنيه</span> <span>1,250</span><span>.</span><span>00</span></dd><dt>مصاريف الشحن</dt><dd><span>جنيه</span> <span>60</span><span>.</span><span>00</span></dd>
      <dt>إجمالي الطلب</dt><dd><span>جنيه</span> <span>1,310</span><span>.</span><span>00</span></dd></dl><label><input type="radio" name="payment" checked> الدفع عند الاستلام</label><button>إتمام الطلب</button></div>`,
    stage: 'checkout',
    total: '1310.00 EGP',
    placeOrder: ['إتمام الطلب'],
    parts: ['items 1250.00', 'shipping 60.00'],
  },
]

import type { ShopPage } from '../page.ts'

// Invented shops: סדנת הזית, ספרי החוף (Israel).
export const hePages: readonly ShopPage[] = [
  {
    name: 'parts that add up, shekels, gershayim',
    url: 'https://zayit.example/checkout',
    lang: 'he-IL',
    body: `<div dir="rtl"><h1>קופה</h1><table><tr><td>סכום ביניים</td><td>‏180.00 ₪</td></tr><tr><td>דמי משלוח</td><td>‏29.90 ₪</td></tr><tr><td>הנחת קופון</td><td>‎-18.00 ₪</td></tr>
      <tr><td>סה״כ לתשלום</td><td><b>‏191.90 ₪</b></td></tr></table><label><input type="checkbox"> קראתי ואני מסכים לתקנון האתר</label><button>בצע הזמנה</button></div>`,
    stage: 'checkout',
    total: '191.90 ILS',
    placeOrder: ['בצע הזמנה'],
    parts: ['items 180.00', 'shipping 29.90', 'discount -18.00'],
  },
  {
    name: 'a cart whose delivery is worked out at the till',
    url: 'https://zayit.example/cart',
    lang: 'he',
    body: `<div dir="rtl"><h1>סל הקניות</h1><table><tr><th>מוצר</th><th>כמות</th><th>מחיר</th><th>סה"כ</th></tr><tr><td>קערת עץ</td><td>2</td><td>₪90.00</td><td>₪180.00</td></tr></table>
      <p>משלוח: יחושב בקופה</p><p>סה"כ: <b>₪180.00</b></p><a href="/checkout">מעבר לקופה</a></div>`,
    stage: 'cart',
    total: null,
    items: ['2 קערת עץ 180.00'],
  },
  {
    name: 'a confirmation',
    url: 'https://zayit.example/checkout/order-received',
    lang: 'he',
    body: `<div dir="rtl"><h1>תודה על הזמנתך!</h1><p>מספר הזמנה: <b>ZT-5521</b></p><p>אסמכתא: 0099231</p>
      <dl><dt>סה"כ מוצרים</dt><dd>180.00 ₪</dd><dt>משלוח</dt><dd>29.90 ₪</dd><dt>סך הכל</dt><dd>209.90 ₪</dd></dl></div>`,
    stage: 'confirmation',
    total: '209.90 ILS',
    orderNumber: 'ZT-5521',
  },
  {
    name: 'decoys: saving, instalments, points, free delivery, the tax within',
    url: 'https://zayit.example/checkout/payment',
    lang: 'he',
    body: `<div dir="rtl"><p>משלוח חינם בקנייה מעל ₪250</p><div><span>סכום המוצרים</span><span>₪200.00</span></div><div><span>משלוח</span><span>₪25.00</span></div>
      <div><span>סכום כולל</span><span>₪225.00</span></div><div><span>מתוכם מע"מ</span><span>₪34.32</span></div><p>חסכת ₪40.00</p><p>3 תשלומים של ₪75.00</p><p>תצברו 22 נקודות</p>
      <input autocomplete="cc-number"><button>שלם עכשיו</button></div>`,
    stage: 'checkout',
    total: '225.00 ILS',
    placeOrder: ['שלם עכשיו'],
    parts: ['items 200.00', 'shipping 25.00'],
  },
  {
    name: 'another make: amounts before labels, tax apart, a gift card',
    url: 'https://hahof.example/checkout/review',
    lang: 'he',
    body: `<ul dir="rtl"><li><b>100.00 ₪</b> <span>סה"כ לפני מע"מ</span></li><li><b>18.00 ₪</b> <span>מע"מ 18%</span></li><li><b>‎-50.00 ₪</b> <span>שובר מתנה</span></li><li><b>68.00 ₪</b> <span>סה"כ לתשלום</span></li></ul>
      <label><input type="radio" name="payment" checked> כרטיס אשראי</label><input type="submit" value="אישור ותשלום">`,
    stage: 'checkout',
    total: '68.00 ILS',
    placeOrder: ['אישור ותשלום'],
  },
  {
    name: 'shekels in letters, agorot in a node of their own',
    url: 'https://hahof.example/checkout/order',
    lang: 'he',
    body: `<div dir="rtl"><h2>סיכום ותשלום</h2><div><span>פריטים</span><span><span>74</span><sup>90</sup> ₪</span></div><div><span>דואר רשום</span><span><span>15</span><sup>00</sup> ₪</span></div>
      <div><span>הסכום לתשלום</span><span><span>89</span><sup>90</sup> ₪</span></div><label><input type="radio" name="payment" checked> אשראי</label><button>לביצוע התשלום</button></div>`,
    stage: 'checkout',
    total: '89.90 ILS',
    placeOrder: ['לביצוע התשלום'],
    parts: ['items 74.90', 'shipping 15.00'],
  },
]

import type { ShopPage } from '../page.ts'

// Invented shops: บ้านใบชา (tea), ร้านลายคราม (pottery).
export const thPages: readonly ShopPage[] = [
  {
    name: 'goods, delivery, a discount, and the whole sum',
    url: 'https://baanbaicha.example/checkout',
    lang: 'th',
    body: `<h1>ชำระเงิน</h1><table><tr><td>รวมค่าสินค้า</td><td>฿850.00</td></tr><tr><td>ค่าจัดส่ง</td><td>฿50.00</td></tr><tr><td>ส่วนลด</td><td>-฿100.00</td></tr>
      <tr><td>ยอดชำระทั้งหมด</td><td><b>฿800.00</b></td></tr></table><label><input type="radio" name="payment" checked>โอนเงิน</label><button>ยืนยันการสั่งซื้อ</button>`,
    stage: 'checkout',
    total: '800.00 THB',
    placeOrder: ['ยืนยันการสั่งซื้อ'],
    parts: ['items 850.00', 'shipping 50.00', 'discount -100.00'],
  },
  {
    name: 'a cart whose delivery is worked out later; its button also says "pay"',
    url: 'https://baanbaicha.example/cart',
    lang: 'th-TH',
    body: `<h1>ตะกร้าสินค้า</h1><table><tr><th>สินค้า</th><th>จำนวน</th><th>ราคา</th></tr><tr><td>ชาอู่หลง</td><td>2</td><td>360 บาท</td></tr></table>
      <p>ซื้อเพิ่มอีก 140 บาท รับสิทธิ์ส่งฟรี</p><div><span>ยอดรวมสินค้า</span><span>360 บาท</span></div><div><span>ค่าจัดส่ง</span><span>คำนวณในขั้นตอนถัดไป</span></div>
      <button>ดำเนินการชำระเงิน</button>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 ชาอู่หลง 360'],
  },
  {
    name: 'a confirmation with its number',
    url: 'https://baanbaicha.example/order/success',
    lang: 'th',
    body: `<h1>ขอบคุณสำหรับคำสั่งซื้อ</h1><p>หมายเลขคำสั่งซื้อ: 2604120091</p><p>หมายเลขพัสดุ: TH55120043</p>
      <dl><dt>ยอดรวมสินค้า</dt><dd>360.00 บาท</dd><dt>ค่าจัดส่ง</dt><dd>40.00 บาท</dd><dt>ยอดสุทธิ</dt><dd>400.00 บาท</dd></dl>`,
    stage: 'confirmation',
    total: '400.00 THB',
    orderNumber: '2604120091',
  },
  {
    name: 'instalments, points, a saving and a threshold, the tax contained after the sum',
    url: 'https://laikhram.example/checkout/payment',
    lang: 'th',
    body: `<h2>วิธีการชำระเงิน</h2><input autocomplete="cc-number"><p>ราคาปกติ ฿3,990</p>
      <div><span>ยอดรวม</span><span>฿3,210</span></div><div><span>รวมภาษีมูลค่าเพิ่มแล้ว</span><span>฿210</span></div>
      <p>คุณประหยัดไป ฿780</p><p>ผ่อน 0% เดือนละ ฿321 นาน 10 เดือน</p><p>จัดส่งฟรีเมื่อซื้อครบ ฿1,000</p><p>คะแนนที่จะได้รับ 32 คะแนน</p><button>ชำระเงินทันที</button>`,
    stage: 'checkout',
    total: '3210 THB',
    placeOrder: ['ชำระเงินทันที'],
  },
  {
    name: 'sum before tax, tax, and the whole sum, in cards',
    url: 'https://laikhram.example/checkout/review',
    lang: 'th',
    body: `<section><div><p>ราคาก่อนภาษี</p><p>1,000.00 บาท</p></div><div><p>ภาษีมูลค่าเพิ่ม 7%</p><p>70.00 บาท</p></div><div><p>ยอดรวมทั้งสิ้น</p><p>1,070.00 บาท</p></div></section>
      <label><input type="checkbox"> ยอมรับข้อกำหนดและเงื่อนไข</label><button>สั่งซื้อ</button><a href="/how">วิธีการสั่งซื้อ</a>`,
    stage: 'checkout',
    total: '1070.00 THB',
    placeOrder: ['สั่งซื้อ'],
    parts: ['tax 70.00'],
  },
]

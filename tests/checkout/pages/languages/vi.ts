import type { ShopPage } from '../page.ts'

// Invented shops: Gốm Mây (pottery), Trà Sương (tea).
export const viPages: readonly ShopPage[] = [
  {
    name: 'items, delivery, a voucher, and the sum',
    url: 'https://gommay.example/checkout',
    lang: 'vi',
    body: `<h1>Thanh toán</h1><table><tr><td>Tạm tính</td><td>450.000₫</td></tr><tr><td>Phí vận chuyển</td><td>30.000₫</td></tr><tr><td>Mã giảm giá</td><td>-50.000₫</td></tr>
      <tr><td>Tổng cộng</td><td><b>430.000₫</b></td></tr></table><label><input type="radio" name="payment" checked>Thanh toán khi nhận hàng</label><button>Đặt hàng</button>
      <a href="/cart">Quay lại giỏ hàng</a>`,
    stage: 'checkout',
    total: '430000 VND',
    placeOrder: ['Đặt hàng'],
    parts: ['items 450000', 'shipping 30000', 'discount -50000'],
  },
  {
    name: 'a cart whose delivery is worked out later, with a button that also says "pay"',
    url: 'https://gommay.example/gio-hang/cart',
    lang: 'vi-VN',
    body: `<h1>Giỏ hàng của bạn</h1><table><tr><th>Sản phẩm</th><th>Số lượng</th><th>Thành tiền</th></tr><tr><td>Chén men xanh</td><td>2</td><td>180.000đ</td></tr></table>
      <p>Mua thêm 120.000đ để được miễn phí vận chuyển</p><p>Tạm tính: <b>180.000đ</b></p><p>Phí vận chuyển: <i>được tính ở bước tiếp theo</i></p><button>Thanh toán</button>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 Chén men xanh 180000'],
  },
  {
    name: 'a confirmation with its number',
    url: 'https://gommay.example/checkout/thank-you',
    lang: 'vi',
    body: `<h2>Cảm ơn bạn đã đặt hàng!</h2><p>Mã đơn hàng: <b>GM20260412</b></p><p>Mã giao dịch: 88120045</p>
      <dl><dt>Tổng tiền hàng</dt><dd>450.000 đ</dd><dt>Phí giao hàng</dt><dd>30.000 đ</dd><dt>Tổng thanh toán</dt><dd>480.000 đ</dd></dl>`,
    stage: 'confirmation',
    total: '480000 VND',
    orderNumber: 'GM20260412',
  },
  {
    name: 'instalments, points, a saving, a threshold, and the tax contained',
    url: 'https://trasuong.example/checkout/payment',
    lang: 'vi',
    body: `<h2>Phương thức thanh toán</h2><input autocomplete="cc-number"><p>Giá gốc: 1.500.000 VNĐ</p>
      <div><span>Tổng tiền hàng</span><span>1.200.000 VNĐ</span></div><div><span>Phí vận chuyển</span><span>0 VNĐ</span></div>
      <div><span>Số tiền cần thanh toán</span><strong>1.200.000 VNĐ</strong></div><div><span>Đã bao gồm VAT</span><span>109.091 VNĐ</span></div>
      <p>Bạn tiết kiệm được 300.000 VNĐ</p><p>Trả góp chỉ từ 100.000 VNĐ/tháng</p><p>Miễn phí vận chuyển cho đơn hàng từ 500.000 VNĐ</p><p>Số dư ví: 75.000 VNĐ</p>
      <button>Xác nhận và thanh toán</button>`,
    stage: 'checkout',
    total: '1200000 VND',
    placeOrder: ['Xác nhận và thanh toán'],
    parts: ['items 1200000', 'shipping 0'],
  },
  {
    name: 'net sum, tax, gross sum, each amount before its label',
    url: 'https://trasuong.example/checkout/review',
    lang: 'vi',
    body: `<div><p><b>500.000 ₫</b> <span>Tổng trước thuế</span></p><p><b>50.000 ₫</b> <span>Thuế GTGT (10%)</span></p><p><b>550.000 ₫</b> <span>Tổng số tiền thanh toán</span></p></div>
      <label><input type="checkbox"> Tôi đồng ý với điều khoản và điều kiện</label><button>Hoàn tất đơn hàng</button>`,
    stage: 'checkout',
    total: '550000 VND',
    placeOrder: ['Hoàn tất đơn hàng'],
    parts: ['tax 50000'],
  },
]

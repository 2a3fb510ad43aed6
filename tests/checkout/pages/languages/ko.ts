import type { ShopPage } from '../page.ts'

// Invented shops: 달빛문구 (stationery), 솔향찻집 (tea).
export const koPages: readonly ShopPage[] = [
  {
    name: 'an order form: items, delivery, a discount, points used, what is to be paid, and the button with the amount',
    url: 'https://dalbit.example/order/form',
    lang: 'ko',
    body: `<h1>주문/결제</h1><ul><li><span>총 상품금액</span><em>45,000원</em></li><li><span>배송비</span><em>3,000원</em></li>
      <li><span>쿠폰 할인</span><em>-5,000원</em></li><li><span>적립금 사용</span><em>-3,000원</em></li>
      <li><span>총 결제금액</span><strong>40,000원</strong></li></ul><p>적립 예정 포인트 400P</p>
      <label><input type="radio" name="payment" checked>신용카드</label><label><input type="checkbox"> 구매조건 확인 및 결제진행에 동의</label>
      <button>40,000원 결제하기</button>`,
    stage: 'checkout',
    total: '40000 KRW',
    placeOrder: ['40,000원 결제하기'],
    parts: ['items 45000', 'shipping 3000', 'discount -5000', 'credit -3000'],
  },
  {
    name: 'a cart whose delivery is worked out later',
    url: 'https://dalbit.example/cart',
    lang: 'ko-KR',
    body: `<h1>장바구니</h1><table><tr><th>상품정보</th><th>수량</th><th>금액</th></tr><tr><td>만년필 노트</td><td>3</td><td>27,000원</td></tr></table>
      <p>3,000원 더 담으면 무료배송</p><div><span>상품금액</span><span>27,000원</span></div><div><span>배송비</span><span>결제 시 계산됩니다</span></div>
      <button>선택상품 삭제</button><a href="/order/form">주문하기</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['3 만년필 노트 27000'],
  },
  {
    name: 'a confirmation, with the number of the parcel after the order number',
    url: 'https://dalbit.example/order/complete',
    lang: 'ko',
    body: `<h2>주문이 완료되었습니다</h2><p>주문번호: 20260412-7731</p><p>운송장 번호: 5538-1120-9944</p>
      <dl><dt>상품 합계</dt><dd>27,000원</dd><dt>배송비</dt><dd>3,000원</dd><dt>최종 결제금액</dt><dd>30,000원</dd></dl>`,
    stage: 'confirmation',
    total: '30000 KRW',
    orderNumber: '20260412-7731',
  },
  {
    name: 'instalments, a threshold, points held and a saving around the sum, the tax contained after it',
    url: 'https://solhyang.example/checkout',
    lang: 'ko',
    body: `<h1>결제</h1><iframe title="payment"></iframe><p>정가 80,000원</p><p>보유 적립금 12,500원</p>
      <dl><dt>주문금액</dt><dd>₩64,000</dd><dt>부가세 포함</dt><dd>₩5,818</dd></dl><p>총 16,000원 절약</p><p>무이자 할부: 월 21,333원 / 3개월</p>
      <p>50,000원 이상 무료배송</p><button>주문하고 결제하기</button>`,
    stage: 'checkout',
    total: '64000 KRW',
    placeOrder: ['주문하고 결제하기'],
  },
  {
    name: 'cards with the amount before its label, and a sum before and after tax',
    url: 'https://solhyang.example/checkout/payment',
    lang: 'ko',
    body: `<div><div><b>50,000원</b><span>공급가액</span></div><div><b>5,000원</b><span>부가세 (10%)</span></div><div><b>55,000원</b><span>결제 예정 금액</span></div></div>
      <input autocomplete="cc-number"><button>결제하기</button><button>쿠폰 적용</button>`,
    stage: 'checkout',
    total: '55000 KRW',
    placeOrder: ['결제하기'],
    parts: ['tax 5000'],
  },
  {
    name: 'a product page: buying at once is no order yet',
    url: 'https://solhyang.example/product/312',
    lang: 'ko',
    body: `<h1>세작 녹차 50g</h1><p>판매가 <b>18,000원</b></p><p>배송비 3,000원 (50,000원 이상 구매 시 무료)</p><button>장바구니 담기</button><button>바로구매</button>`,
    stage: 'product',
    total: null,
  },
]

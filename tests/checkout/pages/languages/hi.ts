import type { ShopPage } from '../page.ts'

// Invented shops: मिट्टी घर, चाय बाग़ (India).
export const hiPages: readonly ShopPage[] = [
  {
    name: 'a cart in Devanagari digits whose delivery is worked out later',
    url: 'https://mittighar.example/cart',
    lang: 'hi',
    body: `<h1>आपकी कार्ट</h1><table><tr><th>उत्पाद</th><th>मात्रा</th><th>मूल्य</th><th>कुल</th></tr><tr><td>मिट्टी का घड़ा</td><td>२</td><td>₹ ३५०</td><td>₹ ७००</td></tr></table>
      <p>डिलीवरी: चेकआउट पर गणना की जाएगी</p><p>कुल: <b>₹ ७००</b></p><a href="/checkout">चेकआउट के लिए आगे बढ़ें</a>`,
    stage: 'cart',
    total: null,
    items: ['2 मिट्टी का घड़ा 700'],
  },
  {
    name: 'a confirmation',
    url: 'https://mittighar.example/checkout/success',
    lang: 'hi',
    body: `<h1>आपके ऑर्डर के लिए धन्यवाद</h1><p>ऑर्डर नंबर: <b>MG-88120</b></p><p>ट्रैकिंग नंबर: 1122334455</p>
      <dl><dt>आइटम कुल</dt><dd>₹700.00</dd><dt>शिपिंग</dt><dd>₹60.00</dd><dt>कुल योग</dt><dd>₹760.00</dd></dl>`,
    stage: 'confirmation',
    total: '760.00 INR',
    orderNumber: 'MG-88120',
  },
  {
    name: 'a cart with decoys: list price, saving, instalments, points, free delivery, the tax within',
    url: 'https://mittighar.example/cart',
    lang: 'hi',
    body: `<h1>शॉपिंग कार्ट</h1><p>₹999 से अधिक के ऑर्डर पर मुफ़्त डिलीवरी</p><div><span>कुल एमआरपी</span><span>₹1,000.00</span></div><div><span>वस्तुओं का मूल्य</span><span>₹850.00</span></div><div><span>डिलीवरी शुल्क</span><span>₹50.00</span></div>
      <div><span>कुल राशि</span><span>₹900.00</span></div><div><span>जीएसटी सहित</span><span>₹137.29</span></div><p>आपकी कुल बचत: ₹150.00</p><p>ईएमआई से शुरू ₹150.00 प्रति माह</p>
      <p>आप कमाएंगे 90 अंक</p><a href="/checkout">चेकआउट</a>`,
    stage: 'cart',
    total: '900.00 INR',
    parts: ['items 850.00', 'shipping 50.00'],
  },
  {
    name: 'another make: amounts before labels, two halves of the tax, lakh grouping',
    url: 'https://chaibagh.example/checkout/thank-you',
    lang: 'hi-IN',
    body: `<h2>आपके ऑर्डर की पुष्टि हो गई है</h2><p>आपकी ऑर्डर आईडी: <b>CB4471</b></p><ul><li><b>₹2,00,000.00</b> <span>कर से पहले कुल</span></li><li><b>₹5,000.00</b> <span>CGST 2.5%</span></li><li><b>₹5,000.00</b> <span>SGST 2.5%</span></li><li><b>₹400.00</b> <span>शिपिंग शुल्क</span></li>
      <li><b>₹2,10,400.00</b> <span>कुल भुगतान राशि</span></li></ul>`,
    stage: 'confirmation',
    total: '210400.00 INR',
    orderNumber: 'CB4471',
  },
  {
    name: 'rupees in letters, the dot below left out, a gift card used up and what is left on it',
    url: 'https://chaibagh.example/order/success',
    lang: 'hi',
    body: `<h2>खरीदारी के लिए धन्यवाद</h2><p>ऑर्डर संख्या: 500231</p><dl><dt>उत्पादों का मूल्य</dt><dd>450 रुपये</dd><dt>कूरियर शुल्क</dt><dd>50 रुपये</dd><dt>गिफ्ट कार्ड</dt><dd>-100 रुपये</dd><dt>अंतिम राशि</dt><dd>400 रुपये</dd></dl>
      <p>गिफ्ट कार्ड बैलेंस: 25 रुपये</p>`,
    stage: 'confirmation',
    total: '400 INR',
    orderNumber: '500231',
    parts: ['items 450', 'shipping 50', 'credit -100'],
  },
  {
    name: 'an address step that only goes on',
    url: 'https://chaibagh.example/checkout/address',
    lang: 'hi',
    body: `<h1>डिलीवरी का पता</h1><input autocomplete="street-address"><div>आइटम का योग <b>₹450</b></div><div>शिपिंग <i>अगले चरण में गणना की जाएगी</i></div><button>भुगतान के लिए आगे बढ़ें</button>`,
    stage: 'checkout',
    total: null,
  },
]

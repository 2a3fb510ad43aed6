import type { ShopPage } from '../page.ts'

// Invented shops: Zeytin Çarşısı, Kuzey Defter (Türkiye).
export const trPages: readonly ShopPage[] = [
  {
    name: 'parts that add up, lira with points for thousands',
    url: 'https://zeytin.example/odeme',
    lang: 'tr-TR',
    body: `<h1>Ödeme</h1><table><tr><td>Ara Toplam</td><td>1.249,90 TL</td></tr><tr><td>Kargo Ücreti</td><td>59,90 TL</td></tr><tr><td>Sepet İndirimi</td><td>-100,00 TL</td></tr>
      <tr><td>Ödenecek Tutar</td><td><b>1.209,80 TL</b></td></tr></table>
      <label><input type="checkbox"> Ön Bilgilendirme Formunu ve Mesafeli Satış Sözleşmesini onaylıyorum</label><button>Siparişi Onayla</button>`,
    stage: 'checkout',
    total: '1209.80 TRY',
    placeOrder: ['Siparişi Onayla'],
    parts: ['items 1249.90', 'shipping 59.90', 'discount -100.00'],
  },
  {
    name: 'a cart in capitals whose freight is worked out later',
    url: 'https://zeytin.example/sepet',
    lang: 'tr',
    body: `<h1>ALIŞVERİŞ SEPETİM</h1><table><tr><th>Ürün</th><th>Adet</th><th>Fiyat</th><th>Tutar</th></tr><tr><td>Zeytinyağı sabunu</td><td>4</td><td>45,00 ₺</td><td>180,00 ₺</td></tr></table>
      <p>KARGO: ödeme adımında hesaplanır</p><p>SEPET TOPLAMI: <b>180,00 ₺</b></p><a href="/odeme">Sepeti Onayla</a>`,
    stage: 'cart',
    total: null,
    items: ['4 Zeytinyağı sabunu 180.00'],
  },
  {
    name: 'a confirmation',
    url: 'https://zeytin.example/siparis/tamamlandi',
    lang: 'tr',
    body: `<h1>Siparişiniz alındı</h1><p>Sipariş numaranız: <b>ZC20260117</b></p><p>Kargo takip no: 7788990011</p>
      <dl><dt>Ürünler Toplamı</dt><dd>180,00 TL</dd><dt>Kargo</dt><dd>39,90 TL</dd><dt>Genel Toplam</dt><dd>219,90 TL</dd></dl>`,
    stage: 'confirmation',
    total: '219.90 TRY',
    orderNumber: 'ZC20260117',
  },
  {
    name: 'decoys: gain, instalments, points, a threshold behind its amount, the tax within',
    url: 'https://zeytin.example/odeme/kart',
    lang: 'tr',
    body: `<p>500 TL ve üzeri kargo bedava</p><div><span>Ürün Toplamı</span><span>420,00 TL</span></div><div><span>Kargo</span><span>39,90 TL</span></div>
      <div><span>Toplam</span><span>459,90 TL</span></div><div><span>KDV Dahil</span><span>70,00 TL</span></div><p>Toplam Kazancınız 80,00 TL</p><p>3 Taksit: 153,30 TL x 3</p>
      <p>Kazanacağınız puan: 46</p><input autocomplete="cc-number"><button>Ödemeyi Tamamla</button>`,
    stage: 'checkout',
    total: '459.90 TRY',
    placeOrder: ['Ödemeyi Tamamla'],
    parts: ['items 420.00', 'shipping 39.90'],
  },
  {
    name: 'another make: the sign before, cents small, net and tax and gross, amounts before labels',
    url: 'https://kuzey.example/checkout/review',
    lang: 'tr',
    body: `<ul><li><b>₺500,00</b> <span>KDV Hariç Toplam</span></li><li><b>₺100,00</b> <span>KDV (%20)</span></li><li><b>₺600,00</b> <span>KDV Dahil Toplam</span></li></ul>
      <label><input type="radio" name="payment_method" checked> Kredi kartı</label><button>Onayla ve Öde</button>`,
    stage: 'checkout',
    total: '600.00 TRY',
    placeOrder: ['Onayla ve Öde'],
  },
  {
    name: 'cents in a node of their own, a gift card, a button that is an input',
    url: 'https://kuzey.example/checkout/payment',
    lang: 'tr',
    body: `<div><span>Ara Toplam</span><span>₺<span>349</span><sup>90</sup></span></div><div><span>Teslimat Ücreti</span><span>₺<span>29</span><sup>90</sup></span></div><div><span>Hediye Kartı</span><span>-₺50,00</span></div>
      <div><span>Toplam Ödenecek Tutar</span><span>₺<span>329</span><sup>80</sup></span></div><p>Kalan bakiye: ₺25,00</p><input type="submit" value="SATIN ALMAYI TAMAMLA">`,
    stage: 'checkout',
    total: '329.80 TRY',
    placeOrder: ['SATIN ALMAYI TAMAMLA'],
    parts: ['items 349.90', 'shipping 29.90', 'credit -50.00'],
  },
]

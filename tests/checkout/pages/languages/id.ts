import type { ShopPage } from '../page.ts'

// Invented shops: Kopi Rimba (Indonesia), Batik Senja (Indonesia), Kedai Pinang (Malaysia).
export const idPages: readonly ShopPage[] = [
  {
    name: 'items, delivery, a service fee, a discount, and the bill',
    url: 'https://kopirimba.example/checkout',
    lang: 'id',
    body: `<h1>Checkout</h1><div><span>Subtotal Produk</span><span>Rp185.000</span></div><div><span>Ongkos Kirim</span><span>Rp18.000</span></div>
      <div><span>Biaya Layanan</span><span>Rp2.000</span></div><div><span>Diskon Ongkir</span><span>-Rp10.000</span></div>
      <div><span>Total Tagihan</span><b>Rp195.000</b></div><label><input type="radio" name="payment" checked>Transfer bank</label><button>Buat Pesanan</button>`,
    stage: 'checkout',
    total: '195000 IDR',
    placeOrder: ['Buat Pesanan'],
    parts: ['items 185000', 'shipping 18000', 'fee 2000', 'discount -10000'],
  },
  {
    name: 'a cart whose delivery is worked out at the next step',
    url: 'https://kopirimba.example/cart',
    lang: 'id-ID',
    body: `<h1>Keranjang Belanja</h1><table><tr><th>Produk</th><th>Jumlah</th><th>Subtotal</th></tr><tr><td>Kopi Gayo 250 g</td><td>2</td><td>Rp 150.000</td></tr></table>
      <p>Belanja Rp 50.000 lagi untuk gratis ongkir</p><p>Subtotal: <b>Rp 150.000</b></p><p>Pengiriman: <i>dihitung di langkah berikutnya</i></p><a href="/checkout">Lanjut ke Checkout</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 Kopi Gayo 250 g 150000'],
  },
  {
    name: 'a confirmation with its number, amounts with decimals',
    url: 'https://batiksenja.example/checkout/success',
    lang: 'id',
    body: `<h1>Terima kasih atas pesanan Anda</h1><p>No. Pesanan: BS-260412</p><p>Kode pembayaran: 7002219933</p>
      <table><tr><td>Total Harga Barang</td><td>Rp 320.000,00</td></tr><tr><td>Biaya Pengiriman</td><td>Rp 25.000,00</td></tr><tr><td>Total Pembayaran</td><td>Rp 345.000,00</td></tr></table>`,
    stage: 'confirmation',
    total: '345000.00 IDR',
    orderNumber: 'BS-260412',
  },
  {
    name: 'instalments, points, savings and a threshold, the tax contained after the sum',
    url: 'https://batiksenja.example/checkout/payment',
    lang: 'id',
    body: `<h2>Metode Pembayaran</h2><input autocomplete="cc-number"><ul><li>Total Harga Barang <b>Rp600.000</b></li><li>Poin Digunakan <b>-Rp50.000</b></li>
      <li>Total Belanja <b>Rp550.000</b></li><li>Sudah termasuk PPN 11% <b>Rp54.505</b></li></ul>
      <p>Anda hemat Rp90.000</p><p>Cicilan mulai Rp91.667/bulan</p><p>Gratis ongkir min. belanja Rp100.000</p><p>Poin yang didapat: 55</p><p>Sisa saldo Rp12.000</p>
      <button>Bayar Sekarang</button><a href="/bantuan">Cara Pembayaran</a>`,
    stage: 'checkout',
    total: '550000 IDR',
    placeOrder: ['Bayar Sekarang'],
    parts: ['items 600000', 'credit -50000'],
  },
  {
    name: 'Malay: tax, rounding, and the whole sum in a list of terms',
    url: 'https://kedaipinang.example/checkout',
    lang: 'ms-MY',
    body: `<h1>Pembayaran</h1><dl><dt>Jumlah kecil</dt><dd>RM 89.90</dd><dt>Penghantaran</dt><dd>RM 8.00</dd><dt>Cukai perkhidmatan (8%)</dt><dd>RM 7.83</dd>
      <dt>Pelarasan pembundaran</dt><dd>RM 0.02</dd><dt>Jumlah Keseluruhan</dt><dd>RM 105.75</dd></dl><p>Anda jimat RM 10.00</p>
      <label><input type="checkbox"> Saya setuju dengan terma dan syarat</label><button>Buat Bayaran</button>`,
    stage: 'checkout',
    total: '105.75 MYR',
    placeOrder: ['Buat Bayaran'],
    parts: ['items 89.90', 'shipping 8.00', 'tax 7.83', 'other 0.02'],
  },
  {
    name: 'Malay: a confirmation',
    url: 'https://kedaipinang.example/order/complete',
    lang: 'ms',
    body: `<h1>Terima kasih kerana membeli-belah!</h1><p>Nombor pesanan: KP004512</p><div><b>RM 105.75</b> <span>Jumlah telah dibayar</span></div>`,
    stage: 'confirmation',
    total: '105.75 MYR',
    orderNumber: 'KP004512',
  },
]

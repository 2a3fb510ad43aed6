import type { ShopPage } from '../page.ts'

// Invented shops: Ελιά & Αλάτι (groceries), Χάρτινο Καράβι (books, Cyprus), Θυμαρένιο (honey).
export const elPages: readonly ShopPage[] = [
  {
    name: 'a checkout with the words of the law, labels in capitals without accents and one with',
    url: 'https://elia.example/tameio',
    lang: 'el-GR',
    title: 'Ταμείο',
    body: `<h1>Ολοκλήρωση παραγγελίας</h1><table><tr><th>ΥΠΟΣΥΝΟΛΟ</th><td>38,50 €</td></tr><tr><th>ΜΕΤΑΦΟΡΙΚΑ</th><td>3,50 €</td></tr>
      <tr><th>ΑΝΤΙΚΑΤΑΒΟΛΗ</th><td>2,00 €</td></tr><tr><th>Σύνολο</th><td><b>44,00 €</b></td></tr><tr><td>Συμπεριλαμβανομένου ΦΠΑ 24%</td><td>8,52 €</td></tr></table>
      <label><input type="checkbox"> Αποδέχομαι τους όρους χρήσης</label><button>Παραγγελία με υποχρέωση πληρωμής</button>`,
    stage: 'checkout',
    total: '44.00 EUR',
    placeOrder: ['Παραγγελία με υποχρέωση πληρωμής'],
    parts: ['items 38.50', 'shipping 3.50', 'fee 2.00'],
  },
  {
    name: 'a cart whose carriage is worked out at the till',
    url: 'https://elia.example/kalathi',
    lang: 'el',
    title: 'Καλάθι',
    body: `<h1>Το καλάθι σας</h1><table><tr><th>Προϊόν</th><th>Τιμή</th><th>Ποσότητα</th><th>Σύνολο</th></tr>
      <tr><td>Λάδι σε δοχείο</td><td>9,80€</td><td>2</td><td>19,60€</td></tr></table>
      <div><span>Υποσύνολο</span><b>19,60€</b></div><div><span>Μεταφορικά</span><i>Υπολογίζονται στο ταμείο</i></div>
      <a href="/tameio">Συνέχεια στο ταμείο</a><a href="/">Συνέχεια αγορών</a>`,
    stage: 'cart',
    total: null,
    items: ['2 Λάδι σε δοχείο 19.60'],
  },
  {
    name: 'a confirmation; the parcel has another number',
    url: 'https://elia.example/efcharistoume',
    lang: 'el',
    title: 'Ευχαριστούμε',
    body: `<h1>Ευχαριστούμε για την παραγγελία σας!</h1><p>Αριθμός παραγγελίας: <b>204817</b></p><p>Αριθμός αποστολής: 7719003</p>
      <dl><dt>Αξία προϊόντων</dt><dd>38,50 €</dd><dt>Έξοδα αποστολής</dt><dd>3,50 €</dd><dt>Γενικό σύνολο</dt><dd>42,00 €</dd></dl>`,
    stage: 'confirmation',
    total: '42.00 EUR',
    orderNumber: '204817',
  },
  {
    name: 'savings, instalments, a threshold and points',
    url: 'https://karavi.example/tameio/sinopsi',
    lang: 'el-CY',
    title: 'Σύνοψη παραγγελίας',
    body: `<p>Σας λείπουν 9,00 € για δωρεάν μεταφορικά</p>
      <div><span>Σύνολο προϊόντων</span><span>41,00 €</span></div><div><span>Έκπτωση κουπονιού</span><span>-4,10 €</span></div><div><span>Μεταφορικά</span><span>3,00 €</span></div>
      <div><span>Τελικό σύνολο</span><strong>39,90 €</strong></div><p>Κερδίζετε 4,10 €</p><p>ή 3 άτοκες δόσεις των 13,30 €</p><p>Θα κερδίσετε 39 πόντους (0,39 €)</p>
      <label><input type="radio" name="payment_method" checked> Κάρτα</label><button>Αποστολή παραγγελίας</button><button>Εφαρμογή κουπονιού</button>`,
    stage: 'checkout',
    total: '39.90 EUR',
    placeOrder: ['Αποστολή παραγγελίας'],
    parts: ['items 41.00', 'discount -4.10', 'shipping 3.00'],
  },
  {
    name: 'net value, tax, amount payable; grouping points',
    url: 'https://thymari.example/pliromi',
    lang: 'el',
    body: `<h1>Πληρωμή</h1><dl><dt>Καθαρή αξία</dt><dd>€1.000,00</dd><dt>Φ.Π.Α. 24%</dt><dd>€240,00</dd><dt>Πληρωτέο ποσό</dt><dd>€1.240,00</dd></dl>
      <input autocomplete="cc-number"><button>Πληρωμή €1.240,00</button><a href="/">Πίσω</a>`,
    stage: 'checkout',
    total: '1240.00 EUR',
    placeOrder: ['Πληρωμή €1.240,00'],
  },
  {
    name: 'split amounts, a gift card used up and what is left on it',
    url: 'https://karavi.example/checkout',
    lang: 'el',
    body: `<section><div class="r"><span>Προϊόντα</span><span>30<span>,</span><sup>00</sup> €</span></div><div class="r"><span>Δωροκάρτα</span><span>−12,00 €</span></div>
      <div class="r"><span>Σύνολο προς πληρωμή</span><span>18<span>,</span><sup>00</sup> €</span></div><p>Υπόλοιπο δωροκάρτας: 8,00 €</p></section>
      <iframe title="Card payment"></iframe><input type="submit" value="Υποβολή παραγγελίας">`,
    stage: 'checkout',
    total: '18.00 EUR',
    placeOrder: ['Υποβολή παραγγελίας'],
    parts: ['items 30.00', 'credit -12.00'],
  },
  {
    name: 'a confirmation whose number stands in a sentence',
    url: 'https://thymari.example/telos',
    lang: 'el',
    body: `<h1>Λάβαμε την παραγγελία σας</h1><p>Η παραγγελία σας με αριθμό #204818 καταχωρήθηκε επιτυχώς.</p><p>Σύνολο: 42,00 ευρώ</p>`,
    stage: 'confirmation',
    total: '42.00 EUR',
    orderNumber: '204818',
  },
]

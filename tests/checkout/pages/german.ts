import type { ShopPage } from './page.ts'

// Invented shops: Töpferei Lindgrün (Germany), Bergladen (Switzerland), Teehaus Morgentau (Austria).
export const german: readonly ShopPage[] = [
  {
    name: 'the German button, the sum with its tax contained, the sign of a footnote',
    url: 'https://lindgruen.example/kasse/pruefen',
    lang: 'de-DE',
    body: `<h1>Bestellung prüfen</h1><table>
      <tr><td>Zwischensumme</td><td>49,90 €*</td></tr><tr><td>Versandkosten</td><td>4,90 €*</td></tr>
      <tr><td>Gesamtsumme</td><td><b>54,80 €*</b></td></tr><tr><td>inkl. 19 % MwSt.</td><td>8,75 €</td></tr></table>
      <label><input type="checkbox"> Ich habe die AGB gelesen</label><button>Zahlungspflichtig bestellen</button><p>* alle Preise inkl. MwSt.</p>`,
    stage: 'checkout',
    total: '54.80 EUR',
    placeOrder: ['Zahlungspflichtig bestellen'],
    parts: ['items 49.90', 'shipping 4.90'],
  },
  {
    name: 'net sum, tax, gross sum; grouping points',
    url: 'https://lindgruen.example/kasse',
    lang: 'de',
    body: `<dl><dt>Warenwert netto</dt><dd>1.000,00 EUR</dd><dt>zzgl. 19% MwSt.</dt><dd>190,00 EUR</dd><dt>Rechnungsbetrag</dt><dd>1.190,00 EUR</dd></dl>
      <label><input type="radio" name="zahlungsart" checked>Rechnung</label><button>Kostenpflichtig bestellen</button>`,
    stage: 'checkout',
    total: '1190.00 EUR',
    placeOrder: ['Kostenpflichtig bestellen'],
  },
  {
    name: 'Swiss amounts with an apostrophe and a dash for the cents',
    url: 'https://bergladen.example/kasse/zahlung',
    lang: 'de-CH',
    body: `<div><span>Summe Artikel</span><span>CHF 1'250.–</span></div><div><span>Versand</span><span>CHF 9.50</span></div>
      <div><span>Total</span><span>CHF 1'259.50</span></div><iframe title="Kartenzahlung"></iframe><button>Jetzt kaufen</button>`,
    stage: 'checkout',
    total: '1259.50 CHF',
    placeOrder: ['Jetzt kaufen'],
    parts: ['items 1250', 'shipping 9.50'],
  },
  {
    name: 'a cart with what is missing for free shipping, and instalments',
    url: 'https://lindgruen.example/warenkorb',
    lang: 'de',
    body: `<h1>Warenkorb</h1><table><tr><th>Artikel</th><th>Menge</th><th>Preis</th><th>Summe</th></tr>
      <tr><td>Krug</td><td>2</td><td>12,00 €</td><td>24,00 €</td></tr></table>
      <p>Noch 16,00 € bis zum kostenlosen Versand</p><p>Gesamt: <b>24,00 €</b></p><p>oder 4,15 € / Monat</p><a href="/kasse">Zur Kasse</a>`,
    stage: 'cart',
    total: '24.00 EUR',
    placeOrder: [],
    items: ['2 Krug 24.00'],
  },
  {
    name: 'an overview step that only goes on',
    url: 'https://lindgruen.example/kasse/adresse',
    lang: 'de',
    body: `<h1>Lieferadresse</h1><input autocomplete="street-address"><div>Zwischensumme <b>24,00 €</b></div><div>Versand <i>wird im nächsten Schritt berechnet</i></div>
      <button>Weiter zur Zahlung</button>`,
    stage: 'checkout',
    total: null,
    placeOrder: [],
  },
  {
    name: 'words that are not enough by themselves, at the right place',
    url: 'https://morgentau.example/kasse/uebersicht',
    lang: 'de-AT',
    body: `<h2>Bestellübersicht</h2><p>Zwischensumme: € 18,00</p><p>Versand: € 3,00</p><p>Gesamtbetrag: € 21,00</p>
      <label><input type="checkbox"> AGB akzeptieren</label><button>Bestellung abschließen</button>`,
    stage: 'checkout',
    total: '21.00 EUR',
    placeOrder: ['Bestellung abschließen'],
  },
  {
    name: 'a confirmation',
    url: 'https://lindgruen.example/kasse/danke',
    lang: 'de',
    body: `<h1>Vielen Dank für Ihre Bestellung!</h1><p>Ihre Bestellnummer lautet <b>LG-2026-0042</b>.</p><p>Kundennummer: 55120</p>
      <table><tr><td>Zwischensumme</td><td>49,90 €</td></tr><tr><td>Versand</td><td>4,90 €</td></tr><tr><td>Gesamtsumme</td><td>54,80 €</td></tr></table>`,
    stage: 'confirmation',
    total: '54.80 EUR',
    orderNumber: 'LG-2026-0042',
  },
  {
    name: 'credit used up; what is left on it is no part',
    url: 'https://lindgruen.example/kasse/zahlung',
    lang: 'de',
    body: `<div><span>Zwischensumme</span><span>49,90 €</span></div><div><span>Versand</span><span>4,90 €</span></div><div><span>Geschenkgutschein</span><span>−20,00 €</span></div>
      <div><span>Zu zahlen</span><span>34,80 €</span></div><p>Restguthaben: 5,00 €</p><input autocomplete="cc-number"><button>Jetzt bezahlen</button>`,
    stage: 'checkout',
    total: '34.80 EUR',
    placeOrder: ['Jetzt bezahlen'],
    parts: ['items 49.90', 'shipping 4.90', 'credit -20.00'],
  },
]

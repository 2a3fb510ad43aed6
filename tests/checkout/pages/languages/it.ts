import type { ShopPage } from '../page.ts'

// Invented shops: Bottega Ginepro (Italy), Casa del Lume (Italy), Grotto Verde (Ticino).
export const itPages: readonly ShopPage[] = [
  {
    name: "items, shipping and a discount add up; the directive's words on the button",
    url: 'https://ginepro.example/cassa',
    lang: 'it-IT',
    body: `<h1>Riepilogo dell'ordine</h1><table>
      <tr><th>Subtotale</th><td>1.248,00 €</td></tr><tr><th>Spese di spedizione</th><td>9,90 €</td></tr>
      <tr><th>Buono sconto PRIMAVERA</th><td>- 24,00 €</td></tr>
      <tr><th>Totale ordine</th><td><strong>1.233,90 €</strong></td></tr></table>
      <label><input type="checkbox"> Ho letto e accetto le condizioni di vendita</label>
      <button>Ordine con obbligo di pagare</button>`,
    stage: 'checkout',
    total: '1233.90 EUR',
    placeOrder: ['Ordine con obbligo di pagare'],
    parts: ['items 1248.00', 'shipping 9.90', 'discount -24.00'],
  },
  {
    name: 'a cart whose shipping is calculated later',
    url: 'https://ginepro.example/carrello',
    lang: 'it',
    body: `<h1>Il tuo carrello</h1><table><tr><th>Prodotto</th><th>Quantità</th><th>Prezzo</th></tr>
      <tr><td>Lampada in vetro</td><td>2</td><td>38,00 €</td></tr></table>
      <div><span>Subtotale</span><span>38,00 €</span></div><div><span>Spedizione</span><span>calcolata al passaggio successivo</span></div>
      <div><span>Totale</span><span>38,00 €</span></div><a href="/cassa">Procedi all'acquisto</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['2 Lampada in vetro 38.00'],
  },
  {
    name: 'a confirmation with other numbers near by',
    url: 'https://lume.example/checkout/grazie',
    lang: 'it',
    body: `<h1>Grazie per il tuo ordine!</h1><p>Il numero del tuo ordine è <b>CL-004417</b></p><p>Codice cliente: 88123</p>
      <dl><dt>Totale articoli</dt><dd>€ 52,00</dd><dt>Consegna</dt><dd>€ 5,50</dd><dt>Totale pagato</dt><dd>€ 57,50</dd></dl>`,
    stage: 'confirmation',
    total: '57.50 EUR',
    orderNumber: 'CL-004417',
  },
  {
    name: 'decoys: saving, instalments, threshold, points, tax contained behind the total',
    url: 'https://lume.example/checkout/pagamento',
    lang: 'it',
    body: `<p>Ti mancano 12,40 € per la spedizione gratuita</p>
      <ul><li><span>Totale prodotti</span> <span>46,60 €</span></li><li><span>Spedizione</span> <span>6,90 €</span></li>
      <li><span>Totale (IVA inclusa)</span> <b>53,50 €</b></li><li><span>di cui IVA 22%</span> <span>9,65 €</span></li></ul>
      <p>Hai risparmiato 8,00 €</p><p>oppure 3 rate da 17,83 € senza interessi</p><p>Con questo ordine guadagni 53 punti</p>
      <input autocomplete="cc-number"><button>Acquista e paga</button>`,
    stage: 'checkout',
    total: '53.50 EUR',
    placeOrder: ['Acquista e paga'],
    parts: ['items 46.60', 'shipping 6.90'],
  },
  {
    name: 'Ticino: francs with an apostrophe, amount before its label, price over several nodes',
    url: 'https://grottoverde.example/checkout/riepilogo',
    lang: 'it-CH',
    body: `<section><p><b>CHF 1'180.00</b> <span>Merce</span></p><p><b>CHF 12.00</b> <span>Spese di trasporto</span></p>
      <p><b><i>CHF</i> <i>1'192</i><i>.</i><i>00</i></b> <span>Importo da pagare</span></p></section>
      <label><input type="radio" name="payment" checked>Fattura</label><a class="big" href="#" role="button">Conferma l'ordine</a>`,
    stage: 'checkout',
    total: '1192.00 CHF',
    placeOrder: ["Conferma l'ordine"],
  },
  {
    name: 'cards; cash on delivery is a fee; a gift card is used up and something is left on it',
    url: 'https://ginepro.example/checkout',
    lang: 'it',
    body: `<div class="card"><div>Articoli</div><div>60,00 €</div></div><div class="card"><div>Corriere espresso</div><div>7,00 €</div></div>
      <div class="card"><div>Contrassegno</div><div>3,00 €</div></div><div class="card"><div>Carta regalo</div><div>-20,00 €</div></div>
      <div class="card"><div>Totale da pagare</div><div>50,00 €</div></div><p>Saldo residuo carta regalo: 5,00 €</p>
      <label><input type="checkbox"> Accetto termini e condizioni</label><input type="submit" value="Invia l'ordine">`,
    stage: 'checkout',
    total: '50.00 EUR',
    placeOrder: ["Invia l'ordine"],
    parts: ['items 60.00', 'shipping 7.00', 'fee 3.00', 'credit -20.00'],
  },
]

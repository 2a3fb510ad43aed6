// Compact on purpose: this file goes into every page of a watched shop, the reader only into those it lets through.
const PATH =
  /cart|basket|\bbag\b|checkout|check-out|payment|\bpay\b|order|kasse|kassa|cassa|zahlung|bestell|bestaet|warenkorb|panier|paiement|commande|merci|danke|gracias|carrito|cesta|carrello|winkel|afreken|bedankt|pago|thank|confirm|receipt|success|koszyk|kosik|zamow|objedn|pokladna|platb|carrinho|sacola|encomenda|pagamento|comanda|finaliz|kosar|penztar|rendel|korpa|narudz|blagajn|kurv|varukorg|kundvagn|ostoskori|ostukorv|karfa|tilaus|tellimus|pontun|takk?\b|tack|kiitos|sepet|odeme|siparis|korzin|koshyk|zakaz|oform|pedido|encargo|keranjang|pesanan/i
// Fields of a card, an amount or an address (the HTML standard's autofill tokens).
const FIELDS = '[autocomplete*=cc-],[autocomplete*=transaction],[autocomplete*=postal],[autocomplete*=address]'
// Words for a sum to be paid, for ordering, or for thanks, in about thirty languages; a figure must be near the first.
const TOTAL =
  /(?:total|summe|gesamt|betrag|zahlen|amount|montant|payer|régler|importe|pagar|totaal|betalen|suma|razem|kwota|celkem|spolu|összesen|ukupno|skupaj|общо|сума|итого|всего|σύνολο|sum\b|sumkr|summa|att betala|i alt|yhteensä|maksettava|kokku|kopā|toplam|tutar|tổng|jumlah|รวม|合計|合计|小計|總計|总计|应付|支払|합계|총|결제|إجمالي|مجموع|اجمال|المستحق|مبلغ|סך|סה[״"]כ|לתשלום|סכום|جمع|قابل پرداخت|कुल|राशि|योग|देय|συνολο|πληρωτεο|végösszeg|fizetend|iznos|za platiti|plačil|за плащане|оплат|сплат|разом|усього|viso|apmaksai|mokėti|samtals|til greiðslu|heildar|å betale|at betale|tasuda|celkom|łącznie|do zapłaty|k úhrad|na úhradu|de plată|iomlán)[^\d٠-٩۰-۹०-९]{0,120}[\d٠-٩۰-۹०-९]|[\d٠-٩۰-۹०-९][^\p{L}]{0,12}(?:total|gesamt|totaal|à payer)/iu
const ORDER =
  /place (?:your )?order|pay now|order number|thank you for your (?:order|purchase)|bestellen|bestellnummer|jetzt (?:kaufen|bezahlen)|commande(?:r|z)?\b|numéro de commande|valider et payer|pedido|bestelling|ordine|zamówien|objedn|beställ|bestilling|encomenda|comand[aă]|zapłać|zaplatit|rendelés|narudžb|porudžb|naročil|поръчк|παραγγελι|pasūtījum|užsakym|оформ|заказ|замовлен|sipariş|الطلب|הזמנ|سفارش|ऑर्डर|tilaa|tilaus|tellimus|pöntun|takk fyrir|tak for|tack för|kiitos|aitäh|注文|订单|訂單|주문|สั่งซื้อ|đặt hàng|pesanan|ordni|ordú/i

/**
 * A very cheap first look: may this page be a cart, a checkout or a confirmation? Says yes too often rather than too
 * seldom; `readCheckout` gives the answer.
 *
 * @example mayBeCheckout(document, 'https://shop.example/kasse') // true
 */
export function mayBeCheckout(document: Document, url: string): boolean {
  if (PATH.test(url.replace(/^[a-z]+:\/\/[^/]*/i, ''))) return true
  try {
    if (document.querySelector(FIELDS)) return true
    const text = pageText(document)
    return TOTAL.test(text) || ORDER.test(text)
  } catch {
    // A form named like one of the document's own methods stands in the way: then the reader had better look.
    return true
  }
}

/** The page's text, open shadow roots and the texts of buttons that are inputs included; cut where it gets long. */
export function pageText(root: Document | ShadowRoot): string {
  let text = (root.nodeType === 9 ? root.querySelector('body') : root)?.textContent ?? ''
  for (const element of root.querySelectorAll('*')) {
    if (text.length > 400_000) break
    if (element.shadowRoot) text += ` ${pageText(element.shadowRoot)}`
    else if (element.localName === 'input') text += ` ${element.getAttribute('value') ?? ''}`
  }
  return text.slice(0, 400_000)
}

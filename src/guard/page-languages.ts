import { KEPT_WITH } from '../checkout/kept-with.ts'
import { pageText } from '../checkout/may-be-checkout.ts'

/*
 * Which languages a page speaks, told from a few words of shops, so that only their lexicons are brought in. A first look
 * like this may name one too many; the reader itself then goes by all labels of the page. Words from general knowledge.
 */

/** Scripts that one language, or a few, are written in. */
const SCRIPTS: readonly (readonly [string, RegExp])[] = [
  ['ja', /[\p{Script=Hiragana}\p{Script=Katakana}]/gu],
  ['ko', /\p{Script=Hangul}/gu],
  ['zh', /\p{Script=Han}/gu],
  ['th', /\p{Script=Thai}/gu],
  ['he', /\p{Script=Hebrew}/gu],
  ['el', /\p{Script=Greek}/gu],
  ['hi', /\p{Script=Devanagari}/gu],
  ['fa', /[پچژگ]/gu],
  ['ar', /\p{Script=Arabic}/gu],
  ['uk', /[іїєґ]/gu],
  ['bg', /ъ[а-я]|общо|поръчк|доставк/gu],
  ['ru', /[ыэ]|итого|заказ/gu],
]

const WORDS: Readonly<Record<string, string>> = {
  en: 'order|shipping|delivery|cart|basket|checkout|pay|subtotal|tax|your',
  fr: 'commande|livraison|panier|payer|paiement|tva|tps|sous-total|votre',
  de: 'bestell|versand|warenkorb|mwst|zahl|summe|gesamt|lieferung',
  es: 'pedido|envío|carrito|cesta|pagar|iva|compra|importe|gracias|tu pedido',
  nl: 'bestel|verzend|winkelwagen|winkelmand|btw|betalen|totaal|bezorg',
  it: 'ordine|spedizione|carrello|pagamento|paga|totale|iva|acquist',
  pt: 'pedido|encomenda|envio|frete|carrinho|pagamento|pagar|entrega|compra',
  pl: 'razem|zamówien|dostaw|koszyk|płatno|zapłat|kwota|suma',
  cs: 'celkem|objedn|doprav|košík|dph|platb|cena',
  sk: 'spolu|objedn|doprav|košík|dph|platb|celkom',
  ro: 'comand|livrare|coș|coşul|plat|transport|tva|produse',
  sv: 'beställ|frakt|kassan|varukorg|moms|betala|summa|leverans|totalt|rabatt|varor|delsumma|köp|tack',
  da: 'bestil|levering|fragt|kurv|moms|betal|i alt|kassen|køb|tak for|ordre|subtotal',
  nb: 'bestill|frakt|handlekurv|mva|betal|totalt|levering|kassen|kjøp|takk|ordre|varer|sum',
  fi: 'yhteensä|tilau|toimitus|ostoskori|alv|maksa',
  et: 'kokku|tellimu|tarne|ostukorv|käibemaks|maks',
  is: 'samtals|pöntun|karfa|greið|vsk|sending',
  hu: 'összesen|rendelés|szállítás|kosár|áfa|fizet',
  hr: 'ukupno|narudžb|dostav|košaric|pdv|plać',
  sl: 'skupaj|naročil|dostav|košaric|ddv|plač',
  lv: 'kopā|pasūtī|piegād|groz|pvn|apmaks',
  lt: 'iš viso|užsakym|pristatym|krepšel|pvm|mokė',
  tr: 'toplam|sipariş|kargo|sepet|kdv|öde',
  vi: 'tổng|đơn hàng|giỏ hàng|thanh toán|vận chuyển',
  id: 'pesanan|keranjang|pengiriman|bayar|ongkir|jumlah|penghantaran',
  mt: 'ordni|ħlas|ħallas|kunsinna|basket',
  ga: 'iomlán|ordú|seachadadh|íoc|cbl',
}

/** Every language that can be told. */
export const toldLanguages: readonly string[] = [...SCRIPTS.map(([language]) => language), ...Object.keys(WORDS)]

const MOST = 2
const CLOSE = 0.4

/**
 * At most two languages (BCP 47 subtags) a page speaks, likeliest first. The page's own `lang` counts as a hint only:
 * themes often leave it wrong.
 */
export function pageLanguages(document: Document): string[] {
  // Made lower case once: patterns that ignore case are slow to be made ready, and a page waits for that.
  const text = pageText(document).slice(0, 100_000).toLowerCase()
  const scores = new Map<string, number>()
  const score = (language: string, points: number): void => {
    scores.set(language, (scores.get(language) ?? 0) + points)
  }
  for (const [language, script] of SCRIPTS) score(language, Math.min(40, text.match(script)?.length ?? 0))
  // Kana decides against Chinese, and the letters of Persian against Arabic.
  if ((scores.get('ja') ?? 0) > 0) score('ja', scores.get('zh') ?? 0)
  if ((scores.get('fa') ?? 0) > 0) score('fa', scores.get('ar') ?? 0)
  for (const [language, words] of Object.entries(WORDS)) {
    const found = text.match(new RegExp(`(?<!\\p{L})(?:${words})`, 'gu')) ?? []
    const distinct = new Set(found).size
    score(language, Math.min(40, found.length + 3 * distinct))
  }
  const declared = document.documentElement.lang.toLowerCase().split(/[-_]/)[0] ?? ''
  const own = KEPT_WITH[declared] ?? declared
  if (scores.has(own)) score(own, 6)
  const ranked = [...scores].filter(([, points]) => points > 0).sort((a, b) => b[1] - a[1])
  const best = ranked[0]?.[1] ?? 0
  const kept = ranked.filter(([, points]) => points >= CLOSE * best).slice(0, MOST)
  return kept.length > 0 ? kept.map(([language]) => language) : ['en']
}

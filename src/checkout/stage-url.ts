import type { Stage } from './reading.ts'

// Words of addresses, in the languages whose shops translate them. The last one in the path counts: `/checkout/cart`.
const PATHS: readonly (readonly [Stage | 'history', RegExp])[] = [
  [
    'confirmation',
    /thank[-_]?you|thanks|order[-_]?(?:received|confirm(?:ed|ation)|complete|success|placed)|confirmation|receipt|(?:checkout|order|payment)\/(?:success|complete|done|finish)|merci|danke|bestaetigung|bestellbestaetigung|bestaetigt|gracias|bedankt|remerciement|dziekujemy|potwierdzenie|dekujeme|dakujeme|potvrzeni|potvrdenie|multumim|confirmare|obrigad[oa]|concluid[oa]|sucesso|grazie|conferma\b|koszonjuk|hvala|paldies|aciu|\btack\b|\btakk?\b|kiitos|aitah|spasibo|tesekkur|koszonj|chumon[-_]?kanryou?|kanryou?\b|wancheng|chenggong|jumun[-_]?wanryo|terima[-_]?kasih|cam[-_]?on\b|toda[-_]raba|shukran/,
  ],
  [
    'history',
    /order[-_]?history|\/orders\b|my[-_]?orders|mes[-_]commandes|historique|meine[-_]bestellungen|mis[-_]pedidos|moje[-_](?:zamowienia|objednavky)|historia[-_]zamowien|historie[-_]objednavek|meus[-_]pedidos|minhas[-_]encomendas|i[-_]miei[-_]ordini|comenzile[-_]mele|siparislerim/,
  ],
  [
    'cart',
    /(?:shopping[-_]?)?(?:cart|basket|bag)\b|panier|warenkorb|einkaufswagen|winkelwagen|winkelmand|carrito|cesta|carrello|koszyk|kosik|carrinho|sacola|\bcos\b|kosar|korpa|kolichka|kalathi|grozs|krepselis|\bkurv\b|handlekurv|varukorg|kundvagn|ostoskori|ostukorv|karfa|korzina|koshyk|sepet|keranjang|gio-hang|\bkago\b|gouwuche|jangbaguni|takra\b|troli\b|sabad|sal[-_]kniy?ot|salla[th]?\b/,
  ],
  [
    'checkout',
    /check[-_]?out|payment|\bpay\b|paiement|commande\b|kasse|zahlung|bezahlen|afrekenen|caisse|bestellen|bestellung|order[-_]?review|pago|finalizar|cassa|kassa|onepage|billing|zamowienie|\bkasa\b|platnosc|objednavka|pokladna|platba|pagamento|encomenda|finalizacao|\bcomanda\b|finalizare|penztar|blagajna|poruchka|tameio|apmokejimas|kassan|tilaus|tellimus|pontun|greidsl|oformlenie|odeme|siparis|pembayaran|thanh-toan|chuu?mon\b|kakunin|kessai|shiharai|gouny[uū]u?\b|jiesuan|zhifu|fukuan|dingdan[-_]?queren|gyeolje|jumunseo|chamra[-_]?ngoen|pardakht|bhugtan|tashlum|addaf|apmoke/,
  ],
  ['product', /\/(?:products?|produits?|produkte?|item|articles?|artikel|producto|dp|p)\//],
]

/** The stage that the words of an address speak for; of several the last in the path. */
export function stageOfUrl(url: string): Stage | 'history' | null {
  let path = ''
  try {
    const parsed = new URL(url)
    path = decodeURIComponent(`${parsed.pathname}${parsed.hash}`).toLowerCase()
  } catch {
    path = url.toLowerCase().replace(/^[a-z]+:\/\/[^/]*/, '')
  }
  let best: { stage: Stage | 'history'; at: number } | null = null
  for (const [stage, pattern] of PATHS) {
    for (const match of path.matchAll(new RegExp(pattern, 'g'))) {
      if (!best || match.index > best.at) best = { stage, at: match.index }
    }
  }
  return best?.stage ?? null
}

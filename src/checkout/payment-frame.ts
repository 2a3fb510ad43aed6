/**
 * Names of payment in many languages, for the titles of frames that cannot be looked into. Stems, so that they fit the
 * cases of inflected languages; general knowledge, no source.
 */
const PAYMENT =
  /\bcards?\b|\bpay(?:ment|s|ing)?\b|wallet|checkout|karte|zahl(?:ung|en)|kaart|betaal|betaling|betalning|\bkort|paiement|\bcarte\b|tarjeta|\bpago|pagament|\bcarta\b|cart[aã]o|platn|płatn|\bkart|platb|plat[aăě]|plaćanj|plačil|fizet|kártya|maksu|makse|maksāj|mokėj|apmok|оплат|плат[еіи]ж|плащан|карт|πληρωμ|κάρτα|ödeme|الدفع|بطاقة|תשלום|כרטיס|پرداخت|कार्ड|भुगतान|決済|支払|カード|支付|付款|信用卡|결제|카드|ชำระ|บัตร|thanh toán|\bthẻ\b|bayar|greiðsl/iu

/** Whether a frame's title or name says that one pays in it. */
export function saysPayment(name: string): boolean {
  return PAYMENT.test(name.normalize('NFC'))
}

// Direction marks, zero-width characters, soft hyphens and variation selectors carry no meaning in a price.
const INVISIBLE = /[\p{Cf}\p{DI}]/gu
// Full-width and small forms: `＄`, `，`, `￥`, `（`. Only these blocks: NFKC would turn superscripts into plain digits.
const WIDE_FORMS = /[\ufe50-\ufe6b\uff01-\uffee]/gu
const NATIVE_DIGITS = /[^\P{Nd}0-9]/gu
const DECIMAL_DIGIT = /^\p{Nd}$/u

const SAME_AS: ReadonlyMap<string, string> = new Map([
  ...[...'\u2010\u2011\u207b\u208b\u2212\u2796'].map((minus) => [minus, '-'] as const),
  ...[...'\u2012\u2015'].map((dash) => [dash, '–'] as const),
  // Every apostrophe that has been seen as a Swiss thousands mark or inside a currency's name.
  ...[...'`´\u2018\u2019\u02b9\u02bb\u02bc\u2032\u05f3'].map((mark) => [mark, "'"] as const),
  ...[...'\u201c\u201d\u05f4\u2033'].map((mark) => [mark, '"'] as const),
  ['\u060c', ','], // Arabic comma
  ['\u2e41', '٬'], // reversed comma, groups thousands in Adlam
  ['\u066a', '%'],
])

/** Digits that stand before this one in an unbroken run of decimal digits; their number modulo ten is its value. */
function digitValue(digit: string): string {
  const point = digit.codePointAt(0) ?? 0
  let before = 0
  while (DECIMAL_DIGIT.test(String.fromCodePoint(point - before - 1))) before += 1
  return String(before % 10)
}

/**
 * Brings a price text to one alphabet: Latin digits for every decimal digit of Unicode (blocks of ten, `\p{Nd}`), plain
 * `-`, `'` and `"`, no invisible characters, one space for each gap. A gap that held a line break, or more than one
 * space, becomes `\n`: it parts things but never groups thousands. Superscript digits and `–`, `—`, `٫`, `٬` stay as they are.
 *
 * @example normalisePrice('\u200F١٬٢٣٤٫٥٠\u00A0ج.م.\u200F') // '1٬234٫50 ج.م.'
 */
export function normalisePrice(text: string): string {
  return text
    .replace(INVISIBLE, '')
    .replace(/&nbsp;|&#160;|&#xa0;/giu, ' ')
    .replace(WIDE_FORMS, (form) => form.normalize('NFKC'))
    .replace(NATIVE_DIGITS, digitValue)
    .replace(/[^\p{L}\p{N}\s]/gu, (mark) => SAME_AS.get(mark) ?? mark)
    .replace(/[\u02b9\u02bb\u02bc]/gu, "'")
    .trim()
    .replace(/\s+/gu, (gap) => (gap.length === 1 && !/[\n\r\v\f\u2028\u2029]/u.test(gap) ? ' ' : '\n'))
}

import type { Token } from './price-tokens.ts'

// Words that make an amount an end of something ("from", "up to", "about"), or turn its sign, wherever they stand. Written from general
// knowledge of the languages; no single source.
const BOUND_ANYWHERE = new Set(
  (
    'from starting starts upwards more mehr vanaf från frå desde partir alkaen lähtien alates başlayan itibaren từ mulai ' +
    "bermula від від от около начиная începând pornind počevši počínaje počnúc kezdve από من ابتداء از jusqu'à jusqu hasta " +
    'jusque upto approximately approx circa ungefähr etwa aproximadamente environ minus moins meno menos miinus eksi минус mínus'
  ).split(' '),
)

// The same in scripts without spaces, looked for in the text itself.
const BOUND_SPACELESS = /から|より|起|以上|以下|以内|约|約|부터|이상|이하|เริ่มต้น/u

// The same, but everyday words: they count only directly before the price (`ab 2,99 €`, not `Total da compra 2,99 €`).
const BOUND_BEFORE = new Set(
  (
    'ab da dal dai od do bis fra till til to max min maximum minimum under over above below between up than ca cca about ' +
    'around least most až už nuo iki līdz до од oder or ou'
  ).split(' '),
)

// Words that multiply what stands before them. A figure so written is rounded, and never what is paid.
const MULTIPLIERS = new Set(
  (
    'k m b t bn mn tsd tys mil mille million millions millionen millones milhões mio mia mrd mln mld млн млрд тыс тис хил ' +
    'lakh lakhs lac lacs crore crores cr rb ribu jt juta tr triệu nghìn bin milyon thousand hundred billion billions'
  ).split(' '),
)
const MULTIPLYING_SIGNS = new Set([...'十百千万萬億亿兆십백천만억조'])

/** Whether the text says "from" or "up to" in a script without spaces. */
export const saysBoundSpaceless = (text: string): boolean => BOUND_SPACELESS.test(text)

/** Whether the words say that the price starting at `first` is the end of a range: "from", "up to", "about". */
export function saysBound(tokens: readonly Token[], first: number): boolean {
  if (tokens.some((token) => token.kind === 'word' && BOUND_ANYWHERE.has(plain(token.text)))) return true
  let at = first - 1
  for (let token = tokens[at]; token?.kind === 'sign' && '.:,'.includes(token.text); token = tokens[at]) at -= 1
  const word = tokens[at]
  return word?.kind === 'word' && BOUND_BEFORE.has(plain(word.text))
}

/** Whether a token multiplies the number before it: `K`, `million`, `万`. */
export function multiplies(token: Token | undefined): boolean {
  return token?.kind === 'word' && (MULTIPLIERS.has(plain(token.text)) || MULTIPLYING_SIGNS.has(token.text))
}

const plain = (word: string): string => word.toLowerCase()

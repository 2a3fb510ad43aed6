import { type CurrencyMark, currencyMark } from '../money/currency-names.ts'
import { normalisePrice } from '../money/price-normalise.ts'

/** One thing in a piece of text that may hold money. */
export interface Token {
  readonly kind: 'number' | 'symbol' | 'word' | 'sign' | 'open' | 'close' | 'percent' | 'point' | 'other'
  readonly text: string
  /** White space stands before it, inside the same text. */
  readonly gap: boolean
  /** What the token can mean as money; symbols always have it, words only if they are a code or a name. */
  readonly money: CurrencyMark | null
}

// Groups of three may be parted by a space; any mark may be followed by digits; a dash may stand for the cents.
// Swedish shops part kronor and öre by a colon; elsewhere a colon parts hours and minutes.
const NUMBER = String.raw`\d+(?:[ .]\d{3})*:(?:\d\d(?= ?(?:[Kk][Rr]|SEK)(?![\p{L}\d]))|-)|\d+(?:[.,'٫٬·]\d+| \d{3}(?!\d))*(?:[.,] ?(?:--?|[–—])(?!\d))?[⁰¹²³⁴⁵⁶⁷⁸⁹]*`
// `US$`, `$CA`, `C$`, `$ US`, `R$`: letters glued to a symbol on either side, and a space at most after a dollar sign.
const SYMBOL = String.raw`(?:\p{L}{1,4}[.\-]?)?\p{Sc}(?: ?[A-Z]{2,3}(?![\p{L}\d]))?`
// A Hebrew abbreviation has its quotation mark inside: ש"ח.
const WORD = String.raw`[\p{L}\p{M}](?:[\p{L}\p{M}'’./\-]|["״](?=[א-ת]))*`
const NUMBER_HERE = new RegExp(NUMBER, 'yu')
const SYMBOL_HERE = new RegExp(SYMBOL, 'yu')
const WORD_HERE = new RegExp(WORD, 'yu')
const SIGN_HERE = /\S/uy
const SPACELESS_MONEY = /^[円元圆圓원]/u

/** Whether a text needs to be cut up at all: it has a digit, a currency sign or a bracket, or is as short as a code. */
export function mayHoldMoney(text: string): boolean {
  if (text.length <= 6) return true
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at)
    if (code >= 0x80) return /[\p{Nd}\p{Sc}([（]/u.test(text)
    if ((code >= 0x30 && code <= 0x39) || code === 0x24 || code === 0x28 || code === 0x5b) return true
  }
  return false
}

/** Cuts a text into tokens, left to right. Linear: every character is looked at by one pattern without nested repeats. */
export function lex(text: string): Token[] {
  const clean = /^[\x20-\x7e]*$/.test(text) ? text : normalisePrice(text).replace(/\n/gu, ' ')
  const tokens: Token[] = []
  let gap = false
  for (let at = 0; at < clean.length; ) {
    const start = clean.charCodeAt(at)
    if (start === 0x20) {
      gap = true
      at += 1
      continue
    }
    const kind = ASCII_KINDS.get(start)
    const found: string = kind ? clean.charAt(at) : longest(clean, at, tokens, gap)
    if (kind) tokens.push({ kind, text: found, gap, money: null })
    // White space of other kinds is no token.
    gap = found === ''
    at += Math.max(1, found.length)
  }
  return joinNames(tokens)
}

// Signs that are tokens by themselves wherever they stand: most texts are told apart without a pattern.
const ASCII_KINDS: ReadonlyMap<number, Token['kind']> = new Map(
  (
    [
      ['sign', '-+'],
      ['open', '(['],
      ['close', ')]'],
      ['percent', '%'],
      ['point', '.,'],
      ['other', '!"#&\'*/:;<=>?@\\^_`{|}~'],
    ] as const
  ).flatMap(([kind, signs]) => Array.from(signs, (sign) => [sign.charCodeAt(0), kind] as const)),
)

/** Adds the tokens of the longest number, symbol, word or sign that begins at `at`; says the text they were made of. */
function longest(clean: string, at: number, tokens: Token[], gap: boolean): string {
  const start = clean.charCodeAt(at)
  const number = start < 0x30 || (start > 0x39 && start < 0x80) ? null : matchAt(NUMBER_HERE, clean, at)
  if (number !== null) {
    tokens.push({ kind: 'number', text: number, gap, money: null })
    return number
  }
  const symbol = matchAt(SYMBOL_HERE, clean, at)
  const word = symbol === null ? matchAt(WORD_HERE, clean, at) : null
  if (symbol !== null) tokens.push(...symbolTokens(symbol, gap))
  else if (word !== null) tokens.push(...wordTokens(word, gap))
  const found = symbol ?? word
  if (found !== null) return found
  const sign = matchAt(SIGN_HERE, clean, at) ?? ''
  if (sign !== '') tokens.push({ kind: kindOf(sign), text: sign, gap, money: null })
  return sign
}

function matchAt(pattern: RegExp, text: string, at: number): string | null {
  pattern.lastIndex = at
  return pattern.exec(text)?.[0] ?? null
}

/** `Canadian dollars`, `US $`: names for money that have a space in them. */
function joinNames(tokens: readonly Token[]): Token[] {
  const joined: Token[] = []
  for (const token of tokens) {
    const before = joined.at(-1)
    // The adjective may stand before (`Canadian dollars`) or behind (`ريال سعودي`).
    const isName = before?.kind === 'word' && token.gap && (token.money || (before.money && token.kind === 'word'))
    const name = isName ? `${before.text} ${token.text}` : ''
    const money = name === '' ? null : currencyMark(name)
    if (before && money) joined.splice(-1, 1, { ...token, text: name, gap: before.gap, money })
    else joined.push(token)
  }
  return joined
}

function kindOf(sign: string): Token['kind'] {
  if (/[–—]/.test(sign)) return 'sign'
  if (sign === '（') return 'open'
  if (sign === '）') return 'close'
  return sign === '٫' ? 'point' : 'other'
}

/** The longest known name in `US$ CAD`-like text is the mark; letters left before or after it are words. */
function symbolTokens(text: string, gap: boolean): Token[] {
  const sign = /\p{Sc}/u.exec(text)
  if (!sign) return []
  const before = text.slice(0, sign.index)
  const after = text.slice(sign.index + sign[0].length)
  for (const [head, tail] of [
    [before, after],
    [before, ''],
    ['', after],
    ['', ''],
  ] as const) {
    const name = head + sign[0] + tail
    const money = currencyMark(name) ?? currencyMark(name.replace(' ', ''))
    if (!money) continue
    const mark: Token = { kind: 'symbol', text: name, gap: head === before && gap, money }
    const left = head === before ? [] : wordTokens(before, gap)
    const right = tail === after ? [] : wordTokens(after.trim(), after.startsWith(' '))
    return [...left, mark, ...right]
  }
  return [{ kind: 'other', text, gap, money: null }]
}

function wordTokens(text: string, gap: boolean): Token[] {
  if (text === '') return []
  const spaceless = SPACELESS_MONEY.exec(text)
  if (spaceless && text.length > 1) {
    const sign = spaceless[0]
    return [
      { kind: 'word', text: sign, gap, money: currencyMark(sign) },
      { kind: 'word', text: text.slice(sign.length), gap: false, money: null },
    ]
  }
  return [
    {
      kind: 'word',
      text,
      gap,
      money: currencyMark(text) ?? (text.endsWith('.') ? currencyMark(text.slice(0, -1)) : null),
    },
  ]
}

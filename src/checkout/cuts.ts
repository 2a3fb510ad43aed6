import { lex, mayHoldMoney, type Token } from './lexer.ts'
import type { Item } from './stream.ts'

/** What one piece of text holds, whatever stands around it. */
export interface Cut {
  /** Null for a text that cannot hold money: it stays in one piece. */
  readonly tokens: readonly Token[] | null
  /** Nothing but pieces of an amount. */
  readonly fragment: boolean
  /** What it reads as where it stands alone; filled in when first asked. */
  alone: readonly Item[] | null
  /** For the commonest of all texts, a sign and a plain number: one that reads alike, and the number. */
  readonly like: { readonly text: string; readonly cut: Cut; readonly number: string } | null
}

const LONGEST_FRAGMENT = 40
const MOST_PIECES = 8

const PLAIN: Cut = { tokens: null, fragment: false, alone: null, like: null }

/** Cuts texts into tokens, each distinct text once: pages repeat themselves, and are read again and again. */
export interface Cuts {
  of(text: string): Cut
}

/** So many are kept, and as many from before: what a page shows no more is forgotten soon. */
const MOST_KEPT = 5_000

const PLAIN_PRICE = /^[$€£]\d{1,5}\.\d\d$/

export function createCuts(): Cuts {
  const patterns = new Map<string, { text: string; cut: Cut }>()
  let known = new Map<string, Cut>()
  let older = new Map<string, Cut>()
  return {
    of(text) {
      if (!mayHoldMoney(text)) return PLAIN
      if (PLAIN_PRICE.test(text)) return plainPrice(text)
      const before = known.get(text)
      if (before) return before
      if (known.size >= MOST_KEPT) {
        older = known
        known = new Map()
      }
      const cut = older.get(text) ?? cutOf(text)
      known.set(text, cut)
      return cut
    },
  }

  function plainPrice(text: string): Cut {
    const sign = text.charAt(0)
    const pattern = patterns.get(sign) ?? { text: `${sign}1.00`, cut: cutOf(`${sign}1.00`) }
    patterns.set(sign, pattern)
    let tokens: readonly Token[] | null = null
    return {
      // Seldom asked for: only where it stands beside other pieces of an amount.
      get tokens() {
        tokens ??= lex(text)
        return tokens
      },
      fragment: pattern.cut.fragment,
      alone: null,
      like: { ...pattern, number: text.slice(1) },
    }
  }
}

function cutOf(text: string): Cut {
  const tokens = lex(text)
  return { tokens, fragment: isFragment(tokens, text), alone: null, like: null }
}

function isFragment(tokens: readonly Token[], text: string): boolean {
  return (
    text.length <= LONGEST_FRAGMENT &&
    tokens.length <= MOST_PIECES &&
    tokens.every(({ kind, money }) => money !== null || (kind !== 'word' && kind !== 'percent'))
  )
}

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
}

const LONGEST_FRAGMENT = 40
const MOST_PIECES = 8

const PLAIN: Cut = { tokens: null, fragment: false, alone: null }

/** Cuts texts into tokens, each distinct text once: pages repeat themselves, and are read again and again. */
export interface Cuts {
  of(text: string): Cut
}

/** So many are kept, and as many from before: what a page shows no more is forgotten soon. */
const MOST_KEPT = 5_000

export function createCuts(): Cuts {
  let known = new Map<string, Cut>()
  let older = new Map<string, Cut>()
  return {
    of(text) {
      if (!mayHoldMoney(text)) return PLAIN
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
}

function cutOf(text: string): Cut {
  const tokens = lex(text)
  return { tokens, fragment: isFragment(tokens, text), alone: null }
}

function isFragment(tokens: readonly Token[], text: string): boolean {
  return (
    text.length <= LONGEST_FRAGMENT &&
    tokens.length <= MOST_PIECES &&
    tokens.every(({ kind, money }) => money !== null || (kind !== 'word' && kind !== 'percent'))
  )
}

import { ownNames } from './dom.ts'
import type { PlacedToken } from './figure.ts'
import { lex, mayHoldMoney, type Token } from './lexer.ts'
import type { Box, Leaf, PageText } from './page-text.ts'

/** All tokens of a page in drawn order, and which leaves hold nothing but pieces of an amount. */
export interface PageTokens {
  readonly tokens: readonly PlacedToken[]
  readonly fragments: readonly boolean[]
}

const LONGEST_FRAGMENT = 40
const MOST_PIECES = 8
const APART = 9

/** Cuts every leaf into tokens. A leaf that cannot hold money stays in one piece. */
export function placeTokens({ leaves }: PageText): PageTokens {
  // Pages repeat themselves: "Was", "save $0.50".
  const known = new Map<string, readonly Token[]>()
  const cuts = leaves.map(({ text }) => {
    if (!mayHoldMoney(text)) return null
    const cut = known.get(text) ?? lex(text)
    known.set(text, cut)
    return cut
  })
  const fragments = cuts.map((cut, index) => cut !== null && isFragment(cut, leaves[index]?.text ?? ''))
  const tokens: PlacedToken[] = []
  for (const [index, leaf] of leaves.entries()) {
    const before = leaves[index - 1]
    const reach = before ? reachBetween(before, leaf, index, fragments) : APART
    const cut = cuts[index]
    if (!cut) {
      tokens.push({
        kind: 'word',
        text: leaf.text,
        gap: false,
        money: null,
        leaf: index,
        first: true,
        last: true,
        fragment: false,
        cents: false,
        reach,
      })
      continue
    }
    const fragment = fragments[index] ?? false
    for (const [place, { kind, text, gap, money }] of cut.entries()) {
      const first = place === 0
      const cents = first && /^\d{2}$/.test(text) && looksLikeCents(leaf)
      const last = place === cut.length - 1
      tokens.push({
        kind,
        text,
        gap,
        money,
        leaf: index,
        first,
        last,
        fragment,
        cents,
        reach: first ? reach : gap ? 1 : 0,
      })
    }
  }
  return { tokens, fragments }
}

function isFragment(cut: readonly Token[], text: string): boolean {
  return (
    text.length <= LONGEST_FRAGMENT &&
    cut.length <= MOST_PIECES &&
    cut.every(({ kind, money }) => money !== null || (kind !== 'word' && kind !== 'percent'))
  )
}

/** How far apart two neighbouring leaves are: 0 touching, 1 a space, 2 parts of one small box, 9 apart. */
function reachBetween(a: Leaf, b: Leaf, index: number, fragments: readonly boolean[]): number {
  if (a.cell !== b.cell) return APART
  if (a.line === b.line) return b.spaced ? 1 : 0
  if (!fragments[index] || !fragments[index - 1]) return APART
  const box = commonBox(a.box, b.box)
  if (box.to - box.from > MOST_PIECES) return APART
  for (let leaf = box.from; leaf < box.to; leaf += 1) if (!fragments[leaf]) return APART
  return 2
}

function looksLikeCents({ spaced, box }: Leaf): boolean {
  const name = box.name
  if (!spaced || name === 'sup' || name === 'sub' || name === 'small') return true
  return /cent|dec|frac|minor|sup/i.test(ownNames(box.element))
}

/** The smallest box that holds both. */
export function commonBox(a: Box, b: Box): Box {
  let x = a
  let y = b
  while (x !== y) {
    const up = x.depth >= y.depth ? x.parent : null
    if (up) x = up
    else if (y.parent) y = y.parent
    else return x
  }
  return x
}

import { commonBox, type Leaf } from './box.ts'
import { ownNames } from './dom.ts'
import type { PlacedToken } from './figure.ts'
import { isFootnote } from './footnote.ts'

const MOST_PIECES = 8
const APART = 9

/** The tokens of the leaves `from` up to, not including, `to`. */
export function placeTokens(leaves: readonly Leaf[], from: number, to: number): PlacedToken[] {
  const placed: PlacedToken[] = []
  for (let index = from; index < to; index += 1) {
    const leaf = leaves[index]
    if (!leaf || isFootnote(leaves, index)) continue
    const reach = reachBefore(leaves, index)
    const { tokens, fragment } = leaf.cut
    if (!tokens) {
      placed.push({
        kind: 'word',
        text: leaf.text,
        gap: false,
        money: null,
        leaf: index,
        first: true,
        last: true,
        fragment,
        cents: false,
        reach,
      })
      continue
    }
    for (const [place, { kind, text, gap, money }] of tokens.entries()) {
      const first = place === 0
      placed.push({
        kind,
        text,
        gap,
        money,
        leaf: index,
        first,
        last: place === tokens.length - 1,
        fragment,
        cents: first && isCentsText(text) && looksLikeCents(leaf),
        reach: first ? reach : gap ? 1 : 0,
      })
    }
  }
  return placed
}

/** How far a leaf is from the one before: 0 touching, 1 a space, 2 parts of one small box, 9 apart. */
function reachBefore(leaves: readonly Leaf[], index: number): number {
  const a = leaves[index - 1]
  const b = leaves[index]
  if (!a || !b || a.box.cell !== b.box.cell) return APART
  if (a.line === b.line) return b.spaced ? 1 : 0
  if (!a.cut.fragment || !b.cut.fragment) return APART
  const box = commonBox(a.box, b.box)
  if (box.to - box.from > MOST_PIECES) return APART
  for (let leaf = box.from; leaf < box.to; leaf += 1) if (!leaves[leaf]?.cut.fragment) return APART
  return 2
}

/**
 * Whether a page falls apart before a leaf: neither words nor amounts run over from the one before, nor does a sign there
 * say anything about what follows.
 */
export function isSeam(leaves: readonly Leaf[], index: number): boolean {
  const a = leaves[index - 1]
  const b = leaves[index]
  if (!a || !b) return true
  return a.line !== b.line && reachBefore(leaves, index) === APART && !/[≈~∼≃]$/u.test(a.text)
}

/** Whether a text begins with two digits that stand where cents stand, if its element says so. */
export function isCentsText(text: string): boolean {
  return /^\d{2}$/.test(text)
}

function looksLikeCents({ spaced, box }: Leaf): boolean {
  const name = box.name
  if (!spaced || name === 'sup' || name === 'sub' || name === 'small') return true
  return /cent|dec|frac|minor|sup/i.test(ownNames(box.element))
}

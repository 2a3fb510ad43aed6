import type { Leaf } from './box.ts'

/**
 * Whether a leaf is only the sign of a footnote: `Total<sup>1</sup>`. Raised digits behind a number are its cents; behind a
 * letter they say nothing of the money.
 */
export function isFootnote(leaves: readonly Leaf[], index: number): boolean {
  const leaf = leaves[index]
  if (leaf?.box.name !== 'sup' || !/^(?:\d{1,2}|[*†‡§]{1,3})\)?$/u.test(leaf.text)) return false
  const before = leaves[index - 1]
  return (
    before !== undefined && before.line === leaf.line && !before.cut.fragment && /(?:\p{L}\.?|[:)])$/u.test(before.text)
  )
}

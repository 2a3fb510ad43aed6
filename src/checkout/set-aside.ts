import type { Meaning } from './label.ts'
import type { Figure, Stream, Words } from './stream.ts'

/** Items that are no neighbours of a label or an amount, and what the amounts among them are. */
export type SetAside = ReadonlyMap<number, Meaning | null>

// A price before the one that counts, in words; the sign for it is a line through it. Common practice, no single source.
const FORMER = /(?<![\p{L}])(?:was|war|était|era|ehemals|statt|au lieu de|instead of|formerly|previously)[\s:]*$/iu

/**
 * What stands among labels and amounts without being one: the amount of a remark with the words behind it ("including
 * 5.08 in taxes"), a former price followed by the present one, and bare whole numbers on a page that marks its money.
 */
export function findSetAside(stream: Stream, means: (item: Words) => Meaning | null): SetAside {
  const { items } = stream
  const found = new Map<number, Meaning | null>()
  const marked = items.some((item) => item.kind === 'figure' && item.marks.length > 0)
  for (const [index, item] of items.entries()) {
    if (item.kind === 'figure') {
      if (marked && item.bare === 'integer') found.set(index, null)
      continue
    }
    const figure = items[index + 1]
    if (figure?.kind !== 'figure' || figure.line !== item.line || figure.cell !== item.cell) continue
    const after = items[index + 2]
    if (FORMER.test(item.text) && after?.kind === 'figure' && after.cell === figure.cell) found.set(index + 1, 'aside')
    if (means(item) !== 'included') continue
    const rest = after?.kind === 'words' && runsOn(figure, after)
    // With nothing behind it the remark may be a row of its own ("of which VAT: 8.93"), which its label already says.
    if (!rest) continue
    found.set(index + 1, 'included')
    found.set(index + 2, null)
  }
  return found
}

function runsOn(figure: Figure, after: Words): boolean {
  return (
    after.from === figure.to ||
    (after.line === figure.line && (after.box === figure.box || after.box === figure.box.parent))
  )
}

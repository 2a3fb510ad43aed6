import { attribute, isInput } from './dom.ts'
import type { Box, PageText } from './page-text.ts'
import type { Sight } from './sight.ts'
import type { Figure, Item, Stream } from './stream.ts'

/** Which items of the stream count, asked only where it matters, and remembered. */
export interface Liveness {
  /** Whether a person sees these words, or a screen reader says them as a label of what is seen. */
  words(index: number): boolean
  /** Whether a person sees this figure, not struck through, and not as a copy for screen readers. */
  figure(index: number): boolean
  /** Whether the figure belongs to a choice (radio button, tick box): a price on offer, not a part of the sum. */
  onOffer(figure: Figure): boolean
}

/** Makes the answers for one read. Styles are asked only for the items somebody wants to know about. */
export function createLiveness(page: PageText, stream: Stream, sight: Sight): Liveness {
  const known = new Map<number, boolean>()
  const copies = new Map<Box, boolean>()
  const offers = choiceBoxes(page, stream)

  function isCopy(hushed: Box | null): boolean {
    if (!hushed) return false
    const before = copies.get(hushed)
    if (before !== undefined) return before
    const [from, to] = stream.within(hushed)
    const inside = stream.items.slice(from, to)
    // A hushed amount alone is what is drawn; hushed words with an amount are a copy of a whole row.
    const answer = inside.some((item) => item.kind === 'words') && inside.some((item) => item.kind === 'figure')
    copies.set(hushed, answer)
    return answer
  }

  function look(item: Item): boolean {
    if (isCopy(page.leaves[item.from]?.hushed ?? null)) return false
    const seen = sight.seen(item.box.element)
    if (item.kind === 'words') return seen !== 'gone'
    return seen === 'shown' && !item.struck && !sight.struck(item.box.element) && !sight.nowhere(item.box.element)
  }

  function live(index: number): boolean {
    const before = known.get(index)
    if (before !== undefined) return before
    const item = stream.items[index]
    const answer = item ? look(item) : false
    known.set(index, answer)
    return answer
  }

  return {
    words: live,
    figure: live,
    onOffer: (figure) => {
      for (let box: Box | null = figure.box, step = 0; box && step < 6; box = box.parent, step += 1) {
        if (offers.has(box)) return true
      }
      return false
    },
  }
}

/** The boxes of radio buttons and tick boxes with their texts: the label, or the small box around a single one. */
function choiceBoxes(page: PageText, stream: Stream): ReadonlySet<Box> {
  const choices = page.fields.filter((field) => isInput(field) && (field.type === 'radio' || field.type === 'checkbox'))
  const boxes = new Set<Box>()
  const uses = new Map<Box, number>()
  for (const field of choices) {
    const id = attribute(field, 'id')
    const label = id ? page.labelFor.get(id) : undefined
    const own = label ? page.boxOf.get(label) : undefined
    if (own) boxes.add(own)
    for (let box = page.boxOf.get(field)?.parent ?? null, step = 0; box && step < 4; box = box.parent, step += 1) {
      uses.set(box, (uses.get(box) ?? 0) + 1)
    }
  }
  for (const [box, count] of uses) {
    const [from, to] = stream.within(box)
    if (box.name === 'label' || (count === 1 && to - from <= 6 && !holdsForm(box))) boxes.add(box)
  }
  return boxes
}

function holdsForm(box: Box): boolean {
  return box.name === 'form' || box.name === 'body' || box.name === 'fieldset'
}

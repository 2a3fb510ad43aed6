import type { Box } from './box.ts'
import { isInput } from './dom.ts'
import { labelOf, type PageText } from './page-text.ts'
import type { Sight } from './sight.ts'
import type { Figure, Item, Stream } from './stream.ts'

export type Choice = 'offered' | 'chosen'

/** Which items of the stream count, asked only where it matters, and remembered. */
export interface Liveness {
  /** Whether a person sees these words, or a screen reader says them as a label of what is seen. */
  words(index: number): boolean
  /** Whether a person sees this figure, not struck through, and not as a copy for screen readers. */
  figure(index: number): boolean
  /** Whether the figure belongs to a choice (radio button, tick box): on offer, or chosen. Offers are not live. */
  choice(figure: Figure): Choice | null
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
    if (isCopy(page.leaves[item.from]?.box.hushed ?? null)) return false
    const seen = sight.seen(item.box.element)
    if (item.kind === 'words') return seen !== 'gone'
    if (seen !== 'shown' || choice(item) === 'offered') return false
    return !item.struck && !sight.struck(item.box.element) && !sight.nowhere(item.box.element)
  }

  function live(index: number): boolean {
    const before = known.get(index)
    if (before !== undefined) return before
    const item = stream.items[index]
    const answer = item ? look(item) : false
    known.set(index, answer)
    return answer
  }

  function choice(figure: Figure): Choice | null {
    let box: Box | null = figure.box
    for (let step = 0; box && step < 6; box = box.parent, step += 1) {
      const known = offers.get(box)
      if (known) return known
    }
    return null
  }

  return { words: live, figure: live, choice }
}

/** The boxes of radio buttons and tick boxes with their texts: the label, or one of several alike boxes of one choice. */
function choiceBoxes(page: PageText, stream: Stream): ReadonlyMap<Box, Choice> {
  const boxes = new Map<Box, Choice>()
  const around = new Map<Box, Choice[]>()
  const fields = page.fields.flatMap((box) => {
    if (box.name !== 'input') return []
    const field = box.element
    return isInput(field) && (field.type === 'radio' || field.type === 'checkbox') ? [{ box, field }] : []
  })
  const names = new Map<string, number>()
  for (const { field } of fields) names.set(field.name, (names.get(field.name) ?? 0) + 1)
  for (const { box: place, field } of fields) {
    const choice: Choice = field.checked ? 'chosen' : 'offered'
    const own = labelOf(page, place)
    if (own) boxes.set(own, choice)
    if ((names.get(field.name) ?? 0) < 2) continue
    for (let box = place.parent, step = 0; box && step < 4; box = box.parent, step += 1) {
      around.set(box, [...(around.get(box) ?? []), choice])
    }
  }
  for (const [box, choices] of around) {
    const [from, to] = stream.within(box)
    const [only] = choices
    if (only && choices.length === 1 && to - from <= 5 && !boxes.has(box) && !holdsForm(box)) boxes.set(box, only)
  }
  return boxes
}

function holdsForm(box: Box): boolean {
  return box.name === 'form' || box.name === 'body' || box.name === 'fieldset'
}

import type { PotBalance } from '../book/balances.ts'

/*
 * The sill: a pot drawn as one bar across a centre line. Notes reach from the line to the start side, the card side to
 * the end side. What online orders hold is laid over the bar from its card end inwards; where it crosses the line, it
 * lies over notes, and those are spoken for. What stays uncovered is what is left, and a rule runs under it.
 */

/** `notes`, `card`: what is there. `held`, `spoken`: laid over card and notes. `short`: missing, beyond the notes. */
export type SillPart = 'notes' | 'card' | 'held' | 'spoken' | 'short'

/** A stretch of the bar. -1 is the start end, 0 the centre line, 1 the card end; `from` < `to`. */
export interface SillSpan {
  readonly part: SillPart
  readonly from: number
  readonly to: number
  /** Belongs to the order that is being looked at, not to what was held before. */
  readonly isNew: boolean
}

/** How far a pot's bar reaches from the centre line to the farther side, in minor units. */
export function sillReach(balance: PotBalance): number {
  const { notes, card, start } = measure(balance)
  return Math.max(notes, card, -start)
}

/**
 * The stretches of a pot's bar, in the order to paint them.
 *
 * @param after the pot's figures; with `before`, what is held more than before is marked as new
 * @param scale minor units that fill one half of the bar; at least `sillReach` of all that is drawn beside each other
 */
export function drawSill(after: PotBalance, scale: number, before: PotBalance = after): SillSpan[] {
  const { notes, card, start, inner } = measure(after)
  const unit = scale > 0 ? scale : 1
  const spans: SillSpan[] = []
  const paint = (part: SillPart, from: number, to: number, isNew = false): void => {
    if (to > from) spans.push({ part, from: from / unit, to: to / unit, isNew })
  }
  paint('notes', -notes, 0)
  paint('card', 0, card)
  // What was held before lies at the card end; what an order adds comes inside of it.
  const known = Math.max(inner, measure(before).inner)
  for (const [from, to, isNew] of [
    [known, card, false],
    [inner, known, true],
  ] as const) {
    paint('held', Math.max(from, 0), Math.min(to, card), isNew)
    paint('spoken', Math.max(from, -notes), Math.min(to, 0), isNew)
  }
  paint('short', start, -notes)
  return spans
}

/**
 * Where the rule under the bar runs: under all that is left, so that its length is what is left. Null where nothing is.
 *
 * @param scale as in `drawSill`
 */
export function ruleOfSill({ cash, card, held }: PotBalance, scale: number): { from: number; to: number } | null {
  const unit = scale > 0 ? scale : 1
  const [from, to] = [-cash.minor / unit, (card.minor - held.minor) / unit]
  return to > from ? { from, to } : null
}

/**
 * A bar in minor units: the notes and card that are there, how far what is held reaches (`inner`), and where the bar
 * starts when something is missing (`start` is then beyond the notes).
 */
function measure(balance: PotBalance): { notes: number; card: number; inner: number; start: number } {
  const notes = Math.max(0, balance.cash.minor)
  const missingNotes = Math.max(0, -balance.cash.minor)
  const card = Math.max(0, balance.card.minor)
  const inner = balance.card.minor - balance.held.minor
  return { notes, card, inner, start: Math.min(-notes, inner) - missingNotes }
}

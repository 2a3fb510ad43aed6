import { useState } from 'preact/hooks'
import type { HouseholdView, Look } from '../../background/protocol.ts'
import { hasSide, type Pot } from '../../book/household.ts'
import type { EntryId } from '../../book/ids.ts'
import { type Money, toDecimal } from '../../money/money.ts'
import { locale } from '../browser.ts'
import { useDraft, useDraftOrNone } from '../draft.ts'
import { type QuickLine, readQuickLine } from '../quick-entry.ts'
import { type Split, splitByNotes, usualSide, usualSplit } from './quick-plan.ts'
import { useEntry } from './use-entry.ts'

const MOST_OFFERED = 5

/** What is typed, what it means so far, and what can be done with it. */
export function useQuick(view: HouseholdView, onLook: (look: Look) => void) {
  const { household } = view
  const [line, setLine, forgetLine] = useDraft('quick')
  const [mode, setMode] = useDraft('quick-mode', 'spend')
  // The pot and not its place: the list may be another one when the popup opens again.
  const [picked, setPicked, forgetPicked] = useDraftOrNone('quick-pot')
  const [wantedSide, setSide, forgetSide] = useDraftOrNone('quick-side')
  const [source, setFrom, forgetFrom] = useDraftOrNone('quick-from')
  const [notes, setNotes, forgetNotes] = useDraftOrNone('quick-notes')
  const [saidId, setSaid] = useState<EntryId | null>(null)
  const spending = useEntry('spend.add', onLook)
  const filling = useEntry('fill.add', onLook)

  const isFill = mode === 'fill'
  const from: 'outside' | 'unplaced' = source === 'outside' ? 'outside' : 'unplaced'
  const pots = household.pots.filter((p) => !p.archived)
  const read = readQuickLine(line, pots, household.currency, locale())
  const offers = offersOf(read, pots)
  const pickedAt = offers.findIndex((o) => o.pot.id === picked)
  const at = pickedAt < 0 && read.kind === 'ready' ? 0 : pickedAt
  const offer = offers[at] ?? null
  const amount = read.kind === 'ready' || read.kind === 'no-pot' ? read.amount : null
  const side = offer && (isSide(wantedSide) && hasSide(offer.pot, wantedSide) ? wantedSide : usualSide(offer.pot))
  const split = offer && amount && splitFor(offer.pot, amount, notes)

  const type = (text: string): void => {
    // A sign in front says which it is, so that nobody has to leave the line for it.
    const isPlus = text.trimStart().startsWith('+')
    if (isPlus) setMode('fill')
    setLine(isPlus ? text.replace('+', '').trimStart() : text)
    forgetPicked()
    setSaid(null)
  }
  const pick = (place: number): void => {
    const chosen = offers[place]
    if (chosen) setPicked(chosen.pot.id)
  }
  const step = (by: 1 | -1): void => {
    pick((at + by + offers.length) % offers.length)
  }
  /** Writes it. Resolves to whether it was taken. */
  const enter = async (): Promise<boolean> => {
    if (!offer || !amount || !side || (isFill && !split)) return false
    const pot = offer.pot.id
    const date = view.today
    let id: EntryId | null
    if (isFill && split) {
      const wish = { pot, cash: toDecimal(split.cash), card: toDecimal(split.card), from, date }
      id = await filling.enter(wish, (made) => ({ id: made, ...wish }))
    } else {
      const wish = { pot, side, amount: toDecimal(amount), purpose: offer.purpose, date }
      id = await spending.enter(wish, (made) => ({ id: made, ...wish }))
    }
    if (!id) return false
    forgetLine()
    setMode('spend')
    forgetPicked()
    forgetSide()
    forgetFrom()
    forgetNotes()
    setSaid(id)
    return true
  }
  return {
    line,
    type,
    isFill,
    setMode,
    read,
    offers,
    offer,
    pick,
    step,
    amount,
    side,
    setSide,
    split,
    notes,
    setNotes,
    from,
    setFrom,
    enter,
    isBusy: spending.isBusy || filling.isBusy,
    error: isFill ? filling.error : spending.error,
    /** The entry that was just made, while it stands and nothing new is typed. */
    said: view.recent.find((entry) => entry.id === saidId) ?? null,
  }
}

function isSide(said: string | null): said is 'cash' | 'card' {
  return said === 'cash' || said === 'card'
}

type Offer = { readonly pot: Pot; readonly purpose: string }

function offersOf(read: QuickLine, pots: readonly Pot[]): readonly Offer[] {
  if (read.kind === 'ready') return read.choices.slice(0, MOST_OFFERED)
  if (read.kind !== 'no-pot' || read.word !== '') return []
  return pots.slice(0, MOST_OFFERED).map((pot) => ({ pot, purpose: '' }))
}

function splitFor(pot: Pot, amount: Money, notes: string | null): Split | null {
  if (notes === null || pot.sides !== 'both') return usualSplit(pot, amount)
  return splitByNotes(amount, notes, locale())
}

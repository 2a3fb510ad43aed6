import { useState } from 'preact/hooks'
import type { HouseholdView, Look } from '../../background/protocol.ts'
import { hasSide, type Pot } from '../../book/household.ts'
import type { EntryId } from '../../book/ids.ts'
import { type Money, toDecimal } from '../../money/money.ts'
import { locale } from '../browser.ts'
import { useDraft } from '../draft.ts'
import { type QuickLine, readQuickLine } from '../quick-entry.ts'
import { type Split, splitByNotes, usualSide, usualSplit } from './quick-plan.ts'
import { useEntry } from './use-entry.ts'

const MOST_OFFERED = 5

/** What is typed, what it means so far, and what can be done with it. */
export function useQuick(view: HouseholdView, onLook: (look: Look) => void) {
  const { household } = view
  const [line, setLine, forgetLine] = useDraft('quick')
  const [mode, setMode] = useDraft('quick-mode', 'spend')
  const [picked, setPicked] = useState<number | null>(null)
  const [wantedSide, setSide] = useState<'cash' | 'card' | null>(null)
  const [from, setFrom] = useState<'unplaced' | 'outside'>('unplaced')
  const [notes, setNotes] = useState<string | null>(null)
  const [saidId, setSaid] = useState<EntryId | null>(null)
  const spending = useEntry('spend.add', onLook)
  const filling = useEntry('fill.add', onLook)

  const isFill = mode === 'fill'
  const pots = household.pots.filter((p) => !p.archived)
  const read = readQuickLine(line, pots, household.currency, locale())
  const offers = offersOf(read, pots)
  const at = picked ?? (read.kind === 'ready' ? 0 : -1)
  const offer = offers[Math.min(at, offers.length - 1)] ?? null
  const amount = read.kind === 'ready' || read.kind === 'no-pot' ? read.amount : null
  const side = offer && (wantedSide && hasSide(offer.pot, wantedSide) ? wantedSide : usualSide(offer.pot))
  const split = offer && amount && splitFor(offer.pot, amount, notes)

  const type = (text: string): void => {
    // A sign in front says which it is, so that nobody has to leave the line for it.
    const isPlus = text.trimStart().startsWith('+')
    if (isPlus) setMode('fill')
    setLine(isPlus ? text.replace('+', '').trimStart() : text)
    setPicked(null)
    setSaid(null)
  }
  const step = (by: 1 | -1): void => {
    if (offers.length > 0) setPicked((at + by + offers.length) % offers.length)
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
    setPicked(null)
    setSide(null)
    setNotes(null)
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
    pick: setPicked,
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

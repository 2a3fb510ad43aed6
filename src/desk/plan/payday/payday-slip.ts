import { findPot, type Household, hasSide } from '../../../book/household.ts'
import type { PotId } from '../../../book/ids.ts'
import type { SlipBankSetting } from '../../../book/planning.ts'
import { piecesOf } from '../../../money/denominations.ts'
import { add, type Money, ofMinor, subtract } from '../../../money/money.ts'
import type { PieceCount } from '../../../money/notes.ts'
import { type CashFill, type WithdrawalSlip, withdrawalSlip } from '../../../plan/withdrawal-slip.ts'
import type { DraftLine } from './payday-draft.ts'

/** One pot's fill as it is really put in: notes that are pieces, and the rest of it on the card. */
export interface Envelope {
  readonly pot: PotId
  readonly cash: Money
  readonly card: Money
  readonly pieces: readonly PieceCount[]
  /** What was planned in notes and stays on the card side. */
  readonly onCard: Money
  /** What was planned in notes for a pot that keeps no card side: it stays without a pot. */
  readonly left: Money
}

/** The slip for the bank and every pot's envelope. */
export interface PaydaySlip {
  readonly slip: WithdrawalSlip
  readonly bank: SlipBankSetting
  readonly envelopes: readonly Envelope[]
  /** False for a currency whose notes and coins are not known: the slip is empty, and envelopes are as planned. */
  readonly isKnown: boolean
}

/** The slip of a payday, or what kept it from being worked out. */
export function paydaySlip(
  household: Household,
  lines: readonly DraftLine[],
  bank: SlipBankSetting | null,
  atHand: Readonly<Record<string, string>>,
): PaydaySlip | { readonly error: unknown } {
  const used = bank ?? { kind: 'counter', gives: allPieces(household) }
  if (allPieces(household).length === 0) {
    const envelopes = lines.map((one) => asPlanned(household, one))
    return { slip: withdrawalSlip([]), bank: used, envelopes, isKnown: false }
  }
  const fills = lines.flatMap(({ line, cash }): CashFill[] => {
    if (!cash || cash.minor === 0) return []
    const wish = findPot(household, line.pot).plan?.wish
    return [{ pot: line.pot, cash, ...(wish ? { wish } : {}) }]
  })
  try {
    const slip = withdrawalSlip(fills, { bank: used, atHand: countsOf(atHand) })
    const envelopes = lines.map((one) => envelopeOf(household, one, slip))
    return { slip, bank: used, envelopes, isKnown: true }
  } catch (error) {
    return { error }
  }
}

function asPlanned(household: Household, { line, cash, card }: DraftLine): Envelope {
  const zero = ofMinor(household.currency, 0)
  return { pot: line.pot, cash: cash ?? zero, card: card ?? zero, pieces: [], onCard: zero, left: zero }
}

function envelopeOf(household: Household, { line, cash, card }: DraftLine, slip: WithdrawalSlip): Envelope {
  const zero = ofMinor(household.currency, 0)
  const planned = cash ?? zero
  const found = slip.envelopes.find((envelope) => envelope.pot === line.pot)
  const placed = found?.placed ?? zero
  const missing = subtract(planned, placed)
  const keepsCard = hasSide(findPot(household, line.pot), 'card')
  return {
    pot: line.pot,
    cash: placed,
    card: keepsCard ? add(card ?? zero, missing) : zero,
    pieces: together(found?.fromHand ?? [], found?.fromBank ?? []),
    onCard: keepsCard ? missing : zero,
    left: keepsCard ? zero : missing,
  }
}

function together(a: readonly PieceCount[], b: readonly PieceCount[]): PieceCount[] {
  const counts = new Map<number, number>()
  for (const { denomination, count } of [...a, ...b]) counts.set(denomination, (counts.get(denomination) ?? 0) + count)
  return [...counts]
    .map(([denomination, count]) => ({ denomination, count }))
    .sort((x, y) => y.denomination - x.denomination)
}

/** Every note and coin of the household's currency, the largest first; none where none are known. */
export function allPieces(household: Household): number[] {
  const pieces = piecesOf(household.currency)
  return pieces ? [...new Set([...pieces.notes, ...pieces.coins])].sort((a, b) => b - a) : []
}

/** The notes alone, which machines give. */
export function allNotes(household: Household): number[] {
  return [...(piecesOf(household.currency)?.notes ?? [])].sort((a, b) => b - a)
}

function countsOf(atHand: Readonly<Record<string, string>>): PieceCount[] {
  return Object.entries(atHand)
    .map(([value, text]) => ({ denomination: Number(value), count: /^\d{1,4}$/.test(text.trim()) ? Number(text) : 0 }))
    .filter(({ count }) => count > 0)
}

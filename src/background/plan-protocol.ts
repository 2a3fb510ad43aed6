import type { CalendarDate, Earner, EntryId, Planning, PotId, PotPlan } from '../index.ts'
import type { Look } from './protocol.ts'

/** A pot's part of a payday, amounts as decimal texts; its entry's id is made by the page. */
export interface PaydayFill {
  readonly id: EntryId
  readonly pot: PotId
  readonly cash: string
  readonly card: string
}

/** A line of a paper sheet as it is typed in: money out of a side, or into it from outside. */
export interface SheetLineText {
  readonly id: EntryId
  readonly pot: PotId
  readonly date: CalendarDate
  readonly way: 'in' | 'out'
  readonly side: 'cash' | 'card'
  readonly amount: string
  readonly purpose: string
}

/** Commands of planning. What the household decides is whole minor units; what it types on a payday is decimal texts. */
export interface PlanCommands {
  /** Whose pay the household lives on and how it plans. */
  'plan.save': { ask: { earners: readonly Earner[]; planning: Planning }; answer: Look }
  /** What is planned for a pot, and its fill. A goal without a beginning begins today with what is in. */
  'pot.plan': { ask: { pot: PotId; plan: PotPlan; fill: { cash: number; card: number } }; answer: Look }
  /** A whole payday at once: the pay (none for `0`) under `id`, and the fills from what has no pot yet. */
  'fill.plan': {
    ask: { id: EntryId; date: CalendarDate; amount: string; fills: readonly PaydayFill[] }
    answer: Look
  }
  /** Takes back all that still stands of a payday; `ids` name the new entries, one for each. */
  'payday.undo': { ask: { payday: EntryId; ids: readonly EntryId[] }; answer: Look }
  /** Several lines of a paper sheet, all or none. */
  'sheet.add': { ask: { lines: readonly SheetLineText[] }; answer: Look }
}

import type { MatchOptions, OrderToMatch, StatementMatching } from '../../monthend/match-types.ts'
import type { EnvelopeCount, EnvelopeTarget, Settlement, SettleOptions } from '../../monthend/settle.ts'
import type { OpenedStatement, StatementOptions } from '../../monthend/statement/open-statement.ts'
import type { StatementLine } from '../../monthend/statement-line.ts'

/** A statement file as the thread hands it over: its problems as plain data. */
export interface OpenedFile extends Omit<OpenedStatement, 'problems'> {
  readonly problems: readonly { readonly code: string; readonly message: string; readonly row: number | null }[]
}

/** What the thread does, so that the page stays alive meanwhile. */
export interface ThreadCommands {
  open: { ask: { bytes: Uint8Array; options: StatementOptions }; answer: OpenedFile }
  match: {
    ask: { lines: readonly StatementLine[]; orders: readonly OrderToMatch[]; options: MatchOptions }
    answer: StatementMatching
  }
  settle: {
    ask: { counts: readonly EnvelopeCount[]; targets: readonly EnvelopeTarget[]; options: SettleOptions }
    answer: Settlement
  }
}

export type ThreadAsk = {
  [C in keyof ThreadCommands]: { command: C; ask: ThreadCommands[C]['ask'] }
}[keyof ThreadCommands]

export type ThreadReply<A> =
  | { readonly kind: 'progress'; readonly done: number; readonly of: number }
  | { readonly kind: 'done'; readonly value: A }
  | { readonly kind: 'failed'; readonly code: string; readonly message: string }

import type {
  AgreeEntry,
  CloseEntry,
  CountEntry,
  Pieces,
  ReopenEntry,
  SeenEntry,
  SettleEnd,
  SettleEntry,
  SweepEntry,
  SweepTarget,
  TransferEntry,
} from '../book/entry.ts'
import type { Household } from '../book/household.ts'
import { ofMinor } from '../money/money.ts'
import { amountText } from './money-text.ts'
import { monthText } from './month-text.ts'
import { listText, t } from './text.ts'

type MonthEndEntry =
  | CountEntry
  | SettleEntry
  | SweepEntry
  | TransferEntry
  | CloseEntry
  | ReopenEntry
  | AgreeEntry
  | SeenEntry

/** A month-end's entry as one plain sentence: "Moved 40.00 in notes from Groceries to Piano lessons". */
export function sayMonthEnd(household: Household, entry: MonthEndEntry): string {
  const text = (minor: number): string => amountText(ofMinor(household.currency, minor))
  const potName = (id: string): string => household.pots.find((p) => p.id === id)?.name ?? id
  const accountName = (id: string): string => household.accounts.find((a) => a.id === id)?.name ?? id
  const worth = (pieces: readonly Pieces[]): number => pieces.reduce((sum, p) => sum + p.denomination * p.count, 0)
  const endName = (end: SettleEnd): string => ('pot' in end ? potName(end.pot) : t('said_the_bank'))
  const targetName = (to: SweepTarget): string => {
    if ('pot' in to) return potName(to.pot)
    return 'account' in to ? accountName(to.account) : to.debt
  }
  switch (entry.kind) {
    case 'count': {
      const counted = worth(entry.pieces)
      const values = { pot: potName(entry.pot), amount: text(counted), expected: text(entry.expected) }
      return counted === entry.expected ? t('said_count', values) : t('said_count_differs', values)
    }
    case 'settle':
      return t('said_settle', { amount: text(worth(entry.pieces)), from: endName(entry.from), to: endName(entry.to) })
    case 'sweep': {
      const side = (name: string): number => -(entry.postings.find((p) => p.account === name)?.amount ?? 0)
      const [cash, card] = [side(`cash:${entry.pot}`), side(`card:${entry.pot}`)]
      const said = []
      if (cash !== 0) said.push(t('side_cash_amount', { amount: text(cash) }))
      if (card !== 0) said.push(t('side_card_amount', { amount: text(card) }))
      return t('said_sweep', { sides: listText(said), pot: potName(entry.pot), to: targetName(entry.to) })
    }
    case 'transfer': {
      const moved = entry.places.find((p) => p.amount > 0)?.amount ?? 0
      return t('said_transfer', { amount: text(moved), from: accountName(entry.from), to: accountName(entry.to) })
    }
    case 'close':
      return t('said_close', { month: monthText(entry.month) })
    case 'reopen':
      return t('said_reopen', { month: monthText(entry.month), reason: entry.reason })
    case 'agree':
      return t('said_agree', { account: accountName(entry.account), amount: text(entry.balance) })
    case 'seen':
      return t('said_seen')
  }
}

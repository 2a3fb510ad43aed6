import type { Entry } from '../book/entry.ts'
import type { Household } from '../book/household.ts'
import { ofMinor } from '../money/money.ts'
import { amountText } from './money-text.ts'
import { sayMonthEnd } from './say-month-end.ts'
import { listText, t } from './text.ts'

/**
 * An entry as one plain sentence: "Spent 12.50 cash from Groceries: bread".
 *
 * @param entry one of the household's own book; a pot it names that is gone is told by its id
 */
export function sayEntry(household: Household, entry: Entry): string {
  const text = (minor: number): string => amountText(ofMinor(household.currency, minor))
  const nameOf = (id: string): string => household.pots.find((p) => p.id === id)?.name ?? id
  const sum = (prefix: string): number =>
    entry.postings.filter((p) => p.account.startsWith(prefix)).reduce((all, p) => all + p.amount, 0)
  const total = (lines: readonly { amount: number }[]): string => text(lines.reduce((all, l) => all + l.amount, 0))
  const pots = (lines: readonly { pot: string }[]): string => listText(lines.map((l) => nameOf(l.pot)))
  const sides = (cash: number, card: number): string => {
    const said = []
    if (cash !== 0) said.push(t('side_cash_amount', { amount: text(cash) }))
    if (card !== 0) said.push(t('side_card_amount', { amount: text(card) }))
    return said.length > 0 ? listText(said) : text(0)
  }
  switch (entry.kind) {
    case 'opening': {
      const pot = entry.postings.find((p) => p.account.includes(':'))?.account.split(':')[1] ?? ''
      return t('said_opening', { pot: nameOf(pot), sides: sides(sum('cash:'), sum('card:')) })
    }
    case 'pay':
      return t('said_pay', { amount: text(sum('unplaced')) })
    case 'fill':
      return t('said_fill', { pot: nameOf(entry.pot), sides: sides(sum('cash:'), sum('card:')) })
    case 'spend': {
      const values = { pot: nameOf(entry.pot), sides: sides(-sum('cash:'), -sum('card:')), purpose: entry.purpose }
      return entry.purpose === '' ? t('said_spend', values) : t('said_spend_for', values)
    }
    case 'order':
      return t('said_order', { amount: total(entry.lines), shop: entry.shop, pots: pots(entry.lines) })
    case 'adjust':
      return t('said_adjust', { amount: total(entry.lines), pots: pots(entry.lines) })
    case 'charge':
      return t('said_charge', { amount: total(entry.lines), pots: pots(entry.lines) })
    case 'confirm':
      return entry.number === undefined ? t('said_confirm') : t('said_confirm_number', { number: entry.number })
    case 'instalment':
      return t('said_instalment', { amount: total(entry.lines), pots: pots(entry.lines) })
    case 'expect':
      return t('said_expect', { amount: total(entry.lines), pots: pots(entry.lines) })
    case 'release':
      return t('said_release', { amount: text(-sum('held:')) })
    case 'refund':
      return t('said_refund', { amount: total(entry.lines), pots: pots(entry.lines) })
    case 'count':
    case 'settle':
    case 'sweep':
    case 'transfer':
    case 'close':
    case 'reopen':
    case 'agree':
    case 'seen':
      return sayMonthEnd(household, entry)
    case 'reversal':
      return t('said_reversal')
  }
}

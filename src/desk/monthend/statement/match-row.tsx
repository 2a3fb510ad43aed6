import { useMemo } from 'preact/hooks'
import { findEntry } from '../../../book/book.ts'
import { findOrder, orderSums } from '../../../book/order-state.ts'
import { ofMinor } from '../../../money/money.ts'
import type { StatementMatch } from '../../../monthend/match-types.ts'
import { amountText } from '../../../ui/money-text.ts'
import { sayEntry } from '../../../ui/say-entry.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { listText, t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { LineText } from './line-text.tsx'
import type { Lines } from './posts.ts'
import { reasonText } from './reason-text.ts'

/** A match: the bank's lines, what of the book they are, and why. */
export function MatchText({ match, lines }: { match: StatementMatch; lines: Lines }) {
  const partners = usePartners(match)
  return (
    <div class="match-text">
      {match.lines.map((id) => {
        const line = lines.get(id)
        return line ? <LineText key={id} line={line} /> : null
      })}
      {partners.map((partner) => (
        <p key={partner} class="match-partner">
          {partner}
        </p>
      ))}
      <p class="match-reasons">{match.reasons.map(reasonText).join(' · ')}</p>
    </div>
  )
}

/** What of the book a match is for, one sentence each. */
function usePartners(match: StatementMatch): string[] {
  const { book } = useHousehold()
  return useMemo(() => {
    const { household } = book
    const name = (id: string): string => household.pots.find((p) => p.id === id)?.name ?? id
    const orders = match.orders.flatMap((id) => {
      const state = findOrder(book, id)
      if (!state) return []
      const sums = orderSums(state)
      const values = {
        shop: state.shop,
        date: shortDate(state.date),
        pots: listText(state.parts.map((p) => name(p.pot))),
        amount: amountText(ofMinor(household.currency, sums.tagged)),
        held: amountText(ofMinor(household.currency, sums.held)),
      }
      return [t(match.kind === 'refund' ? 'match_refund_of' : 'match_order', values)]
    })
    const entries = match.entries.flatMap((id) => {
      const entry = findEntry(book, id)
      return entry ? [t('match_entry', { date: shortDate(entry.date), entry: sayEntry(household, entry) })] : []
    })
    const renewal = match.renewal
      ? [
          t('match_renewal', {
            name: match.renewal.name,
            date: shortDate(match.renewal.due),
            pot: name(match.renewal.pot),
          }),
        ]
      : []
    const transfer = match.kind === 'transfer' ? [t('match_transfer')] : []
    return [...orders, ...entries, ...renewal, ...transfer]
  }, [book, match])
}

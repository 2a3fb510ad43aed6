import type { Review } from '../../../monthend/review.ts'
import { amountText } from '../../../ui/money-text.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { listText, t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'

/** Orders that went on against a warning, with the reasons given then. */
export function WentAheadList({ found }: { found: Review }) {
  const { book } = useHousehold()
  const name = (id: string): string => book.household.pots.find((p) => p.id === id)?.name ?? id
  return (
    <section aria-labelledby="ahead-title">
      <h2 id="ahead-title">{t('review_ahead')}</h2>
      {found.wentAhead.length === 0 ? (
        <p>{t('review_ahead_none')}</p>
      ) : (
        <ul class="matches">
          {found.wentAhead.map((order) => (
            <li key={order.entry}>
              {t('review_ahead_order', {
                date: shortDate(order.date),
                shop: order.shop,
                amount: amountText(order.amount),
                pots: listText(order.pots.map(name)),
              })}
              <p class="match-partner">{t('review_ahead_reason', { reason: order.reason })}</p>
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

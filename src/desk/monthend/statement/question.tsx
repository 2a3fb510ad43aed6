import type { OrderId } from '../../../book/ids.ts'
import { findOrder } from '../../../book/order-state.ts'
import { ofMinor } from '../../../money/money.ts'
import type { StatementMatch } from '../../../monthend/match-types.ts'
import { amountText } from '../../../ui/money-text.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { MatchText } from './match-row.tsx'
import type { Lines } from './posts.ts'

/** A doubtful match, with the answers it can have. Nothing of it is posted before one is given. */
export function Question(props: {
  readonly match: StatementMatch
  readonly lines: Lines
  readonly isBusy: boolean
  /** `order`: it is another order than the match says. */
  readonly onYes: (isComplete: boolean, order?: OrderId) => void
  readonly onNo: () => void
}) {
  const { match, isBusy } = props
  const { book } = useHousehold()
  const others = match.reasons.flatMap((r) => {
    const state = r.code === 'could-be-other' && r.order ? findOrder(book, r.order) : null
    return state ? [state] : []
  })
  // The card took less than is held: only the person knows whether more will come.
  const isLess = match.kind === 'charge' && match.difference.minor > 0 && match.completes.length === 0
  return (
    <li class="question">
      <MatchText match={match} lines={props.lines} />
      <div class="buttons">
        {isLess ? (
          <>
            <button type="button" disabled={isBusy} onClick={() => props.onYes(false)}>
              {t('match_yes_more')}
            </button>
            <button type="button" disabled={isBusy} onClick={() => props.onYes(true)}>
              {t('match_yes_all')}
            </button>
          </>
        ) : (
          <button type="button" disabled={isBusy} onClick={() => props.onYes(false)}>
            {t('match_yes')}
          </button>
        )}
        {others.map((other) => (
          <button key={other.order} type="button" disabled={isBusy} onClick={() => props.onYes(false, other.order)}>
            {t('match_other_order', {
              shop: other.shop,
              date: shortDate(other.date),
              amount: amountText(ofMinor(book.household.currency, other.total)),
            })}
          </button>
        ))}
        <button type="button" class="quiet" disabled={isBusy} onClick={props.onNo}>
          {t('match_no')}
        </button>
      </div>
    </li>
  )
}

import type { StatementMatch } from '../../../monthend/match-types.ts'
import { t } from '../../../ui/text.ts'
import { MatchText } from './match-row.tsx'
import type { Lines } from './posts.ts'

/** A doubtful match, with the answers it can have. Nothing of it is posted before one is given. */
export function Question(props: {
  readonly match: StatementMatch
  readonly lines: Lines
  readonly isBusy: boolean
  readonly onYes: (isComplete: boolean) => void
  readonly onNo: () => void
}) {
  const { match, isBusy } = props
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
        <button type="button" class="quiet" disabled={isBusy} onClick={props.onNo}>
          {t('match_no')}
        </button>
      </div>
    </li>
  )
}

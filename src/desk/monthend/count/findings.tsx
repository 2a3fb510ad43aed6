import type { PotId } from '../../../book/ids.ts'
import type { CountComparison } from '../../../monthend/count-compare.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { useCauseText } from './cause-text.ts'
import { overText } from './over-text.ts'

/** Which envelopes differ from the book and what may have happened; each is posted only when the person says so. */
export function Findings(props: {
  readonly compared: CountComparison
  readonly posted: ReadonlySet<PotId>
  readonly onPosted: (pot: PotId, isPosted: boolean) => void
}) {
  const { book } = useHousehold()
  const causeText = useCauseText()
  const { compared } = props
  const name = (id: PotId): string => book.household.pots.find((p) => p.id === id)?.name ?? id
  const differing = compared.pots.filter((p) => p.over.minor !== 0)
  return (
    <section class="findings" aria-labelledby="findings-title">
      <h2 id="findings-title">
        {t('count_total', {
          counted: amountText(compared.counted),
          expected: amountText(compared.expected),
          over: overText(compared.over),
        })}
      </h2>
      {differing.map((finding) => (
        <div key={finding.pot} class="finding">
          <h3>
            {name(finding.pot)}: {overText(finding.over)}
          </h3>
          {finding.causes.length > 0 && (
            <>
              <p>{t('count_may_be')}</p>
              <ul class="causes">
                {finding.causes.map((cause) => (
                  <li key={JSON.stringify(cause)}>{causeText(cause)}</li>
                ))}
              </ul>
            </>
          )}
          <label class="check">
            <input
              type="checkbox"
              checked={props.posted.has(finding.pot)}
              onChange={(event) => props.onPosted(finding.pot, event.currentTarget.checked)}
            />{' '}
            {t(finding.over.minor > 0 ? 'count_post_over' : 'count_post_short')}
          </label>
        </div>
      ))}
    </section>
  )
}

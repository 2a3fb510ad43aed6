import type { Pot } from '../../../book/household.ts'
import { ofMinor } from '../../../money/money.ts'
import { planFill } from '../../../plan/plan-fill.ts'
import { sayFillLine } from '../../../plan/say-fill.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { planSpeech } from '../plan-speech.ts'
import { ProgressBar } from './progress-bar.tsx'

/** A reserve: how full it is, and where its target comes from. */
export function ReserveLine({ pot }: { pot: Pot }) {
  const { book, view } = useHousehold()
  // The plan of a pay of nothing says what each pot wants and why.
  const plan = planFill(book, ofMinor(book.household.currency, 0), view.today)
  const line = plan.lines.find((one) => one.pot === pot.id)
  if (!line) return null
  const { reason } = line
  const unpaid = { ...line, short: ofMinor(book.household.currency, 0) }
  return (
    <>
      {(reason.code === 'reserve' || reason.code === 'reserve-reached') && (
        <ProgressBar
          value={reason.in.minor}
          most={Math.max(1, reason.target.minor)}
          course={null}
          label={t('goals_progress', { in: amountText(reason.in), target: amountText(reason.target) })}
        />
      )}
      <p>{sayFillLine(book.household, unpaid, view.today, planSpeech())}</p>
    </>
  )
}

import type { Pot } from '../../book/household.ts'
import { nextFill } from '../../book/next-fill.ts'
import { ofMinor } from '../../money/money.ts'
import { amountText } from '../../ui/money-text.ts'
import { shortDate } from '../../ui/short-date.ts'
import { t } from '../../ui/text.ts'
import { useHousehold } from '../household.ts'
import { FundLine } from '../plan/goals/fund-line.tsx'
import { PotPlanLine } from '../plan/goals/pot-plan-line.tsx'
import { ReserveLine } from '../plan/goals/reserve-line.tsx'

/** What is decided for a pot, fact by fact. */
export function PotFacts({ pot }: { pot: Pot }) {
  const { book, view } = useHousehold()
  const text = (minor: number): string => amountText(ofMinor(book.household.currency, minor))
  const next = nextFill(book.household, pot, view.today)
  const { goal } = pot.plan ?? {}
  const facts: [string, string][] = [
    [t('pot_rule'), t(`rule_${pot.rule}`)],
    [t('pot_kind'), t(`kind_${pot.kind}`)],
    [t('pot_sides'), t(`sides_${pot.sides}`)],
    [t('pot_floor'), pot.floor === 0 ? t('pot_no_floor') : text(pot.floor)],
    [t('desk_col_next'), next ? `${shortDate(next.date, true)} · ${amountText(next.amount)}` : t('pot_no_next')],
    ...(goal
      ? [
          [t('goal_due'), `${shortDate(goal.due)} ${goal.due.slice(0, 4)} · ${text(goal.target)}`] satisfies [
            string,
            string,
          ],
        ]
      : []),
  ]
  const Line = pot.kind === 'sinking' ? FundLine : pot.kind === 'reserve' ? ReserveLine : PotPlanLine
  return (
    <>
      <dl class="facts">
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <Line pot={pot} />
    </>
  )
}

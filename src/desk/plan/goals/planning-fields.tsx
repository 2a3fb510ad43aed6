import type { Planning } from '../../../book/planning.ts'
import { piecesOf } from '../../../money/denominations.ts'
import { ofMinor } from '../../../money/money.ts'
import { ask } from '../../../ui/ask.ts'
import { SelectField } from '../../../ui/field.tsx'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { useWrite } from '../use-write.ts'

const ORDERS = ['first', 'after-essentials'] as const

/** How the household plans: when sinking funds have their turn, and to which note amounts are rounded up. */
export function PlanningFields() {
  const { book } = useHousehold()
  const { household } = book
  const { write, error } = useWrite()
  const planning: Planning = household.planning ?? { sinkingFunds: 'after-essentials', roundTo: 1 }
  const save = (next: Planning): void => {
    const earners = household.earners ?? []
    const back = (): Promise<unknown> => ask('plan.save', { earners, planning })
    void write('plan.save', { earners, planning: next }, { said: t('done_saved'), back })
  }
  const pieces = piecesOf(household.currency)
  const steps = [...new Set([1, ...(pieces ? [...pieces.coins, ...pieces.notes] : []), planning.roundTo])]
    .filter((step) => step === 1 || step === planning.roundTo || step >= (pieces?.coins.at(-1) ?? 1))
    .sort((a, b) => a - b)
  return (
    <section class="planning-fields">
      <SelectField
        label={t('planning_order')}
        value={planning.sinkingFunds}
        options={ORDERS.map((value) => ({
          value,
          label: t(value === 'first' ? 'planning_order_first' : 'planning_order_after'),
        }))}
        onValue={(sinkingFunds) => save({ ...planning, sinkingFunds })}
      />
      <SelectField
        label={t('planning_round')}
        value={String(planning.roundTo)}
        options={steps.map((step) => ({
          value: String(step),
          label: step === 1 ? t('planning_round_none') : amountText(ofMinor(household.currency, step)),
        }))}
        onValue={(step) => save({ ...planning, roundTo: Number(step) })}
      />
      <WentWrong error={error} />
    </section>
  )
}

import { useState } from 'preact/hooks'
import type { Pot } from '../../../book/household.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { PageHead } from '../../parts/page-head.tsx'
import { linkTo } from '../../place.ts'
import { FundLine } from './fund-line.tsx'
import { PlanningFields } from './planning-fields.tsx'
import { PotPlanForm } from './pot-plan-form.tsx'
import { PotPlanLine } from './pot-plan-line.tsx'
import { ReserveLine } from './reserve-line.tsx'
import './goals.css'

/** What the pots save for and who comes first: sinking funds, the reserve, and how every other pot is planned. */
export function GoalsPage() {
  const { book } = useHousehold()
  const pots = book.household.pots.filter((pot) => !pot.archived)
  const [edited, setEdited] = useState<string | null>(null)
  const groups = [
    { kind: 'sinking', Line: FundLine },
    { kind: 'reserve', Line: ReserveLine },
    { kind: 'everyday', Line: PotPlanLine },
  ] as const
  return (
    <>
      <PageHead title={t('goals_title')} lead={t('goals_lead')} />
      <PlanningFields />
      {groups.map(({ kind, Line }) => {
        const own = pots.filter((pot) => pot.kind === kind)
        return (
          <section key={kind} class="goals-group">
            <h2>{t(`goals_${kind}`)}</h2>
            {own.length === 0 && <p class="field-hint">{t(`goals_none_${kind}`)}</p>}
            <ul class="goals-list">
              {own.map((pot) => (
                <li key={pot.id}>
                  <div class="goals-line">
                    <h3>
                      <a class="pot-link" href={linkTo('pots', pot.id)}>
                        {pot.name}
                      </a>
                    </h3>
                    <ChangeButton pot={pot} isOpen={edited === pot.id} onOpen={setEdited} />
                  </div>
                  <Line pot={pot} />
                  {edited === pot.id && <PotPlanForm pot={pot} onDone={() => setEdited(null)} />}
                </li>
              ))}
            </ul>
          </section>
        )
      })}
    </>
  )
}

function ChangeButton(props: {
  readonly pot: Pot
  readonly isOpen: boolean
  readonly onOpen: (id: string | null) => void
}) {
  return (
    <button
      type="button"
      class="link"
      aria-expanded={props.isOpen}
      onClick={() => props.onOpen(props.isOpen ? null : props.pot.id)}
    >
      {t('goals_change')}
      <span class="unseen"> {props.pot.name}</span>
    </button>
  )
}

import { useState } from 'preact/hooks'
import type { Earner } from '../../../book/planning.ts'
import { ofMinor } from '../../../money/money.ts'
import { ask } from '../../../ui/ask.ts'
import { amountText } from '../../../ui/money-text.ts'
import { dotted, t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { useWrite } from '../use-write.ts'
import { blankEarner, type EarnerDraft, earnerDraftOf } from './earner-draft.ts'
import { EarnerForm } from './earner-form.tsx'
import { rhythmText } from './rhythm-text.ts'

const DEFAULT_PLANNING = { sinkingFunds: 'after-essentials', roundTo: 1 } as const

/** Whose pay the household lives on, and when it comes. */
export function PaySettings() {
  const { book } = useHousehold()
  const { household } = book
  const earners = household.earners ?? []
  const [edited, setEdited] = useState<EarnerDraft | null>(null)
  const { write, isBusy, error } = useWrite()
  const save = async (next: readonly Earner[]): Promise<void> => {
    const planning = household.planning ?? DEFAULT_PLANNING
    const back = (): Promise<unknown> => ask('plan.save', { earners, planning })
    if (await write('plan.save', { earners: next, planning }, { said: t('done_saved'), back })) setEdited(null)
  }
  return (
    <section class="payday-settings">
      <h2>{t('earners_title')}</h2>
      <ul class="earner-list">
        {earners.map((earner) => (
          <li key={earner.id}>
            <span>{earnerText(earner)}</span>
            <button type="button" class="link" onClick={() => setEdited(earnerDraftOf(earner, household.currency))}>
              {t('earner_change')}
              <span class="unseen"> {earner.name}</span>
            </button>
            <button
              type="button"
              class="link"
              disabled={isBusy}
              onClick={() => void save(earners.filter((one) => one.id !== earner.id))}
            >
              {t('earner_remove')}
              <span class="unseen"> {earner.name}</span>
            </button>
          </li>
        ))}
      </ul>
      {edited ? (
        <EarnerForm
          key={edited.id ?? ''}
          start={edited}
          earners={earners}
          isBusy={isBusy}
          onSave={(next) => void save(next)}
          onCancel={() => setEdited(null)}
        />
      ) : (
        <button type="button" class="add" onClick={() => setEdited(blankEarner)}>
          {t('earner_add')}
        </button>
      )}
      <WentWrong error={error} />
    </section>
  )

  function earnerText(earner: Earner): string {
    const schedule = earner.schedules.at(-1)
    const pay = earner.pay === 0 ? '' : amountText(ofMinor(household.currency, earner.pay))
    return dotted([earner.name || t('earner_nameless'), pay, schedule ? rhythmText(schedule.rhythm) : ''])
  }
}

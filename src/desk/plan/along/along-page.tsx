import { useState } from 'preact/hooks'
import { findPot, hasSide } from '../../../book/household.ts'
import type { PotId } from '../../../book/ids.ts'
import { takeAlong } from '../../../plan/take-along.ts'
import { useDrafts } from '../../../ui/draft.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { Empty } from '../../parts/empty.tsx'
import { PageHead } from '../../parts/page-head.tsx'
import { BackHome } from './back-home.tsx'
import './along.css'

const DRAFT = 'trip'

/** Going out: which envelopes to carry and what of each is free; and coming back, what was spent. */
export function AlongPage() {
  const { book } = useHousehold()
  const { household } = book
  const drafts = useDrafts()
  const pots = household.pots.filter((pot) => !pot.archived && hasSide(pot, 'cash'))
  const [chosen, setChosen] = useState<readonly PotId[]>(() => {
    const kept = drafts.read(DRAFT)
    return Array.isArray(kept) ? pots.filter((pot) => kept.includes(pot.id)).map((pot) => pot.id) : []
  })
  const choose = (ids: readonly PotId[]): void => {
    setChosen(ids)
    drafts.write(DRAFT, ids)
  }
  const trip = takeAlong(
    book,
    chosen.filter((id) => pots.some((pot) => pot.id === id)),
  )
  const nameOf = (id: PotId): string => findPot(household, id).name
  return (
    <>
      <PageHead title={t('along_title')} lead={t('along_lead')} />
      {pots.length === 0 && <Empty title={t('along_no_pots')} />}
      <fieldset class="along-choose no-print">
        <legend>{t('along_purposes')}</legend>
        <div class="checks">
          {pots.map((pot) => (
            <label key={pot.id} class="check">
              <input
                type="checkbox"
                checked={chosen.includes(pot.id)}
                onChange={(event) => {
                  const others = chosen.filter((id) => id !== pot.id)
                  choose(event.currentTarget.checked ? [...others, pot.id] : others)
                }}
              />
              <span>{pot.name}</span>
            </label>
          ))}
        </div>
      </fieldset>
      {chosen.length > 0 && (
        <section class="along-carry">
          <h2>{t(trip.carry.length > 0 ? 'along_carry' : 'along_carry_none')}</h2>
          <ul>
            {trip.carry.map(({ pot, freeCash, cash, spokenFor }) => (
              <li key={pot}>
                <span class="along-name">{nameOf(pot)}</span>
                <span class="along-free">{amountText(freeCash)}</span>
                {spokenFor.minor > 0 && (
                  <span class="along-spoken">
                    {t('along_spoken', { cash: amountText(cash), spoken: amountText(spokenFor) })}
                  </span>
                )}
              </li>
            ))}
          </ul>
          {trip.stay.map(({ pot, code }) => (
            <p key={pot} class="field-hint">
              {t(code === 'no-notes' ? 'along_stay_no_notes' : 'along_stay_spoken', { pot: nameOf(pot) })}
            </p>
          ))}
          {trip.carry.length > 0 && (
            <div class="buttons no-print">
              <button type="button" onClick={() => print()}>
                {t('print')}
              </button>
            </div>
          )}
        </section>
      )}
      {trip.carry.length > 0 && <BackHome trip={trip} onDone={() => choose([])} />}
    </>
  )
}

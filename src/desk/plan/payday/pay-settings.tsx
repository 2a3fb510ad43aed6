import { useState } from 'preact/hooks'
import { type CalendarDate, isCalendarDate } from '../../../book/calendar-date.ts'
import type { Earner, PaySchedule } from '../../../book/planning.ts'
import { ofMinor } from '../../../money/money.ts'
import { changeRhythm } from '../../../plan/change-rhythm.ts'
import { readAmount } from '../../../ui/amount-text.ts'
import { locale } from '../../../ui/browser.ts'
import { DateField, SelectField, TextField } from '../../../ui/field.tsx'
import { editText } from '../../../ui/money-text.ts'
import { slugOf } from '../../../ui/slug-of.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { useWrite } from '../use-write.ts'
import { WentWrong } from '../went-wrong.tsx'

const RHYTHMS = ['weekly', 'every-two-weeks', 'twice-a-month', 'monthly', 'last-working-day'] as const
type Rhythm = (typeof RHYTHMS)[number]
const WEEKENDS = ['stays', 'before', 'after'] as const
const DEFAULT_PLANNING = { sinkingFunds: 'after-essentials', roundTo: 1 } as const

/** An earner while being typed. A new rhythm begins with `next`; the one before holds until the day before it. */
interface EarnerDraft {
  readonly id: string | null
  readonly name: string
  readonly pay: string
  readonly rhythm: Rhythm
  readonly next: string
  readonly otherDay: string
  readonly weekend: (typeof WEEKENDS)[number]
}

/** Whose pay the household lives on, and when it comes. */
export function PaySettings() {
  const { book, view } = useHousehold()
  const { household } = book
  const earners = household.earners ?? []
  const [draft, setDraft] = useState<EarnerDraft | null>(null)
  const [wasTried, setTried] = useState(false)
  const { write, isBusy, error } = useWrite()
  const planning = household.planning ?? DEFAULT_PLANNING
  const problems = draft ? problemsOf(draft) : {}

  const save = async (next: readonly Earner[]): Promise<void> => {
    if (await write('plan.save', { earners: next, planning })) setDraft(null)
  }
  const submit = (): void => {
    setTried(true)
    if (!draft) return
    const pay = readPay(draft.pay)
    if (Object.keys(problems).length > 0 || pay === null || !isCalendarDate(draft.next)) return
    const before = earners.find((earner) => earner.id === draft.id)
    const id =
      before?.id ??
      slugOf(
        draft.name,
        earners.map((earner) => earner.id),
      )
    const schedules = schedulesOf(before, scheduleOf(draft, draft.next))
    const earner = { id, name: draft.name.trim(), pay, schedules }
    void save(before ? earners.map((one) => (one.id === id ? earner : one)) : [...earners, earner])
  }
  return (
    <section class="payday-settings">
      <h2>{t('earners_title')}</h2>
      <ul class="earner-list">
        {earners.map((earner) => (
          <li key={earner.id}>
            <span>{earnerText(earner)}</span>
            <button
              type="button"
              class="link"
              onClick={() => {
                setTried(false)
                setDraft(draftOf(earner))
              }}
            >
              {t('earner_change')}
            </button>
            <button
              type="button"
              class="link"
              disabled={isBusy}
              onClick={() => void save(earners.filter((one) => one.id !== earner.id))}
            >
              {t('earner_remove')}
            </button>
          </li>
        ))}
      </ul>
      {!draft && (
        <button
          type="button"
          class="add"
          onClick={() => {
            setTried(false)
            setDraft({ id: null, name: '', pay: '', rhythm: 'monthly', next: '', otherDay: '', weekend: 'before' })
          }}
        >
          {t('earner_add')}
        </button>
      )}
      {draft && (
        <form
          class="payday-form"
          noValidate
          onSubmit={(event) => {
            event.preventDefault()
            submit()
          }}
        >
          <TextField
            label={t('earner_name')}
            value={draft.name}
            onValue={(name) => setDraft({ ...draft, name })}
            error={wasTried && problems.name ? t('error_name_empty') : null}
          />
          <TextField
            label={t('earner_pay')}
            isAmount
            maxLength={40}
            value={draft.pay}
            onValue={(pay) => setDraft({ ...draft, pay })}
            hint={t('earner_pay_hint')}
            error={wasTried && problems.pay ? t('error_amount_not_a_number', { currency: household.currency }) : null}
          />
          <SelectField
            label={t('pay_rhythm')}
            value={draft.rhythm}
            options={RHYTHMS.map((value) => ({ value, label: rhythmText(value) }))}
            onValue={(rhythm) => setDraft({ ...draft, rhythm })}
          />
          <DateField
            label={t('pay_next')}
            value={draft.next}
            onValue={(next) => setDraft({ ...draft, next })}
            error={wasTried && problems.next ? t('error_pay_missing') : null}
          />
          {draft.rhythm === 'twice-a-month' && (
            <TextField
              label={t('pay_other_day')}
              value={draft.otherDay}
              onValue={(otherDay) => setDraft({ ...draft, otherDay })}
              error={wasTried && problems.otherDay ? t('error_pay_other_day') : null}
            />
          )}
          <SelectField
            label={t('earner_weekend')}
            value={draft.weekend}
            options={WEEKENDS.map((value) => ({ value, label: t(`weekend_${value}`) }))}
            onValue={(weekend) => setDraft({ ...draft, weekend })}
          />
          <p class="field-hint">{t('earner_rhythm_hint')}</p>
          <WentWrong error={error} />
          <div class="buttons">
            <button type="submit" class="primary" disabled={isBusy}>
              {t('earner_save')}
            </button>
            <button type="button" onClick={() => setDraft(null)}>
              {t('cancel')}
            </button>
          </div>
        </form>
      )}
      {!draft && <WentWrong error={error} />}
    </section>
  )

  function readPay(text: string): number | null {
    if (text.trim() === '') return 0
    const read = readAmount(text, household.currency, locale())
    return read.ok ? read.money.minor : null
  }
  function problemsOf(typed: EarnerDraft): { name?: true; pay?: true; next?: true; otherDay?: true } {
    const isDay = /^\d{1,2}$/.test(typed.otherDay.trim()) && Number(typed.otherDay) >= 1 && Number(typed.otherDay) <= 31
    return {
      ...(typed.name.trim() === '' ? { name: true as const } : {}),
      ...(readPay(typed.pay) === null ? { pay: true as const } : {}),
      ...(isCalendarDate(typed.next) ? {} : { next: true as const }),
      ...(typed.rhythm === 'twice-a-month' && !isDay ? { otherDay: true as const } : {}),
    }
  }
  function draftOf(earner: Earner): EarnerDraft {
    const schedule = earner.schedules.at(-1)
    return {
      id: earner.id,
      name: earner.name,
      pay: earner.pay === 0 ? '' : editText(ofMinor(household.currency, earner.pay)),
      rhythm: schedule?.rhythm ?? 'monthly',
      next: schedule?.first ?? view.today,
      otherDay: schedule?.rhythm === 'twice-a-month' ? String(schedule.days[1]) : '',
      weekend: schedule?.weekend ?? 'stays',
    }
  }
  function earnerText(earner: Earner): string {
    const schedule = earner.schedules.at(-1)
    const pay = earner.pay === 0 ? '' : editText(ofMinor(household.currency, earner.pay))
    return [earner.name || t('earner_nameless'), pay, schedule ? rhythmText(schedule.rhythm) : '']
      .filter((part) => part !== '')
      .join(' · ')
  }
}

/** The same beginning is the same rhythm put right; another one is a change, and what was before stays as it was. */
function schedulesOf(before: Earner | undefined, next: PaySchedule): readonly PaySchedule[] {
  const last = before?.schedules.at(-1)
  if (!before || !last) return [next]
  return last.first === next.first ? [...before.schedules.slice(0, -1), next] : changeRhythm(before.schedules, next)
}

function scheduleOf(draft: EarnerDraft, first: CalendarDate): PaySchedule {
  const day = Number(first.slice(8))
  const base = { first, ...(draft.weekend === 'stays' ? {} : { weekend: draft.weekend }) }
  if (draft.rhythm === 'monthly') return { ...base, rhythm: 'monthly', day }
  if (draft.rhythm === 'twice-a-month') return { ...base, rhythm: 'twice-a-month', days: [day, Number(draft.otherDay)] }
  return { ...base, rhythm: draft.rhythm }
}

function rhythmText(rhythm: Rhythm): string {
  if (rhythm === 'every-two-weeks') return t('rhythm_two_weeks')
  return t(
    rhythm === 'twice-a-month'
      ? 'rhythm_twice_a_month'
      : rhythm === 'last-working-day'
        ? 'rhythm_last_working_day'
        : rhythm === 'weekly'
          ? 'rhythm_weekly'
          : 'rhythm_monthly',
  )
}

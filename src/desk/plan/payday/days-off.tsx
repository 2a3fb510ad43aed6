import { useState } from 'preact/hooks'
import { type CalendarDate, isCalendarDate } from '../../../book/calendar-date.ts'
import { DateField } from '../../../ui/field.tsx'
import { shortDate } from '../../../ui/short-date.ts'
import { t } from '../../../ui/text.ts'

/** Days on which the bank does not pay, beside Saturdays and Sundays: a pay that falls on one is moved like those. */
export function DaysOff(props: {
  readonly days: readonly CalendarDate[]
  readonly onDays: (days: readonly CalendarDate[]) => void
}) {
  const { days, onDays } = props
  const [typed, setTyped] = useState('')
  const add = (): void => {
    if (!isCalendarDate(typed)) return
    onDays([...new Set([...days, typed])].sort())
    setTyped('')
  }
  return (
    <fieldset class="days-off">
      <legend>{t('earner_days_off')}</legend>
      <p class="field-hint">{t('earner_days_off_hint')}</p>
      <ul>
        {days.map((day) => (
          <li key={day}>
            <span>
              {shortDate(day, true)} {day.slice(0, 4)}
            </span>
            <button
              type="button"
              class="link"
              aria-label={t('earner_day_off_remove', { date: `${shortDate(day)} ${day.slice(0, 4)}` })}
              onClick={() => onDays(days.filter((other) => other !== day))}
            >
              {t('earner_remove')}
            </button>
          </li>
        ))}
      </ul>
      <div class="days-off-add">
        <DateField label={t('earner_day_off')} value={typed} onValue={setTyped} />
        <button type="button" disabled={!isCalendarDate(typed)} onClick={add}>
          {t('earner_day_off_add')}
        </button>
      </div>
    </fieldset>
  )
}

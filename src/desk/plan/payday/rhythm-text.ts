import type { PaySchedule } from '../../../book/planning.ts'
import { t } from '../../../ui/text.ts'

/** A rhythm of pay in words. */
export function rhythmText(rhythm: PaySchedule['rhythm']): string {
  switch (rhythm) {
    case 'weekly':
      return t('rhythm_weekly')
    case 'every-two-weeks':
      return t('rhythm_two_weeks')
    case 'twice-a-month':
      return t('rhythm_twice_a_month')
    case 'monthly':
      return t('rhythm_monthly')
    case 'last-working-day':
      return t('rhythm_last_working_day')
  }
}

import type { MonthName } from '../../../book/month.ts'
import { t, tn } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'

/** How often the guard held an order in a month, and why. */
export function HeldList({ month }: { month: MonthName }) {
  const counts = useHousehold().view.held[month]
  const said = [
    { count: counts?.untagged ?? 0, key: 'review_held_untagged' as const },
    { count: counts?.changed ?? 0, key: 'review_held_changed' as const },
    { count: counts?.['placed-before'] ?? 0, key: 'review_held_placed_before' as const },
  ].filter(({ count }) => count > 0)
  return (
    <section>
      <h2>{t('review_held')}</h2>
      {said.length === 0 ? (
        <p>{t('review_held_none')}</p>
      ) : (
        <ul>
          {said.map(({ count, key }) => (
            <li key={key}>{tn(key, count)}</li>
          ))}
        </ul>
      )}
    </section>
  )
}

import { useMemo, useState } from 'preact/hooks'
import { entriesOf } from '../../../book/book.ts'
import type { PotId } from '../../../book/ids.ts'
import { isMonthName, type MonthName, monthAfter, monthOf } from '../../../book/month.ts'
import { review } from '../../../monthend/review.ts'
import { SelectField } from '../../../ui/field.tsx'
import { monthText } from '../../../ui/month-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import type { PageProps } from '../../pages.ts'
import { PageHead } from '../../parts/page-head.tsx'
import { linkTo } from '../../place.ts'
import { HeldList } from './held-list.tsx'
import { MonthBars } from './month-bars.tsx'
import { ReviewTable } from './review-table.tsx'
import { WentAheadList } from './went-ahead-list.tsx'
import '../monthend.css'

const ALL = 'all'

/** A month looked back on: budgeted against actual, pictures of three and twelve months, warnings gone past. */
export function ReviewPage({ rest }: PageProps) {
  const { book, view } = useHousehold()
  const months = useMemo(() => {
    let first = view.today
    for (const { date } of entriesOf(book)) if (date < first) first = date
    const start = book.household.monthStartDay
    const found: MonthName[] = []
    for (let m = monthOf(first, start); m <= monthOf(view.today, start); m = monthAfter(m)) found.push(m)
    return found.reverse()
  }, [book, view.today])
  const [asked = ''] = rest
  const month = isMonthName(asked) && months.includes(asked) ? asked : months[0]
  const [pot, setPot] = useState<PotId | typeof ALL>(ALL)
  const [span, setSpan] = useState<'3' | '12'>('3')
  const found = useMemo(() => (month === undefined ? null : review(book, month)), [book, month])
  if (!found || month === undefined) return null
  const pictures = span === '3' ? found.threeMonths : found.twelveMonths
  const picture = pictures.find((p) => p.pot === (pot === ALL ? null : pot))
  const pots = book.household.pots
  return (
    <>
      <PageHead title={t('review_title', { month: monthText(month) })} lead={t('review_lead')} isPrinted>
        <SelectField
          label={t('review_month')}
          value={month}
          options={months.map((m) => ({ value: m, label: monthText(m) }))}
          onValue={(m) => {
            location.hash = linkTo('review', m)
          }}
        />
      </PageHead>
      <ReviewTable found={found} />
      <section aria-labelledby="picture-title">
        <h2 id="picture-title">{t('review_pictures')}</h2>
        <div class="picture-choices no-print">
          <SelectField
            label={t('desk_col_pot')}
            value={pot}
            options={[
              { value: ALL, label: t('review_all_pots') },
              ...pots.map((p) => ({ value: p.id, label: p.name })),
            ]}
            onValue={setPot}
          />
          <SelectField
            label={t('review_span')}
            value={span}
            options={[
              { value: '3', label: t('review_three') },
              { value: '12', label: t('review_twelve') },
            ]}
            onValue={setSpan}
          />
        </div>
        {picture && <MonthBars picture={picture} />}
      </section>
      <WentAheadList found={found} />
      <HeldList month={month} />
    </>
  )
}

import { useState } from 'preact/hooks'
import { isMonthName, type MonthName, monthAfter, monthEnd, monthOf, monthStart } from '../../../book/month.ts'
import { potSheet } from '../../../plan/sheet.ts'
import { SelectField } from '../../../ui/field.tsx'
import { monthText } from '../../../ui/month-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import type { PageProps } from '../../pages.ts'
import { Empty } from '../../parts/empty.tsx'
import { PageHead } from '../../parts/page-head.tsx'
import { linkTo } from '../../place.ts'
import { PAPERS } from './paper-faces.ts'
import { PaperLines } from './paper-lines.tsx'
import { SheetPaper } from './sheet-paper.tsx'
import { SheetTable } from './sheet-table.tsx'
import './sheets.css'

const WHICH = ['one', 'all'] as const

/** A pot's sheet for a month: to read, to print for its envelope, and to type in what was written on paper. */
export function SheetsPage({ rest }: PageProps) {
  const { book, view } = useHousehold()
  const { household } = book
  const { monthStartDay } = household
  const [paperName, setPaperName] = useState<(typeof PAPERS)[number]['name']>('a6')
  const [which, setWhich] = useState<(typeof WHICH)[number]>('one')
  const pots = household.pots.filter((pot) => !pot.archived || pot.id === rest[0])
  const pot = pots.find((one) => one.id === rest[0]) ?? pots[0]
  const now = monthOf(view.today, monthStartDay)
  const asked = rest[1] ?? ''
  const month: MonthName = isMonthName(asked) ? asked : now
  if (!pot) {
    return (
      <>
        <PageHead title={t('sheets_title')} lead={t('sheets_lead')} />
        <Empty title={t('sheets_no_pots')}>
          <p>
            <a href={linkTo('pots')}>{t('pot_add')}</a>
          </p>
        </Empty>
      </>
    )
  }
  const [from, to] = [monthStart(month, monthStartDay), monthEnd(month, monthStartDay)]
  const paper = PAPERS.find((one) => one.name === paperName) ?? PAPERS[0]
  const printed = which === 'all' ? pots : [pot]
  return (
    <>
      <PageHead title={t('sheets_title')} lead={t('sheets_lead')} />
      <div class="sheets-choose no-print">
        <SelectField
          label={t('desk_col_pot')}
          value={pot.id}
          options={pots.map((one) => ({ value: one.id, label: one.name }))}
          onValue={(id) => {
            location.hash = linkTo('sheets', id, month)
          }}
        />
        <nav class="sheets-month" aria-label={t('sheets_month')}>
          <a href={linkTo('sheets', pot.id, monthAfter(month, -1))}>{monthText(monthAfter(month, -1))}</a>
          <strong>{monthText(month)}</strong>
          {month < now && <a href={linkTo('sheets', pot.id, monthAfter(month))}>{monthText(monthAfter(month))}</a>}
        </nav>
      </div>
      <div class="no-print">
        <SheetTable sheet={potSheet(book, pot.id, from, to)} pot={pot} />
      </div>
      <section class="sheets-print no-print">
        <h2>{t('sheets_on_paper')}</h2>
        <p class="page-lead">{t('sheets_paper_hint')}</p>
        <div class="sheets-choose">
          <SelectField
            label={t('sheets_paper')}
            value={paperName}
            options={PAPERS.map(({ name }) => ({ value: name, label: t(`paper_${name}`) }))}
            onValue={setPaperName}
          />
          <SelectField
            label={t('sheets_which')}
            value={which}
            options={WHICH.map((value) => ({ value, label: t(`sheets_which_${value}`) }))}
            onValue={setWhich}
          />
          <button type="button" class="primary" onClick={() => print()}>
            {t('print')}
          </button>
        </div>
      </section>
      <PaperLines key={pot.id} pot={pot} />
      {paper && (
        <div class="print-only">
          {printed.map((one) => (
            <SheetPaper key={one.id} sheet={potSheet(book, one.id, from, to)} pot={one} paper={paper} month={month} />
          ))}
        </div>
      )}
    </>
  )
}

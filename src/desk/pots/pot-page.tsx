import { useState } from 'preact/hooks'
import type { Entry } from '../../book/entry.ts'
import { findPot, type Pot } from '../../book/household.ts'
import { isMonthName, type MonthName, monthAfter, monthEnd, monthOf, monthStart } from '../../book/month.ts'
import { reverse } from '../../book/reverse.ts'
import { potSheet } from '../../plan/sheet.ts'
import { monthText } from '../../ui/month-text.ts'
import { t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { useIds } from '../monthend/ids.ts'
import { Empty } from '../parts/empty.tsx'
import { PageHead } from '../parts/page-head.tsx'
import { TwoSides } from '../parts/two-sides.tsx'
import { linkTo } from '../place.ts'
import { PotPlanForm } from '../plan/goals/pot-plan-form.tsx'
import { PaperLines } from '../plan/sheets/paper-lines.tsx'
import { SheetTable } from '../plan/sheets/sheet-table.tsx'
import { useWrite } from '../plan/use-write.ts'
import { PotFacts } from './pot-facts.tsx'
import { PotSettings } from './pot-settings.tsx'
import '../plan/sheets/sheets.css'
import '../plan/goals/goals.css'

/** One pot: its two sides, its rule and plan, and its sheet with every line. */
export function PotPage({ id, month: asked }: { id: string; month: string }) {
  const { book, view } = useHousehold()
  const pot = book.household.pots.find((p) => p.id === id)
  const back = { href: linkTo('pots'), text: t('pots_back') }
  if (!pot) {
    return (
      <>
        <PageHead title={t('pot_gone_title')} back={back} />
        <Empty title={t('pot_gone')} />
      </>
    )
  }
  const balance = view.balances[pot.id]
  const month: MonthName = isMonthName(asked) ? asked : monthOf(view.today, book.household.monthStartDay)
  return (
    <>
      <PageHead title={pot.name} lead={pot.archived ? t('pot_is_archived') : t(`kind_${pot.kind}`)} back={back} />
      {balance && <TwoSides balance={balance} notches={pot.fill} />}
      <About pot={findPot(book.household, pot.id)} />
      <SheetOf pot={pot} month={month} />
      {!pot.archived && <PaperLines key={pot.id} pot={pot} />}
    </>
  )
}

/** What is decided for the pot, and the forms that change it. */
function About({ pot }: { pot: Pot }) {
  const [open, setOpen] = useState<'rule' | 'plan' | null>(null)
  const close = (): void => setOpen(null)
  return (
    <section class="panel" aria-labelledby="pot-about">
      <div class="panel-head">
        <h2 id="pot-about">{t('pot_about')}</h2>
        {open === null && (
          <div class="buttons">
            <button type="button" onClick={() => setOpen('rule')}>
              {t('pot_change_rule')}
            </button>
            {!pot.archived && (
              <button type="button" onClick={() => setOpen('plan')}>
                {t('pot_change_plan')}
              </button>
            )}
          </div>
        )}
      </div>
      {open === null && <PotFacts pot={pot} />}
      {open === 'rule' && <PotSettings pot={pot} onDone={close} />}
      {open === 'plan' && <PotPlanForm pot={pot} onDone={close} />}
    </section>
  )
}

/** The pot's running register for a month; its latest line can be taken back. */
function SheetOf({ pot, month }: { pot: Pot; month: MonthName }) {
  const { book, view } = useHousehold()
  const { write, isBusy, error } = useWrite()
  const ids = useIds()
  const { monthStartDay } = book.household
  const now = monthOf(view.today, monthStartDay)
  const canTakeBack = (entry: Entry): boolean => {
    try {
      return Boolean(reverse(book, { id: entry.id, device: view.device, date: view.today }, entry.id))
    } catch {
      return false
    }
  }
  const sheet = potSheet(book, pot.id, monthStart(month, monthStartDay), monthEnd(month, monthStartDay))
  return (
    <section class="pot-sheet" aria-labelledby="pot-sheet">
      <div class="panel-head">
        <h2 id="pot-sheet">{t('pot_sheet', { month: monthText(month) })}</h2>
        <nav class="sheets-month" aria-label={t('sheets_month')}>
          <a href={linkTo('pots', pot.id, monthAfter(month, -1))}>{monthText(monthAfter(month, -1))}</a>
          {month < now && <a href={linkTo('pots', pot.id, monthAfter(month))}>{monthText(monthAfter(month))}</a>}
          <a href={linkTo('sheets', pot.id, month)}>{t('pot_sheet_print')}</a>
        </nav>
      </div>
      <SheetTable
        sheet={sheet}
        pot={pot}
        canTakeBack={canTakeBack}
        isBusy={isBusy}
        onTakeBack={(target) => void write('entry.undo', { id: ids.entry(`undo ${target}`), target })}
      />
      <WentWrong error={error} />
    </section>
  )
}

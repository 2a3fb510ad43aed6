import { useMemo, useState } from 'preact/hooks'
import { addDays } from '../../../book/calendar-date.ts'
import type { SweepTarget } from '../../../book/entry.ts'
import type { PotId } from '../../../book/ids.ts'
import { type MonthName, monthAfter, monthNamed } from '../../../book/month.ts'
import { toDecimal } from '../../../money/money.ts'
import { leftovers } from '../../../monthend/close-plan.ts'
import { learnBudget } from '../../../plan/learn-budget.ts'
import { readAmount } from '../../../ui/amount-text.ts'
import { locale } from '../../../ui/browser.ts'
import { editText } from '../../../ui/money-text.ts'
import { monthText } from '../../../ui/month-text.ts'
import { t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { useWrite } from '../../plan/use-write.ts'
import { useIds } from '../ids.ts'
import { Budgets } from './budgets.tsx'
import { type LeftoverChoice, LeftoverRow } from './leftover-row.tsx'
import { Ready } from './ready.tsx'

/** The decisions of a close, and the button that makes them. */
export function CloseForm({ month, onClosed }: { month: MonthName; onClosed: () => void }) {
  const { book } = useHousehold()
  const { write, isBusy, error } = useWrite()
  const ids = useIds()
  const { household } = book
  const left = useMemo(() => leftovers(book, month), [book, month])
  const [choices, setChoices] = useState<Readonly<Record<PotId, LeftoverChoice>>>({})
  const [texts, setTexts] = useState<Readonly<Record<PotId, string>>>({})
  const learnt = useMemo(() => {
    const after = addDays(monthNamed(household, month).to, 1)
    return household.pots
      .filter((p) => !p.archived && p.kind === 'everyday')
      .map((p) => ({ pot: p, learnt: learnBudget(book, p.id, after) }))
  }, [book, month])
  const budgets = learnt.flatMap(({ pot, learnt: { suggested } }) => {
    const text = texts[pot.id] ?? (suggested ? editText(suggested) : '')
    if (text.trim() === '') return []
    const read = readAmount(text, household.currency, locale())
    return [{ pot: pot.id, monthly: read.ok ? toDecimal(read.money) : null }]
  })
  const sweeps = left.flatMap((leftover) => {
    const choice = choices[leftover.pot]
    return choice && choice.to !== null
      ? [{ pot: leftover.pot, to: choice.to, cash: toDecimal(leftover.cash), card: toDecimal(leftover.card) }]
      : []
  })
  const isReady = budgets.every((b) => b.monthly !== null) && !sweeps.some((s) => isNameless(s.to))
  const close = async (): Promise<void> => {
    const payload = {
      month,
      sweeps: sweeps.map((sweep) => ({ ...sweep, id: ids.entry(`sweep ${month} ${JSON.stringify(sweep)}`) })),
      budgets: budgets.flatMap(({ pot, monthly }) => (monthly === null ? [] : [{ pot, monthly }])),
    }
    const id = ids.entry(`close ${JSON.stringify(payload)} ${book.length}`)
    if (await write('month.close', { id, ...payload })) onClosed()
  }
  return (
    <>
      <Ready month={month} />
      <section aria-labelledby="left-title">
        <h2 id="left-title">{t('close_leftovers')}</h2>
        {left.length === 0 && <p>{t('close_no_leftovers')}</p>}
        <ul class="leftovers">
          {left.map((leftover) => (
            <LeftoverRow
              key={leftover.pot}
              leftover={leftover}
              choice={choices[leftover.pot] ?? { to: null }}
              onChoice={(choice) => setChoices({ ...choices, [leftover.pot]: choice })}
            />
          ))}
        </ul>
      </section>
      <Budgets
        title={t('close_next', { month: monthText(monthAfter(month)) })}
        rows={learnt}
        texts={texts}
        onText={(pot, text) => setTexts({ ...texts, [pot]: text })}
      />
      <WentWrong error={error} />
      <button type="button" class="primary" disabled={isBusy || !isReady} onClick={() => void close()}>
        {t('close_now', { month: monthText(month) })}
      </button>
    </>
  )
}

function isNameless(to: SweepTarget): boolean {
  return 'debt' in to && to.debt.trim() === ''
}

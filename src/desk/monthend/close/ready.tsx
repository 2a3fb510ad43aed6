import { useMemo } from 'preact/hooks'
import { entriesOf, isReversed } from '../../../book/book.ts'
import { addDays } from '../../../book/calendar-date.ts'
import { hasSide } from '../../../book/household.ts'
import { type MonthName, monthNamed } from '../../../book/month.ts'
import { countedPieces } from '../../../monthend/count-pieces.ts'
import { OutcomeMark } from '../../../ui/mark.tsx'
import { listText, t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'

/** What should be done before the close: statements agreed, envelopes counted. It is said, and stops nobody. */
export function Ready({ month }: { month: MonthName }) {
  const { book } = useHousehold()
  const { household } = book
  const state = useMemo(() => {
    const { from, to } = monthNamed(household, month)
    // Banks close a month some days before or after the household does.
    const near = addDays(to, -7)
    const agreed = new Set<string>()
    for (const entry of entriesOf(book)) {
      if (entry.kind === 'agree' && entry.on >= near && !isReversed(book, entry.id)) agreed.add(entry.account)
    }
    const counted = countedPieces(book)
    const isCounted = (pot: (typeof household.pots)[number]): boolean => {
      const count = counted.get(pot.id)?.count
      return count !== undefined && count.date >= from
    }
    return {
      accounts: household.accounts.filter((a) => !agreed.has(a.id)).map((a) => a.name),
      pots: household.pots.filter((p) => !p.archived && hasSide(p, 'cash') && !isCounted(p)).map((p) => p.name),
    }
  }, [book, month])
  return (
    <ul class="ready">
      <li>
        <OutcomeMark outcome={state.accounts.length === 0 ? 'allow' : 'warn'} />{' '}
        {state.accounts.length === 0 ? (
          t('close_agreed')
        ) : (
          <>
            {t('close_not_agreed', { accounts: listText(state.accounts) })}{' '}
            <a href="#/statement">{t('close_to_statement')}</a>
          </>
        )}
      </li>
      <li>
        <OutcomeMark outcome={state.pots.length === 0 ? 'allow' : 'warn'} />{' '}
        {state.pots.length === 0 ? (
          t('close_counted')
        ) : (
          <>
            {t('close_not_counted', { pots: listText(state.pots) })} <a href="#/count">{t('settle_to_count')}</a>
          </>
        )}
      </li>
    </ul>
  )
}

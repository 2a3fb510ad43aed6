import { useState } from 'preact/hooks'
import type { ClosedMonth } from '../../../book/close.ts'
import type { SideFigures } from '../../../book/month-figures.ts'
import { ofMinor } from '../../../money/money.ts'
import { TextField } from '../../../ui/field.tsx'
import { amountText } from '../../../ui/money-text.ts'
import { monthText } from '../../../ui/month-text.ts'
import { Notice } from '../../../ui/notice.tsx'
import { shortDate } from '../../../ui/short-date.ts'
import { t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { PageHead } from '../../parts/page-head.tsx'
import { TableBox } from '../../parts/table-box.tsx'
import { linkTo } from '../../place.ts'
import { useWrite } from '../../plan/use-write.ts'
import { useIds } from '../ids.ts'

/** A month as it was signed off: its figures, to be printed, and the way to open it again. */
export function Summary({ closed: { entry, agrees } }: { closed: ClosedMonth }) {
  const { book } = useHousehold()
  const { summary } = entry
  const text = (minor: number): string => amountText(ofMinor(book.household.currency, minor))
  const both = (side: SideFigures): string => text(side.cash + side.card)
  const columns = ['carriedIn', 'filled', 'spent', 'counted', 'swept', 'carriedOut'] as const
  return (
    <>
      <PageHead
        title={t('summary_title', { month: monthText(entry.month) })}
        back={{ href: linkTo('close'), text: t('summary_back') }}
        isPrinted
      >
        <button type="button" onClick={() => print()}>
          {t('settle_print')}
        </button>
      </PageHead>
      <p class="page-lead">
        {t('summary_signed', { date: shortDate(entry.date), from: shortDate(summary.from), to: shortDate(summary.to) })}
      </p>
      {agrees ? (
        <Notice outcome="allow">{t('summary_agrees')}</Notice>
      ) : (
        <Notice outcome="warn">{t('summary_disagrees')}</Notice>
      )}
      <TableBox label={t('summary_pots')}>
        <table class="review-table">
          <caption>{t('summary_pots')}</caption>
          <thead>
            <tr>
              <th scope="col">{t('desk_col_pot')}</th>
              {columns.map((column) => (
                <th key={column} scope="col" class="figure">
                  {t(`summary_${column}`)}
                </th>
              ))}
              <th scope="col" class="figure">
                {t('summary_held')}
              </th>
            </tr>
          </thead>
          <tbody>
            {summary.pots.map((pot) => (
              <tr key={pot.pot}>
                <th scope="row">{pot.name}</th>
                {columns.map((column) => (
                  <td key={column} class="figure">
                    {both(pot[column])}
                  </td>
                ))}
                <td class="figure">{text(pot.held)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableBox>
      <TableBox label={t('summary_accounts')}>
        <table>
          <caption>{t('summary_accounts')}</caption>
          <tbody>
            {summary.accounts.map((account) => (
              <tr key={account.account}>
                <th scope="row">{account.name}</th>
                <td>
                  {account.agreedOn
                    ? t('summary_agreed_on', { date: shortDate(account.agreedOn) })
                    : t('summary_not_agreed')}
                </td>
                <td class="figure">{text(account.balance)}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">{t('balance_unplaced')}</th>
              <td />
              <td class="figure">{text(summary.unplaced)}</td>
            </tr>
          </tbody>
        </table>
      </TableBox>
      <p class="digest">
        {t('summary_digest')} <code>{entry.digest}</code>
      </p>
      <p class="no-print">
        <a href={linkTo('review', entry.month)}>{t('summary_review')}</a>
      </p>
      <Reopen closed={{ entry, agrees }} />
    </>
  )
}

function Reopen({ closed: { entry } }: { closed: ClosedMonth }) {
  const { write, isBusy, error } = useWrite()
  const ids = useIds()
  const [reason, setReason] = useState('')
  const reopen = async (): Promise<void> => {
    const id = ids.entry(`reopen ${entry.id} ${reason}`)
    if (await write('month.reopen', { id, month: entry.month, reason })) location.hash = linkTo('close')
  }
  return (
    <details class="no-print">
      <summary>{t('reopen_title')}</summary>
      <p class="field-hint">{t('reopen_hint')}</p>
      <TextField label={t('reopen_reason')} value={reason} maxLength={300} onValue={setReason} />
      <WentWrong error={error} />
      <button type="button" disabled={isBusy || reason.trim() === ''} onClick={() => void reopen()}>
        {t('reopen_now', { month: monthText(entry.month) })}
      </button>
    </details>
  )
}

import { useMemo } from 'preact/hooks'
import { findEntry } from '../../../book/book.ts'
import { toDecimal } from '../../../money/money.ts'
import {
  type BalanceExplanation,
  type BalanceItem,
  explainBalances,
  type StatementClose,
} from '../../../monthend/agree-balance.ts'
import { useActionId } from '../../../ui/action-id.ts'
import { amountText } from '../../../ui/money-text.ts'
import { Notice } from '../../../ui/notice.tsx'
import { sayEntry } from '../../../ui/say-entry.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { TableBox } from '../../parts/table-box.tsx'
import { useWrite } from '../../plan/use-write.ts'
import { type Lines, purposeOf } from './posts.ts'

/** The statements' closing balances against the card sides and unplaced money, with what explains the difference. */
export function Balances({ closes, lines }: { closes: readonly StatementClose[]; lines: Lines }) {
  const { book } = useHousehold()
  const explained = useMemo(() => explainBalances(book, closes), [book, closes])
  if (closes.length === 0) return null
  return (
    <section class="balances" aria-labelledby="balances-title">
      <h2 id="balances-title">{t('balance_title')}</h2>
      <dl class="facts">
        <div>
          <dt>{t('balance_statements')}</dt>
          <dd>{amountText(explained.closing)}</dd>
        </div>
        <div>
          <dt>{t('balance_card_sides')}</dt>
          <dd>{amountText(explained.cardSides)}</dd>
        </div>
        <div>
          <dt>{t('balance_unplaced')}</dt>
          <dd>{amountText(explained.unplaced)}</dd>
        </div>
        <div>
          <dt>{t('balance_difference')}</dt>
          <dd class="balance-difference">{amountText(explained.difference)}</dd>
        </div>
      </dl>
      {explained.accounts.map((account) => (
        <AccountBalance key={account.account} explained={account} lines={lines} />
      ))}
    </section>
  )
}

function AccountBalance({ explained, lines }: { explained: BalanceExplanation; lines: Lines }) {
  const { book } = useHousehold()
  const { write, isBusy, error } = useWrite()
  const action = useActionId(`agree ${explained.account}`)
  const { household } = book
  const name = household.accounts.find((a) => a.id === explained.account)?.name ?? explained.account
  const what = (item: BalanceItem): string => {
    if ('line' in item) {
      const line = lines.get(item.line)
      return t(item.code === 'not-in-book' ? 'balance_not_in_book' : 'balance_other_amount', {
        line: line ? purposeOf(line) : item.line,
      })
    }
    if ('entry' in item) {
      const entry = findEntry(book, item.entry)
      const said = entry ? sayEntry(household, entry) : ''
      return t(item.code === 'after' ? 'balance_after' : 'balance_not_on_statement', { entry: said })
    }
    return t(item.code === 'before' ? 'balance_before' : 'balance_statement_gap')
  }
  const agree = async (): Promise<void> => {
    const balance = toDecimal(explained.closing)
    const id = action.idFor(`${explained.account} ${explained.on} ${balance}`)
    if (await write('statement.agree', { id, account: explained.account, on: explained.on, balance })) action.done()
  }
  return (
    <div class="account-balance">
      <TableBox label={t('balance_of', { account: name, date: shortDate(explained.on) })}>
        <table class="is-narrow">
          <caption>{t('balance_of', { account: name, date: shortDate(explained.on) })}</caption>
          <tbody>
            <tr>
              <th scope="row">{t('balance_book')}</th>
              <td class="figure">{amountText(explained.book)}</td>
            </tr>
            {explained.items.map((item, n) => (
              <tr key={n}>
                <th scope="row">
                  {'date' in item && <span class="line-day">{shortDate(item.date)} </span>}
                  {what(item)}
                </th>
                <td class="figure">{amountText(item.amount)}</td>
              </tr>
            ))}
            {explained.unexplained.minor !== 0 && (
              <tr>
                <th scope="row">{t('balance_unexplained')}</th>
                <td class="figure">{amountText(explained.unexplained)}</td>
              </tr>
            )}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">{t('balance_closing')}</th>
              <td class="figure">{amountText(explained.closing)}</td>
            </tr>
          </tfoot>
        </table>
      </TableBox>
      <WentWrong error={error} />
      {explained.isAgreed ? (
        <Agreed explained={explained} isBusy={isBusy} onAgree={() => void agree()} />
      ) : (
        <p class="field-hint">{t('balance_not_yet')}</p>
      )}
    </div>
  )
}

function Agreed(props: { explained: BalanceExplanation; isBusy: boolean; onAgree: () => void }) {
  const { book } = useHousehold()
  const { account, on, closing } = props.explained
  const isNoted = useMemo(() => {
    for (let i = book.length - 1; i >= 0; i--) {
      const entry = book.log.entries[i]
      if (entry?.kind === 'agree' && entry.account === account && entry.on === on)
        return entry.balance === closing.minor
    }
    return false
  }, [book, account, on, closing.minor])
  return (
    <Notice outcome="allow">
      <p>{t('balance_agrees')}</p>
      {isNoted ? (
        <p>{t('balance_noted')}</p>
      ) : (
        <button type="button" disabled={props.isBusy} onClick={props.onAgree}>
          {t('balance_note')}
        </button>
      )}
    </Notice>
  )
}

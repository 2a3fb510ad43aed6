import { useId } from 'preact/hooks'
import { type AccountId, accountId } from '../../../book/ids.ts'
import type { AccountStatement } from '../../../monthend/statement/opened.ts'
import { engineText } from '../../../ui/engine-text.ts'
import { amountText } from '../../../ui/money-text.ts'
import { Notice } from '../../../ui/notice.tsx'
import { shortDate } from '../../../ui/short-date.ts'
import { slugOf } from '../../../ui/slug-of.ts'
import { t, tn } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { useWrite } from '../../plan/use-write.ts'
import { CsvShown } from './csv-shown.tsx'
import { memoryKey, type Source } from './source.ts'

/** What a file was found to be, before a line of it is used: its accounts and balances, and how a CSV file was read. */
export function FileFound(props: {
  readonly source: Source
  readonly onChange: (source: Source) => void
  readonly onUse: (source: Source) => void
  readonly onDrop: () => void
}) {
  const { source } = props
  const { file } = source
  const { write, isBusy, error } = useWrite()
  const id = useId()
  const use = async (): Promise<void> => {
    for (const [i, statement] of file.accounts.entries()) {
      const account = source.accounts[i]
      if (account === undefined) return
      const key = memoryKey(file, statement)
      if (!(await write('statement.remember', { key, account, mapping: file.csv?.mapping ?? null }))) return
    }
    props.onUse(source)
  }
  return (
    <section class="file-found" aria-labelledby={id}>
      <h2 id={id}>{source.name}</h2>
      <p>
        {file.encoding
          ? t('statement_is_encoded', { version: file.version, encoding: file.encoding.name })
          : file.version}
        {' · '}
        {tn('statement_lines', file.lines.length)}
      </p>
      {file.accounts.map((statement, i) => (
        <AccountFound
          key={statement.account}
          statement={statement}
          account={source.accounts[i]}
          onAccount={(account) =>
            props.onChange({
              ...source,
              accounts: file.accounts.map((_, n) => (n === i ? account : (source.accounts[n] ?? account))),
            })
          }
        />
      ))}
      {file.csv && <CsvShown source={source} csv={file.csv} onChange={props.onChange} />}
      {file.problems.map((problem) => (
        <Notice key={problem.message} outcome="block">
          {engineText(problem.code, problem.message, problem.row)}
        </Notice>
      ))}
      {file.remarks.map((remark) => (
        <Notice key={remark.message} outcome="warn">
          {engineText(remark.code, remark.message, remark.row)}
        </Notice>
      ))}
      <WentWrong error={error} />
      <div class="buttons">
        <button type="button" class="primary" disabled={isBusy || file.lines.length === 0} onClick={() => void use()}>
          {t('statement_use')}
        </button>
        <button type="button" onClick={props.onDrop}>
          {t('statement_drop')}
        </button>
      </div>
    </section>
  )
}

const NEW_CARD = '+credit'
const NEW_BANK = '+bank'

function AccountFound(props: {
  readonly statement: AccountStatement
  readonly account: AccountId | undefined
  readonly onAccount: (account: AccountId) => void
}) {
  const { book } = useHousehold()
  const { write, error } = useWrite()
  const id = useId()
  const { statement } = props
  const { accounts } = book.household
  const choose = async (value: string): Promise<void> => {
    if (value !== NEW_CARD && value !== NEW_BANK) return props.onAccount(accountId(value))
    const kind = value === NEW_CARD ? 'credit' : 'bank'
    const name = t(kind === 'credit' ? 'account_new_credit' : 'account_new_bank')
    const account = accountId(
      slugOf(
        name,
        accounts.map((a) => a.id),
      ),
    )
    if (await write('account.save', { account, name, kind })) props.onAccount(account)
  }
  const balance = (said: AccountStatement['opening']): string =>
    said ? amountText(said.amount) : t('statement_not_told')
  return (
    <div class="account-found">
      <div class="field">
        <label for={id}>{t('statement_account', { number: statement.number || t('statement_no_number') })}</label>
        <select id={id} value={props.account ?? ''} onChange={(event) => void choose(event.currentTarget.value)}>
          {accounts.map((a) => (
            <option key={a.id} value={a.id}>
              {a.name}
            </option>
          ))}
          <option value={NEW_CARD}>{t('account_add_credit')}</option>
          <option value={NEW_BANK}>{t('account_add_bank')}</option>
        </select>
      </div>
      <WentWrong error={error} />
      <dl class="facts">
        <div>
          <dt>{t('statement_period')}</dt>
          <dd>
            {statement.from && statement.to
              ? `${shortDate(statement.from)} – ${shortDate(statement.to)}`
              : t('statement_not_told')}
          </dd>
        </div>
        <div>
          <dt>{t('statement_opening')}</dt>
          <dd>{balance(statement.opening)}</dd>
        </div>
        <div>
          <dt>{t('statement_closing')}</dt>
          <dd>{balance(statement.closing)}</dd>
        </div>
        <div>
          <dt>{t('statement_check')}</dt>
          <dd>{checkText(statement)}</dd>
        </div>
      </dl>
    </div>
  )
}

function checkText({ check }: AccountStatement): string {
  if (check.outcome === 'differs') return t('statement_check_differs', { by: amountText(check.by) })
  return t(check.outcome === 'agrees' ? 'statement_check_agrees' : 'statement_check_unknown')
}

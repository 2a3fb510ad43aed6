import type { SeenPage } from '../../background/protocol.ts'
import type { CurrencyCode } from '../../money/currency.ts'
import type { Money } from '../../money/money.ts'
import type { AmountRead } from '../amount-text.ts'
import { TextField } from '../field.tsx'
import { amountText, editText } from '../money-text.ts'
import { t } from '../text.ts'
import { WhereFound } from './where-found.tsx'

/** What the order costs: as the page says it, or as the person corrects it. */
export function TotalField(props: {
  /** The tab whose page can show where its figures stand; null in the panel, which covers the page. */
  readonly tab: number | null
  readonly page: SeenPage | null
  readonly currency: CurrencyCode
  /** What the page says, in the household's currency. */
  readonly onPage: Money | null
  readonly text: string
  readonly onText: (text: string) => void
  readonly read: AmountRead
}) {
  const { page, onPage, read, currency } = props
  const differs = onPage !== null && !(read.ok && read.money.minor === onPage.minor)
  // A sum that is not at its end yet is no mistake.
  const isWrong = !read.ok && read.problem !== 'empty' && read.problem !== 'unfinished'
  return (
    <div class="total">
      <div class="total-line">
        <TextField
          label={t('order_total')}
          class="total-field"
          isAmount
          currency={currency}
          maxLength={40}
          value={props.text}
          onValue={props.onText}
          error={isWrong ? t(`error_amount_${read.problem}`, { currency }) : null}
        />
        <span class="total-currency">{currency}</span>
        <div class="total-source">
          <Source tab={props.tab} page={page} currency={currency} onPage={onPage} />
          {differs && (
            <button type="button" class="link" onClick={() => props.onText(editText(onPage))}>
              {t('total_use_page', { amount: amountText(onPage) })}
            </button>
          )}
        </div>
      </div>
      <SetAside tab={props.tab} page={page} />
    </div>
  )
}

function Source(props: { tab: number | null; page: SeenPage | null; currency: CurrencyCode; onPage: Money | null }) {
  const { tab, page, currency, onPage } = props
  const used = page?.figures.find((f) => f.used)
  if (page?.total && !onPage) {
    const { amount, currency: other } = page.total
    return <p>{t('total_other_currency', { amount, other, currency })}</p>
  }
  if (!onPage) return <p>{t('total_unread')}</p>
  if (!used) return <p>{t('total_read')}</p>
  return (
    <p>
      {t('total_read_from', { label: used.label })} {tab !== null && <WhereFound tab={tab} figure={used} />}
    </p>
  )
}

/** Other figures the page shows, for a person who wonders why this one was taken. */
function SetAside({ tab, page }: { tab: number | null; page: SeenPage | null }) {
  const others = page?.figures.filter((f) => !f.used) ?? []
  if (others.length === 0) return null
  return (
    <details class="set-aside">
      <summary>{t('total_others')}</summary>
      <dl>
        {others.map((f) => (
          <div key={`${f.label} ${f.text}`}>
            <dt>{f.label}</dt>
            <dd>
              {f.text} {tab !== null && <WhereFound tab={tab} figure={f} />}
            </dd>
          </div>
        ))}
      </dl>
    </details>
  )
}

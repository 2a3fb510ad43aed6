import type { Converted, SeenRate } from '../../book/foreign.ts'
import type { CurrencyCode } from '../../money/currency.ts'
import { TextField } from '../field.tsx'
import { amountText } from '../money-text.ts'
import { shortDate } from '../short-date.ts'
import { t } from '../text.ts'
import { plainNumber } from './order-draft.ts'

/** The rate and the card's fee for an order in another currency, and what it comes to. No rate is fetched anywhere. */
export function AbroadFields(props: {
  readonly asked: CurrencyCode
  readonly home: CurrencyCode
  readonly seen: SeenRate | null
  readonly isSeenUsed: boolean
  readonly shown: string
  readonly onRate: (rate: string) => void
  readonly fee: string
  readonly onFee: (fee: string) => void
  readonly converted: Converted | null
  /** The amount is to be typed in the household's currency instead. */
  readonly onHome: () => void
}) {
  const { asked, home, converted } = props
  const isWrong = props.shown !== '' && plainNumber(props.shown) === null
  return (
    <section class="abroad">
      <p>
        {t('abroad_asks', { asked, home })}{' '}
        <button type="button" class="link" onClick={props.onHome}>
          {t('abroad_type_home', { home })}
        </button>
      </p>
      <div class="abroad-fields">
        <TextField
          label={t('abroad_rate', { asked, home })}
          isAmount
          value={props.shown}
          onValue={props.onRate}
          error={isWrong ? t('abroad_rate_wrong') : null}
          hint={hintFor(props)}
        />
        <TextField label={t('abroad_fee')} isAmount value={props.fee} onValue={props.onFee} />
      </div>
      {converted && (
        <p aria-live="polite">
          {t('abroad_comes_to', {
            total: amountText(converted.total),
            amount: amountText(converted.amount),
            fee: amountText(converted.fee),
            home,
          })}
        </p>
      )}
    </section>
  )
}

function hintFor({ seen, isSeenUsed, shown }: Parameters<typeof AbroadFields>[0]): string | null {
  if (isSeenUsed && seen) return t('abroad_rate_seen', { date: shortDate(seen.date) })
  return shown === '' ? t('abroad_rate_missing') : null
}

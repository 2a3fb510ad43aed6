import { useState } from 'preact/hooks'
import type { HouseholdView, Look } from '../../background/protocol.ts'
import { toDecimal } from '../../money/money.ts'
import { readAmount } from '../amount-text.ts'
import { locale } from '../browser.ts'
import { useDraft } from '../draft.ts'
import { TextField } from '../field.tsx'
import { amountText } from '../money-text.ts'
import { shortDate } from '../short-date.ts'
import { t } from '../text.ts'
import { WentWrong } from '../went-wrong.tsx'
import { useEntry } from './use-entry.ts'

/** Bank money no pot has yet, when the next pay comes, and a place to enter one. */
export function Unplaced({ view, onLook }: { view: HouseholdView; onLook: (look: Look) => void }) {
  const [text, setText, forgetText] = useDraft('pay')
  const [isOpen, setOpen] = useState(text !== '')
  const [wasTried, setTried] = useState(false)
  const { enter, isBusy, error } = useEntry('pay.add', onLook)
  const { currency, payDates } = view.household
  const read = readAmount(text, currency, locale())
  const next = payDates.find((date) => date > view.today)
  const submit = async (): Promise<void> => {
    if (!read.ok || read.money.minor === 0) {
      setTried(true)
      return
    }
    const wish = { amount: toDecimal(read.money), date: view.today }
    if (!(await enter(wish, (id) => ({ id, ...wish })))) return
    forgetText()
    setTried(false)
    setOpen(false)
  }
  const problem = read.ok ? 'empty' : read.problem
  return (
    <section class="unplaced">
      <div class="unplaced-line">
        <div>
          <h2>{t('unplaced')}</h2>
          <p class="field-hint">{next ? t('next_pay', { date: shortDate(next, true) }) : t('unplaced_hint')}</p>
        </div>
        <span class="unplaced-amount">{amountText(view.unplaced)}</span>
        {!isOpen && (
          <button type="button" onClick={() => setOpen(true)}>
            {t('pay_arrived')}
          </button>
        )}
      </div>
      {isOpen && (
        <form
          class="pay-form"
          noValidate
          onSubmit={(event) => {
            event.preventDefault()
            void submit()
          }}
        >
          <TextField
            label={t('pay_amount')}
            isAmount
            currency={currency}
            maxLength={40}
            value={text}
            onValue={setText}
            error={wasTried && !(read.ok && read.money.minor > 0) ? t(`error_amount_${problem}`, { currency }) : null}
          />
          <button type="submit" class="primary" disabled={isBusy}>
            {t('pay_enter')}
          </button>
          <button
            type="button"
            onClick={() => {
              forgetText()
              setOpen(false)
            }}
          >
            {t('cancel')}
          </button>
        </form>
      )}
      <WentWrong error={error} />
    </section>
  )
}

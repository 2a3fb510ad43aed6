import { useRef, useState } from 'preact/hooks'
import { findPot } from '../../../book/household.ts'
import type { EntryId, PotId } from '../../../book/ids.ts'
import { toDecimal } from '../../../money/money.ts'
import { type ComeBack, comeBack, type TakeAlong, type TripReturn } from '../../../plan/take-along.ts'
import { readAmount } from '../../../ui/amount-text.ts'
import { locale } from '../../../ui/browser.ts'
import { Choice, TextField } from '../../../ui/field.tsx'
import { amountText } from '../../../ui/money-text.ts'
import { newEntryId } from '../../../ui/new-id.ts'
import { t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { useWrite } from '../use-write.ts'

interface Back {
  readonly by: 'spent' | 'left'
  readonly amount: string
  readonly purpose: string
}

const NOTHING_SAID: Back = { by: 'spent', amount: '', purpose: '' }

/** What came of the envelopes that were carried: what was spent of each, or what is left in it. */
export function BackHome({ trip, onDone }: { trip: TakeAlong; onDone: () => void }) {
  const { book, view } = useHousehold()
  const { household } = book
  const [backs, setBacks] = useState<Readonly<Record<string, Back>>>({})
  const kept = useRef<{ content: string; ids: readonly EntryId[] } | null>(null)
  const { write, isBusy, error } = useWrite()
  const of = (pot: PotId): Back => backs[pot] ?? NOTHING_SAID
  const problemOf = (pot: PotId) => {
    const { amount } = of(pot)
    const read = amount.trim() === '' ? null : readAmount(amount, household.currency, locale())
    return read && !read.ok ? read.problem : null
  }
  const result = outcome()
  const submit = async (): Promise<void> => {
    if (!result.back || result.back.spends.length === 0) return
    const content = JSON.stringify(result.back.spends)
    if (kept.current?.content !== content) kept.current = { content, ids: result.back.spends.map(newEntryId) }
    const { ids } = kept.current
    const lines = result.back.spends.map(({ pot, amount, purpose }, n) => ({
      id: ids[n] ?? newEntryId(),
      pot,
      date: view.today,
      way: 'out' as const,
      side: 'cash' as const,
      amount: toDecimal(amount),
      purpose,
    }))
    if (!(await write('sheet.add', { lines }))) return
    kept.current = null
    setBacks({})
    onDone()
  }
  return (
    <section class="along-back no-print">
      <h2>{t('along_back')}</h2>
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          void submit()
        }}
      >
        <ul>
          {trip.carry.map(({ pot }) => {
            const problem = problemOf(pot)
            return (
              <li key={pot}>
                <h3>{findPot(household, pot).name}</h3>
                <div class="along-fields">
                  <Choice
                    label={t('along_by')}
                    name={`along-${pot}`}
                    value={of(pot).by}
                    options={[
                      { value: 'spent', label: t('along_spent') },
                      { value: 'left', label: t('along_left') },
                    ]}
                    onValue={(by) => setBacks({ ...backs, [pot]: { ...of(pot), by } })}
                  />
                  <TextField
                    label={t('paper_amount')}
                    isAmount
                    currency={household.currency}
                    maxLength={40}
                    value={of(pot).amount}
                    onValue={(amount) => setBacks({ ...backs, [pot]: { ...of(pot), amount } })}
                    error={problem ? t(`error_amount_${problem}`, { currency: household.currency }) : null}
                  />
                  <TextField
                    label={t('sheet_purpose')}
                    maxLength={200}
                    value={of(pot).purpose}
                    onValue={(purpose) => setBacks({ ...backs, [pot]: { ...of(pot), purpose } })}
                  />
                </div>
              </li>
            )
          })}
        </ul>
        {result.back && <Said back={result.back} />}
        <WentWrong error={result.error ?? error} />
        <div class="buttons">
          <button type="submit" class="primary" disabled={isBusy || !result.back || result.back.spends.length === 0}>
            {t('along_enter')}
          </button>
          <button type="button" onClick={onDone}>
            {t('along_nothing')}
          </button>
        </div>
      </form>
    </section>
  )

  /** What the trip comes to as typed; an error where that cannot be; neither while an amount is no amount. */
  function outcome(): { readonly back: ComeBack | null; readonly error: unknown } {
    const returns: TripReturn[] = []
    for (const { pot } of trip.carry) {
      const { by, amount, purpose } = of(pot)
      if (amount.trim() === '') continue
      const read = readAmount(amount, household.currency, locale())
      if (!read.ok) return { back: null, error: null }
      returns.push(by === 'spent' ? { pot, spent: read.money, purpose } : { pot, left: read.money, purpose })
    }
    try {
      return { back: comeBack(household, trip, returns), error: null }
    } catch (error) {
      return { back: null, error }
    }
  }
}

function Said({ back }: { back: ComeBack }) {
  const { book } = useHousehold()
  return (
    <ul class="along-said">
      {back.spends.map(({ pot, amount, beyondFree }) => (
        <li key={pot}>
          {t(beyondFree.minor > 0 ? 'along_said_beyond' : 'along_said', {
            pot: findPot(book.household, pot).name,
            amount: amountText(amount),
            beyond: amountText(beyondFree),
          })}
        </li>
      ))}
    </ul>
  )
}

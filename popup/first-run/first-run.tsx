import { useEffect, useRef, useState } from 'preact/hooks'
import { currencyCodes } from '../../src/money/currency.ts'
import { ask } from '../../src/ui/ask.ts'
import { browserLanguage, locale } from '../../src/ui/browser.ts'
import { useDrafts } from '../../src/ui/draft.ts'
import { SelectField } from '../../src/ui/field.tsx'
import { Masthead } from '../../src/ui/masthead.tsx'
import { Notice } from '../../src/ui/notice.tsx'
import { forgetSeen } from '../../src/ui/seen.ts'
import { t } from '../../src/ui/text.ts'
import { todayHere } from '../../src/ui/today-here.ts'
import { WentWrong } from '../../src/ui/went-wrong.tsx'
import { checkFirstRun, type FirstRunDraft, firstRunFrom } from './first-run-draft.ts'
import { PayFields } from './pay-fields.tsx'
import { PotRows } from './pot-rows.tsx'
import { currencyOfLocale } from './region-currency.ts'
import { RunningSum } from './running-sum.tsx'
import { suggestedPots, TICKED_AT_START } from './suggestions.ts'

/** A new household in about two minutes: currency, pay, pots. Or a look at an invented one. */
export function FirstRun({ onDone }: { onDone: () => Promise<void> }) {
  const drafts = useDrafts()
  const [draft, setDraft] = useState<FirstRunDraft>(() => firstRunFrom(drafts.read('first-run'), beginning()))
  const [tries, setTries] = useState(0)
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const form = useRef<HTMLFormElement>(null)
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone
  const check = checkFirstRun(draft, todayHere(), zone, locale())
  const problems = tries > 0 ? check.problems : null

  const change = (next: FirstRunDraft): void => {
    setDraft(next)
    drafts.write('first-run', next)
  }
  const start = async (begin: () => Promise<unknown>): Promise<void> => {
    if (isBusy) return
    setBusy(true)
    setError(null)
    try {
      await begin()
      drafts.drop('first-run')
      await onDone()
    } catch (cause) {
      setError(cause)
      setBusy(false)
    }
  }
  const submit = (): void => {
    const { ask: wish } = check
    if (wish) void start(() => ask('household.create', wish))
    else setTries((n) => n + 1)
  }
  // A household that begins has read no hint, whatever an erased one left.
  useEffect(forgetSeen, [])
  // The first field with an error gets the keyboard as soon as the errors are drawn, at every try.
  useEffect(() => {
    if (tries > 0) form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus()
  }, [tries])

  const names = new Intl.DisplayNames([locale()], { type: 'currency' })
  return (
    <>
      <Masthead />
      <main class="first-run">
        <h1>{t('welcome_title')}</h1>
        <p>{t('welcome_said')}</p>
        <div class="demo-offer">
          <button type="button" disabled={isBusy} onClick={() => void start(() => ask('household.demo', {}))}>
            {t('welcome_demo')}
          </button>
          <p class="field-hint">{t('welcome_demo_hint')}</p>
        </div>
        <form
          ref={form}
          noValidate
          onSubmit={(event) => {
            event.preventDefault()
            submit()
          }}
        >
          <SelectField
            label={t('currency')}
            class="currency-field"
            value={draft.currency}
            options={currencyCodes.map((code) => ({ value: code, label: `${code} – ${names.of(code) ?? code}` }))}
            onValue={(currency) => change({ ...draft, currency })}
            hint={t('currency_hint')}
          />
          <PayFields draft={draft} problems={problems} onDraft={change} />
          <PotRows draft={draft} problems={problems} onDraft={change} />
          <p class="caution">{t('caution')}</p>
          <div class="first-run-foot">
            <RunningSum pots={draft.pots} currency={draft.currency} />
            {problems && (
              <Notice outcome="warn" isUrgent>
                {t('first_run_problems')}
              </Notice>
            )}
            <WentWrong error={error} />
            <button type="submit" class="primary" disabled={isBusy}>
              {t('welcome_start')}
            </button>
          </div>
        </form>
      </main>
    </>
  )
}

function beginning(): FirstRunDraft {
  const pots = suggestedPots().slice(0, TICKED_AT_START)
  return {
    currency: currencyOfLocale(browserLanguage()),
    rhythm: 'none',
    nextPay: '',
    otherDay: '',
    pots: pots.map((pot, row) => ({ ...pot, row })),
  }
}

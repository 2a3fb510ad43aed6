import type { SlipBankSetting } from '../../../book/planning.ts'
import { ofMinor } from '../../../money/money.ts'
import { Choice, TextField } from '../../../ui/field.tsx'
import { amountText } from '../../../ui/money-text.ts'
import { Notice } from '../../../ui/notice.tsx'
import { t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { allNotes, allPieces, type PaydaySlip } from './payday-slip.ts'
import { Pieces } from './pieces.tsx'
import { SlipPrint } from './slip-print.tsx'
import type { Payday } from './use-payday.ts'

/** Third step: which notes and coins to ask the bank for, so that every envelope can be filled exactly. */
export function StepSlip({ payday, onNext }: { payday: Payday; onNext: () => void }) {
  const { book } = useHousehold()
  const { slip, draft, write } = payday
  const { household } = book
  const goOn = async (): Promise<void> => {
    const planning = household.planning ?? { sinkingFunds: 'after-essentials', roundTo: 1 }
    const { bank } = draft
    if (bank && JSON.stringify(bank) !== JSON.stringify(planning.bank)) {
      const asked = { earners: household.earners ?? [], planning: { ...planning, bank } }
      if (!(await write.write('plan.save', asked))) return
    }
    onNext()
  }
  return (
    <>
      <form
        class="no-print payday-slip"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          void goOn()
        }}
      >
        {'error' in slip ? <WentWrong error={slip.error} /> : <Asked slip={slip} />}
        <BankFields payday={payday} />
        <AtHand payday={payday} />
        <WentWrong error={write.error} />
        <div class="buttons">
          <button type="submit" class="primary" disabled={'error' in slip || write.isBusy}>
            {t('payday_to_fill')}
          </button>
          <button type="button" disabled={'error' in slip} onClick={() => print()}>
            {t('slip_print')}
          </button>
        </div>
      </form>
      {!('error' in slip) && <SlipPrint slip={slip} date={draft.date} />}
    </>
  )
}

function Asked({ slip: { slip, envelopes, isKnown } }: { slip: PaydaySlip }) {
  const { book } = useHousehold()
  const { household } = book
  const nameOf = (id: string): string => household.pots.find((pot) => pot.id === id)?.name ?? id
  const onCard = envelopes.filter((envelope) => envelope.onCard.minor > 0)
  const left = envelopes.filter((envelope) => envelope.left.minor > 0)
  if (!isKnown) return <Notice outcome="warn">{t('slip_unknown', { currency: household.currency })}</Notice>
  return (
    <section class="slip-asked">
      <h2>{t('slip_ask', { amount: amountText(ofMinor(household.currency, slip.asked)) })}</h2>
      {slip.bankServesNone && <Notice outcome="warn">{t('slip_serves_none')}</Notice>}
      <Pieces pieces={slip.ask} />
      {slip.fromHand.length > 0 && (
        <>
          <h3>{t('slip_from_hand')}</h3>
          <Pieces pieces={slip.fromHand} />
        </>
      )}
      {slip.ask.length > 0 && <p class="field-hint">{t(slip.proven ? 'slip_proven' : 'slip_not_proven')}</p>}
      <ul class="slip-rests">
        {onCard.map((envelope) => (
          <li key={envelope.pot}>
            {t('slip_on_card', { pot: nameOf(envelope.pot), amount: amountText(envelope.onCard) })}
          </li>
        ))}
        {left.map((envelope) => (
          <li key={envelope.pot}>{t('slip_left', { pot: nameOf(envelope.pot), amount: amountText(envelope.left) })}</li>
        ))}
      </ul>
    </section>
  )
}

function BankFields({ payday }: { payday: Payday }) {
  const { book } = useHousehold()
  const { household } = book
  const { draft, change } = payday
  const bank = draft.bank ?? household.planning?.bank ?? { kind: 'counter', gives: allPieces(household) }
  const offered = bank.kind === 'machine' ? allNotes(household) : allPieces(household)
  const set = (next: SlipBankSetting): void => change({ ...draft, bank: next, ids: null })
  const setKind = (kind: SlipBankSetting['kind']): void =>
    set({
      kind,
      gives: kind === 'machine' ? allNotes(household).filter((value) => value % TWENTY === 0) : allPieces(household),
    })
  return (
    <section class="slip-bank">
      <Choice
        label={t('slip_where')}
        name="slip-bank"
        value={bank.kind}
        options={[
          { value: 'counter', label: t('slip_counter') },
          { value: 'machine', label: t('slip_machine') },
        ]}
        onValue={setKind}
      />
      <fieldset>
        <legend>{t('slip_gives')}</legend>
        <div class="checks">
          {offered.map((value) => (
            <label key={value} class="check">
              <input
                type="checkbox"
                checked={bank.gives.includes(value)}
                onChange={(event) => {
                  const others = bank.gives.filter((other) => other !== value)
                  set({
                    ...bank,
                    gives: event.currentTarget.checked ? [...others, value].sort((a, b) => b - a) : others,
                  })
                }}
              />
              <span>{amountText(ofMinor(household.currency, value))}</span>
            </label>
          ))}
        </div>
      </fieldset>
    </section>
  )
}

/** Machines give multiples of twenty units almost everywhere (common practice, no source); a household ticks its own. */
const TWENTY = 2000

function AtHand({ payday }: { payday: Payday }) {
  const { book } = useHousehold()
  const { draft, change } = payday
  return (
    <details>
      <summary>{t('slip_at_hand')}</summary>
      <div class="at-hand">
        {allPieces(book.household).map((value) => (
          <TextField
            key={value}
            label={t('slip_count_of', { piece: amountText(ofMinor(book.household.currency, value)) })}
            isAmount
            maxLength={4}
            value={draft.atHand[value] ?? ''}
            onValue={(text) => change({ ...draft, atHand: { ...draft.atHand, [value]: text }, ids: null })}
            error={/^\d{0,4}$/.test((draft.atHand[value] ?? '').trim()) ? null : t('error_count')}
          />
        ))}
      </div>
    </details>
  )
}

import { amountText } from '../../../ui/money-text.ts'
import { t, tn } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { WentWrong } from '../went-wrong.tsx'
import type { Envelope } from './payday-slip.ts'
import { Pieces } from './pieces.tsx'
import { SlipPrint } from './slip-print.tsx'
import type { Payday } from './use-payday.ts'

/** Last step: the notes go into the envelopes, one after another, and then all of it into the book at once. */
export function StepFill({ payday, onDone }: { payday: Payday; onDone: () => void }) {
  const { slip, draft, change, sum, arrived, write } = payday
  if ('error' in slip) return <WentWrong error={slip.error} />
  const filled = slip.envelopes.filter((envelope) => envelope.cash.minor + envelope.card.minor > 0)
  const open = filled.filter((envelope) => !draft.ticked.includes(envelope.pot))
  const tick = (pot: string, isTicked: boolean): void => {
    const others = draft.ticked.filter((other) => other !== pot)
    change({ ...draft, ticked: isTicked ? [...others, pot] : others })
  }
  const enter = async (): Promise<void> => {
    if (await payday.enter()) {
      payday.forget()
      onDone()
    }
  }
  const isNothing = filled.length === 0 && (arrived?.minor ?? 0) === 0
  return (
    <>
      <form
        class="no-print payday-fill"
        onSubmit={(event) => {
          event.preventDefault()
          void enter()
        }}
      >
        <ul class="envelopes">
          {filled.map((envelope) => (
            <EnvelopeLine
              key={envelope.pot}
              envelope={envelope}
              isTicked={draft.ticked.includes(envelope.pot)}
              onTick={(isTicked) => tick(envelope.pot, isTicked)}
            />
          ))}
        </ul>
        {isNothing && <p class="field-hint">{t('payday_nothing')}</p>}
        <WentWrong error={write.error} />
        <p class="field-hint">{open.length > 0 ? tn('payday_open', open.length) : t('payday_all_filled')}</p>
        <div class="buttons">
          <button type="submit" class="primary" disabled={isNothing || write.isBusy || !sum.canGoOn}>
            {t('payday_enter')}
          </button>
          <button type="button" onClick={() => print()}>
            {t('slip_print')}
          </button>
        </div>
      </form>
      <SlipPrint slip={slip} date={draft.date} />
    </>
  )
}

function EnvelopeLine(props: {
  readonly envelope: Envelope
  readonly isTicked: boolean
  readonly onTick: (isTicked: boolean) => void
}) {
  const { book } = useHousehold()
  const { envelope } = props
  const name = book.household.pots.find((pot) => pot.id === envelope.pot)?.name ?? envelope.pot
  return (
    <li class={props.isTicked ? 'is-ticked' : ''}>
      <label class="check">
        <input
          type="checkbox"
          checked={props.isTicked}
          onChange={(event) => props.onTick(event.currentTarget.checked)}
        />
        <span class="envelope-name">{name}</span>
        <span class="envelope-sides">
          {t('slip_strip_sums', { cash: amountText(envelope.cash), card: amountText(envelope.card) })}
        </span>
      </label>
      {envelope.pieces.length > 0 && <Pieces pieces={envelope.pieces} />}
    </li>
  )
}

import { amountText } from '../../../ui/money-text.ts'
import { t, tn } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import type { Envelope } from './payday-slip.ts'
import { Pieces } from './pieces.tsx'
import { sidesText } from './sides-text.ts'
import { SlipPrint } from './slip-print.tsx'
import type { Payday } from './use-payday.ts'

/** Last step: the notes go into the envelopes, one after another, and then all of it into the book at once. */
export function StepFill({ payday, onDone }: { payday: Payday; onDone: () => void }) {
  const { slip, draft, change, sum, arrived, write } = payday
  if ('error' in slip) return <WentWrong error={slip.error} />
  const filled = slip.envelopes.filter((envelope) => envelope.cash.minor + envelope.card.minor > 0)
  const withNotes = filled.filter((envelope) => envelope.cash.minor > 0)
  const onCard = filled.filter((envelope) => envelope.cash.minor === 0)
  const open = withNotes.filter((envelope) => !draft.ticked.includes(envelope.pot))
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
        <ul class="payday-envelopes">
          {withNotes.map((envelope) => (
            <EnvelopeLine
              key={envelope.pot}
              envelope={envelope}
              isTicked={draft.ticked.includes(envelope.pot)}
              onTick={(isTicked) => tick(envelope.pot, isTicked)}
            />
          ))}
        </ul>
        {onCard.length > 0 && (
          <section class="payday-on-card">
            <h2>{t('payday_on_card')}</h2>
            <ul>
              {onCard.map((envelope) => (
                <li key={envelope.pot}>
                  <PotName id={envelope.pot} /> {amountText(envelope.card)}
                </li>
              ))}
            </ul>
          </section>
        )}
        {isNothing && <p class="field-hint">{t('payday_nothing')}</p>}
        <WentWrong error={write.error} />
        {withNotes.length > 0 && (
          <p class="field-hint">{open.length > 0 ? tn('payday_open', open.length) : t('payday_all_filled')}</p>
        )}
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
  const { envelope } = props
  return (
    <li class={props.isTicked ? 'is-ticked' : ''}>
      <label class="check">
        <input
          type="checkbox"
          checked={props.isTicked}
          onChange={(event) => props.onTick(event.currentTarget.checked)}
        />
        <span class="envelope-name">
          <PotName id={envelope.pot} />
        </span>
        <span class="envelope-sides">{sidesText(envelope.cash, envelope.card)}</span>
      </label>
      {envelope.pieces.length > 0 && <Pieces pieces={envelope.pieces} />}
    </li>
  )
}

function PotName({ id }: { id: string }) {
  const { book } = useHousehold()
  return <>{book.household.pots.find((pot) => pot.id === id)?.name ?? id}</>
}

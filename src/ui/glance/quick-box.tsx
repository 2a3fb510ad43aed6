import { useId, useLayoutEffect, useRef } from 'preact/hooks'
import type { HouseholdView, Look } from '../../background/protocol.ts'
import { errorText } from '../error-text.ts'
import { Choice } from '../field.tsx'
import { Notice } from '../notice.tsx'
import type { QuickLine } from '../quick-entry.ts'
import { t } from '../text.ts'
import { JustSaid } from './just-said.tsx'
import { FillDetails, SpendDetails } from './quick-details.tsx'
import { useQuick } from './use-quick.ts'

/** One line for a spend at the counter or a fill: amount, pot, purpose, Enter. A `+` in front makes it a fill. */
export function QuickBox({ view, onLook }: { view: HouseholdView; onLook: (look: Look) => void }) {
  const quick = useQuick(view, onLook)
  const { isFill, offer, offers, amount, side, split } = quick
  const input = useRef<HTMLInputElement>(null)
  const listId = useId()
  useLayoutEffect(() => input.current?.focus(), [])

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.isComposing || offers.length === 0) return
    if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return
    event.preventDefault()
    quick.step(event.key === 'ArrowDown' ? 1 : -1)
  }
  const enter = async (): Promise<void> => {
    if (await quick.enter()) input.current?.focus()
  }
  return (
    <form
      class={`quick quick-${isFill ? 'fill' : 'spend'}`}
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        void enter()
      }}
    >
      <div class="quick-line">
        <Choice
          label={t('quick_kind')}
          name="quick-mode"
          value={isFill ? 'fill' : 'spend'}
          options={[
            { value: 'spend', label: t('quick_spend') },
            { value: 'fill', label: t('quick_fill') },
          ]}
          onValue={quick.setMode}
        />
        <input
          ref={input}
          class="quick-input"
          type="text"
          role="combobox"
          aria-label={t(isFill ? 'quick_label_fill' : 'quick_label_spend')}
          aria-expanded={offers.length > 0}
          aria-controls={listId}
          aria-autocomplete="list"
          aria-activedescendant={offer ? `${listId}-${offer.pot.id}` : undefined}
          placeholder={t('quick_example', { pot: view.household.pots.find((p) => !p.archived)?.name ?? '' })}
          autocomplete="off"
          spellcheck={false}
          maxLength={200}
          value={quick.line}
          onInput={(event) => quick.type(event.currentTarget.value)}
          onKeyDown={onKeyDown}
        />
        <button type="submit" class="primary" disabled={!offer || quick.isBusy}>
          {t('quick_enter')}
        </button>
      </div>
      <div class="quick-offers" id={listId} role="listbox" aria-label={t('which_pot')}>
        {offers.map((o, index) => (
          <button
            key={o.pot.id}
            id={`${listId}-${o.pot.id}`}
            type="button"
            role="option"
            aria-selected={o === offer}
            tabIndex={-1}
            onClick={() => {
              quick.pick(index)
              input.current?.focus()
            }}
          >
            {o.pot.name}
          </button>
        ))}
      </div>
      <div aria-live="polite">
        {quick.said && <JustSaid household={view.household} entry={quick.said} onLook={onLook} />}
        <Lack read={quick.read} currency={view.household.currency} />
      </div>
      {offer && amount && !isFill && side && (
        <SpendDetails
          view={view}
          pot={offer.pot}
          amount={amount}
          purpose={offer.purpose}
          side={side}
          onSide={quick.setSide}
        />
      )}
      {offer && amount && isFill && (
        <FillDetails
          view={view}
          pot={offer.pot}
          amount={amount}
          split={split}
          notes={quick.notes}
          onNotes={quick.setNotes}
          from={quick.from}
          onFrom={quick.setFrom}
        />
      )}
      {quick.error !== null && (
        <Notice outcome="block" isUrgent>
          {errorText(quick.error)}
        </Notice>
      )}
    </form>
  )
}

/** What the line does not say yet, or not so that it can be read. */
function Lack({ read, currency }: { read: QuickLine; currency: string }) {
  if (read.kind === 'bad-amount') return <p class="field-hint">{t(`error_amount_${read.problem}`, { currency })}</p>
  if (read.kind !== 'no-pot') return null
  return <p class="field-hint">{read.word === '' ? t('quick_which_pot') : t('quick_no_pot', { word: read.word })}</p>
}

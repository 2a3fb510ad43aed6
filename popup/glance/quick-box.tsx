import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks'
import type { HouseholdView, Look } from '../../src/background/protocol.ts'
import { hasSide, type Pot } from '../../src/book/household.ts'
import type { EntryId } from '../../src/book/ids.ts'
import { type Money, toDecimal } from '../../src/money/money.ts'
import { locale } from '../../src/ui/browser.ts'
import { useDraft } from '../../src/ui/draft.ts'
import { errorText } from '../../src/ui/error-text.ts'
import { Choice } from '../../src/ui/field.tsx'
import { OutcomeMark } from '../../src/ui/mark.tsx'
import { Notice } from '../../src/ui/notice.tsx'
import { type QuickLine, readQuickLine } from '../../src/ui/quick-entry.ts'
import { sayEntry } from '../../src/ui/say-entry.ts'
import { t } from '../../src/ui/text.ts'
import { FillDetails, SpendDetails } from './quick-details.tsx'
import { type Split, splitByNotes, usualSide, usualSplit } from './quick-plan.ts'
import { useEntry } from './use-entry.ts'

const MOST_OFFERED = 5

/** One line for a spend at the counter or a fill: amount, pot, purpose, Enter. A `+` in front makes it a fill. */
export function QuickBox({ view, onLook }: { view: HouseholdView; onLook: (look: Look) => void }) {
  const { household } = view
  const [line, setLine, forgetLine] = useDraft('quick')
  const [mode, setMode] = useDraft('quick-mode', 'spend')
  const [picked, setPicked] = useState<number | null>(null)
  const [side, setSide] = useState<'cash' | 'card' | null>(null)
  const [from, setFrom] = useState<'unplaced' | 'outside'>('unplaced')
  const [notes, setNotes] = useState<string | null>(null)
  const [saidId, setSaid] = useState<EntryId | null>(null)
  const input = useRef<HTMLInputElement>(null)
  const listId = useId()
  const spend = useEntry('spend.add', onLook)
  const fill = useEntry('fill.add', onLook)
  const undo = useEntry('entry.undo', onLook)
  useLayoutEffect(() => input.current?.focus(), [])

  const isFill = mode === 'fill'
  const open = household.pots.filter((p) => !p.archived)
  const read = readQuickLine(line, open, household.currency, locale())
  const offers = offersOf(read, open)
  const at = picked ?? (read.kind === 'ready' ? 0 : -1)
  const offer = offers[Math.min(at, offers.length - 1)]
  const amount = read.kind === 'ready' || read.kind === 'no-pot' ? read.amount : null
  const spendSide = offer && (side && hasSide(offer.pot, side) ? side : usualSide(offer.pot))
  const split = offer && amount && splitFor(offer.pot, amount, notes)

  const type = (text: string): void => {
    // A sign in front says which it is, so that nobody has to leave the line for it.
    const isPlus = text.trimStart().startsWith('+')
    if (isPlus) setMode('fill')
    setLine(isPlus ? text.replace('+', '').trimStart() : text)
    setPicked(null)
    setSaid(null)
  }
  const clear = (id: EntryId | null): void => {
    if (!id) return
    forgetLine()
    setMode('spend')
    setPicked(null)
    setSide(null)
    setNotes(null)
    setSaid(id)
    input.current?.focus()
  }
  const enter = async (): Promise<void> => {
    if (!offer || !amount) return
    const pot = offer.pot.id
    const date = view.today
    if (isFill) {
      if (!split) return
      const wish = { pot, cash: toDecimal(split.cash), card: toDecimal(split.card), from, date }
      clear(await fill.enter(wish, (id) => ({ id, ...wish })))
    } else if (spendSide) {
      const wish = { pot, side: spendSide, amount: toDecimal(amount), purpose: offer.purpose, date }
      clear(await spend.enter(wish, (id) => ({ id, ...wish })))
    }
  }
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.isComposing || offers.length === 0) return
    if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return
    event.preventDefault()
    const step = event.key === 'ArrowDown' ? 1 : -1
    setPicked((at + step + offers.length) % offers.length)
  }
  const error = undo.error ?? (isFill ? fill.error : spend.error)
  const said = view.recent.find((e) => e.id === saidId)
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
          onValue={setMode}
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
          aria-activedescendant={offer ? `${listId}-${offers.indexOf(offer)}` : undefined}
          placeholder={t('quick_example', { pot: open[0]?.name ?? '' })}
          autocomplete="off"
          spellcheck={false}
          maxLength={200}
          value={line}
          onInput={(event) => type(event.currentTarget.value)}
          onKeyDown={onKeyDown}
        />
        <button type="submit" class="primary" disabled={!offer || spend.isBusy || fill.isBusy}>
          {t('quick_enter')}
        </button>
      </div>
      <div class="quick-offers" id={listId} role="listbox" aria-label={t('which_pot')}>
        {offers.map((o, index) => (
          <button
            key={o.pot.id}
            id={`${listId}-${index}`}
            type="button"
            role="option"
            aria-selected={o === offer}
            tabIndex={-1}
            onClick={() => {
              setPicked(index)
              input.current?.focus()
            }}
          >
            {o.pot.name}
          </button>
        ))}
      </div>
      <div class="quick-preview" aria-live="polite">
        {said && (
          <p class="quick-said">
            <OutcomeMark outcome="allow" />
            <span>{sayEntry(household, said)}</span>
            <button
              type="button"
              class="link"
              disabled={undo.isBusy}
              onClick={() => void undo.enter({ target: said.id }, (id) => ({ id, target: said.id }))}
            >
              {t('undo')}
            </button>
          </p>
        )}
        <Trouble read={read} currency={household.currency} />
      </div>
      {offer && amount && !isFill && spendSide && (
        <SpendDetails
          view={view}
          pot={offer.pot}
          amount={amount}
          purpose={offer.purpose}
          side={spendSide}
          onSide={setSide}
        />
      )}
      {offer && amount && isFill && (
        <FillDetails
          view={view}
          pot={offer.pot}
          amount={amount}
          split={split ?? null}
          notes={notes}
          onNotes={setNotes}
          from={from}
          onFrom={setFrom}
        />
      )}
      {error !== null && (
        <Notice outcome="block" isUrgent>
          {errorText(error)}
        </Notice>
      )}
    </form>
  )
}

function Trouble({ read, currency }: { read: QuickLine; currency: string }) {
  if (read.kind === 'bad-amount') return <p class="field-hint">{t(`error_amount_${read.problem}`, { currency })}</p>
  if (read.kind === 'no-pot' && read.word !== '')
    return <p class="field-hint">{t('quick_no_pot', { word: read.word })}</p>
  if (read.kind === 'no-pot') return <p class="field-hint">{t('quick_which_pot')}</p>
  return null
}

function offersOf(read: QuickLine, pots: readonly Pot[]): readonly { pot: Pot; purpose: string }[] {
  if (read.kind === 'ready') return read.choices.slice(0, MOST_OFFERED)
  if (read.kind === 'no-pot' && read.word === '')
    return pots.slice(0, MOST_OFFERED).map((pot) => ({ pot, purpose: '' }))
  return []
}

function splitFor(pot: Pot, amount: Money, notes: string | null): Split | null {
  if (notes === null || pot.sides !== 'both') return usualSplit(pot, amount)
  return splitByNotes(amount, notes, locale())
}

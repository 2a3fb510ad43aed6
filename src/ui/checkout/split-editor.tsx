import type { SeenPage } from '../../background/protocol.ts'
import type { Pot } from '../../book/household.ts'
import type { PotId } from '../../book/ids.ts'
import type { Split } from '../../book/split.ts'
import { type Money, ofMinor } from '../../money/money.ts'
import { Choice, SelectField, SumResult } from '../field.tsx'
import { amountText } from '../money-text.ts'
import { t } from '../text.ts'
import type { ChangeDraft, OrderDraft } from './order-draft.ts'
import { itemsOf, sharedOf } from './page-items.ts'
import './split.css'

/** An order put on several pots: by its items, by amounts or by shares. One pot takes whatever is not said. */
export function SplitEditor(props: {
  readonly draft: OrderDraft
  readonly change: ChangeDraft
  readonly pots: readonly Pot[]
  readonly pot: PotId | null
  readonly onPot: (pot: PotId) => void
  readonly page: SeenPage | null
  readonly total: Money | null
  readonly split: Split | null
}) {
  const { draft, change, total } = props
  const able = props.pots.filter((p) => p.sides !== 'cash')
  const items = total ? itemsOf(props.page, total.currency) : null
  const ways = (['item', 'amount', 'share'] as const).filter((way) => way !== 'item' || items !== null)
  const mode = draft.mode === 'one' ? 'amount' : draft.mode
  return (
    <section class="split">
      <div class="split-head">
        <h2>{t('split_title')}</h2>
        <button type="button" class="link" onClick={() => change({ mode: 'one' })}>
          {t('split_one')}
        </button>
      </div>
      <Choice
        label={t('split_how')}
        name="split-by"
        value={mode}
        options={ways.map((way) => ({ value: way, label: t(`split_by_${way}`) }))}
        onValue={(way) => change({ mode: way })}
      />
      {mode !== 'share' && (
        <SelectField
          label={t(mode === 'item' ? 'split_items_pot' : 'split_rest_pot')}
          value={props.pot ?? ''}
          options={[
            ...(props.pot === null ? [{ value: '', label: t('split_choose_pot') }] : []),
            ...able.map((p) => ({ value: p.id, label: p.name })),
          ]}
          onValue={(id) => {
            const found = able.find((p) => p.id === id)
            if (found) props.onPot(found.id)
          }}
        />
      )}
      {mode === 'item' && total && items ? (
        <Items {...props} items={items} able={able} total={total} />
      ) : (
        <PotFigures {...props} able={able} mode={mode === 'share' ? 'share' : 'amount'} />
      )}
    </section>
  )
}

function Items(props: {
  readonly draft: OrderDraft
  readonly change: ChangeDraft
  readonly able: readonly Pot[]
  readonly pot: PotId | null
  readonly page: SeenPage | null
  readonly total: Money
  readonly items: readonly { name: string; amount: string }[]
}) {
  const { draft, able, total } = props
  const shared = sharedOf(props.page, total.currency)
  return (
    <>
      <ol class="split-items">
        {props.items.map((item, n) => (
          // Items of an order never change their places.
          <li key={n}>
            <span class="split-name">{item.name}</span>
            <span class="split-amount">{item.amount}</span>
            <select
              aria-label={t('split_item_pot', { item: item.name })}
              value={draft.itemPots[n] ?? props.pot ?? ''}
              onChange={({ currentTarget: { value } }) =>
                props.change((before) => ({ itemPots: { ...before.itemPots, [n]: value } }))
              }
            >
              {able.map((p) => (
                <option key={p.id} value={p.id}>
                  {p.name}
                </option>
              ))}
            </select>
          </li>
        ))}
      </ol>
      {shared.length > 0 && (
        <p class="field-hint">
          {t('split_follow')} {shared.map((s) => `${t(`shared_${s.kind}`)} ${s.amount}`).join(', ')}
        </p>
      )}
    </>
  )
}

function PotFigures(props: {
  readonly draft: OrderDraft
  readonly change: ChangeDraft
  readonly able: readonly Pot[]
  readonly pot: PotId | null
  readonly total: Money | null
  readonly split: Split | null
  readonly mode: 'amount' | 'share'
}) {
  const { draft, mode, total, split } = props
  const typed = mode === 'amount' ? draft.amounts : draft.shares
  const set = (id: string, value: string): void => {
    props.change((before) =>
      mode === 'amount'
        ? { amounts: { ...before.amounts, [id]: value } }
        : { shares: { ...before.shares, [id]: value } },
    )
  }
  const partOf = (id: PotId): Money | null => split?.lines.find((l) => l.pot === id)?.amount ?? null
  return (
    <ul class="split-pots">
      {props.able.map((pot) => {
        const part = partOf(pot.id)
        const isRest = mode === 'amount' && pot.id === props.pot
        return (
          <li key={pot.id}>
            <label class="split-name" for={`split-${pot.id}`}>
              {pot.name}
            </label>
            {isRest ? (
              <output class="split-amount" id={`split-${pot.id}`}>
                {t('split_rest', { amount: amountText(part ?? ofMinor(total?.currency ?? 'CAD', 0)) })}
              </output>
            ) : (
              <>
                <span class="split-part">{mode === 'share' && part ? amountText(part) : ''}</span>
                <input
                  id={`split-${pot.id}`}
                  class="amount-input"
                  type="text"
                  inputMode="decimal"
                  autocomplete="off"
                  maxLength={40}
                  value={typed[pot.id] ?? ''}
                  onInput={(event) => set(pot.id, event.currentTarget.value)}
                />
                {mode === 'amount' && total && <SumResult text={typed[pot.id] ?? ''} currency={total.currency} />}
              </>
            )}
          </li>
        )
      })}
    </ul>
  )
}

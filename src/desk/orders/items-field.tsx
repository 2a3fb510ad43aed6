import type { OrderState } from '../../book/order-state.ts'
import { itemCosts } from '../../book/own-lines.ts'
import { type Money, ofMinor } from '../../money/money.ts'
import { amountText } from '../../ui/money-text.ts'
import { t } from '../../ui/text.ts'
import { useHousehold } from '../household.ts'

/** Some of an order's items, to be ticked; nothing where the order was not split by item. */
export function ItemsField(props: {
  readonly state: OrderState
  readonly label: string
  readonly chosen: readonly number[]
  /** The items ticked now, and what they cost together. */
  readonly onChoose: (places: readonly number[], cost: Money) => void
}) {
  const { book } = useHousehold()
  const { state, chosen } = props
  const { items } = state.details
  if (!items) return null
  const costs = itemCosts(book, state)
  const toggle = (place: number): void => {
    const next = chosen.includes(place) ? chosen.filter((n) => n !== place) : [...chosen, place].sort((a, b) => a - b)
    const cost = next.reduce((sum, n) => sum + (costs[n]?.minor ?? 0), 0)
    props.onChoose(next, ofMinor(book.household.currency, cost))
  }
  return (
    <fieldset class="items-field">
      <legend>{props.label}</legend>
      {items.map((item, n) => {
        const cost = costs[n]
        return (
          <label key={`${n} ${item.name}`}>
            <input type="checkbox" checked={chosen.includes(n)} onChange={() => toggle(n)} />
            <span>{item.name}</span>
            <span class="figure">{cost ? amountText(cost) : ''}</span>
          </label>
        )
      })}
      <p class="field-hint">{t('items_none_hint')}</p>
    </fieldset>
  )
}

import { useMemo, useState } from 'preact/hooks'
import { allOrders, holdsUntil, type OrderSign, orderSigns } from '../../book/order-list.ts'
import { type OrderState, orderSums } from '../../book/order-state.ts'
import { ofMinor } from '../../money/money.ts'
import { Choice, TextField } from '../../ui/field.tsx'
import { amountText } from '../../ui/money-text.ts'
import { shortDate } from '../../ui/short-date.ts'
import { listText, t, tn } from '../../ui/text.ts'
import { useHousehold } from '../household.ts'
import { Empty } from '../parts/empty.tsx'
import { PageHead } from '../parts/page-head.tsx'
import { linkTo } from '../place.ts'
import { OrderRulesForm } from './order-rules-form.tsx'
import { UntaggedCharge } from './untagged-charge.tsx'

const FILTERS = ['open', 'charge', 'refund', 'lapsed', 'past'] as const
type Filter = (typeof FILTERS)[number]

interface Row {
  readonly state: OrderState
  readonly signs: readonly OrderSign[]
}

const SHOWN = 40

/** Every order with what it waits for. */
export function OrderList() {
  const { book, view } = useHousehold()
  const [filter, setFilter] = useState<Filter>('open')
  const [shop, setShop] = useState('')
  const [shown, setShown] = useState(SHOWN)
  const rows: Row[] = useMemo(
    () => allOrders(book).map((state) => ({ state, signs: orderSigns(book, state, view.today) })),
    [book, view.today],
  )
  const wanted = rows.filter((r) => belongs(r, filter) && r.state.shop.includes(shop.trim().toLowerCase()))
  return (
    <>
      <PageHead title={t('desk_page_orders')} lead={t('orders_lead')}>
        <a href={linkTo('renewals')}>{t('desk_page_renewals')}</a>
      </PageHead>
      {rows.length === 0 ? (
        <Empty title={t('orders_none_yet')}>
          <p>{t('orders_none_how')}</p>
        </Empty>
      ) : (
        <>
          <div class="orders-filter">
            <Choice
              label={t('orders_filter')}
              name="orders-filter"
              value={filter}
              options={FILTERS.map((value) => ({
                value,
                label: `${t(`orders_filter_${value}`)} ${rows.filter((r) => belongs(r, value)).length}`,
              }))}
              onValue={(value) => {
                setFilter(value)
                setShown(SHOWN)
              }}
            />
            <TextField label={t('orders_shop')} value={shop} onValue={setShop} />
          </div>
          {wanted.length === 0 ? (
            <Empty title={t('orders_none_of_these')} />
          ) : (
            <ul class="order-rows">
              {wanted.slice(0, shown).map((row) => (
                <OrderRow key={row.state.order} row={row} />
              ))}
            </ul>
          )}
          {wanted.length > shown && (
            <button type="button" class="link" onClick={() => setShown(shown + SHOWN)}>
              {tn('orders_more', wanted.length - shown)}
            </button>
          )}
        </>
      )}
      <UntaggedCharge />
      <OrderRulesForm />
    </>
  )
}

function belongs({ signs }: Row, filter: Filter): boolean {
  const has = (...wanted: OrderSign[]): boolean => wanted.some((sign) => signs.includes(sign))
  switch (filter) {
    case 'open':
      return signs.length > 0
    case 'charge':
      return has('held', 'part-charged', 'instalment-due')
    case 'refund':
      return has('refund-expected')
    case 'lapsed':
      return has('lapsed')
    case 'past':
      return signs.length === 0
  }
}

function OrderRow({ row }: { row: Row }) {
  const { book } = useHousehold()
  const { state, signs } = row
  const { held, charged, refunded, expected } = orderSums(state)
  const text = (minor: number): string => amountText(ofMinor(book.household.currency, minor))
  const names = state.parts.map(({ pot }) => book.household.pots.find((p) => p.id === pot)?.name ?? pot)
  const values = {
    held: text(held),
    charged: text(charged - refunded),
    expected: text(expected),
    date: shortDate(holdsUntil(book, state)),
  }
  return (
    <li>
      <a href={linkTo('orders', state.order)}>
        <time dateTime={state.date}>{shortDate(state.date)}</time>
        <span class="order-shop">{state.shop}</span>
        <span class="order-pots">{listText(names)}</span>
        <span class="order-amount">{text(held + charged - refunded)}</span>
        <span class="order-signs">
          {signs.length === 0
            ? t(refunded > 0 && refunded === charged ? 'sign_back' : 'sign_past', values)
            : signs.map((sign) => t(SIGN_TEXT[sign], values)).join(' ')}
        </span>
      </a>
    </li>
  )
}

const SIGN_TEXT = {
  unconfirmed: 'sign_unconfirmed',
  held: 'sign_held',
  'part-charged': 'sign_part_charged',
  lapsed: 'sign_lapsed',
  'instalment-due': 'sign_instalment_due',
  'instalment-ahead': 'sign_instalment_ahead',
  'refund-expected': 'sign_refund_expected',
} as const

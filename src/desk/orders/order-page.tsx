import { entriesOfOrder } from '../../book/book.ts'
import { instalmentsOf } from '../../book/instalment.ts'
import { holdsUntil, orderSigns } from '../../book/order-list.ts'
import { type OrderState, orderSums } from '../../book/order-state.ts'
import { orderStory } from '../../book/order-story.ts'
import { itemCosts } from '../../book/own-lines.ts'
import { sayStory } from '../../book/say-story.ts'
import { ofMinor } from '../../money/money.ts'
import { amountText } from '../../ui/money-text.ts'
import { Notice } from '../../ui/notice.tsx'
import { shortDate } from '../../ui/short-date.ts'
import { speech, t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { PageHead } from '../parts/page-head.tsx'
import { TableBox } from '../parts/table-box.tsx'
import { linkTo } from '../place.ts'
import { OrderActions } from './order-actions.tsx'
import { useStep } from './use-step.ts'

/** One order: what it holds and cost, what can be done, and its story from the checkout on. */
export function OrderPage({ state }: { state: OrderState }) {
  const { book, view } = useHousehold()
  const signs = orderSigns(book, state, view.today)
  return (
    <>
      <PageHead
        title={t('order_title', { shop: state.shop, date: shortDate(state.date) })}
        lead={state.number === null ? null : t('order_number', { number: state.number })}
        back={{ href: linkTo('orders'), text: t('orders_back') }}
      />
      {signs.includes('lapsed') && (
        <Notice outcome="warn">{t('order_lapsed', { date: shortDate(holdsUntil(book, state)) })}</Notice>
      )}
      <Parts state={state} />
      <Items state={state} />
      <Instalments state={state} />
      <OrderActions state={state} />
      <Story state={state} />
    </>
  )
}

const FIGURES = ['tagged', 'held', 'charged', 'refunded', 'expected'] as const

function Parts({ state }: { state: OrderState }) {
  const { book } = useHousehold()
  const text = (minor: number): string => (minor === 0 ? '' : amountText(ofMinor(book.household.currency, minor)))
  const sums = orderSums(state)
  const used = FIGURES.filter((f) => f === 'tagged' || sums[f] !== 0)
  return (
    <TableBox label={t('order_parts')}>
      <table class="is-narrow">
        <caption class="unseen">{t('order_parts')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('desk_col_pot')}</th>
            {used.map((f) => (
              <th key={f} scope="col" class="figure">
                {t(`order_col_${f}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {state.parts.map((part) => (
            <tr key={part.pot}>
              <th scope="row">{book.household.pots.find((p) => p.id === part.pot)?.name ?? part.pot}</th>
              {used.map((f) => (
                <td key={f} class="figure">
                  {text(part[f])}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
        {state.parts.length > 1 && (
          <tfoot>
            <tr>
              <th scope="row">{t('order_all')}</th>
              {used.map((f) => (
                <td key={f} class="figure">
                  {text(sums[f])}
                </td>
              ))}
            </tr>
          </tfoot>
        )}
      </table>
    </TableBox>
  )
}

function Items({ state }: { state: OrderState }) {
  const { book } = useHousehold()
  const { items } = state.details
  if (!items) return null
  const costs = itemCosts(book, state)
  return (
    <section>
      <h2>{t('order_items')}</h2>
      <ul class="order-items">
        {items.map((item, n) => {
          const cost = costs[n]
          return (
            <li key={`${n} ${item.name}`}>
              <span>{item.name}</span>
              <span class="order-pots">{book.household.pots.find((p) => p.id === item.pot)?.name ?? item.pot}</span>
              <span class="figure">{cost ? amountText(cost) : ''}</span>
            </li>
          )
        })}
      </ul>
      <p class="field-hint">{t('order_items_hint')}</p>
    </section>
  )
}

function Instalments({ state }: { state: OrderState }) {
  const { book } = useHousehold()
  const parts = instalmentsOf(state)
  if (parts.length === 0) return null
  return (
    <section>
      <h2>{t('order_instalments')}</h2>
      <ul class="order-items">
        {parts.map((part) => (
          <li key={part.part}>
            <time dateTime={part.date}>{shortDate(part.date)}</time>
            <span class="order-pots">
              {t(({ 'to-come': 'part_to_come', held: 'part_held', paid: 'part_paid' } as const)[part.state])}
            </span>
            <span class="figure">{amountText(ofMinor(book.household.currency, part.amount))}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}

/** The order's story in plain sentences; its latest step can be taken back. */
function Story({ state }: { state: OrderState }) {
  const { book } = useHousehold()
  const undo = useStep('entry.undo', state.order)
  const last = entriesOfOrder(book, state.order)
    .filter((e) => !(e.kind === 'confirm' && e.from === 'page'))
    .at(-1)
  const story = orderStory(book, state.order)
  const ends = story.map((line, n) => story[n + 1]?.entry !== line.entry)
  return (
    <section>
      <h2>{t('order_story')}</h2>
      <ol class="story">
        {story.map((line, n) => (
          <li key={`${line.entry} ${line.code}`} class={line.isTakenBack ? 'taken-back' : ''}>
            <time dateTime={line.date}>{n > 0 && story[n - 1]?.date === line.date ? '' : shortDate(line.date)}</time>
            <span>
              {sayStory(book.household, line, speech())}
              {line.isTakenBack && <span class="field-hint"> {t('story_was_taken_back')}</span>}
            </span>
            {ends[n] && last?.id === line.entry && (
              <button
                type="button"
                class="link"
                disabled={undo.isBusy}
                onClick={() => void undo.run(line.entry, (id) => ({ id, target: line.entry }))}
              >
                {t('order_take_back')}
              </button>
            )}
          </li>
        ))}
      </ol>
      <WentWrong error={undo.error} />
    </section>
  )
}

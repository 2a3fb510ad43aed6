import { hasSide, type Pot } from '../../book/household.ts'
import { nextFill } from '../../book/next-fill.ts'
import { type Money, ofMinor } from '../../money/money.ts'
import { Pots } from '../../ui/glance/pots.tsx'
import { QuickBox } from '../../ui/glance/quick-box.tsx'
import { Recent } from '../../ui/glance/recent.tsx'
import { Unplaced } from '../../ui/glance/unplaced.tsx'
import { OutcomeMark } from '../../ui/mark.tsx'
import { amountText } from '../../ui/money-text.ts'
import { shortDate } from '../../ui/short-date.ts'
import { t } from '../../ui/text.ts'
import { type DeskHousehold, useHousehold } from '../household.ts'
import '../../ui/glance/glance.css'
import './pots-page.css'

/** Every pot in one table, and beside it what is entered most: a spend, a fill, what came last. */
export function PotsPage() {
  const { view, refresh } = useHousehold()
  const onLook = (): void => void refresh()
  return (
    <>
      <div class="page-head">
        <h1>{t('desk_page_pots')}</h1>
      </div>
      <QuickBox view={view} onLook={onLook} />
      <PotsTable />
      <div class="pots-columns">
        <div>
          <Unplaced view={view} onLook={onLook} />
          <Recent view={view} onLook={onLook} />
        </div>
        <Pots view={view} onLook={onLook} />
      </div>
    </>
  )
}

function PotsTable() {
  const { view } = useHousehold()
  const pots = view.household.pots.filter((pot) => !pot.archived)
  if (pots.length === 0) return null
  return (
    <div class="table-box">
      <table class="pots-table">
        <caption>{t('desk_pots_caption')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('desk_col_pot')}</th>
            <th scope="col" class="figure">
              {t('desk_col_cash')}
            </th>
            <th scope="col" class="figure">
              {t('desk_col_spoken')}
            </th>
            <th scope="col" class="figure">
              {t('desk_col_free')}
            </th>
            <th scope="col" class="figure">
              {t('desk_col_card')}
            </th>
            <th scope="col" class="figure">
              {t('desk_col_held')}
            </th>
            <th scope="col" class="figure">
              {t('desk_col_left')}
            </th>
            <th scope="col">{t('desk_col_next')}</th>
          </tr>
        </thead>
        <tbody>
          {pots.map((pot) => (
            <PotLine key={pot.id} pot={pot} view={view} />
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{t('desk_all_pots')}</th>
            {(['cash', 'spokenFor', 'freeCash', 'card', 'held', 'left'] as const).map((figure) => (
              <td key={figure} class="figure">
                {amountText(sumOf(view, pots, figure))}
              </td>
            ))}
            <td />
          </tr>
        </tfoot>
      </table>
    </div>
  )
}

function PotLine({ pot, view }: { pot: Pot; view: DeskHousehold['view'] }) {
  const balance = view.balances[pot.id]
  if (!balance) return null
  const next = nextFill(view.household, pot, view.today)
  const side = (name: 'cash' | 'card', amount: Money): string =>
    hasSide(pot, name) || amount.minor !== 0 ? amountText(amount) : ''
  const some = (amount: Money): string => (amount.minor === 0 ? '' : amountText(amount))
  return (
    <tr>
      <th scope="row">{pot.name}</th>
      <td class="figure cell-cash">{side('cash', balance.cash)}</td>
      <td class="figure">{some(balance.spokenFor)}</td>
      <td class="figure cell-cash">{side('cash', balance.freeCash)}</td>
      <td class="figure cell-card">{side('card', balance.card)}</td>
      <td class="figure">{some(balance.held)}</td>
      <td class={balance.left.minor < 0 ? 'figure below' : 'figure'}>
        {balance.left.minor < 0 && <OutcomeMark outcome="block" />} {amountText(balance.left)}
      </td>
      <td>{next ? `${shortDate(next.date)} · ${amountText(next.amount)}` : ''}</td>
    </tr>
  )
}

function sumOf(
  view: DeskHousehold['view'],
  pots: readonly Pot[],
  figure: 'cash' | 'card' | 'held' | 'left' | 'spokenFor' | 'freeCash',
): Money {
  const sum = pots.reduce((all, pot) => all + (view.balances[pot.id]?.[figure].minor ?? 0), 0)
  return ofMinor(view.household.currency, sum)
}

import type { HouseholdView } from '../../background/protocol.ts'
import type { PotBalance } from '../../book/balances.ts'
import { hasSide, type Pot } from '../../book/household.ts'
import { nextFill } from '../../book/next-fill.ts'
import { OutcomeMark } from '../../ui/mark.tsx'
import { amountText } from '../../ui/money-text.ts'
import { shortDate } from '../../ui/short-date.ts'
import { sillReach } from '../../ui/sill.ts'
import { SillBar } from '../../ui/sill-bar.tsx'
import { t } from '../../ui/text.ts'
import { TableBox } from '../parts/table-box.tsx'
import { linkTo } from '../place.ts'
import { sumOfPots } from './all-pots.ts'

const FIGURES = ['cash', 'spokenFor', 'freeCash', 'card', 'held', 'left'] as const
type Figure = (typeof FIGURES)[number]

/** Every pot in one table: what is in its envelope, at the bank, held and left, and its next fill. Its name leads to it. */
export function PotsTable({ view, pots }: { view: HouseholdView; pots: readonly Pot[] }) {
  return (
    <TableBox label={t('desk_page_pots')}>
      <table class="pots-table">
        <caption class="unseen">{t('desk_pots_caption')}</caption>
        <colgroup span={2} />
        <colgroup span={3} class="group-cash" />
        <colgroup span={2} class="group-card" />
        <colgroup span={2} />
        <thead>
          <tr>
            <td colSpan={2} />
            <th scope="colgroup" colSpan={3} class="head-cash">
              {t('ts_cash')}
            </th>
            <th scope="colgroup" colSpan={2} class="head-card">
              {t('ts_card')}
            </th>
            <td colSpan={2} />
          </tr>
          <tr>
            <th scope="col">{t('desk_col_pot')}</th>
            <td class="bar-cell" />
            {FIGURES.map((figure) => (
              <th key={figure} scope="col" class={`figure cell-${figure}`}>
                {t(`desk_col_${figure}`)}
              </th>
            ))}
            <th scope="col" class="next-cell">
              {t('desk_col_next')}
            </th>
          </tr>
        </thead>
        <tbody>
          {pots.map((pot) => (
            <PotLine key={pot.id} pot={pot} view={view} />
          ))}
        </tbody>
        <tfoot>
          <Sums view={view} pots={pots} />
        </tfoot>
      </table>
    </TableBox>
  )
}

function Sums({ view, pots }: { view: HouseholdView; pots: readonly Pot[] }) {
  const sums = sumOfPots(view, pots)
  return (
    <tr>
      <th scope="row">{t('desk_all_pots')}</th>
      <td class="bar-cell" />
      {FIGURES.map((figure) => (
        <td key={figure} class={`figure cell-${figure}`}>
          {amountText(sums[figure])}
        </td>
      ))}
      <td class="next-cell" />
    </tr>
  )
}

function PotLine({ pot, view }: { pot: Pot; view: HouseholdView }) {
  const balance = view.balances[pot.id]
  if (!balance) return null
  const next = nextFill(view.household, pot, view.today)
  const scale = Math.max(sillReach(balance), pot.fill.cash, pot.fill.card, 1)
  return (
    <tr class={pot.archived ? 'archived' : ''}>
      <th scope="row">
        <a class="pot-link" href={linkTo('pots', pot.id)}>
          {pot.name}
        </a>
      </th>
      <td class="bar-cell">
        <SillBar balance={balance} scale={scale} notches={pot.fill} />
      </td>
      {FIGURES.map((figure) => (
        <FigureCell key={figure} figure={figure} pot={pot} balance={balance} />
      ))}
      <td class="next-cell">{next ? `${shortDate(next.date)} · ${amountText(next.amount)}` : ''}</td>
    </tr>
  )
}

/** A figure that says nothing is left out: a side the pot does not keep, nothing held, nothing spoken for. */
function FigureCell({ figure, pot, balance }: { figure: Figure; pot: Pot; balance: PotBalance }) {
  const amount = balance[figure]
  const isSide =
    figure === 'left' ||
    (figure !== 'held' && figure !== 'spokenFor' && hasSide(pot, figure === 'card' ? 'card' : 'cash'))
  const isBelow = figure === 'left' && amount.minor < 0
  return (
    <td class={`figure cell-${figure} ${isBelow ? 'below' : ''}`}>
      {isBelow && <OutcomeMark outcome="block" />}
      {isSide || amount.minor !== 0 ? amountText(amount) : ''}
    </td>
  )
}

import { useState } from 'preact/hooks'
import type { HouseholdView, Look } from '../../background/protocol.ts'
import type { PotBalance } from '../../book/balances.ts'
import { hasSide, type Pot } from '../../book/household.ts'
import { nextFill } from '../../book/next-fill.ts'
import { type Money, ofMinor } from '../../money/money.ts'
import { PotForm } from '../../ui/glance/pot-form.tsx'
import { OutcomeMark } from '../../ui/mark.tsx'
import { amountText } from '../../ui/money-text.ts'
import { shortDate } from '../../ui/short-date.ts'
import { sillReach } from '../../ui/sill.ts'
import { SillBar } from '../../ui/sill-bar.tsx'
import { t, tn } from '../../ui/text.ts'

const FIGURES = ['cash', 'spokenFor', 'freeCash', 'card', 'held', 'left'] as const
type Figure = (typeof FIGURES)[number]

/** Every pot in one table: its bar, its figures, its next fill. A pot's name opens its settings under it. */
export function PotsTable({ view, onLook }: { view: HouseholdView; onLook: (look: Look) => void }) {
  const [edited, setEdited] = useState<string | null>(null)
  const [showsArchived, setShowsArchived] = useState(false)
  const { pots } = view.household
  const archived = pots.filter((pot) => pot.archived)
  const shown = showsArchived ? pots : pots.filter((pot) => !pot.archived)
  const done = (look: Look): void => {
    setEdited(null)
    onLook(look)
  }
  return (
    <section>
      {shown.length > 0 && (
        <div class="table-box">
          <table class="pots-table">
            <caption>{t('desk_pots_caption')}</caption>
            <thead>
              <tr>
                <th scope="col">{t('desk_col_pot')}</th>
                <td class="bar-cell" />
                {FIGURES.map((figure) => (
                  <th key={figure} scope="col" class="figure">
                    {t(`desk_col_${figure}`)}
                  </th>
                ))}
                <th scope="col">{t('desk_col_next')}</th>
              </tr>
            </thead>
            <tbody>
              {shown.map((pot) => (
                <PotLine
                  key={pot.id}
                  pot={pot}
                  view={view}
                  isOpen={edited === pot.id}
                  onOpen={() => setEdited(edited === pot.id ? null : pot.id)}
                  onLook={done}
                />
              ))}
            </tbody>
            <tfoot>
              <tr>
                <th scope="row">{t('desk_all_pots')}</th>
                <td class="bar-cell" />
                {FIGURES.map((figure) => (
                  <td key={figure} class="figure">
                    {amountText(sumOf(view, shown, figure))}
                  </td>
                ))}
                <td />
              </tr>
            </tfoot>
          </table>
        </div>
      )}
      {edited === '' ? (
        <PotForm view={view} pot={null} onLook={done} onCancel={() => setEdited(null)} />
      ) : (
        <div class="buttons">
          <button type="button" class="add-pot" onClick={() => setEdited('')}>
            {t('pot_add')}
          </button>
          {archived.length > 0 && (
            <button type="button" class="link" onClick={() => setShowsArchived(!showsArchived)}>
              {showsArchived ? t('archived_hide') : tn('archived_show', archived.length)}
            </button>
          )}
        </div>
      )}
    </section>
  )
}

function PotLine(props: {
  readonly pot: Pot
  readonly view: HouseholdView
  readonly isOpen: boolean
  readonly onOpen: () => void
  readonly onLook: (look: Look) => void
}) {
  const { pot, view } = props
  const balance = view.balances[pot.id]
  if (!balance) return null
  const next = nextFill(view.household, pot, view.today)
  const scale = Math.max(sillReach(balance), pot.fill.cash, pot.fill.card, 1)
  return (
    <>
      <tr class={pot.archived ? 'archived' : ''}>
        <th scope="row">
          <button type="button" class="link pot-name-link" aria-expanded={props.isOpen} onClick={props.onOpen}>
            {pot.name}
            <span class="unseen"> {t('pot_change')}</span>
          </button>
        </th>
        <td class="bar-cell">
          <SillBar balance={balance} scale={scale} notches={pot.fill} />
        </td>
        {FIGURES.map((figure) => (
          <FigureCell key={figure} figure={figure} pot={pot} balance={balance} />
        ))}
        <td class="next-cell">{next ? `${shortDate(next.date)} · ${amountText(next.amount)}` : ''}</td>
      </tr>
      {props.isOpen && (
        <tr>
          <td colSpan={FIGURES.length + 3}>
            <PotForm view={view} pot={pot} onLook={props.onLook} onCancel={props.onOpen} />
          </td>
        </tr>
      )}
    </>
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

function sumOf(view: HouseholdView, pots: readonly Pot[], figure: Figure): Money {
  const sum = pots.reduce((all, pot) => all + (view.balances[pot.id]?.[figure].minor ?? 0), 0)
  return ofMinor(view.household.currency, sum)
}

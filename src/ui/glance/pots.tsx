import { useState } from 'preact/hooks'
import type { HouseholdView, Look } from '../../background/protocol.ts'
import type { PotBalance } from '../../book/balances.ts'
import { hasSide, type Pot } from '../../book/household.ts'
import { type Money, ofMinor } from '../../money/money.ts'
import { useDrafts } from '../draft.ts'
import { OutcomeMark } from '../mark.tsx'
import { amountText } from '../money-text.ts'
import { sillReach } from '../sill.ts'
import { SillBar } from '../sill-bar.tsx'
import { SillLegend } from '../sill-legend.tsx'
import { t, tn } from '../text.ts'
import { PotForm, potFormDraft } from './pot-form.tsx'
import { PotSaved } from './pot-saved.tsx'

/** A longer amount stands on a line of its own in a narrow window, so that the name keeps its room. */
const LONGEST_BESIDE_NAME = 11

/** Every pot with its two sides. A pot's name opens its settings. */
export function Pots({ view, onLook }: { view: HouseholdView; onLook: (look: Look) => void }) {
  const drafts = useDrafts()
  const half = ['', ...view.household.pots.map((p) => p.id)].find((id) => drafts.read(potFormDraft(id)) !== undefined)
  const [edited, setEdited] = useState<string | null>(half ?? null)
  const [changed, setChanged] = useState<Pot | null>(null)
  const [showsArchived, setShowsArchived] = useState(false)
  const { pots } = view.household
  const archived = pots.filter((p) => p.archived)
  const shown = showsArchived ? pots : pots.filter((p) => !p.archived)
  const done = (look: Look, before: Pot | null): void => {
    setEdited(null)
    setChanged(before)
    onLook(look)
  }
  return (
    <section class="pots">
      <h2>{t('pots_heading')}</h2>
      <p class="pots-sum">{t('pots_sum', { amount: amountText(leftInAll(view)) })}</p>
      {pots.length === 0 ? (
        <p class="field-hint">{t('pots_none')}</p>
      ) : (
        <SillLegend currency={view.household.currency} />
      )}
      {changed && (
        <PotSaved
          view={view}
          before={changed}
          onLook={(look) => {
            setChanged(null)
            onLook(look)
          }}
        />
      )}
      <ul>
        {shown.map((pot) => {
          const balance = view.balances[pot.id]
          return (
            <li key={pot.id} class={pot.archived ? 'archived' : ''}>
              {balance && (
                <PotCard
                  pot={pot}
                  balance={balance}
                  isOpen={edited === pot.id}
                  onOpen={() => setEdited(edited === pot.id ? null : pot.id)}
                />
              )}
              {edited === pot.id && (
                <PotForm view={view} pot={pot} onLook={(look) => done(look, pot)} onCancel={() => setEdited(null)} />
              )}
            </li>
          )
        })}
      </ul>
      {edited === '' ? (
        <PotForm view={view} pot={null} onLook={(look) => done(look, null)} onCancel={() => setEdited(null)} />
      ) : (
        <button type="button" class="add" onClick={() => setEdited('')}>
          {t('pot_add')}
        </button>
      )}
      {archived.length > 0 && (
        <button type="button" class="link" onClick={() => setShowsArchived(!showsArchived)}>
          {showsArchived ? t('archived_hide') : tn('archived_show', archived.length)}
        </button>
      )}
    </section>
  )
}

function leftInAll({ household, balances }: HouseholdView): Money {
  const left = household.pots.map((pot) => balances[pot.id]?.left.minor ?? 0)
  return ofMinor(
    household.currency,
    left.reduce((all, minor) => all + minor, 0),
  )
}

function PotCard(props: { pot: Pot; balance: PotBalance; isOpen: boolean; onOpen: () => void }) {
  const { pot, balance } = props
  const scale = Math.max(sillReach(balance), pot.fill.cash, pot.fill.card, 1)
  const left = amountText(balance.left)
  return (
    <div class={left.length > LONGEST_BESIDE_NAME ? 'pot-card pot-card-long' : 'pot-card'}>
      <button type="button" class="pot-open" aria-expanded={props.isOpen} onClick={props.onOpen}>
        <span class="pot-name">{pot.name}</span>
        <span class="unseen">{t('pot_change')}</span>
      </button>
      <span class={balance.left.minor < 0 ? 'pot-left below' : 'pot-left'}>
        {balance.left.minor < 0 && <OutcomeMark outcome="block" />}
        {left}
        <span class="unseen"> {t('left')}</span>
      </span>
      <SillBar balance={balance} scale={scale} notches={pot.fill} />
      <div class="pot-sides">
        <p class="side-cash">
          {hasSide(pot, 'cash') && <span>{t('side_cash_is', { amount: amountText(balance.cash) })}</span>}
          {balance.spokenFor.minor > 0 && (
            <span class="spoken">{t('side_spoken', { amount: amountText(balance.spokenFor) })}</span>
          )}
        </p>
        <p class="side-card">
          {hasSide(pot, 'card') && <span>{t('side_card_is', { amount: amountText(balance.card) })}</span>}
          {balance.held.minor !== 0 && <span class="held">{t('side_held', { amount: amountText(balance.held) })}</span>}
        </p>
      </div>
    </div>
  )
}

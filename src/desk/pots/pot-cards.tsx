import type { HouseholdView } from '../../background/protocol.ts'
import { hasSide, type Pot } from '../../book/household.ts'
import { OutcomeMark } from '../../ui/mark.tsx'
import { amountText } from '../../ui/money-text.ts'
import { sillReach } from '../../ui/sill.ts'
import { SillBar } from '../../ui/sill-bar.tsx'
import { t } from '../../ui/text.ts'
import { linkTo } from '../place.ts'

/** Every pot as a card, where a table of figures does not fit: each side stands under its half of the bar. */
export function PotCards({ view, pots }: { view: HouseholdView; pots: readonly Pot[] }) {
  return (
    <section aria-label={t('desk_page_pots')}>
      <ul class="pot-cards">
        {pots.map((pot) => (
          <PotCard key={pot.id} view={view} pot={pot} />
        ))}
      </ul>
    </section>
  )
}

function PotCard({ view, pot }: { view: HouseholdView; pot: Pot }) {
  const balance = view.balances[pot.id]
  if (!balance) return null
  const { cash, card, held, left, spokenFor } = balance
  const scale = Math.max(sillReach(balance), pot.fill.cash, pot.fill.card, 1)
  return (
    <li class={pot.archived ? 'archived' : ''}>
      <h2>
        <a class="pot-link" href={linkTo('pots', pot.id)}>
          {pot.name}
        </a>
      </h2>
      <p class={left.minor < 0 ? 'card-left below' : 'card-left'}>
        {left.minor < 0 && <OutcomeMark outcome="block" />}
        {amountText(left)} <span>{t('left')}</span>
      </p>
      <SillBar balance={balance} scale={scale} notches={pot.fill} />
      <dl>
        <div class="ts-cash">
          {hasSide(pot, 'cash') && (
            <>
              <dt>{t('ts_cash')}</dt>
              <dd>
                {amountText(cash)}
                {spokenFor.minor > 0 && <small> {t('side_spoken', { amount: amountText(spokenFor) })}</small>}
              </dd>
            </>
          )}
        </div>
        <div class="ts-card">
          {(hasSide(pot, 'card') || held.minor !== 0) && (
            <>
              <dt>{t('ts_card')}</dt>
              <dd>
                {amountText(card)}
                {held.minor !== 0 && <small> {t('side_held', { amount: amountText(held) })}</small>}
              </dd>
            </>
          )}
        </div>
      </dl>
    </li>
  )
}

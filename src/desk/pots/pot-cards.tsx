import type { HouseholdView } from '../../background/protocol.ts'
import type { Pot } from '../../book/household.ts'
import { t } from '../../ui/text.ts'
import { TwoSides } from '../parts/two-sides.tsx'
import { linkTo } from '../place.ts'

/** Every pot as a card, where a table of figures does not fit. */
export function PotCards({ view, pots }: { view: HouseholdView; pots: readonly Pot[] }) {
  return (
    <section aria-label={t('desk_page_pots')}>
      <ul class="pot-cards">
        {pots.map((pot) => {
          const balance = view.balances[pot.id]
          return (
            balance && (
              <li key={pot.id} class={pot.archived ? 'archived' : ''}>
                <h2>
                  <a class="pot-link" href={linkTo('pots', pot.id)}>
                    {pot.name}
                  </a>
                </h2>
                <TwoSides balance={balance} notches={pot.fill} />
              </li>
            )
          )
        })}
      </ul>
    </section>
  )
}

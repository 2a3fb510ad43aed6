import { useState } from 'preact/hooks'
import { PotForm } from '../../ui/glance/pot-form.tsx'
import { QuickBox } from '../../ui/glance/quick-box.tsx'
import { Recent } from '../../ui/glance/recent.tsx'
import { Unplaced } from '../../ui/glance/unplaced.tsx'
import { Watched } from '../../ui/glance/watched.tsx'
import { t, tn } from '../../ui/text.ts'
import { useView } from '../household.ts'
import type { PageProps } from '../pages.ts'
import { Empty } from '../parts/empty.tsx'
import { PageHead } from '../parts/page-head.tsx'
import { TwoSides } from '../parts/two-sides.tsx'
import { useIsWide } from '../use-is-wide.ts'
import { sumOfPots } from './all-pots.ts'
import { PotCards } from './pot-cards.tsx'
import { PotPage } from './pot-page.tsx'
import { PotsTable } from './pots-table.tsx'
import '../../ui/glance/glance.css'
import './pots-page.css'

/** All pots, or the one whose id stands in the address. */
export function PotsPage({ rest }: PageProps) {
  const [pot, month = ''] = rest
  return pot === undefined ? <AllPots /> : <PotPage key={pot} id={pot} month={month} />
}

/** Every pot at once, and beside it what is entered most: a spend, a fill, pay, and what came last. */
function AllPots() {
  const { view, refresh } = useView()
  const isWide = useIsWide()
  const [isAdding, setAdding] = useState(false)
  const [showsArchived, setShowsArchived] = useState(false)
  const onLook = (): void => void refresh()
  const { pots } = view.household
  const archived = pots.filter((pot) => pot.archived)
  const active = pots.filter((pot) => !pot.archived)
  const shown = showsArchived ? pots : active
  const List = isWide ? PotsTable : PotCards
  return (
    <>
      <PageHead title={t('desk_page_pots')} lead={t('pots_lead')}>
        {!isAdding && (
          <button type="button" onClick={() => setAdding(true)}>
            {t('pot_add')}
          </button>
        )}
      </PageHead>
      {isAdding && (
        <section class="panel">
          <h2>{t('pot_add')}</h2>
          <PotForm
            view={view}
            pot={null}
            onLook={() => {
              setAdding(false)
              onLook()
            }}
            onCancel={() => setAdding(false)}
          />
        </section>
      )}
      {pots.length > 0 ? (
        <>
          <TwoSides balance={sumOfPots(view, active)} />
          <div class="pots-columns">
            <QuickBox view={view} onLook={onLook} />
            <Unplaced view={view} onLook={onLook} />
          </div>
          <List view={view} pots={shown} />
          {archived.length > 0 && (
            <button type="button" class="link" onClick={() => setShowsArchived(!showsArchived)}>
              {showsArchived ? t('archived_hide') : tn('archived_show', archived.length)}
            </button>
          )}
        </>
      ) : (
        <Empty title={t('pots_none')} />
      )}
      <div class="pots-columns">
        <Recent view={view} onLook={onLook} />
        <Watched view={view} onLook={onLook} />
      </div>
    </>
  )
}

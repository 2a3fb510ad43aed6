import { Pots } from '../../ui/glance/pots.tsx'
import { QuickBox } from '../../ui/glance/quick-box.tsx'
import { Recent } from '../../ui/glance/recent.tsx'
import { Unplaced } from '../../ui/glance/unplaced.tsx'
import { Watched } from '../../ui/glance/watched.tsx'
import { t } from '../../ui/text.ts'
import { useHousehold } from '../household.ts'
import { useIsWide } from '../use-is-wide.ts'
import { PotsTable } from './pots-table.tsx'
import '../../ui/glance/glance.css'
import './pots-page.css'

/** Every pot at once, and beside it what is entered most: a spend, a fill, pay, and what came last. */
export function PotsPage() {
  const { view, refresh } = useHousehold()
  const isWide = useIsWide()
  const onLook = (): void => void refresh()
  return (
    <>
      <div class="page-head">
        <h1>{t('desk_page_pots')}</h1>
      </div>
      <div class="pots-columns">
        <QuickBox view={view} onLook={onLook} />
        <Unplaced view={view} onLook={onLook} />
      </div>
      {isWide ? <PotsTable view={view} onLook={onLook} /> : <Pots view={view} onLook={onLook} />}
      <div class="pots-columns">
        <Recent view={view} onLook={onLook} />
        <Watched view={view} onLook={onLook} />
      </div>
    </>
  )
}

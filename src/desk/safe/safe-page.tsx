import { t } from '../../ui/text.ts'
import { useHousehold } from '../household.ts'
import { PageHead } from '../parts/page-head.tsx'
import { EraseBox } from './erase-box.tsx'
import { RestoreBox } from './restore-box.tsx'
import { SaveBox } from './save-box.tsx'
import './safe-page.css'

/** Moving house: the whole book as a file, locked or open, as sheets for a spreadsheet, restored, or erased. */
export function SafePage() {
  const { view, book, refresh } = useHousehold()
  return (
    <>
      <PageHead title={t('desk_page_safe')} lead={t('safe_lead')} />
      <div class="safe-boxes">
        <SaveBox />
        <RestoreBox here={{ book, today: view.today }} onDone={refresh} />
        {!view.isDemo && <EraseBox />}
      </div>
    </>
  )
}

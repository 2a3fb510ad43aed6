import { t } from '../../ui/text.ts'
import { useHousehold } from '../household.ts'
import { EraseBox } from './erase-box.tsx'
import { RestoreBox } from './restore-box.tsx'
import { SaveBox } from './save-box.tsx'
import './safe-page.css'

/** Moving house: the whole book as a file, locked or open, as sheets for a spreadsheet, restored, or erased. */
export function SafePage() {
  const { view, book, refresh } = useHousehold()
  return (
    <>
      <div class="page-head">
        <h1>{t('desk_page_safe')}</h1>
      </div>
      <p class="page-lead">{t('safe_lead')}</p>
      <SaveBox />
      <RestoreBox here={{ book, today: view.today }} onDone={refresh} />
      {!view.isDemo && <EraseBox />}
    </>
  )
}

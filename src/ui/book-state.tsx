import type { HouseholdView } from '../background/protocol.ts'
import { Notice } from './notice.tsx'
import { RoomNotice } from './room-notice.tsx'
import { shortDate } from './short-date.ts'
import { t, tn } from './text.ts'

/**
 * Says what the worker found wrong with the stored book and could live with, and that the room for it is running out.
 * Nothing where all is well.
 */
export function BookState({ view }: { view: HouseholdView }) {
  const mended = view.mended.at(-1)
  return (
    <>
      {view.gaps > 0 && <Notice outcome="warn">{tn('gaps', view.gaps)}</Notice>}
      {mended !== undefined && <Notice outcome="warn">{t('mended', { date: shortDate(mended) })}</Notice>}
      <RoomNotice since={view} />
    </>
  )
}

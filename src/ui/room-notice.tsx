import { useEffect, useState } from 'preact/hooks'
import { locale, showDesk, storageTold } from './browser.ts'
import { Notice } from './notice.tsx'
import { lowRoom } from './room.ts'
import { t } from './text.ts'

/**
 * Says that the disk is nearly full before it is, and what to do. Looks when it is first drawn, which is after the figures
 * are on screen, and again with every change of `since`.
 */
export function RoomNotice({ since }: { since: unknown }) {
  const [left, setLeft] = useState<number | null>(null)
  useEffect(() => {
    storageTold()
      .then((told) => setLeft(lowRoom(told)))
      .catch((cause: unknown) => console.info('Tillside: the browser does not tell how much room is left.', cause))
  }, [since])
  if (left === null) return null
  return (
    <Notice outcome="warn">
      <p>{t('room_low', { room: megabytes(left) })}</p>
      <button type="button" onClick={() => void showDesk('#/safe')}>
        {t('room_save')}
      </button>
    </Notice>
  )
}

function megabytes(bytes: number): string {
  const unit = { style: 'unit', unit: 'megabyte', maximumFractionDigits: 0 } as const
  return new Intl.NumberFormat(locale(), unit).format(bytes / 1_000_000)
}

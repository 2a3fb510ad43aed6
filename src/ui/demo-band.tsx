import { useState } from 'preact/hooks'
import type { Look } from '../background/protocol.ts'
import { useDrafts } from './draft.ts'
import { leaveDemo } from './leave-demo.ts'
import { t } from './text.ts'
import { WentWrong } from './went-wrong.tsx'
import './demo-band.css'

/** Says that nothing here is real, and leads out. */
export function DemoBand({ onLook }: { onLook: (look: Look) => void }) {
  const drafts = useDrafts()
  const [error, setError] = useState<unknown>(null)
  return (
    <div class="demo-band">
      <p>{t('demo_said')}</p>
      <button type="button" class="link" onClick={() => leaveDemo(drafts).then(onLook, setError)}>
        {t('demo_leave')}
      </button>
      <WentWrong error={error} />
    </div>
  )
}

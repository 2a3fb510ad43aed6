import type { HouseholdView, Look } from '../../background/protocol.ts'
import { OpenKeys } from '../open-keys.tsx'
import { FirstOrder } from './first-order.tsx'
import { Pots } from './pots.tsx'
import { QuickBox } from './quick-box.tsx'
import { Recent } from './recent.tsx'
import { Unplaced } from './unplaced.tsx'
import { Watched } from './watched.tsx'
import './glance.css'

/** The household at a glance: enter a spend, see every pot, take the last entry back. */
export function Glance({ view, onLook }: { view: HouseholdView; onLook: (look: Look) => void }) {
  return (
    <>
      <QuickBox view={view} onLook={onLook} />
      <FirstOrder view={view} />
      <Unplaced view={view} onLook={onLook} />
      <Pots view={view} onLook={onLook} />
      <Recent view={view} onLook={onLook} />
      <Watched view={view} onLook={onLook} />
      <p class="field-hint">
        <OpenKeys />
      </p>
    </>
  )
}

import { useEffect, useState } from 'preact/hooks'
import { openKeys } from './browser.ts'
import { t } from './text.ts'

/** The keys that open Tillside, as this browser has them now; nothing where there are none, as on a phone. */
export function OpenKeys() {
  const [keys, setKeys] = useState<string | null>(null)
  useEffect(() => {
    openKeys().then(setKeys, (cause: unknown) => console.warn('Tillside: its keys are not known.', cause))
  }, [])
  if (!keys) return null
  return (
    <span class="open-keys">
      {t('open_keys')} <kbd dir="ltr">{keys}</kbd>
    </span>
  )
}

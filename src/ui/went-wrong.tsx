import { errorText } from './error-text.ts'
import { Notice } from './notice.tsx'

/** What something failed with, in words; nothing when it did not. */
export function WentWrong({ error }: { error: unknown }) {
  if (error === null) return null
  return (
    <Notice outcome="block" isUrgent>
      {errorText(error)}
    </Notice>
  )
}

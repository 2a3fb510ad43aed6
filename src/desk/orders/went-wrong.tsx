import { errorText } from '../../ui/error-text.ts'
import { Notice } from '../../ui/notice.tsx'

/** What a step failed with, in words; nothing when it did not. */
export function WentWrong({ error }: { error: unknown }) {
  if (error === null) return null
  return (
    <Notice outcome="block" isUrgent>
      {errorText(error)}
    </Notice>
  )
}

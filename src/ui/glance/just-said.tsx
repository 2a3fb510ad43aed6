import type { Look } from '../../background/protocol.ts'
import type { Entry } from '../../book/entry.ts'
import type { Household } from '../../book/household.ts'
import { SaidWithUndo } from '../said-with-undo.tsx'
import { sayEntry } from '../say-entry.ts'
import { useEntry } from './use-entry.ts'

/** The entry that was just made, in a sentence, with its undo at hand. */
export function JustSaid(props: {
  readonly household: Household
  readonly entry: Entry
  readonly onLook: (look: Look) => void
}) {
  const { household, entry } = props
  const { enter, isBusy, error } = useEntry('entry.undo', props.onLook)
  return (
    <SaidWithUndo
      said={sayEntry(household, entry)}
      onUndo={() => void enter({ target: entry.id }, (id) => ({ id, target: entry.id }))}
      isBusy={isBusy}
      error={error}
    />
  )
}

import { useRef, useState } from 'preact/hooks'
import type { Look, OwnCommands } from '../../background/protocol.ts'
import type { EntryId } from '../../book/ids.ts'
import { useActionId } from '../action-id.ts'
import { ask } from '../ask.ts'

type EntryCommand = 'spend.add' | 'fill.add' | 'pay.add' | 'entry.undo' | 'pot.save'

/**
 * Writes one kind of entry: one request at a time, the same id as long as the content is the same and no answer came.
 */
export function useEntry<C extends EntryCommand>(command: C, onLook: (look: Look) => void) {
  const action = useActionId(command)
  const isUnderWay = useRef(false)
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<unknown>(null)
  /** The entry's id once it is acknowledged; null when it was refused, or another one is under way. */
  const enter = async (
    content: Omit<OwnCommands[C]['ask'], 'id'>,
    withId: (id: EntryId) => OwnCommands[C]['ask'],
  ): Promise<EntryId | null> => {
    if (isUnderWay.current) return null
    isUnderWay.current = true
    setBusy(true)
    setError(null)
    try {
      const id = action.idFor(JSON.stringify(content))
      const look = await ask(command, withId(id))
      action.done()
      onLook(look)
      return id
    } catch (cause) {
      setError(cause)
      return null
    } finally {
      isUnderWay.current = false
      setBusy(false)
    }
  }
  return { enter, isBusy, error }
}

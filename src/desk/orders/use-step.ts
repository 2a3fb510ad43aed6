import { useRef, useState } from 'preact/hooks'
import type { OwnCommands } from '../../background/protocol.ts'
import type { EntryId } from '../../book/ids.ts'
import { useActionId } from '../../ui/action-id.ts'
import { ask } from '../../ui/ask.ts'
import type { SavedSetting } from '../done.ts'
import { useHousehold } from '../household.ts'

/** One step of an order's life, asked for from the desk. */
export interface Step<C extends keyof OwnCommands> {
  /**
   * Asks for it; once at a time, and the desk is drawn anew when it was written.
   *
   * @param content what the step says: the same content asked again, after no answer came, is the same entry
   * @param isWritten whether an answer means that something was written; a question back leaves the id as it is
   * @param setting what is saved where it is no entry of the book: how it is said, and how it is taken back
   * @returns the answer, or null when it failed (then `error` says why)
   */
  run(
    content: unknown,
    make: (id: EntryId, second: EntryId) => OwnCommands[C]['ask'],
    isWritten?: (answer: OwnCommands[C]['answer']) => boolean,
    setting?: SavedSetting,
  ): Promise<OwnCommands[C]['answer'] | null>
  readonly isBusy: boolean
  readonly error: unknown
}

/** A command of orders with the ids it needs, kept until it is acknowledged. `name` tells one form's steps from another's. */
export function useStep<C extends keyof OwnCommands>(command: C, name: string): Step<C> {
  const { book, wrote } = useHousehold()
  const first = useActionId(`${command}:${name}`)
  const second = useActionId(`${command}:${name}:second`)
  const isUnderWay = useRef(false)
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const run: Step<C>['run'] = async (content, make, isWritten = () => true, setting = undefined) => {
    if (isUnderWay.current) return null
    isUnderWay.current = true
    setBusy(true)
    setError(null)
    try {
      const key = JSON.stringify(content)
      const answer = await ask(command, make(first.idFor(key), second.idFor(key)))
      if (isWritten(answer)) {
        first.done()
        second.done()
        await wrote(book.length, setting)
      }
      return answer
    } catch (cause) {
      setError(cause)
      return null
    } finally {
      isUnderWay.current = false
      setBusy(false)
    }
  }
  return { run, isBusy, error }
}

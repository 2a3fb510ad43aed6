import { useRef, useState } from 'preact/hooks'
import type { OwnCommands } from '../../background/protocol.ts'
import { ask } from '../../ui/ask.ts'
import type { SavedSetting } from '../done.ts'
import { useHousehold } from '../household.ts'

/** One command at a time, and the desk drawn anew once it is done. */
export interface Write {
  /**
   * Whether it was done; when not, `error` says why.
   *
   * @param setting what is saved where it is no entry of the book: how it is said, and how it is taken back
   */
  write<C extends keyof OwnCommands>(
    command: C,
    payload: OwnCommands[C]['ask'],
    setting?: SavedSetting,
  ): Promise<boolean>
  readonly isBusy: boolean
  readonly error: unknown
}

/** Asks the worker to write something. Ids in what is asked must be kept by the caller, so that trying again is harmless. */
export function useWrite(): Write {
  const { book, wrote } = useHousehold()
  const isUnderWay = useRef(false)
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const write: Write['write'] = async (command, payload, setting) => {
    if (isUnderWay.current) return false
    isUnderWay.current = true
    setBusy(true)
    setError(null)
    try {
      await ask(command, payload)
      await wrote(book.length, setting)
      return true
    } catch (cause) {
      setError(cause)
      return false
    } finally {
      isUnderWay.current = false
      setBusy(false)
    }
  }
  return { write, isBusy, error }
}

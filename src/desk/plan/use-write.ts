import { useRef, useState } from 'preact/hooks'
import type { OwnCommands } from '../../background/protocol.ts'
import { ask } from '../../ui/ask.ts'
import { useHousehold } from '../household.ts'

/** One command at a time, and the desk drawn anew once it is done. */
export interface Write {
  /** Whether it was done; when not, `error` says why. */
  write<C extends keyof OwnCommands>(command: C, payload: OwnCommands[C]['ask']): Promise<boolean>
  readonly isBusy: boolean
  readonly error: unknown
}

/** Asks the worker to write something. Ids in what is asked must be kept by the caller, so that trying again is harmless. */
export function useWrite(): Write {
  const { refresh } = useHousehold()
  const isUnderWay = useRef(false)
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const write: Write['write'] = async (command, payload) => {
    if (isUnderWay.current) return false
    isUnderWay.current = true
    setBusy(true)
    setError(null)
    try {
      await ask(command, payload)
      await refresh()
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

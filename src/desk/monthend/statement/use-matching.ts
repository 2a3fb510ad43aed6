import { useEffect, useMemo, useState } from 'preact/hooks'
import { accountId } from '../../../book/ids.ts'
import { ordersToMatch, whatElseToMatch } from '../../../monthend/match-book.ts'
import type { StatementMatching } from '../../../monthend/match-types.ts'
import type { StatementLine } from '../../../monthend/statement-line.ts'
import { useHousehold } from '../../household.ts'
import { runInThread } from '../thread.ts'

/** What was found, or why not; `matching` is null while it is worked out the first time. */
export interface Matching {
  readonly matching: StatementMatching | null
  readonly isWorking: boolean
  readonly error: unknown
}

/** Matches lines with the book, anew whenever either changes; what is on screen stays until the new answer is there. */
export function useMatching(lines: readonly StatementLine[]): Matching {
  const { book } = useHousehold()
  const [state, setState] = useState<Matching>({ matching: null, isWorking: false, error: null })
  const known = useMemo(() => {
    const days = lines.map((line) => line.date).sort()
    const [from, to] = [days[0], days.at(-1)]
    if (from === undefined || to === undefined) return null
    const accounts = Object.fromEntries(lines.map((line) => [line.account, accountId(line.account)]))
    return { lines, orders: ordersToMatch(book), options: { ...whatElseToMatch(book, from, to), accounts } }
  }, [lines, book])
  useEffect(() => {
    if (!known) {
      setState({ matching: null, isWorking: false, error: null })
      return
    }
    const gone = new AbortController()
    setState((before) => ({ ...before, isWorking: true }))
    runInThread('match', known, gone.signal).then(
      (matching) => !gone.signal.aborted && setState({ matching, isWorking: false, error: null }),
      (error: unknown) => !gone.signal.aborted && setState({ matching: null, isWorking: false, error }),
    )
    return () => gone.abort()
  }, [known])
  return state
}

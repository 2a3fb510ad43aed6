import { useCallback, useEffect, useState } from 'preact/hooks'
import type { CheckoutLook, Look } from '../src/background/protocol.ts'
import { ask } from '../src/ui/ask.ts'
import { Damaged } from '../src/ui/damaged.tsx'
import { NoAnswer } from '../src/ui/no-answer.tsx'
import { Skeleton } from '../src/ui/skeleton.tsx'
import { FirstRun } from './first-run/first-run.tsx'
import { ReadyPage } from './ready-page.tsx'

type State =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'failed'; readonly error: unknown }
  | { readonly kind: 'answered'; readonly home: Look; readonly order: CheckoutLook | null | 'reading' }

/** A page that is read by then is there at the first drawing; balances do not wait longer for one. */
const READING_MS = 60

/** Chooses the screen by what the worker says of the household and of the tab. */
export function PopupPage({ tab }: { tab: number | null }) {
  const [state, setState] = useState<State>({ kind: 'waiting' })

  const load = useCallback(async (): Promise<void> => {
    try {
      const { home, order } = lookAt(tab)
      const balances = await home
      const early = balances.status === 'ready' ? await Promise.race([order, afterMoment()]) : null
      setState({ kind: 'answered', home: balances, order: early })
      if (early !== 'reading') return
      const read = await order
      // The household may have been changed while the page was read.
      setState((now) => (now.kind === 'answered' ? { ...now, order: read } : now))
    } catch (error) {
      setState({ kind: 'failed', error })
    }
  }, [tab])
  const refresh = useCallback(async (): Promise<void> => {
    try {
      const { home, order } = lookAt(tab)
      setState({ kind: 'answered', home: await home, order: await order })
    } catch (error) {
      // What was just done stays in sight; the figures beside it are from before.
      console.warn('Tillside: the popup could not be drawn anew.', error)
    }
  }, [tab])
  useEffect(() => void load(), [load])

  if (state.kind === 'waiting') return <Skeleton />
  if (state.kind === 'failed') {
    return (
      <NoAnswer
        error={state.error}
        onRetry={() => {
          setState({ kind: 'waiting' })
          void load()
        }}
      />
    )
  }
  const { home, order } = state
  const onLook = (home: Look): void => setState((now) => (now.kind === 'answered' ? { ...now, home } : now))
  if (home.status === 'new') return <FirstRun onDone={load} />
  if (home.status === 'damaged') return <Damaged what={home.what} />
  return <ReadyPage tab={tab} view={home.view} order={order} onLook={onLook} onChanged={refresh} />
}

/** Both are asked at once, the balances first: they need no reading. */
function lookAt(tab: number | null): { home: Promise<Look>; order: Promise<CheckoutLook | null> } {
  return {
    home: ask('book.look', {}),
    order: tab === null ? Promise.resolve(null) : ask('checkout.look', { at: { tab } }).catch(notRead),
  }
}

function afterMoment(): Promise<'reading'> {
  return new Promise((resolve) => setTimeout(() => resolve('reading'), READING_MS))
}

/** The household is shown also when the tab's page cannot be looked at; only a silent worker stops everything. */
function notRead(error: unknown): null {
  console.warn('Tillside: the tab could not be looked at.', error)
  return null
}

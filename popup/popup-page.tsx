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
  | { readonly kind: 'answered'; readonly home: Look; readonly order: CheckoutLook | null }

/** Chooses the screen by what the worker says of the household and of the tab. */
export function PopupPage({ tab }: { tab: number | null }) {
  const [state, setState] = useState<State>({ kind: 'waiting' })

  const load = useCallback(async (): Promise<void> => {
    try {
      setState(await lookAt(tab))
    } catch (error) {
      setState({ kind: 'failed', error })
    }
  }, [tab])
  const refresh = useCallback(async (): Promise<void> => {
    try {
      setState(await lookAt(tab))
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
  const onLook = (next: Look): void => setState({ kind: 'answered', home: next, order })
  if (home.status === 'new') return <FirstRun onDone={load} />
  if (home.status === 'damaged') return <Damaged what={home.what} />
  return <ReadyPage tab={tab} view={home.view} order={order} onLook={onLook} onChanged={refresh} />
}

/** Both are asked at once: a worker that has to start answers the second while the first is on its way. */
async function lookAt(tab: number | null): Promise<State> {
  const page = tab === null ? null : ask('checkout.look', { at: { tab } }).catch(notRead)
  const home = await ask('book.look', {})
  return { kind: 'answered', home, order: home.status === 'ready' ? await page : null }
}

/** The household is shown also when the tab's page cannot be looked at; only a silent worker stops everything. */
function notRead(error: unknown): null {
  console.warn('Tillside: the tab could not be looked at.', error)
  return null
}

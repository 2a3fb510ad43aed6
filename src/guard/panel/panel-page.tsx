import { useCallback, useEffect, useState } from 'preact/hooks'
import type { CheckoutLook, HouseholdView } from '../../background/protocol.ts'
import { AskError, ask } from '../../ui/ask.ts'
import { Checkout } from '../../ui/checkout/checkout.tsx'
import { pageTotal } from '../../ui/checkout/page-total.ts'
import { errorText } from '../../ui/error-text.ts'
import { SignMark } from '../../ui/mark.tsx'
import { amountText } from '../../ui/money-text.ts'
import { Notice } from '../../ui/notice.tsx'
import { Skeleton } from '../../ui/skeleton.tsx'
import { t } from '../../ui/text.ts'

type State =
  | { readonly kind: 'waiting' }
  /** Not opened by the guard: nothing of the household is shown. */
  | { readonly kind: 'stranger' }
  | { readonly kind: 'failed'; readonly error: unknown }
  | { readonly kind: 'held'; readonly look: CheckoutLook; readonly view: HouseholdView }

const NONCE = /^[0-9a-f]{32}$/

/** Why the order is held, the pots to choose from, and the way back to the shop. There is no way round a stop. */
export function PanelPage({ nonce }: { nonce: string }) {
  const [state, setState] = useState<State>(() => ({ kind: NONCE.test(nonce) ? 'waiting' : 'stranger' }))

  const [round, setRound] = useState(0)

  const load = useCallback(async (): Promise<void> => {
    try {
      setState(await lookAt(nonce))
    } catch (error) {
      // The worker knows no order held under this nonce in this tab.
      const isStranger = error instanceof AskError && (error.code === 'unknown-nonce' || error.code === 'not-allowed')
      setState(isStranger ? { kind: 'stranger' } : { kind: 'failed', error })
    }
  }, [nonce])

  const refresh = useCallback(async (): Promise<void> => {
    try {
      setState(await lookAt(nonce))
    } catch (error) {
      // What was just done stays in sight; the figures beside it are from before.
      console.warn('Tillside: the panel could not be drawn anew.', error)
    }
  }, [nonce])

  const close = useCallback((): void => {
    ask('panel.close', { nonce }).catch((error: unknown) => setState({ kind: 'failed', error }))
  }, [nonce])

  useEffect(() => {
    if (!NONCE.test(nonce)) return
    void load()
    const end = new AbortController()
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && !event.isComposing) close()
    }
    document.addEventListener('keydown', onKey, { signal: end.signal })
    return () => end.abort()
  }, [nonce, load, close])

  if (state.kind === 'stranger') return <p class="panel-stranger">{t('panel_stranger')}</p>
  return (
    <div class="panel-page">
      <header class="panel-head">
        <SignMark />
        <span class="wordmark">{t('extension_name')}</span>
        <button type="button" class="quiet" onClick={close}>
          {t('back_to_shop')}
        </button>
      </header>
      <main>
        {state.kind === 'waiting' && <Skeleton />}
        {state.kind === 'failed' && (
          <>
            <Notice outcome="block" isUrgent>
              {errorText(state.error)}
            </Notice>
            <button type="button" onClick={() => void load()}>
              {t('try_again')}
            </button>
          </>
        )}
        {state.kind === 'held' && (
          <Checkout
            key={round}
            at={{ nonce }}
            look={state.look}
            view={state.view}
            heading={<Why look={state.look} />}
            onChanged={refresh}
            onStartOver={async () => {
              await refresh()
              setRound(round + 1)
            }}
            onBack={close}
          />
        )}
      </main>
    </div>
  )
}

async function lookAt(nonce: string): Promise<State> {
  const home = await ask('book.look', {})
  if (home.status !== 'ready') {
    return { kind: 'failed', error: new AskError(`household-${home.status}`, t(`panel_${home.status}`)) }
  }
  return { kind: 'held', look: await ask('checkout.look', { at: { nonce } }), view: home.view }
}

function Why({ look }: { look: CheckoutLook }) {
  const { tag, heldBecause } = look
  const shop = look.shop ?? ''
  if (heldBecause === 'changed' && tag) {
    const now = pageTotal(look.page, tag.amount.currency)
    const was = amountText(tag.amount)
    return <h1>{now ? t('held_changed', { was, now: amountText(now) }) : t('held_changed_unread', { was })}</h1>
  }
  return <h1>{t(heldBecause === 'placed-before' ? 'held_placed_before' : 'held_untagged', { shop })}</h1>
}

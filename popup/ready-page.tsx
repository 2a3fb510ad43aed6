import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks'
import type { CheckoutLook, HouseholdView, Look } from '../src/background/protocol.ts'
import { BookState } from '../src/ui/book-state.tsx'
import { showDesk } from '../src/ui/browser.ts'
import { Unconfirmed } from '../src/ui/checkout/unconfirmed.tsx'
import { DemoBand } from '../src/ui/demo-band.tsx'
import { Glance } from '../src/ui/glance/glance.tsx'
import { Masthead } from '../src/ui/masthead.tsx'
import { Skeleton } from '../src/ui/skeleton.tsx'
import { t } from '../src/ui/text.ts'
import { OrderPage } from './order-page.tsx'

type Page = 'order' | 'pots'

/** A household that is set up: the order in this tab, and the pots. */
export function ReadyPage(props: {
  readonly tab: number | null
  readonly view: HouseholdView
  /** What the tab's page says; it may still be read. */
  readonly order: CheckoutLook | null | 'reading'
  readonly onLook: (look: Look) => void
  readonly onChanged: () => Promise<void>
}) {
  const { tab, view } = props
  const isReading = props.order === 'reading'
  const order = props.order === 'reading' ? null : props.order
  const [page, setPage] = usePageOfOrder(order, isReading)
  return (
    <>
      <Masthead>
        <nav aria-label={t('pages')}>
          {(['order', 'pots'] as const).map((name) => (
            <button
              key={name}
              type="button"
              aria-current={page === name ? 'page' : 'false'}
              onClick={() => setPage(name)}
            >
              {t(`page_${name}`)}
            </button>
          ))}
          <button type="button" onClick={() => void showDesk().then(() => close())}>
            {t('desk_open')}
          </button>
        </nav>
      </Masthead>
      <BookState view={view} />
      {view.isDemo && <DemoBand onLook={props.onLook} />}
      <main>
        {page === 'order' && isReading ? (
          <Skeleton />
        ) : page === 'order' ? (
          <OrderPage tab={tab} view={view} order={order} onChanged={props.onChanged} />
        ) : (
          <>
            {order && <Unconfirmed view={view} orders={order.unconfirmed} page={null} onDone={props.onChanged} />}
            <Glance view={view} onLook={props.onLook} />
          </>
        )}
      </main>
    </>
  )
}

/**
 * The popup opens on the order where there is one. A page that is read only later turns to it still, unless the person
 * has begun with something meanwhile.
 */
function usePageOfOrder(order: CheckoutLook | null, isReading: boolean): [Page, (page: Page) => void] {
  const [page, setPage] = useState<Page>(() => (order && isAboutAnOrder(order) ? 'order' : 'pots'))
  const isOpen = useRef(isReading)
  useEffect(() => {
    const end = new AbortController()
    const begin = (): void => {
      isOpen.current = false
      end.abort()
    }
    for (const act of ['keydown', 'pointerdown', 'input']) {
      document.addEventListener(act, begin, { capture: true, signal: end.signal })
    }
    return () => end.abort()
  }, [])
  useLayoutEffect(() => {
    if (isReading || !isOpen.current) return
    isOpen.current = false
    if (order && isAboutAnOrder(order)) setPage('order')
  }, [isReading, order])
  return [page, setPage]
}

/** Whether the popup should open on the order: the page shows a cart, a checkout or a total, or its shop's order or basket has a pot. */
function isAboutAnOrder({ page, tag, ahead }: CheckoutLook): boolean {
  if (tag || ahead) return true
  return page !== null && (page.stage === 'cart' || page.stage === 'checkout' || page.total !== null)
}

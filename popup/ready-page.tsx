import { useState } from 'preact/hooks'
import type { CheckoutLook, HouseholdView, Look } from '../src/background/protocol.ts'
import { BookState } from '../src/ui/book-state.tsx'
import { showDesk } from '../src/ui/browser.ts'
import { Unconfirmed } from '../src/ui/checkout/unconfirmed.tsx'
import { DemoBand } from '../src/ui/demo-band.tsx'
import { Glance } from '../src/ui/glance/glance.tsx'
import { Masthead } from '../src/ui/masthead.tsx'
import { t } from '../src/ui/text.ts'
import { OrderPage } from './order-page.tsx'

type Page = 'order' | 'pots'

/** A household that is set up: the order in this tab, and the pots. */
export function ReadyPage(props: {
  readonly tab: number | null
  readonly view: HouseholdView
  readonly order: CheckoutLook | null
  readonly onLook: (look: Look) => void
  readonly onChanged: () => Promise<void>
}) {
  const { tab, view, order } = props
  const [page, setPage] = useState<Page>(() => (order && isAboutAnOrder(order) ? 'order' : 'pots'))
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
        {page === 'order' ? (
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

/** Whether the popup should open on the order: the page shows a cart, a checkout or a total, or its shop's order or basket has a pot. */
function isAboutAnOrder({ page, tag, ahead }: CheckoutLook): boolean {
  if (tag || ahead) return true
  return page !== null && (page.stage === 'cart' || page.stage === 'checkout' || page.total !== null)
}

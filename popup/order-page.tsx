import { useState } from 'preact/hooks'
import type { CheckoutLook, HouseholdView } from '../src/background/protocol.ts'
import { Checkout } from '../src/ui/checkout/checkout.tsx'
import { Unconfirmed } from '../src/ui/checkout/unconfirmed.tsx'
import { WatchShop } from '../src/ui/checkout/watch-shop.tsx'
import { OpenKeys } from '../src/ui/open-keys.tsx'
import { t } from '../src/ui/text.ts'

/** The order on the page of this tab, or why there is none to be seen. */
export function OrderPage(props: {
  readonly tab: number | null
  readonly view: HouseholdView
  readonly order: CheckoutLook | null
  readonly onChanged: () => Promise<void>
}) {
  const { tab, view, order, onChanged } = props
  const [round, setRound] = useState(0)
  const startOver = async (): Promise<void> => {
    await onChanged()
    setRound((n) => n + 1)
  }
  if (tab === null || !order || order.unread === 'not-a-web-page') {
    return (
      <>
        {order && <Unconfirmed view={view} orders={order.unconfirmed} page={null} onDone={startOver} />}
        <NoOrder />
      </>
    )
  }
  return (
    <>
      {order.shop && <h1 class="shop-name">{order.shop}</h1>}
      {order.unread === 'no-access' && (
        <div class="no-access">
          <p>{t('reader_no_access')}</p>
          <button type="button" onClick={() => void startOver()}>
            {t('read_page')}
          </button>
        </div>
      )}
      <Unconfirmed view={view} orders={order.unconfirmed} page={order.page} onDone={startOver} />
      {order.shop && (
        <Checkout
          key={round}
          at={{ tab }}
          look={order}
          view={view}
          heading={null}
          onChanged={onChanged}
          onStartOver={startOver}
          onBack={null}
        />
      )}
      <WatchShop look={order} view={view} onChanged={onChanged} />
    </>
  )
}

function NoOrder() {
  return (
    <section class="no-order">
      <h1>{t('no_order_title')}</h1>
      <p>{t('reader_not_a_web_page')}</p>
      <p class="field-hint">
        {t('no_order_hint')} <OpenKeys />
      </p>
    </section>
  )
}

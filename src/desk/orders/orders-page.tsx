import { isUuidV7, orderId } from '../../book/ids.ts'
import { findOrder } from '../../book/order-state.ts'
import { t } from '../../ui/text.ts'
import { useHousehold } from '../household.ts'
import type { PageProps } from '../pages.ts'
import { Empty } from '../parts/empty.tsx'
import { PageHead } from '../parts/page-head.tsx'
import { linkTo } from '../place.ts'
import { OrderList } from './order-list.tsx'
import { OrderPage } from './order-page.tsx'
import './orders.css'

/** All orders, or the one whose id stands in the address. */
export function OrdersPage({ rest }: PageProps) {
  const { book } = useHousehold()
  const [id] = rest
  if (id === undefined) return <OrderList />
  const state = isUuidV7(id) ? findOrder(book, orderId(id)) : null
  if (state) return <OrderPage key={id} state={state} />
  return (
    <>
      <PageHead title={t('orders_gone_title')} back={{ href: linkTo('orders'), text: t('orders_back') }} />
      <Empty title={t('orders_gone')} />
    </>
  )
}

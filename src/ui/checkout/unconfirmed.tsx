import { useRef, useState } from 'preact/hooks'
import type { HouseholdView, SeenPage, UnconfirmedOrder } from '../../background/protocol.ts'
import type { EntryId } from '../../book/ids.ts'
import { toDecimal } from '../../money/money.ts'
import { useActionId } from '../action-id.ts'
import { ask } from '../ask.ts'
import { amountText } from '../money-text.ts'
import { shortDate } from '../short-date.ts'
import { listText, t } from '../text.ts'
import { WentWrong } from '../went-wrong.tsx'
import { type Answered, AnsweredOrder } from './answered-order.tsx'
import { pageTotal } from './page-total.ts'

/** Orders that were tagged and not seen through: did they go through? A confirmation page before us answers for one. */
export function Unconfirmed(props: {
  readonly view: HouseholdView
  readonly orders: readonly UnconfirmedOrder[]
  readonly page: SeenPage | null
  readonly onDone: () => Promise<void>
}) {
  const [answered, setAnswered] = useState<Answered | null>(null)
  return (
    <>
      {answered && (
        <AnsweredOrder
          key={answered.entry}
          answered={answered}
          onUndone={async () => {
            await props.onDone()
            setAnswered(null)
          }}
        />
      )}
      {props.orders.map((order, n) => (
        <One
          key={order.order}
          {...props}
          order={order}
          page={n === 0 ? props.page : null}
          onAnswered={(entry, said) => setAnswered({ entry, said, order })}
        />
      ))}
    </>
  )
}

function One(props: {
  readonly view: HouseholdView
  readonly order: UnconfirmedOrder
  readonly page: SeenPage | null
  readonly onDone: () => Promise<void>
  readonly onAnswered: (entry: EntryId, said: Answered['said']) => void
}) {
  const { order, view, page } = props
  const yes = useActionId(`confirm:${order.order}`)
  const no = useActionId(`not-placed:${order.order}`)
  const [error, setError] = useState<unknown>(null)
  const isUnderWay = useRef(false)
  const [isBusy, setBusy] = useState(false)
  const pots = listText(order.pots.map((id) => view.household.pots.find((p) => p.id === id)?.name ?? id))
  const isConfirmation = page?.stage === 'confirmation'
  const total = isConfirmation ? pageTotal(page, view.household.currency) : null
  const number = isConfirmation ? (page?.orderNumber ?? null) : null
  const run = (work: () => Promise<unknown>): void => {
    if (isUnderWay.current) return
    isUnderWay.current = true
    setBusy(true)
    setError(null)
    work()
      .then(() => props.onDone())
      .catch(setError)
      .finally(() => {
        isUnderWay.current = false
        setBusy(false)
      })
  }
  const confirm = (said: { number: string | null; total: string | null }): void =>
    run(async () => {
      const id = yes.idFor(JSON.stringify(said))
      const { kind } = await ask('order.confirm', { id, order: order.order, ...said })
      yes.done()
      if (kind === 'confirmed') props.onAnswered(id, 'placed')
    })
  const release = (): void =>
    run(async () => {
      const id = no.idFor(order.order)
      await ask('order.release', { id, order: order.order, why: 'not-placed' })
      no.done()
      props.onAnswered(id, 'let-go')
    })
  const differs = total !== null && total.minor !== order.amount.minor
  return (
    <section class="unconfirmed">
      <h2>{t('unconfirmed_title')}</h2>
      <p>
        {t('unconfirmed_said', {
          amount: amountText(order.amount),
          shop: order.shop,
          date: shortDate(order.date),
          pots,
        })}
      </p>
      {isConfirmation && (total !== null || number !== null) && (
        <p>
          {number !== null && t('unconfirmed_number', { number })}{' '}
          {differs && total && t('unconfirmed_total', { total: amountText(total), was: amountText(order.amount) })}
        </p>
      )}
      <WentWrong error={error} />
      <div class="buttons">
        <button
          type="button"
          class="primary"
          disabled={isBusy}
          onClick={() => confirm({ number, total: differs && total ? toDecimal(total) : null })}
        >
          {t(differs ? 'unconfirmed_yes_total' : 'unconfirmed_yes')}
        </button>
        <button type="button" disabled={isBusy} onClick={release}>
          {t('unconfirmed_no')}
        </button>
      </div>
    </section>
  )
}

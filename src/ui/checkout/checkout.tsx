import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'
import type { At, CheckoutLook, HouseholdView, OpenTag } from '../../background/protocol.ts'
import type { OrderId } from '../../book/ids.ts'
import { type Money, ofMinor } from '../../money/money.ts'
import { amountText } from '../money-text.ts'
import { newOrderId } from '../new-id.ts'
import { Notice } from '../notice.tsx'
import { t } from '../text.ts'
import { OrderForm, type Tagged } from './order-form.tsx'
import { pageTotal, totalChanged } from './page-total.ts'
import { PlacedBefore } from './placed-before.tsx'
import { potNames } from './pot-order.ts'
import { TaggedView } from './tagged-view.tsx'
import './checkout.css'

type Phase =
  | { readonly kind: 'placed-before'; readonly tag: OpenTag }
  | { readonly kind: 'choose'; readonly order: OrderId; readonly standing: OpenTag | null }
  /** `before` is the tag that an adjustment replaced: it stands again when the adjustment is taken back. */
  | { readonly kind: 'tagged'; readonly tagged: Tagged; readonly standing: OpenTag; readonly before: OpenTag | null }

/** The order on a shop's page, from the first look to "press the shop's own button". Popup and panel both show it. */
export function Checkout(props: {
  readonly at: At
  readonly look: CheckoutLook
  readonly view: HouseholdView
  /** Stands above the order while it has no pot. */
  readonly heading: ComponentChildren
  /** The book changed: draw it anew. */
  readonly onChanged: () => Promise<void>
  /** A tag was taken back: look at the order as if for the first time. */
  readonly onStartOver: () => Promise<void>
  /** In the panel: gives the page back to the person. */
  readonly onBack: (() => void) | null
}) {
  const { at, look, view } = props
  const [phase, setPhase] = useState<Phase>(() => firstPhase(look, view))
  const chooseAnew = (): void => setPhase({ kind: 'choose', order: newOrderId(), standing: null })
  const noteTagged = (order: OrderId, tagged: Tagged, before: OpenTag | null): void => {
    const { amount, lines } = tagged
    const read = look.page?.total ?? null
    const standing = { order, shop: look.shop ?? '', lines, amount, read, taggedAt: Date.now(), placedAt: null }
    void props.onChanged().then(() => setPhase({ kind: 'tagged', tagged, standing, before }))
  }

  if (phase.kind === 'placed-before') {
    const { tag } = phase
    const tagged = { amount: tag.amount, lines: tag.lines, entry: null }
    return (
      <>
        {props.heading}
        <PlacedBefore
          at={at}
          view={view}
          tag={tag}
          onAgain={() => setPhase({ kind: 'tagged', tagged, standing: tag, before: null })}
          onNew={chooseAnew}
        />
      </>
    )
  }
  if (phase.kind === 'tagged') {
    const { tagged, standing, before } = phase
    const undone = (): void => {
      if (!before) return void props.onStartOver()
      void props.onChanged().then(() => setPhase({ kind: 'choose', order: before.order, standing: before }))
    }
    return (
      <TaggedView
        view={view}
        tagged={tagged}
        onUndone={undone}
        onChange={() => setPhase({ kind: 'choose', order: standing.order, standing })}
        onAnother={standing.placedAt === null ? null : chooseAnew}
        onBack={props.onBack}
      />
    )
  }
  const { standing } = phase
  return (
    <>
      {props.heading}
      {standing && <Standing tag={standing} look={look} view={view} />}
      <OrderForm
        key={phase.order}
        at={at}
        look={look}
        view={view}
        order={phase.order}
        standing={standing}
        onTagged={(tagged) => noteTagged(phase.order, tagged, standing)}
        onChanged={props.onChanged}
      />
    </>
  )
}

function firstPhase(look: CheckoutLook, view: HouseholdView): Phase {
  const { tag, page, heldBecause } = look
  if (!tag) return { kind: 'choose', order: newOrderId(), standing: null }
  if (heldBecause === 'placed-before') return { kind: 'placed-before', tag }
  if (totalChanged(tag, page)) return { kind: 'choose', order: tag.order, standing: tag }
  const last = view.undoable
  const entry = last?.kind === 'order' && last.order === tag.order ? last.id : null
  return { kind: 'tagged', tagged: { amount: tag.amount, lines: tag.lines, entry }, standing: tag, before: null }
}

/** An open tag, and by how much the page asks more or less than it. */
function Standing({ tag, look, view }: { tag: OpenTag; look: CheckoutLook; view: HouseholdView }) {
  const pot = potNames(view, tag.lines)
  const now = pageTotal(look.page, tag.amount.currency)
  const before = { amount: amountText(tag.amount), pot }
  if (!now || now.minor === tag.amount.minor) return <Notice outcome="allow">{t('tag_stands', before)}</Notice>
  const size: Money = ofMinor(now.currency, Math.abs(now.minor - tag.amount.minor))
  const values = { ...before, now: amountText(now), change: amountText(size) }
  return (
    <Notice outcome="warn">
      {t(now.minor > tag.amount.minor ? 'tag_grew' : 'tag_shrank', values)} {t('tag_adjusts')}
    </Notice>
  )
}

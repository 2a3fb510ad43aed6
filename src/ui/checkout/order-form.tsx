import { useRef, useState } from 'preact/hooks'
import type { At, CheckoutLook, HouseholdView, OpenTag, TagReply } from '../../background/protocol.ts'
import type { EntryId, OrderId, PotId } from '../../book/ids.ts'
import { type Money, ofMinor, toDecimal } from '../../money/money.ts'
import { readAmount } from '../amount-text.ts'
import { locale } from '../browser.ts'
import { useDraft } from '../draft.ts'
import { editText } from '../money-text.ts'
import { t } from '../text.ts'
import { AbroadFields } from './abroad-fields.tsx'
import { MoreFields } from './more-fields.tsx'
import { emptyDraft, isPlain, useOrderDraft, wishOf } from './order-draft.ts'
import { type Missing, OrderFoot } from './order-foot.tsx'
import { askedTotal, pageTotal } from './page-total.ts'
import { PotAhead } from './pot-ahead.tsx'
import { PotChooser } from './pot-chooser.tsx'
import { potOrder, readyPot } from './pot-order.ts'
import { SplitEditor } from './split-editor.tsx'
import { TotalField } from './total-field.tsx'
import { useAbroad } from './use-abroad.ts'
import { useArmed } from './use-armed.ts'
import { useChoices } from './use-choices.ts'
import { useTag } from './use-tag.ts'
import { useWeigh } from './use-weigh.ts'

/** What was tagged. `entry` is what undo takes back, null when the tag stood already or nothing had to be entered. */
export interface Tagged {
  readonly amount: Money
  readonly lines: readonly { readonly pot: PotId; readonly amount: Money }[]
  readonly entry: EntryId | null
}

/** Choose what the order costs and the pot or pots that pay; see what it does to them; tag it. */
export function OrderForm(props: {
  readonly at: At
  readonly look: CheckoutLook
  readonly view: HouseholdView
  readonly order: OrderId
  readonly standing: OpenTag | null
  readonly onTagged: (tagged: Tagged) => void
  readonly onChanged: () => Promise<void>
}) {
  const { look, view, standing } = props
  const { household } = view
  const shop = look.shop ?? ''
  const form = useRef<HTMLFormElement>(null)
  const isArmed = useArmed('nonce' in props.at)
  const [typesHome, setTypesHome] = useState(false)
  const onPage = typesHome ? pageTotal(look.page, household.currency) : askedTotal(look.page)
  const asked = onPage?.currency ?? household.currency
  const isForeign = asked !== household.currency
  const start = onPage ?? standing?.amount
  // What was typed for one total must not be taken for the shop's next order.
  const place = onPage ? `${shop} ${toDecimal(onPage)}` : shop
  const [text, setText, forgetText] = useDraft(`total:${place}`, start ? editText(start) : '')
  const [typedPot, setPot, forgetPot] = useDraft(`pot:${place}`)
  const [reason, setReason, forgetReason] = useDraft(`reason:${place}`)
  const [draft, change, forgetDraft] = useOrderDraft(`order:${place}`, draftOf(standing))
  const [missing, setMissing] = useState<Missing | null>(null)

  const read = readAmount(text, asked, locale())
  const total = read.ok && read.money.minor > 0 ? read.money : null
  const abroad = useAbroad({ total, home: household.currency, view, draft, seen: look.seenRate })
  const forPots = isForeign ? (abroad.converted?.total ?? null) : total
  const { choices, error } = useChoices(view, shop, forPots && toDecimal(forPots), standing?.order ?? null)
  const ranking = useRef<readonly PotId[] | null>(null)
  // The first ranking stays: rows must not jump while an amount is typed.
  if (choices && !ranking.current) ranking.current = choices.list.map((c) => c.pot)
  const pots = potOrder(household, ranking.current)
  const chosenId =
    pots.find((p) => p.id === typedPot)?.id ??
    standing?.lines[0]?.pot ??
    readyPot(pots, choices?.list ?? [], look.ahead?.pot)
  const chosenPot = pots.find((p) => p.id === chosenId)
  const isFresh = choices !== null && forPots !== null && choices.total === toDecimal(forPots)
  const choice = isFresh ? choices.list.find((c) => c.pot === chosenId) : undefined

  const plain = isPlain(draft, isForeign)
  const known = total && {
    ...abroad,
    page: look.page,
    total,
    home: household.currency,
    pot: chosenId,
    pots: pots.map((p) => p.id),
  }
  const wish = known && wishOf(draft, known)
  const weigh = useWeigh(view, shop, standing?.order ?? null, plain ? null : wish)
  const outcome = plain ? choice?.verdict.outcome : weigh.weighed?.verdict.outcome
  // A stop says which items would have to go, where the page shows them with their prices.
  const byItem = plain && outcome === 'block' && known ? wishOf({ ...draft, mode: 'item' }, known) : null
  const stopped = useWeigh(view, shop, standing?.order ?? null, byItem).weighed

  const tagging = useTag(props.at, shop, (reply) => {
    if (reply.kind === 'needs-reason') setMissing('reason')
    const tagged = taggedBy(reply, household.currency)
    if (!tagged) return
    for (const forget of [forgetText, forgetPot, forgetReason, forgetDraft]) forget()
    props.onTagged(tagged)
  })
  const stopAt = (what: Missing): void => {
    setMissing(what)
    form.current?.querySelector<HTMLElement>(FIELD_OF[what])?.focus()
  }
  const go = (): void => {
    if (!isArmed() || tagging.isBusy) return
    const given = outcome === 'warn' ? reason.trim() : null
    if (!total) stopAt('total')
    else if (!chosenPot) stopAt('pot')
    else if (!wish) stopAt('more')
    else if (given === '') stopAt('reason')
    else if (outcome !== undefined && outcome !== 'block') {
      setMissing(null)
      void tagging.tag({ order: props.order, wish, reason: given })
    }
  }

  return (
    <form
      ref={form}
      class="order-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        go()
      }}
    >
      <TotalField
        tab={'tab' in props.at ? props.at.tab : null}
        page={look.page}
        currency={asked}
        onPage={onPage}
        text={text}
        onText={setText}
        read={read}
      />
      {isForeign && (
        <AbroadFields
          {...abroad}
          asked={asked}
          home={household.currency}
          seen={look.seenRate}
          onRate={(rate) => change({ rate })}
          onFee={(fee) => change({ fee })}
          onHome={() => {
            setTypesHome(true)
            setText('')
          }}
        />
      )}
      {draft.mode === 'one' ? (
        <>
          <PotChooser
            view={view}
            pots={pots}
            choices={isFresh ? choices.list : null}
            chosen={chosenPot?.id ?? null}
            onChoose={setPot}
            onGo={go}
          />
          {!standing && (
            <PotAhead
              tab={'tab' in props.at ? props.at.tab : null}
              look={look}
              pots={pots}
              chosen={chosenPot ?? null}
              onChanged={props.onChanged}
            />
          )}
          <button
            type="button"
            class="link split-start"
            onClick={() => change({ mode: look.page?.items?.length ? 'item' : 'amount' })}
          >
            {t('split_start')}
          </button>
        </>
      ) : (
        <SplitEditor
          draft={draft}
          change={change}
          pots={pots}
          pot={chosenId}
          onPot={setPot}
          page={look.page}
          total={total}
          split={weigh.weighed?.split ?? null}
        />
      )}
      <MoreFields
        view={view}
        shop={shop}
        order={standing?.order ?? null}
        asked={asked}
        draft={draft}
        change={change}
        wish={wish}
        weighed={weigh.weighed}
      />
      <OrderFoot
        household={household}
        plain={plain}
        choice={choice ?? null}
        choices={isFresh ? choices.list : []}
        weighed={weigh.weighed}
        wish={wish}
        takeOut={stopped && byItem && { weighed: stopped, wish: byItem }}
        pot={chosenPot ?? null}
        isChange={standing !== null}
        reason={reason}
        onReason={setReason}
        missing={missing}
        hasTotal={total !== null}
        error={tagging.error ?? weigh.error ?? error}
        isBusy={tagging.isBusy}
      />
    </form>
  )
}

const FIELD_OF: Readonly<Record<Missing, string>> = {
  total: '.total-field input',
  pot: '.chooser input, .split select',
  more: '.split input, .abroad input, .more input',
  reason: '.reason-field input',
}

/** A tag over several pots is changed by its amounts. */
function draftOf(standing: OpenTag | null): typeof emptyDraft {
  if (!standing || standing.lines.length < 2) return emptyDraft
  const amounts = Object.fromEntries(standing.lines.slice(1).map((l) => [l.pot, editText(l.amount)]))
  return { ...emptyDraft, mode: 'amount', amounts }
}

function taggedBy(reply: TagReply, currency: Money['currency']): Tagged | null {
  if (reply.kind === 'needs-reason' || reply.kind === 'blocked') return null
  if (reply.kind === 'nothing-to-pay') return { amount: ofMinor(currency, 0), lines: [], entry: null }
  const lines = reply.verdict.lines.map(({ pot, amount }) => ({ pot, amount }))
  const minor = lines.reduce((sum, l) => sum + l.amount.minor, 0)
  return { amount: ofMinor(currency, minor), lines, entry: reply.kind === 'tagged' ? reply.entry : null }
}

import { useRef, useState } from 'preact/hooks'
import type { At, CheckoutLook, HouseholdView, OpenTag } from '../../background/protocol.ts'
import type { EntryId, OrderId, PotId } from '../../book/ids.ts'
import { type Money, toDecimal } from '../../money/money.ts'
import { readAmount } from '../amount-text.ts'
import { locale } from '../browser.ts'
import { useDraft } from '../draft.ts'
import { errorText } from '../error-text.ts'
import { TextField } from '../field.tsx'
import { editText } from '../money-text.ts'
import { Notice } from '../notice.tsx'
import { t } from '../text.ts'
import { pageTotal } from './page-total.ts'
import { PotChooser } from './pot-chooser.tsx'
import { potOrder, readyPot } from './pot-order.ts'
import { TotalField } from './total-field.tsx'
import { useArmed } from './use-armed.ts'
import { useChoices } from './use-choices.ts'
import { useTag } from './use-tag.ts'
import { VerdictBox } from './verdict-box.tsx'

/** What was tagged. `entry` is what undo takes back, null when the tag stood already. */
export interface Tagged {
  readonly amount: Money
  readonly pot: PotId
  readonly entry: EntryId | null
}

/** Choose what the order costs and the pot that pays; see what it does to the pot; tag it. */
export function OrderForm(props: {
  readonly at: At
  readonly look: CheckoutLook
  readonly view: HouseholdView
  readonly order: OrderId
  readonly standing: OpenTag | null
  readonly onTagged: (tagged: Tagged) => void
}) {
  const { look, view, standing } = props
  const { household } = view
  const shop = look.shop ?? ''
  const form = useRef<HTMLFormElement>(null)
  const isArmed = useArmed('nonce' in props.at)
  const onPage = pageTotal(look.page, household.currency)
  const start = onPage ?? standing?.amount
  // What was typed for one total must not be taken for the shop's next order.
  const place = onPage ? `${shop} ${toDecimal(onPage)}` : shop
  const [text, setText, forgetText] = useDraft(`total:${place}`, start ? editText(start) : '')
  const [typedPot, setPot, forgetPot] = useDraft(`pot:${place}`)
  const [reason, setReason, forgetReason] = useDraft(`reason:${place}`)
  const [missing, setMissing] = useState<'total' | 'pot' | 'reason' | null>(null)

  const read = readAmount(text, household.currency, locale())
  const total = read.ok && read.money.minor > 0 ? read.money : null
  const { choices, error } = useChoices(view, shop, total && toDecimal(total), standing?.order ?? null)
  const ranking = useRef<readonly PotId[] | null>(null)
  // The first ranking stays: rows must not jump while an amount is typed.
  if (choices && !ranking.current) ranking.current = choices.list.map((c) => c.pot)
  const pots = potOrder(household, ranking.current)
  const chosenId = pots.find((p) => p.id === typedPot)?.id ?? standing?.pot ?? readyPot(pots, choices?.list ?? [])
  const chosenPot = pots.find((p) => p.id === chosenId)
  const isFresh = choices !== null && total !== null && choices.total === toDecimal(total)
  const choice = isFresh ? choices.list.find((c) => c.pot === chosenId) : undefined
  const outcome = choice?.verdict.outcome

  const tagging = useTag(props.at, shop, (reply) => {
    if (reply.kind === 'needs-reason') setMissing('reason')
    if (!total || !chosenPot || reply.kind === 'needs-reason' || reply.kind === 'blocked') return
    forgetText()
    forgetPot()
    forgetReason()
    props.onTagged({ amount: total, pot: chosenPot.id, entry: reply.kind === 'tagged' ? reply.entry : null })
  })
  const stopAt = (what: 'total' | 'pot' | 'reason'): void => {
    setMissing(what)
    const field = { total: '.total-field input', pot: '.chooser input', reason: '.reason-field input' }[what]
    form.current?.querySelector<HTMLInputElement>(field)?.focus()
  }
  const go = (): void => {
    if (!isArmed() || tagging.isBusy) return
    const given = outcome === 'warn' ? reason.trim() : null
    if (!total) stopAt('total')
    else if (!chosenPot) stopAt('pot')
    else if (given === '') stopAt('reason')
    else if (choice && outcome !== 'block') {
      setMissing(null)
      void tagging.tag({ order: props.order, total: toDecimal(total), pot: chosenPot.id, reason: given })
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
        page={look.page}
        currency={household.currency}
        onPage={onPage}
        text={text}
        onText={setText}
        read={read}
      />
      <PotChooser
        view={view}
        pots={pots}
        choices={isFresh ? choices.list : null}
        chosen={chosenPot?.id ?? null}
        onChoose={setPot}
        onGo={go}
      />
      <div class="order-foot">
        <div aria-live="polite">
          {choice && isFresh && <VerdictBox household={household} chosen={choice} choices={choices.list} />}
        </div>
        {outcome === 'warn' && (
          <TextField
            label={t('reason_label')}
            class="reason-field"
            maxLength={400}
            value={reason}
            onValue={setReason}
            error={missing === 'reason' && reason.trim() === '' ? t('reason_missing') : null}
          />
        )}
        {missing === 'total' && !total && <Notice outcome="warn">{t('total_missing')}</Notice>}
        {missing === 'pot' && !chosenPot && <Notice outcome="warn">{t('pot_missing')}</Notice>}
        {(tagging.error ?? error) !== null && (
          <Notice outcome="block" isUrgent>
            {errorText(tagging.error ?? error)}
          </Notice>
        )}
        <button type="submit" class="primary" disabled={outcome === 'block' || tagging.isBusy}>
          {chosenPot
            ? t(outcome === 'block' ? 'tag_blocked' : standing ? 'tag_change' : 'tag_to', { pot: chosenPot.name })
            : t('tag_choose')}
        </button>
      </div>
    </form>
  )
}

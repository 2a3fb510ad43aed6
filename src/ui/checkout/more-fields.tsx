import type { HouseholdView, Weighed, WishText } from '../../background/protocol.ts'
import type { OrderId } from '../../book/ids.ts'
import type { CurrencyCode } from '../../money/currency.ts'
import { DateField, SelectField, TextField } from '../field.tsx'
import { amountText } from '../money-text.ts'
import { shortDate } from '../short-date.ts'
import { listText, t } from '../text.ts'
import { type ChangeDraft, type OrderDraft, partDays } from './order-draft.ts'
import { useWeigh } from './use-weigh.ts'

/** What few orders need: a margin for an estimate, a gift card, instalments. */
export function MoreFields(props: {
  readonly view: HouseholdView
  readonly shop: string
  readonly order: OrderId | null
  /** The currency the shop asks. */
  readonly asked: CurrencyCode
  readonly draft: OrderDraft
  readonly change: ChangeDraft
  readonly wish: WishText | null
  readonly weighed: Weighed | null
}) {
  const { draft, change, view } = props
  const isUsed = draft.margin !== '' || draft.credit !== '' || draft.parts !== ''
  const usual = view.household.ordering?.marginPercent ?? '10'
  return (
    <details class="more" open={isUsed}>
      <summary>{t('more_title')}</summary>
      <div class="more-fields">
        <div class="more-line">
          <TextField
            label={t('more_margin')}
            isAmount
            value={draft.margin}
            onValue={(margin) => change({ margin })}
            hint={t('more_margin_hint')}
          />
          {draft.margin === '' && (
            <button type="button" class="link" onClick={() => change({ margin: usual })}>
              {t('more_margin_usual', { percent: usual })}
            </button>
          )}
        </div>
        <TextField
          label={t('more_credit')}
          isAmount
          currency={props.asked}
          value={draft.credit}
          onValue={(credit) => change({ credit })}
          hint={t('more_credit_hint')}
        />
        <div class="more-line">
          <TextField
            label={t('more_parts')}
            isAmount
            maxLength={2}
            value={draft.parts}
            onValue={(parts) => change({ parts, firstPart: draft.firstPart || view.today })}
          />
          {draft.parts !== '' && (
            <>
              <DateField
                label={t('more_first_part')}
                value={draft.firstPart}
                onValue={(firstPart) => change({ firstPart })}
                error={partDays(draft) === null ? t('more_parts_wrong') : null}
              />
              <SelectField
                label={t('more_every')}
                value={draft.every}
                options={(['week', 'two-weeks', 'month'] as const).map((value) => ({
                  value,
                  label: t(`more_every_${value === 'two-weeks' ? 'two_weeks' : value}`),
                }))}
                onValue={(every) => change({ every })}
              />
            </>
          )}
        </div>
        {draft.parts !== '' && <Reserve {...props} />}
      </div>
    </details>
  )
}

/** Both ways to reserve an order in instalments, each with what it leaves. */
function Reserve(props: Parameters<typeof MoreFields>[0]) {
  const { view, shop, order, draft, wish } = props
  const as = (reserve: OrderDraft['reserve']): WishText | null =>
    wish?.instalments ? { ...wish, instalments: { ...wish.instalments, reserve } } : null
  const whole = useWeigh(view, shop, order, as('whole')).weighed
  const byPart = useWeigh(view, shop, order, as('by-part')).weighed
  const days = partDays(draft) ?? []
  const leaves = (weighed: Weighed | null): string =>
    listText(
      (weighed?.verdict.lines ?? []).map((l) => {
        const name = view.household.pots.find((p) => p.id === l.pot)?.name ?? l.pot
        return `${name} ${amountText(l.after.left)}`
      }),
    )
  const options = [
    ['whole', whole, t('reserve_whole_leaves', { lines: leaves(whole) })],
    [
      'by-part',
      byPart,
      t('reserve_by_part_leaves', {
        lines: leaves(byPart),
        days: listText(days.filter((d) => d > view.today).map((d) => shortDate(d))),
      }),
    ],
  ] as const
  return (
    <fieldset class="reserve">
      <legend>{t('reserve_title')}</legend>
      {options.map(([value, weighed, said]) => (
        <label key={value}>
          <input
            type="radio"
            name="reserve"
            checked={draft.reserve === value}
            onChange={() => props.change({ reserve: value })}
          />
          <span>
            <strong>{t(value === 'whole' ? 'reserve_whole' : 'reserve_by_part')}</strong>
            {weighed && <span class="field-hint">{said}</span>}
          </span>
        </label>
      ))}
    </fieldset>
  )
}

import { useId } from 'preact/hooks'
import type { CountEntry } from '../../../book/entry.ts'
import type { Pot } from '../../../book/household.ts'
import { ofMinor } from '../../../money/money.ts'
import type { CountFinding } from '../../../monthend/count-compare.ts'
import { amountText } from '../../../ui/money-text.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { overText } from './over-text.ts'
import { countOf, type TypedEnvelope } from './typed.ts'

/** One envelope: a field for each note and coin. Enter goes to the next field, also into the next envelope. */
export function Envelope(props: {
  readonly pot: Pot
  readonly denominations: readonly number[]
  readonly typed: TypedEnvelope | undefined
  readonly finding: CountFinding | null
  readonly before: CountEntry | null
  readonly onTyped: (typed: TypedEnvelope | null) => void
}) {
  const { pot, finding, typed = {} } = props
  const { book } = useHousehold()
  const id = useId()
  const text = (denomination: number): string => amountText(ofMinor(book.household.currency, denomination))
  return (
    <fieldset class="envelope">
      <legend>{pot.name}</legend>
      <div class="pieces">
        {props.denominations.map((denomination) => {
          const value = typed[denomination] ?? ''
          return (
            <div class="piece" key={denomination}>
              <label for={`${id}-${denomination}`}>{text(denomination)}</label>
              <input
                id={`${id}-${denomination}`}
                type="text"
                inputMode="numeric"
                autocomplete="off"
                maxLength={5}
                aria-invalid={Number.isNaN(countOf(value))}
                value={value}
                onInput={(event) => props.onTyped({ ...typed, [denomination]: event.currentTarget.value })}
                onKeyDown={(event) => {
                  if (event.key !== 'Enter') return
                  event.preventDefault()
                  nextField(event.currentTarget)?.focus()
                }}
              />
            </div>
          )
        })}
      </div>
      <p class="envelope-sum" aria-live="polite">
        {finding
          ? t('count_sum', { counted: amountText(finding.counted), expected: amountText(finding.expected) })
          : props.before
            ? t('count_before', { date: shortDate(props.before.date) })
            : t('count_not_yet')}
        {finding && <strong class={finding.over.minor === 0 ? '' : 'differs'}> {overText(finding.over)}</strong>}
      </p>
      <div class="buttons">
        {props.typed === undefined ? (
          <button type="button" class="link" onClick={() => props.onTyped({})}>
            {t('count_is_empty')}
          </button>
        ) : (
          <button type="button" class="link" onClick={() => props.onTyped(null)}>
            {t('count_forget')}
          </button>
        )}
      </div>
    </fieldset>
  )
}

function nextField(field: HTMLInputElement): HTMLElement | null {
  const fields = [...(field.form?.querySelectorAll<HTMLElement>('.piece input, button[type="submit"]') ?? [])]
  return fields[fields.indexOf(field) + 1] ?? null
}

import type { ComponentChildren } from 'preact'
import { useId } from 'preact/hooks'
import type { CurrencyCode } from '../money/currency.ts'
import { readAmount } from './amount-text.ts'
import { locale } from './browser.ts'
import { amountText } from './money-text.ts'
import { t } from './text.ts'

/** What a control inside a `Field` needs to be tied to its label, hint and error. */
export interface FieldTies {
  readonly id: string
  readonly 'aria-describedby': string | undefined
  readonly 'aria-invalid': boolean
}

/** A label, its control, and beside it what is wrong or what helps. */
export function Field(props: {
  readonly label: string
  readonly hint?: string | null
  readonly error?: string | null
  readonly class?: string
  /** Stands between the control and what helps. */
  readonly below?: ComponentChildren
  readonly children: (ties: FieldTies) => ComponentChildren
}) {
  const id = useId()
  const { label, hint, error } = props
  const note = error ?? hint
  return (
    <div class={`field ${props.class ?? ''}`}>
      <label for={id}>{label}</label>
      {props.children({ id, 'aria-describedby': note ? `${id}-note` : undefined, 'aria-invalid': Boolean(error) })}
      {props.below}
      {note && (
        <p id={`${id}-note`} class={error ? 'field-error' : 'field-hint'}>
          {note}
        </p>
      )}
    </div>
  )
}

/** Characters from which an amount is set smaller, so that all of it is seen. */
const LONG_AMOUNT = 10

/** One line of text. */
export function TextField(props: {
  readonly label: string
  readonly value: string
  readonly onValue: (value: string) => void
  readonly hint?: string | null
  readonly error?: string | null
  readonly class?: string
  /** Figures, and the number keyboard on touch screens. */
  readonly isAmount?: boolean
  /** Of an amount of money: a sum such as `12.50+3` is worked out in sight, before it is taken. */
  readonly currency?: CurrencyCode
  readonly maxLength?: number
}) {
  const { label, hint, error, currency } = props
  const below = currency && <SumResult text={props.value} currency={currency} />
  return (
    <Field label={label} hint={hint ?? null} error={error ?? null} class={props.class ?? ''} below={below}>
      {(ties) => (
        <input
          {...ties}
          class={props.isAmount ? `amount-input ${props.value.length > LONG_AMOUNT ? 'is-long' : ''}` : ''}
          type="text"
          inputMode={props.isAmount ? 'decimal' : 'text'}
          autocomplete="off"
          spellcheck={false}
          maxLength={props.maxLength ?? 60}
          value={props.value}
          onInput={(event) => props.onValue(event.currentTarget.value)}
        />
      )}
    </Field>
  )
}

/**
 * What a typed sum comes to; nothing under a plain number or what cannot be read. It is always there, so that it is heard
 * when it fills.
 *
 * @param text as typed
 */
export function SumResult({ text, currency }: { text: string; currency: CurrencyCode }) {
  const read = readAmount(text, currency, locale())
  const isShown = read.ok && read.isSum
  return (
    <output class="field-sum">
      {isShown && t(read.isRounded ? 'sum_is_rounded' : 'sum_is', { amount: amountText(read.money) })}
    </output>
  )
}

/** A day of the calendar, as the browser lets people choose one. The value is `YYYY-MM-DD`, or empty. */
export function DateField(props: {
  readonly label: string
  readonly value: string
  readonly onValue: (value: string) => void
  readonly error?: string | null
}) {
  return (
    <Field label={props.label} error={props.error ?? null}>
      {(ties) => (
        <input
          {...ties}
          type="date"
          value={props.value}
          onInput={(event) => props.onValue(event.currentTarget.value)}
        />
      )}
    </Field>
  )
}

/** One of a few. `T` is checked: a value the list does not have is never given back. */
export function SelectField<T extends string>(props: {
  readonly label: string
  readonly value: T
  readonly options: readonly { readonly value: T; readonly label: string }[]
  readonly onValue: (value: T) => void
  readonly hint?: string | null
  readonly class?: string
}) {
  return (
    <Field label={props.label} hint={props.hint ?? null} class={props.class ?? ''}>
      {(ties) => (
        <select
          {...ties}
          value={props.value}
          onChange={(event) => {
            const found = props.options.find((o) => o.value === event.currentTarget.value)
            if (found) props.onValue(found.value)
          }}
        >
          {props.options.map((o) => (
            <option key={o.value} value={o.value}>
              {o.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  )
}

/** A choice of two or three that stays in sight, as native radio buttons. */
export function Choice<T extends string>(props: {
  readonly label: string
  readonly name: string
  readonly value: T
  readonly options: readonly { readonly value: T; readonly label: string }[]
  readonly onValue: (value: T) => void
}) {
  return (
    <fieldset class="choice">
      <legend class="unseen">{props.label}</legend>
      {props.options.map((o) => (
        <label key={o.value}>
          <input
            type="radio"
            name={props.name}
            checked={o.value === props.value}
            onChange={() => props.onValue(o.value)}
          />
          <span>{o.label}</span>
        </label>
      ))}
    </fieldset>
  )
}

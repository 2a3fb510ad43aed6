import { useLayoutEffect, useRef } from 'preact/hooks'
import { blankPot, type PotDraft } from '../../src/ui/pot-draft.ts'
import { PotFields } from '../../src/ui/pot-fields.tsx'
import { t } from '../../src/ui/text.ts'
import type { FirstRunDraft, FirstRunProblems } from './first-run-draft.ts'
import { suggestedPots } from './suggestions.ts'

/** The pots to start with: suggestions to tick, and a row of fields for each pot. Enter in a row adds the next one. */
export function PotRows(props: {
  readonly draft: FirstRunDraft
  readonly problems: FirstRunProblems | null
  readonly onDraft: (draft: FirstRunDraft) => void
}) {
  const { draft, problems } = props
  const { pots } = draft
  const list = useRef<HTMLOListElement>(null)
  const goTo = useRef<number | null>(null)
  // A row that was just added, or that took the place of a removed one, gets the keyboard.
  useLayoutEffect(() => {
    if (goTo.current === null) return
    const rows = list.current?.querySelectorAll<HTMLInputElement>('.pot-name-field input')
    rows?.item(Math.min(goTo.current, rows.length - 1))?.focus()
    goTo.current = null
  }, [pots.length])

  const setPots = (next: readonly (PotDraft & { row: number })[]): void => props.onDraft({ ...draft, pots: next })
  const nextRow = 1 + Math.max(-1, ...pots.map((p) => p.row))
  const addAt = (index: number, pot: PotDraft): void => {
    goTo.current = index
    setPots([...pots.slice(0, index), { ...pot, row: nextRow }, ...pots.slice(index)])
  }
  const removeAt = (index: number): void => {
    goTo.current = index
    setPots(pots.filter((_, i) => i !== index))
  }
  const onRowKey = (event: KeyboardEvent, index: number): void => {
    const isField = event.target instanceof HTMLInputElement
    if (event.key !== 'Enter' || !isField || event.isComposing) return
    event.preventDefault()
    addAt(index + 1, blankPot)
  }
  return (
    <fieldset class="part">
      <legend>{t('pots_title')}</legend>
      <p class="field-hint">{t('pots_hint')}</p>
      <div class="suggestions">
        {suggestedPots().map((suggestion) => {
          const index = pots.findIndex((p) => p.name === suggestion.name)
          return (
            <label key={suggestion.name} class="suggestion">
              <input
                type="checkbox"
                checked={index >= 0}
                onChange={() =>
                  setPots(index >= 0 ? pots.filter((_, i) => i !== index) : [...pots, { ...suggestion, row: nextRow }])
                }
              />
              <span>{suggestion.name}</span>
            </label>
          )
        })}
      </div>
      <ol class="pot-rows" ref={list}>
        {pots.map((pot, index) => (
          <li key={pot.row} onKeyDown={(event) => onRowKey(event, index)}>
            <PotFields
              draft={pot}
              problems={problems?.pots.get(pot.row) ?? null}
              currency={draft.currency}
              isNew
              onDraft={(next) => setPots(pots.map((p) => (p === pot ? { ...next, row: pot.row } : p)))}
            />
            <button
              type="button"
              class="remove"
              aria-label={t('pot_remove', { pot: pot.name || String(index + 1) })}
              onClick={() => removeAt(index)}
            >
              <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
                <path d="M3 3l10 10M13 3L3 13" />
              </svg>
            </button>
          </li>
        ))}
      </ol>
      {problems?.noPots && <p class="field-error">{t('error_no_pots')}</p>}
      <button type="button" class="add" onClick={() => addAt(pots.length, blankPot)}>
        {t('pot_add')}
      </button>
    </fieldset>
  )
}

import { useState } from 'preact/hooks'
import type { HouseholdView, Look } from '../../background/protocol.ts'
import type { Pot } from '../../book/household.ts'
import { locale } from '../browser.ts'
import { useDrafts } from '../draft.ts'
import { blankPot, checkPot, draftOf, type PotDraft, potDraftFrom } from '../pot-draft.ts'
import { PotFields } from '../pot-fields.tsx'
import { t } from '../text.ts'
import { WentWrong } from '../went-wrong.tsx'
import { useEntry } from './use-entry.ts'

/** The name under which what is typed of a pot is kept; of a new one, the id is empty. */
export function potFormDraft(id: string): string {
  return `pot-form:${id}`
}

/** Adds a pot, or changes or archives one. */
export function PotForm(props: {
  readonly view: HouseholdView
  /** Null for a new one. */
  readonly pot: Pot | null
  readonly onLook: (look: Look) => void
  readonly onCancel: () => void
}) {
  const { view, pot } = props
  const { pots, currency } = view.household
  const drafts = useDrafts()
  const name = potFormDraft(pot?.id ?? '')
  const [draft, setDraft] = useState<PotDraft>(() => {
    const kept = drafts.read(name)
    if (kept !== undefined) return potDraftFrom(kept)
    return pot ? draftOf(pot, currency) : blankPot
  })
  const change = (next: PotDraft): void => {
    setDraft(next)
    drafts.write(name, next)
  }
  const [wasTried, setTried] = useState(false)
  const { enter, isBusy, error } = useEntry('pot.save', props.onLook)
  const others = pots.filter((p) => p.id !== pot?.id)
  const check = checkPot(
    draft,
    others.map((p) => p.name),
    pots.map((p) => p.id),
    currency,
    locale(),
  )
  const save = (archived: boolean): void => {
    setTried(true)
    if (!check.pot) return
    const wish = { pot: check.pot, archived }
    void enter(wish, (id) => ({ id, ...wish })).then((id) => id && drafts.drop(name))
  }
  return (
    <form
      class="pot-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        save(pot?.archived ?? false)
      }}
    >
      <PotFields
        draft={draft}
        problems={wasTried ? check.problems : null}
        currency={currency}
        isNew={!pot}
        onDraft={change}
      />
      <WentWrong error={error} />
      <div class="buttons">
        <button type="submit" class="primary" disabled={isBusy}>
          {t(pot ? 'pot_save' : 'pot_add_this')}
        </button>
        <button
          type="button"
          onClick={() => {
            drafts.drop(name)
            props.onCancel()
          }}
        >
          {t('cancel')}
        </button>
        {pot && (
          <button type="button" class="quiet" disabled={isBusy} onClick={() => save(!pot.archived)}>
            {t(pot.archived ? 'pot_unarchive' : 'pot_archive')}
          </button>
        )}
      </div>
    </form>
  )
}

import { useRef } from 'preact/hooks'
import { type Book, entriesOf, isReversed } from '../../../book/book.ts'
import type { Entry } from '../../../book/entry.ts'
import type { EntryId } from '../../../book/ids.ts'
import { newEntryId } from '../../../ui/new-id.ts'
import { sayEntry } from '../../../ui/say-entry.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { useWrite } from '../use-write.ts'

/** The latest payday that stands in the book, with what it did, and the way to take it back as one. */
export function LastPayday() {
  const { book, view } = useHousehold()
  const { write, isBusy, error } = useWrite()
  const ids = useRef<{ payday: EntryId; ids: EntryId[] } | null>(null)
  const last = latestPayday(book)
  const [first] = last
  if (!first || !('payday' in first) || first.payday === undefined) return <WentWrong error={error} />
  const { payday, date } = first
  const undo = (): void => {
    if (ids.current?.payday !== payday) ids.current = { payday, ids: last.map(newEntryId) }
    void write('payday.undo', ids.current)
  }
  return (
    <section class="payday-last">
      <details open={date === view.today}>
        <summary>{t('payday_last', { date: shortDate(date, true) })}</summary>
        <ul>
          {last.map((entry) => (
            <li key={entry.id}>{sayEntry(book.household, entry)}</li>
          ))}
        </ul>
      </details>
      <WentWrong error={error} />
      <div class="buttons">
        <button type="button" disabled={isBusy} onClick={undo}>
          {t('payday_undo')}
        </button>
      </div>
    </section>
  )
}

function latestPayday(book: Book): Entry[] {
  const standing = [...entriesOf(book)].filter(
    (entry) => 'payday' in entry && entry.payday !== undefined && !isReversed(book, entry.id),
  )
  const last = standing.at(-1)
  return standing.filter((entry) => last && 'payday' in last && 'payday' in entry && entry.payday === last.payday)
}

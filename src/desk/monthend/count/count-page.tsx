import { useMemo, useState } from 'preact/hooks'
import { hasSide } from '../../../book/household.ts'
import type { PotId } from '../../../book/ids.ts'
import { piecesOf } from '../../../money/denominations.ts'
import { compareCounts } from '../../../monthend/count-compare.ts'
import { countedPieces } from '../../../monthend/count-pieces.ts'
import type { EnvelopeCount } from '../../../monthend/settle.ts'
import { useDrafts } from '../../../ui/draft.ts'
import { Notice } from '../../../ui/notice.tsx'
import { t, tn } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { Empty } from '../../parts/empty.tsx'
import { PageHead } from '../../parts/page-head.tsx'
import { useWrite } from '../../plan/use-write.ts'
import { useIds } from '../ids.ts'
import { Envelope } from './envelope.tsx'
import { Findings } from './findings.tsx'
import { piecesFrom, readTyped, type Typed } from './typed.ts'
import '../monthend.css'

const DRAFT = 'count'

/** Every envelope's notes and coins, typed by denomination, against the book. */
export function CountPage() {
  const { book } = useHousehold()
  const drafts = useDrafts()
  const { write, isBusy, error } = useWrite()
  const ids = useIds()
  const [typed, setTyped] = useState<Typed>(() => readTyped(drafts.read(DRAFT)))
  const [posted, setPosted] = useState<ReadonlySet<PotId>>(new Set())
  const [savedCount, setSavedCount] = useState(0)
  const denominations = useMemo(() => {
    const pieces = piecesOf(book.household.currency)
    return [...new Set([...(pieces?.notes ?? []), ...(pieces?.coins ?? [])])].sort((a, b) => b - a)
  }, [book.household.currency])
  const pots = book.household.pots.filter((p) => !p.archived && hasSide(p, 'cash'))
  const keep = (next: Typed): void => {
    setTyped(next)
    drafts.write(DRAFT, next)
    setSavedCount(0)
  }
  const counts: EnvelopeCount[] = pots.flatMap((pot) => {
    const own = typed[pot.id]
    return own === undefined ? [] : [{ pot: pot.id, pieces: piecesFrom(own) }]
  })
  const isWhole = counts.every((c) => c.pieces.every((p) => Number.isSafeInteger(p.count)))
  const compared = isWhole && counts.length > 0 ? compareCounts(book, counts, denominations) : null
  const before = countedPieces(book)
  const save = async (): Promise<void> => {
    const asked = counts.map((c) => ({
      id: ids.entry(`count ${c.pot} ${JSON.stringify(c.pieces)} ${book.length}`),
      pot: c.pot,
      pieces: c.pieces,
      post: posted.has(c.pot),
    }))
    if (!(await write('count.save', { counts: asked }))) return
    drafts.drop(DRAFT)
    setTyped({})
    setPosted(new Set())
    setSavedCount(asked.length)
  }
  return (
    <>
      <PageHead title={t('monthend_page_count')} lead={t('count_lead')} />
      {denominations.length === 0 && <Notice outcome="warn">{t('count_no_denominations')}</Notice>}
      {pots.length === 0 && <Empty title={t('count_no_envelopes')} />}
      {savedCount > 0 && (
        <Notice outcome="allow">
          {tn('count_saved', savedCount)} <a href="#/settle">{t('count_to_settle')}</a>
        </Notice>
      )}
      <form
        class="envelopes"
        onSubmit={(event) => {
          event.preventDefault()
          void save()
        }}
      >
        {pots.map((pot) => (
          <Envelope
            key={pot.id}
            pot={pot}
            denominations={denominations}
            typed={typed[pot.id]}
            finding={compared?.pots.find((f) => f.pot === pot.id) ?? null}
            before={before.get(pot.id)?.count ?? null}
            onTyped={(own) => {
              const { [pot.id]: _, ...others } = typed
              keep(own ? { ...others, [pot.id]: own } : others)
            }}
          />
        ))}
        {compared && (
          <Findings
            compared={compared}
            posted={posted}
            onPosted={(pot, isPosted) => {
              const next = new Set(posted)
              if (isPosted) next.add(pot)
              else next.delete(pot)
              setPosted(next)
            }}
          />
        )}
        <WentWrong error={error} />
        {counts.length > 0 && (
          <button type="submit" class="primary" disabled={isBusy || !isWhole}>
            {tn('count_save', counts.length)}
          </button>
        )}
      </form>
    </>
  )
}

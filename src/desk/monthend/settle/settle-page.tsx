import { useMemo, useState } from 'preact/hooks'
import { balanceOf } from '../../../book/book.ts'
import type { SettleEnd } from '../../../book/entry.ts'
import { hasSide } from '../../../book/household.ts'
import type { PotId } from '../../../book/ids.ts'
import { piecesOfMove } from '../../../monthend/count-plan.ts'
import type { EnvelopeTarget } from '../../../monthend/settle.ts'
import type { SettlePlace } from '../../../monthend/settle-moves.ts'
import { Choice } from '../../../ui/field.tsx'
import { Notice } from '../../../ui/notice.tsx'
import { listText, t, tn } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { Busy } from '../../parts/busy.tsx'
import { PageHead } from '../../parts/page-head.tsx'
import { useWrite } from '../../plan/use-write.ts'
import { useIds } from '../ids.ts'
import { Envelopes } from './envelopes.tsx'
import { MoveList } from './move-list.tsx'
import { Targets } from './targets.tsx'
import { useSettlement } from './use-settlement.ts'
import '../monthend.css'

/** Which notes to move so that every envelope ends right: a list to tick off, to print, and to go on with later. */
export function SettlePage() {
  const { book } = useHousehold()
  const { write, isBusy, error } = useWrite()
  const ids = useIds()
  const [chosen, setChosen] = useState<Readonly<Record<string, EnvelopeTarget['cash']>>>({})
  const [bank, setBank] = useState<'trip' | 'none'>('trip')
  const pots = useMemo(
    () =>
      book.household.pots
        .filter((p) => (!p.archived && hasSide(p, 'cash')) || balanceOf(book, `cash:${p.id}`) !== 0)
        .map((p) => p.id),
    [book],
  )
  const settling = useSettlement(pots, chosen, bank)
  const { start, settlement, ticked } = settling
  const name = (id: PotId): string => book.household.pots.find((p) => p.id === id)?.name ?? id
  const account = book.household.accounts.find((a) => a.kind === 'bank') ?? book.household.accounts[0]
  const end = (place: SettlePlace): SettleEnd | null => {
    if (place !== 'bank') return { pot: place.pot }
    return account ? { account: account.id } : null
  }
  const tick = async (at: number): Promise<void> => {
    const move = settlement?.moves[at]
    const [from, to] = move ? [end(move.from), end(move.to)] : [null, null]
    if (!move || !from || !to) return
    const what = JSON.stringify([at, move, start.counts, start.ticks.length])
    await write('settle.tick', { id: ids.entry(`tick ${what}`), from, to, pieces: piecesOfMove(move) })
  }
  const untick = async (at: number): Promise<void> => {
    const target = ticked[at]
    if (target) await write('entry.undo', { id: ids.entry(`untick ${target}`), target })
  }
  const done = ticked.filter((id) => id !== null).length
  return (
    <>
      <PageHead title={t('monthend_page_settle')} lead={t('settle_lead')} isPrinted>
        <button type="button" disabled={!settlement} onClick={() => print()}>
          {t('settle_print')}
        </button>
      </PageHead>
      {start.toCount.length > 0 && (
        <div class="no-print">
          <Notice outcome="warn">
            {t('settle_count_first', { pots: listText(start.toCount.map(name)) })}{' '}
            <a href="#/count">{t('settle_to_count')}</a>
          </Notice>
        </div>
      )}
      {start.counts.length > 0 && (
        <div class="no-print">
          <Choice
            label={t('settle_bank')}
            name="bank"
            value={bank}
            options={[
              { value: 'trip', label: t('settle_with_bank') },
              { value: 'none', label: t('settle_without_bank') },
            ]}
            onValue={setBank}
          />
        </div>
      )}
      <WentWrong error={settling.error} />
      <WentWrong error={error} />
      {settling.isWorking && !settlement && <Busy text={t('settle_working')} />}
      {settlement && (
        <>
          {settlement.moves.length === 0 ? (
            <Notice outcome="allow">{t('settle_nothing')}</Notice>
          ) : (
            <>
              <h2>{tn('settle_moved', settlement.moved)}</h2>
              <p class="field-hint">
                {settlement.proven
                  ? t('settle_proven')
                  : tn('settle_gap', Math.max(1, settlement.moved - settlement.movedAtLeast))}
              </p>
              <MoveList
                settlement={settlement}
                ticked={ticked}
                isBusy={isBusy}
                name={name}
                onTick={(at) => void tick(at)}
                onUntick={(at) => void untick(at)}
              />
              <p role="status" class="no-print">
                {done === settlement.moves.length
                  ? t('settle_done')
                  : tn('settle_left', settlement.moves.length - done)}
              </p>
            </>
          )}
          <Envelopes settlement={settlement} name={name} />
        </>
      )}
      {start.counts.length > 0 && start.ticks.length === 0 && (
        <Targets
          targets={settling.targets}
          name={name}
          onChosen={(pot, cash) => setChosen({ ...chosen, [pot]: cash })}
        />
      )}
    </>
  )
}

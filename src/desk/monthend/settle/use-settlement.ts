import { useEffect, useMemo, useState } from 'preact/hooks'
import type { EntryId, PotId } from '../../../book/ids.ts'
import { type SettleStart, settleStart, tickedMoves } from '../../../monthend/count-plan.ts'
import { settleTargets } from '../../../monthend/count-targets.ts'
import type { EnvelopeTarget, Settlement, SettleOptions } from '../../../monthend/settle.ts'
import { useHousehold } from '../../household.ts'
import { runInThread } from '../thread.ts'

/** The settling list, and what of it was ticked. */
export interface Settling {
  readonly start: SettleStart
  readonly targets: readonly EnvelopeTarget[]
  readonly settlement: Settlement | null
  /** For each move its tick, or null. */
  readonly ticked: readonly (EntryId | null)[]
  readonly isWorking: boolean
  readonly error: unknown
}

type Worked = { readonly settlement: Settlement; readonly isFromNow: boolean }

/**
 * Works the list out from the counts, so that an interrupted settling shows the same list with what was ticked. Where
 * the ticks are of another list, it is worked out from the envelopes as they are now.
 */
export function useSettlement(
  pots: readonly PotId[],
  chosen: Readonly<Record<string, EnvelopeTarget['cash']>>,
  bank: NonNullable<SettleOptions['bank']>,
): Settling {
  const { book } = useHousehold()
  const start = useMemo(() => settleStart(book, pots), [book, pots])
  const targets = useMemo(() => {
    const wanted = new Set<PotId>(start.counts.map((c) => c.pot))
    return settleTargets(book, start.ticks)
      .filter((target) => wanted.has(target.pot))
      .map((target) => ({ ...target, cash: chosen[target.pot] ?? target.cash }))
  }, [book, start, chosen])
  // A tick changes the book, not the list: it is asked for only when what it is made from has changed.
  const asked = JSON.stringify([start.counts, targets, bank])
  const [worked, setWorked] = useState<Worked | null>(null)
  const [isWorking, setWorking] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const needsNow = worked !== null && !worked.isFromNow && tickedMoves(worked.settlement.moves, start.ticks) === null
  useEffect(() => {
    if (start.counts.length === 0) return
    const gone = new AbortController()
    setWorking(true)
    const from = needsNow ? start.now : start.counts
    runInThread('settle', { counts: from, targets, options: { bank } }, gone.signal).then(
      (settlement) => {
        if (gone.signal.aborted) return
        setWorked({ settlement, isFromNow: needsNow })
        setWorking(false)
        setError(null)
      },
      (cause: unknown) => {
        if (gone.signal.aborted) return
        setError(cause)
        setWorking(false)
      },
    )
    return () => gone.abort()
  }, [asked, needsNow, needsNow ? start.now : null])
  const ticked = useMemo(() => {
    if (!worked) return []
    const none = worked.settlement.moves.map(() => null)
    return worked.isFromNow ? none : (tickedMoves(worked.settlement.moves, start.ticks) ?? none)
  }, [worked, start])
  return { start, targets, settlement: worked?.settlement ?? null, ticked, isWorking, error }
}

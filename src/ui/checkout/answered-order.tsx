import { useState } from 'preact/hooks'
import type { UnconfirmedOrder } from '../../background/protocol.ts'
import type { EntryId } from '../../book/ids.ts'
import { useActionId } from '../action-id.ts'
import { ask } from '../ask.ts'
import { amountText } from '../money-text.ts'
import { SaidWithUndo } from '../said-with-undo.tsx'
import { t } from '../text.ts'

/** What was just answered to "Did it go through?", and the entry it made. */
export interface Answered {
  readonly entry: EntryId
  readonly said: 'placed' | 'let-go'
  readonly order: UnconfirmedOrder
}

/** Says what the answer did, with its undo at hand; undone, the question is there again. */
export function AnsweredOrder(props: { readonly answered: Answered; readonly onUndone: () => Promise<void> }) {
  const { entry, said, order } = props.answered
  const action = useActionId(`undo:${entry}`)
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const undo = async (): Promise<void> => {
    setBusy(true)
    setError(null)
    try {
      await ask('entry.undo', { id: action.idFor(entry), target: entry })
      action.done()
      await props.onUndone()
    } catch (cause) {
      setError(cause)
      setBusy(false)
    }
  }
  const values = { amount: amountText(order.amount), shop: order.shop }
  return (
    <div role="status">
      <SaidWithUndo
        said={t(said === 'placed' ? 'unconfirmed_noted' : 'unconfirmed_let_go', values)}
        onUndo={() => void undo()}
        isBusy={isBusy}
        error={error}
      />
    </div>
  )
}

import { useRef, useState } from 'preact/hooks'
import type { At, TagReply, WishText } from '../../background/protocol.ts'
import type { OrderId } from '../../book/ids.ts'
import { useActionId } from '../action-id.ts'
import { ask } from '../ask.ts'

/** What a tag is asked for. */
export interface TagWish {
  readonly order: OrderId
  readonly wish: WishText
  readonly reason: string | null
}

/**
 * Tags an order, one request at a time: while one is under way, further presses do nothing, and a press after no answer
 * came asks again under the same id.
 */
export function useTag(at: At, shop: string, onReply: (reply: TagReply) => void) {
  const action = useActionId(`tag:${shop}`)
  const isUnderWay = useRef(false)
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const tag = async (wish: TagWish): Promise<void> => {
    if (isUnderWay.current) return
    isUnderWay.current = true
    setBusy(true)
    setError(null)
    try {
      const id = action.idFor(JSON.stringify(wish))
      const reply = await ask('order.tag', { id, at, ...wish })
      if (reply.kind !== 'needs-reason' && reply.kind !== 'blocked') action.done()
      onReply(reply)
    } catch (cause) {
      setError(cause)
    } finally {
      isUnderWay.current = false
      setBusy(false)
    }
  }
  return { tag, isBusy, error }
}

import type { Look } from '../background/protocol.ts'
import { ask } from './ask.ts'
import type { Drafts } from './draft.ts'
import { forgetSeen } from './seen.ts'
import { stopWatching } from './stop-watching.ts'

/**
 * Ends the demo with all that belongs to it: its book, the shops it watches with their permissions, what was typed, and
 * which hints were read.
 *
 * @throws AskError when the worker refuses, as for a household of one's own
 */
export async function leaveDemo(drafts: Drafts): Promise<Look> {
  const now = await ask('book.look', {})
  if (now.status === 'ready' && now.view.isDemo) {
    for (const host of now.view.watched) await stopWatching(host)
  }
  const look = await ask('household.leave-demo', {})
  drafts.clear()
  forgetSeen()
  return look
}

import browser from 'webextension-polyfill'
import type { OwnCommands, Reply } from '../background/protocol.ts'

/** The worker refused, or did not answer. `code` chooses the message shown; `message` is the worker's own sentence. */
export class AskError extends Error {
  override readonly name = 'AskError'
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message)
  }
}

/**
 * Asks the worker. Every write of our own pages goes through here; it is done once this resolves.
 *
 * @throws AskError `no-answer` when the worker cannot be reached, else the worker's code
 */
export async function ask<C extends keyof OwnCommands>(
  command: C,
  payload: OwnCommands[C]['ask'],
): Promise<OwnCommands[C]['answer']> {
  let reply: Reply<OwnCommands[C]['answer']> | undefined
  try {
    reply = await browser.runtime.sendMessage<unknown, Reply<OwnCommands[C]['answer']>>({ command, ask: payload })
  } catch (cause) {
    throw new AskError('no-answer', `Tillside's worker did not answer: ${String(cause)}`)
  }
  if (!reply) throw new AskError('no-answer', "Tillside's worker did not answer.")
  if (!reply.ok) throw new AskError(reply.code, reply.message)
  return reply.value
}

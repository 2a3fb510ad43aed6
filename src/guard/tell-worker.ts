import type { PageCommands, Reply } from '../background/protocol.ts'
import { api } from './engine.ts'

/** How long an answer is waited for. */
export const NO_ANSWER_MS = 2_000

/** Asks the worker. Null when it does not answer in time, refuses, or is gone. */
export async function send<C extends keyof PageCommands>(
  command: C,
  ask: PageCommands[C]['ask'],
): Promise<PageCommands[C]['answer'] | null> {
  try {
    const late = new Promise<null>((resolve) => setTimeout(resolve, NO_ANSWER_MS, null))
    const reply: Reply<PageCommands[C]['answer']> | null | undefined = await Promise.race([
      api.runtime.sendMessage({ command, ask }),
      late,
    ])
    return reply?.ok ? reply.value : null
  } catch {
    return null // The worker cannot be reached; the caller says so to the person where it matters.
  }
}

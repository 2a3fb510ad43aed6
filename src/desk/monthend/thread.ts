import { AskError } from '../../ui/ask.ts'
import type { ThreadCommands, ThreadReply } from './thread-commands.ts'

/**
 * Runs one piece of heavy work in a thread of its own, which ends with it.
 *
 * @param onProgress told from time to time while a file is read
 * @param signal ends the work at once when what it is for is gone
 * @throws AskError with the engine's code and sentence
 */
export function runInThread<C extends keyof ThreadCommands>(
  command: C,
  ask: ThreadCommands[C]['ask'],
  signal?: AbortSignal,
  onProgress?: (done: number, of: number) => void,
): Promise<ThreadCommands[C]['answer']> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./thread-worker.ts', import.meta.url), { type: 'module' })
    const end = (): void => worker.terminate()
    signal?.addEventListener('abort', end, { once: true })
    worker.addEventListener('message', ({ data }: MessageEvent<ThreadReply<ThreadCommands[C]['answer']>>) => {
      if (data.kind === 'progress') {
        onProgress?.(data.done, data.of)
        return
      }
      end()
      if (data.kind === 'done') resolve(data.value)
      else reject(new AskError(data.code, data.message))
    })
    worker.addEventListener('error', (event) => {
      end()
      reject(new AskError('unexpected', event.message || 'The work could not be done.'))
    })
    worker.postMessage({ command, ask })
  })
}

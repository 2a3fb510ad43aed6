import { matchStatement } from '../../monthend/match-statement.ts'
import { settle } from '../../monthend/settle.ts'
import { openStatementInSteps, type StatementOptions } from '../../monthend/statement/open-statement.ts'
import type { OpenedFile, ThreadAsk, ThreadReply } from './thread-commands.ts'

/* The desk's second thread: reads files, matches and settles while the page goes on answering. It keeps nothing. */

/** Progress is told at most so often. */
const TELL_EVERY_MS = 100

addEventListener('message', ({ data }: MessageEvent<ThreadAsk>) => {
  try {
    answer({ kind: 'done', value: run(data) })
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause && typeof cause.code === 'string' ? cause.code : 'unexpected'
    answer({ kind: 'failed', code, message: cause instanceof Error ? cause.message : String(cause) })
  }
})

function run(data: ThreadAsk): unknown {
  switch (data.command) {
    case 'open':
      return open(data.ask.bytes, data.ask.options)
    case 'match':
      return matchStatement(data.ask.lines, data.ask.orders, data.ask.options)
    case 'settle':
      return settle(data.ask.counts, data.ask.targets, data.ask.options)
  }
}

function open(bytes: Uint8Array, options: StatementOptions): OpenedFile {
  const steps = openStatementInSteps(bytes, options)
  let told = performance.now()
  for (;;) {
    const step = steps.next()
    if (step.done) {
      const problems = step.value.problems.map(({ code, message, row }) => ({ code, message, row }))
      return { ...step.value, problems }
    }
    if (performance.now() - told > TELL_EVERY_MS) {
      told = performance.now()
      answer({ kind: 'progress', done: step.value.done, of: step.value.of })
    }
  }
}

function answer(reply: ThreadReply<unknown>): void {
  postMessage(reply)
}

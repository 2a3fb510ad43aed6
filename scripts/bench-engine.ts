import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { build } from 'vite'
import { chromiumPath } from '../tests/browser/extension.ts'
import type { Searches } from './bench-engine-page.ts'
import { spread } from './spread.ts'

/** The searches a person waits for (settle, withdrawal slip, statement match), timed in a page of Chromium. Milliseconds. */
export async function engineCosts(): Promise<Record<string, unknown>> {
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: ['--no-sandbox', '--disable-gpu'] })
  try {
    const page = await browser.newPage()
    await page.addScriptTag({ content: await bundled() })
    const run = (call: string): Promise<Searches> => page.evaluate(`benchEngine.${call}`)
    const costOf = async (call: string) => {
      const { ms, proven, gap } = await run(call)
      return { ms: spread(ms), proven, of: ms.length, largest_gap_in_pieces: gap }
    }
    // The first calls of a page are not yet compiled; a person's first is measured by `first_call_ms`.
    const first = await run('settles(20, 33)')
    return {
      first_call_ms: spread(first.ms.slice(0, 1)).median,
      settle_20_pots_10_denominations_a_third_changes: await costOf('settles(20, 33)'),
      settle_20_pots_10_denominations_all_change: await costOf('settles(20, 100)'),
      settle_limit_ms: 300,
      slip_20_pots_10_denominations: await costOf('slips(20, false)'),
      slip_20_pots_10_denominations_with_pieces_at_hand: await costOf('slips(20, true)'),
      slip_limit_ms: 200,
      match_2400_lines_1000_orders_ms: spread(await page.evaluate<number[]>('benchEngine.matches()')),
      match_limit_ms: 300,
    }
  } finally {
    await browser.close()
  }
}

async function bundled(): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    root: fileURLToPath(new URL('..', import.meta.url)),
    build: {
      write: false,
      target: 'es2023',
      lib: { entry: fileURLToPath(new URL('bench-engine-page.ts', import.meta.url)), formats: ['iife'], name: 'bench' },
    },
  })
  const [first] = Array.isArray(made) ? made : [made]
  const chunk = first && 'output' in first ? first.output[0] : undefined
  if (chunk?.type !== 'chunk') throw new Error('The page of the bench was not built.')
  return chunk.code
}

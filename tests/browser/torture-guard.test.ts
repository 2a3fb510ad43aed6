import { expect, it } from 'vitest'
import { startHostileShop } from '../../demo-data/shop/hostile/server.ts'
import { ways } from '../../demo-data/shop/hostile/ways.ts'
import { openBrowser } from './both.ts'
import { runGuardTorture } from './torture-guard.ts'

// A short run in Chromium; `npm run torture:guard` does a thousand, in both browsers (TILLSIDE_WAY names one way alone).
const asked = Number(process.env.TILLSIDE_RUNS ?? 0)
const seed = Number(process.env.TILLSIDE_SEED ?? 20_261_125)
const shares =
  asked > 0
    ? ([
        ['Chromium', Math.round(asked * 0.7)],
        ['Firefox', Math.round(asked * 0.3)],
      ] as const)
    : ([['Chromium', 16]] as const)

it.each(shares)(
  'no order reaches the shop unheld in %s, whatever the way and the moment: %i tries',
  {
    timeout: 120_000 + asked * 10_000,
  },
  async (name, runs) => {
    const shop = await startHostileShop(ways)
    const browser = await openBrowser(name, shop.origin)
    const outcome = await runGuardTorture(browser, shop, { runs, seed, only: process.env.TILLSIDE_WAY })
    await browser.close()
    await shop.close()
    console.log(JSON.stringify({ browser: name, version: browser.version, seed, ...outcome }))
    expect(outcome.unheld).toEqual([])
    expect(outcome.held).toBeGreaterThan(runs * 0.75)
  },
)

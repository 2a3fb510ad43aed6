import { expect, it } from 'vitest'
import { startHostileShop } from '../../demo-data/shop/hostile/server.ts'
import { ways } from '../../demo-data/shop/hostile/ways.ts'
import { openBrowser } from './both.ts'
import { runGuardTorture } from './torture-guard.ts'

// A short run; `npm run torture:guard` does a thousand, in both browsers.
it('no order reaches the shop unheld, whatever the way and the moment', { timeout: 180_000 }, async () => {
  const shop = await startHostileShop(ways)
  const browser = await openBrowser('Chromium', shop.origin)
  const outcome = await runGuardTorture(browser, shop, { runs: 16, seed: 20_261_125 })
  await browser.close()
  await shop.close()
  expect(outcome.unheld).toEqual([])
  expect(outcome.held).toBeGreaterThan(12)
})

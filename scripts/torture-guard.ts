// A thousand orders tried in random ways at random moments, seven of ten in Chromium, the others in Firefox. Prints one JSON.
import { startHostileShop } from '../demo-data/shop/hostile/server.ts'
import { ways } from '../demo-data/shop/hostile/ways.ts'
import { openBrowser } from '../tests/browser/both.ts'
import { runGuardTorture } from '../tests/browser/torture-guard.ts'

const RUNS = Number(process.argv[2] ?? 1000)
const SEED = Number(process.argv[3] ?? 20_261_125)
const shop = await startHostileShop(ways)
const outcomes = []
for (const [name, share] of [
  ['Chromium', 0.7],
  ['Firefox', 0.3],
] as const) {
  const browser = await openBrowser(name, shop.origin)
  const outcome = await runGuardTorture(browser, shop, { runs: Math.round(RUNS * share), seed: SEED })
  outcomes.push({ browser: name, version: browser.version, ...outcome })
  await browser.close()
}
await shop.close()
console.log(JSON.stringify(outcomes, null, 2))
process.exitCode = outcomes.every(({ unheld }) => unheld.length === 0) ? 0 : 1

// npm test: set-up from a bare clone, the checks, the unit tests, the browser tests. The last line counts them all.
import { spawnSync } from 'node:child_process'
import { readFileSync, rmSync } from 'node:fs'
import { buildAll, ensureChromium, ensureFirefox, ensurePackages, root, say } from './set-up.mjs'

ensurePackages()
const chromium = ensureChromium()
const firefox = ensureFirefox()
buildAll()
let passed = 0
let failed = 0

const { checks } = await import('./checks.mjs')
for (const { name, run } of checks) {
  say(`check: ${name}`)
  if (run()) passed++
  else {
    failed++
    say(`FAILED: ${name}`)
  }
}

const results = `${root}dist/test-results.json`
rmSync(results, { force: true })
const vitest = spawnSync(
  process.execPath,
  [
    `${root}node_modules/vitest/vitest.mjs`,
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${results}`,
  ],
  { cwd: root, stdio: 'inherit', env: { ...process.env, TILLSIDE_CHROMIUM: chromium, TILLSIDE_FIREFOX: firefox } },
)
try {
  const counts = JSON.parse(readFileSync(results, 'utf8'))
  passed += counts.numPassedTests
  failed += counts.numFailedTests
  // A test that was skipped, or a file that broke before its tests, is not a pass.
  const broken = counts.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0)
  failed += broken.length + counts.numPendingTests
  for (const file of broken) say(`FAILED: ${file.name.slice(root.length)}`)
} catch {
  failed++
  say('FAILED: the tests left no results.')
}
if (vitest.status !== 0 && failed === 0) failed++
say(`${passed} passed, ${failed} failed`)
process.exit(failed === 0 ? 0 : 1)

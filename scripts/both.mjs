// npm run both: builds, then goes both tables of the guard, every row in Chromium and in Firefox.
import { buildAll, ensureChromium, ensureFirefox, ensurePackages, root, run } from './set-up.mjs'

ensurePackages()
process.env.TILLSIDE_CHROMIUM = ensureChromium()
process.env.TILLSIDE_FIREFOX = ensureFirefox()
process.env.TILLSIDE_BOTH = 'all'
buildAll()
const tests = ['tests/browser/ways.test.ts', 'tests/browser/attacks.test.ts']
run(process.execPath, [`${root}node_modules/vitest/vitest.mjs`, 'run', '--project', 'browser', ...tests])

// npm run torture:guard [-- runs [seed]]: builds, then tries to order past the guard over and over, seven of ten times in
// Chromium, the others in Firefox (see tests/browser/torture-guard.ts).
import { buildAll, ensureChromium, ensureFirefox, ensurePackages, root, run } from './set-up.mjs'

ensurePackages()
process.env.TILLSIDE_CHROMIUM = ensureChromium()
process.env.TILLSIDE_FIREFOX = ensureFirefox()
process.env.TILLSIDE_RUNS = process.argv[2] ?? '1000'
process.env.TILLSIDE_SEED = process.argv[3] ?? '7'
buildAll()
const test = 'tests/browser/torture-guard.test.ts'
run(process.execPath, [`${root}node_modules/vitest/vitest.mjs`, 'run', '--project', 'browser', test])

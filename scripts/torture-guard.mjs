// npm run torture:guard [-- runs [seed]]: builds, then tries to order past the guard over and over (see torture-guard.ts).
import { buildAll, ensureChromium, ensureFirefox, ensurePackages, root, run } from './set-up.mjs'

ensurePackages()
process.env.TILLSIDE_CHROMIUM = ensureChromium()
process.env.TILLSIDE_FIREFOX = ensureFirefox()
buildAll()
run(process.execPath, [
  `${root}node_modules/tsx/dist/cli.mjs`,
  `${root}scripts/torture-guard.ts`,
  ...process.argv.slice(2),
])

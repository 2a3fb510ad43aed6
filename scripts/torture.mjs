// npm run torture: builds, then kills browser and worker over and over (see torture.ts).
import { buildAll, ensureChromium, ensurePackages, root, run } from './set-up.mjs'

ensurePackages()
process.env.TILLSIDE_CHROMIUM = ensureChromium()
buildAll()
run(process.execPath, [`${root}node_modules/tsx/dist/cli.mjs`, `${root}scripts/torture.ts`])

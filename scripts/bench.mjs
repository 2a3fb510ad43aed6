// npm run bench: builds and measures, printing one JSON (see bench.ts).
import { buildAll, ensureChromium, ensurePackages, root, run } from './set-up.mjs'

ensurePackages()
process.env.TILLSIDE_CHROMIUM = ensureChromium()
buildAll()
run(process.execPath, [`${root}node_modules/tsx/dist/cli.mjs`, `${root}scripts/bench.ts`])

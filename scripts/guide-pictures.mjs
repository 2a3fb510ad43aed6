// npm run pictures: builds, then makes the pictures of the household's guide anew (see guide-pictures.ts).
import { buildAll, ensureChromium, ensurePackages, root, run } from './set-up.mjs'

ensurePackages()
process.env.TILLSIDE_CHROMIUM = ensureChromium()
buildAll()
run(process.execPath, [`${root}node_modules/tsx/dist/cli.mjs`, `${root}scripts/guide-pictures.ts`])

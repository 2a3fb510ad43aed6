// npm start: sets up a bare clone, builds, and opens the browser with the extension, the demo household and the demo
// shops. Without a display the same tour runs headless.
import { buildAll, ensureChromium, ensurePackages, root, run } from './set-up.mjs'

ensurePackages()
process.env.TILLSIDE_CHROMIUM = ensureChromium()
buildAll()
const hasDisplay =
  process.platform === 'darwin' ||
  process.platform === 'win32' ||
  Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY)
const headed = hasDisplay && !process.argv.includes('--headless')
run(process.execPath, [
  `${root}node_modules/tsx/dist/cli.mjs`,
  `${root}scripts/tour.ts`,
  ...(headed ? ['--headed'] : []),
])

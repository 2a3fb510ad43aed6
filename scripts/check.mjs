// npm run check: types, format and lint, import direction, unused code, the library as its users import it, sizes.
import { buildAll, ensurePackages, say } from './set-up.mjs'

ensurePackages()
buildAll()
const { checks } = await import('./checks.mjs')
const failed = checks.filter(({ name, run }) => {
  say(`check: ${name}`)
  return !run()
})
for (const { name } of failed) say(`FAILED: ${name}`)
say(`${checks.length - failed.length} passed, ${failed.length} failed`)
process.exit(failed.length === 0 ? 0 : 1)

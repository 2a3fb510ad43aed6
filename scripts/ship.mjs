// npm run ship: the checks, the extension stores' linter, and what is shipped, made twice and compared, into dist/ship.
// `--no-lint` leaves the linter out, which is some 300 MB of packages.
import { buildAll, ensurePackages, root, run, say } from './set-up.mjs'

ensurePackages()
buildAll()
const { checks } = await import('./checks.mjs')
const failed = checks.filter(({ name, run: check }) => {
  say(`check: ${name}`)
  return !check()
})
if (failed.length > 0) {
  say(`Nothing is shipped: ${failed.map(({ name }) => name).join('; ')}`)
  process.exit(1)
}
if (!process.argv.includes('--no-lint')) run('npm', ['run', 'lint:web-ext'])
run(process.execPath, [`${root}node_modules/tsx/dist/cli.mjs`, `${root}scripts/ship-files.ts`])

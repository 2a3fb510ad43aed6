// Writes the library's reference: a page of Markdown for each room, made of the declarations and docstrings that the build
// left in a library folder. `tsx scripts/reference.ts [FOLDER]`; without one, dist/library. A build does it too, so the
// reference in the package is of that very build. A public name without a docstring, or one
// that throws and does not say what, is an error.
import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { faultsOf } from './reference-faults.ts'
import { publicNames } from './reference-names.ts'
import { pageOf } from './reference-page.ts'

const ROOMS = ['money', 'book', 'plan', 'monthend', 'checkout']

const folder = resolve(process.argv[2] ?? fileURLToPath(new URL('../dist/library', import.meta.url)))
const out = `${folder}/reference`
mkdirSync(out, { recursive: true })
let count = 0
let unshown = 0
const faults: string[] = []
for (const room of ROOMS) {
  const names = publicNames(`${folder}/${room}/index.d.ts`)
  count += names.length
  unshown += names.filter(({ kind, doc }) => kind === 'function' && !doc.includes('@example')).length
  faults.push(...names.flatMap((name) => faultsOf(name).map((fault) => `tillside/${room}: ${name.name} ${fault}`)))
  writeFileSync(`${out}/${room}.md`, pageOf(room, names))
}
for (const [from, to] of Object.entries({ 'library.md': 'README.md', 'changes.md': 'CHANGES.md' })) {
  copyFileSync(fileURLToPath(new URL(`../src/release/${from}`, import.meta.url)), `${out}/${to}`)
}
for (const fault of faults) console.error(fault)
if (faults.length > 0) throw new Error(`${faults.length} public names are not documented as they should be.`)
console.log(`reference: ${count} public names in ${ROOMS.length} rooms; ${unshown} functions have no example yet`)

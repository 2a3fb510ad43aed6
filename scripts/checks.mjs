// The checks of `npm run check`, in the order a mistake is cheapest to find.
import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import { root } from './set-up.mjs'

const bin = (name) => `${root}node_modules/.bin/${name}`

/** Each check prints what is wrong and says whether all is well. The last three look at what `npm run build` made. */
export const checks = [
  { name: 'types', run: () => tool('tsc', ['-p', '.']) },
  { name: 'types of the engine without a browser', run: () => tool('tsc', ['-p', 'tsconfig.engine.json']) },
  { name: 'format, lint and import direction', run: () => tool('biome', ['ci', '--error-on-warnings', '.']) },
  { name: 'no clock and no randomness in the engine', run: noClock },
  { name: 'unused files, exports and packages', run: () => tool('knip', ['--no-progress']) },
  {
    name: 'library as its users get it: packed, typed, run, measured',
    run: () => tool('tsx', ['scripts/packed-library.ts']),
  },
  { name: 'no markup from text and no code from text in the build', run: noUnsafe },
  { name: 'packages of others in the build: told of, each with its reason', run: noticesAgree },
  { name: 'size budgets', run: sizes },
]

/** Budgets in bytes: minified, or gzipped where it says so. */
const BUDGETS = [
  { what: 'gate, on every page of a watched shop', files: ['dist/extension/gate.js'], most: 10_000, gzip: false },
  {
    what: 'reader with its largest lexicon, where a page may be a checkout',
    files: readerFiles,
    // The goal is 45,000. About 4,000 above it are names of money in all languages, 1,500 the curtain and what else of the
    // guard is needed only where there is a checkout.
    most: 53_500,
    gzip: true,
  },
  { what: 'worker', files: ['dist/extension/worker.js'], most: 60_000, gzip: true },
  { what: 'popup', files: () => scriptsOf('popup/popup.html'), most: 70_000, gzip: true },
  { what: 'panel', files: () => scriptsOf('src/guard/panel/panel.html'), most: 70_000, gzip: true },
]

function tool(name, args) {
  return spawnSync(bin(name), args, { cwd: root, stdio: 'inherit' }).status === 0
}

function noClock() {
  let well = true
  for (const room of ['money', 'book', 'plan', 'monthend', 'checkout']) {
    for (const file of filesUnder(`src/${room}`)) {
      const text = readFileSync(`${root}${file}`, 'utf8')
      const found = /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bperformance\.now\b|\bcrypto\./.exec(text)
      if (!found) continue
      well = false
      console.error(`${file} uses ${found[0]}: time and chance are passed in to the engine.`)
    }
  }
  return well
}

/** What a reviewer of an extension looks for: markup or code made of text. */
function noUnsafe() {
  let well = true
  for (const file of filesUnder('dist/extension')) {
    if (!/\.(?:js|html)$/.test(file)) continue
    const found = /\.(?:inner|outer)HTML\s*=[^=]|insertAdjacentHTML|document\.write|\beval\(|new Function\b/.exec(
      readFileSync(`${root}${file}`, 'utf8'),
    )
    if (!found) continue
    well = false
    console.error(`${file} holds ${found[0]}`)
  }
  return well
}

/** The notices that go along and the contributor's guide name the same packages. */
function noticesAgree() {
  const read = (file) => readFileSync(`${root}${file}`, 'utf8')
  const told = [...read('dist/extension/THIRD-PARTY-NOTICES.txt').matchAll(/^-{78}\n\n(\S+) \d/gm)].map((m) => m[1])
  const section = /## Run-time packages[^\n]*\n([\s\S]*?)(?=\n## )/.exec(read('DEVELOPERS.md'))?.[1] ?? ''
  const reasoned = [...section.matchAll(/^\| (\S+)(?: [^|]*)? \| [^|]{10,} \|$/gm)].map((m) => m[1])
  for (const name of told.filter((name) => !reasoned.includes(name)))
    console.error(`${name} is in the build. Give its reason in the table of DEVELOPERS.md.`)
  for (const name of reasoned.filter((name) => !told.includes(name)))
    console.error(`${name} has a reason in DEVELOPERS.md and is not in the build.`)
  return told.length > 0 && told.toSorted().join() === reasoned.toSorted().join()
}

function sizes() {
  let well = true
  for (const { what, files, most, gzip } of BUDGETS) {
    const bytes = (typeof files === 'function' ? files() : files)
      .map((file) => readFileSync(`${root}${file}`))
      .reduce((sum, text) => sum + (gzip ? gzipSync(text, { level: 9 }).length : text.length), 0)
    const fits = bytes <= most
    well &&= fits
    console.log(`  ${fits ? 'fits' : 'TOO LARGE'}: ${what}: ${bytes} of ${most} bytes${gzip ? ' gzipped' : ''}`)
  }
  return well
}

/** What is brought into a page that may be a checkout. A page that mixes two languages gets a second lexicon. */
function readerFiles() {
  const folder = 'dist/extension/lexicons'
  const lexicons = readdirSync(`${root}${folder}`).map((name) => `${folder}/${name}`)
  const bySize = lexicons.sort((a, b) => gzipped(b) - gzipped(a))
  return ['dist/extension/reader.js', ...bySize.slice(0, 1)]
}

function gzipped(file) {
  return gzipSync(readFileSync(`${root}${file}`), { level: 9 }).length
}

/** The scripts a page loads, with the chunks they import. */
function scriptsOf(page) {
  const folder = 'dist/extension/'
  const html = readFileSync(`${root}${folder}${page}`, 'utf8')
  const queue = [...html.matchAll(/(?:src|href)="([^"]+\.js)"/g)].map((m) =>
    new URL(m[1], `x:/${page}`).pathname.slice(1),
  )
  const found = new Set()
  for (let next = queue.pop(); next; next = queue.pop()) {
    if (found.has(next)) continue
    found.add(next)
    const text = readFileSync(`${root}${folder}${next}`, 'utf8')
    for (const m of text.matchAll(/from\s*["'](\.[^"']+\.js)["']|import\s*["'](\.[^"']+\.js)["']/g)) {
      queue.push(new URL(m[1] ?? m[2], `x:/${next}`).pathname.slice(1))
    }
  }
  return [...found].map((file) => folder + file)
}

/** The files under a folder, none where it is not there yet. */
function filesUnder(folder) {
  if (!existsSync(`${root}${folder}`)) return []
  return readdirSync(`${root}${folder}`, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`.slice(root.length))
}

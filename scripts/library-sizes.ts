// What the library adds to a page that imports it: each entry whole, and some of it by name. Bundled, minified and gzipped
// as its users would, with what it uses of other packages.
import { writeFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import { build } from 'vite'

const CORE =
  'money, parsePrice, formatMoney, allocate, roundForCash, breakdown, openBook, append, balances, assess'.split(', ')

interface Limit {
  readonly what: string
  readonly from: string
  /** What is imported by name; without it all there is. */
  readonly names?: readonly string[]
  readonly most: number
}

/** The limits in bytes. `src/release/library.md` says the same ones; a test compares. */
export const LIBRARY_LIMITS: readonly Limit[] = [
  { what: 'money, allocate', from: 'tillside', names: ['money', 'allocate'], most: 2_000 },
  { what: 'the core', from: 'tillside', names: CORE, most: 25_000 },
  { what: 'tillside/money', from: 'tillside/money', most: 18_000 },
  { what: 'tillside/book', from: 'tillside/book', most: 28_000 },
  { what: 'tillside/plan', from: 'tillside/plan', most: 40_000 },
  { what: 'tillside/monthend', from: 'tillside/monthend', most: 75_000 },
  { what: 'tillside/checkout', from: 'tillside/checkout', most: 220_000 },
  { what: 'tillside', from: 'tillside', most: 350_000 },
]

/** Bundles what a project in `folder`, which has the library installed, may import; says each size, and whether all fit. */
export async function sizesFit(folder: string): Promise<boolean> {
  let well = true
  for (const { what, from, names, most } of LIBRARY_LIMITS) {
    const entry = `${folder}/size.js`
    writeFileSync(entry, `export ${names ? `{ ${names.join(', ')} }` : '*'} from '${from}'\n`)
    const built = await build({
      root: folder,
      configFile: false,
      logLevel: 'warn',
      publicDir: false,
      build: {
        write: false,
        target: 'es2023',
        rolldownOptions: { input: entry, preserveEntrySignatures: 'strict', output: { codeSplitting: false } },
      },
    })
    if (!('output' in built)) throw new Error(`The bundler made no bundle of ${what}.`)
    const chunks = built.output.map((file) => (file.type === 'chunk' ? file.code : ''))
    const bytes = gzipSync(chunks.join(''), { level: 9 }).length
    const fits = bytes <= most
    well &&= fits
    console.log(`  ${fits ? 'fits' : 'TOO LARGE'}: ${what}: ${bytes} of ${most} bytes gzipped`)
  }
  return well
}

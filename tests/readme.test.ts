import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { transformWithOxc } from 'vite'
import { beforeAll, describe, expect, it } from 'vitest'
import { examples } from '../scripts/examples.ts'
import { LIBRARY_LIMITS } from '../scripts/library-sizes.ts'

const root = fileURLToPath(new URL('..', import.meta.url))
const BETWEEN = '--- next ---'

describe('the examples of the guides run against the built library and print what stands beside them', () => {
  const all = examples()
  let printed: string[] = []

  beforeAll(async () => {
    // Inside the project, so that the package's own name resolves to dist/library as it would for a user.
    mkdirSync(`${root}dist/examples`, { recursive: true })
    for (const [n, { code }] of all.entries()) {
      const script = await transformWithOxc(code, `${n}.ts`)
      writeFileSync(`${root}dist/examples/${n}.js`, script.code)
    }
    const runner = all.map((_, n) => `await import('./${n}.js')\nconsole.log('${BETWEEN}')\n`).join('')
    writeFileSync(`${root}dist/examples/all.js`, runner)
    const out = execFileSync(process.execPath, [`${root}dist/examples/all.js`], { encoding: 'utf8' })
    printed = out.split(`${BETWEEN}\n`).map((part) => part.trim())
  })

  it('has the ten lines of the README and one example each of a verdict, a split, a slip and a match', () => {
    expect(all.map(({ title }) => title)).toEqual([
      'The library in ten lines',
      'A verdict',
      'A split',
      'A withdrawal slip',
      'A statement match',
    ])
  })

  it.each(all.map((example, n) => ({ n, ...example })))('$title', ({ n, prints }) => {
    expect(prints.length).toBeGreaterThan(0)
    expect(printed[n]?.split('\n')).toEqual(prints)
  })
})

it('the sizes in the library’s guide are the limits that are checked', () => {
  const guide = readFileSync(`${root}src/release/library.md`, 'utf8')
  const rows = guide.split('\n').map((line) => line.split('|').map((cell) => cell.replaceAll('`', '').trim()))
  const said = rows.filter((cells) => cells.at(-2)?.endsWith(' kB')).map((cells) => [cells[1], cells.at(-2)])
  const checked = LIBRARY_LIMITS.map(({ what, names, most }) => [
    what === 'the core' ? `the core: ${names?.join(', ')}` : what,
    `${most / 1000} kB`,
  ])
  expect(said.toSorted()).toEqual(checked.toSorted())
})

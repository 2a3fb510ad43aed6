/*
 * What the tests of src/money and src/book use of vitest, so that they can be run again and again in one process: the same
 * `expect` (of @vitest/expect), and `describe`, `it` and `it.each` that only note what there is to run.
 */
import { createRequire } from 'node:module'
import { format } from 'node:util'

const own = createRequire(createRequire(import.meta.url).resolve('vitest/package.json'))
const { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend, GLOBAL_EXPECT, setState } = await import(
  own.resolve('@vitest/expect')
)
chai.use(JestExtend)
chai.use(JestChaiExpect)
chai.use(JestAsymmetricMatchers)

export const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect)
globalThis[GLOBAL_EXPECT] = expect
setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, expect)

/** Every test of the files that were imported: its file, its name with those of the groups it is in, and what it does. */
export const tests = []
let groups = []
let file = ''

export function startFile(path) {
  file = path
}

export function describe(name, ...rest) {
  groups = [...groups, name]
  rest.find((part) => typeof part === 'function')()
  groups = groups.slice(0, -1)
}

export function it(name, ...rest) {
  const run = rest.find((part) => typeof part === 'function')
  const full = [...groups, name].join(' > ')
  const twins = tests.filter((test) => test.file === file && test.name === full).length
  tests.push({ id: `${file}#${full}${twins ? `#${twins}` : ''}`, file, name: full, run })
}

it.each =
  (rows) =>
  (name, ...rest) => {
    const run = rest.find((part) => typeof part === 'function')
    for (const row of rows) {
      const values = Array.isArray(row) ? row : [row]
      it(format(name, ...values), () => run(...values))
    }
  }
it.runIf = (is) => (is ? it : () => {})
export const test = it

/** Types are checked by the compiler; here they say nothing. */
const nothing = new Proxy(() => nothing, { get: () => nothing })
export const expectTypeOf = nothing

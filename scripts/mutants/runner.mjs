/*
 * Stryker's test runner for src/money and src/book. The tests of a part are imported once; a mutant is then only the tests
 * that reach it, run in the same process, where a run of vitest would load the whole engine anew for each of thousands.
 * Mutants of what runs while a module is loaded are left out (`ignoreStatic`), so nothing has to be loaded again.
 */
import { register } from 'node:module'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { register as registerTypeScript } from 'tsx/esm/api'
import { testFiles } from './test-files.mjs'

const SHIM = new URL('vitest-shim.mjs', import.meta.url).href

/** Tests import `vitest` by name; here that is the shim. */
const hook = `export const resolve = (name, context, next) =>
  name === 'vitest' ? { url: ${JSON.stringify(SHIM)}, shortCircuit: true } : next(name, context)`

class Runner {
  #tests = []

  capabilities() {
    return { reloadEnvironment: false }
  }

  async init() {
    registerTypeScript()
    register(`data:text/javascript,${encodeURIComponent(hook)}`)
    const { tests, startFile } = await import(SHIM)
    await import(new URL('properties.ts', import.meta.url).href)
    for (const file of testFiles(process.env.TILLSIDE_MUTANTS_TESTS.split(','))) {
      startFile(file)
      await import(pathToFileURL(resolve(file)).href)
    }
    // Of a mutant that is tried on a busy machine, how long it takes says nothing.
    this.#tests = tests.filter(({ name }) => !/speed|within \d+ ms/.test(name))
  }

  async dryRun() {
    const found = []
    for (const test of this.#tests) {
      globalThis.__stryker__ ??= {}
      globalThis.__stryker__.currentTestId = test.id
      const start = performance.now()
      const failure = await failureOf(test)
      const { id, name, file: fileName } = test
      const timeSpentMs = performance.now() - start
      found.push(
        failure === null
          ? { id, name, fileName, timeSpentMs, status: 0 }
          : { id, name, fileName, timeSpentMs, status: 1, failureMessage: failure },
      )
    }
    globalThis.__stryker__.currentTestId = undefined
    return { status: 'complete', tests: found, mutantCoverage: globalThis.__stryker__.mutantCoverage }
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    const stryker = globalThis.__stryker__
    Object.assign(stryker, {
      activeMutant: activeMutant.id,
      hitLimit,
      hitCount: hitLimit === undefined ? undefined : 0,
    })
    const chosen = testFilter ? this.#tests.filter(({ id }) => testFilter.includes(id)) : this.#tests
    try {
      for (const [n, test] of chosen.entries()) {
        const failure = await failureOf(test)
        if (stryker.hitCount > hitLimit) return { status: 'timeout', reason: `Hit limit reached (${stryker.hitCount})` }
        if (failure !== null)
          return { status: 'killed', killedBy: [test.id], failureMessage: failure, nrOfTests: n + 1 }
      }
      return { status: 'survived', nrOfTests: chosen.length }
    } finally {
      Object.assign(stryker, { activeMutant: undefined, hitLimit: undefined, hitCount: undefined })
    }
  }

  async dispose() {}
}

async function failureOf(test) {
  try {
    await test.run()
    return null
  } catch (cause) {
    return String(cause instanceof Error ? cause.message : cause).slice(0, 300)
  }
}

export const strykerPlugins = [{ kind: 'TestRunner', name: 'here', injectableClass: Runner }]

// npm run mutants [-- PART ...]: mutation testing of src/money and src/book with Stryker, part by part (mutants/parts.mjs),
// then a table of the score of every file and the mutants no test noticed. `-- --table` only prints what earlier runs
// found. What was found is kept in .mutants/ and taken up again: only what changed is tried anew.
//
// Stryker's hundred packages serve nobody else, so they are not in package.json: the pinned versions are put into an
// ignored folder of their own when they are first needed.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { parts } from './mutants/parts.mjs'
import { printTable } from './mutants/table.mjs'
import { ensurePackages, root, run, say } from './set-up.mjs'

const VERSION = '9.6.0'
const folder = `${root}.mutants/`
const tool = `${folder}tool/node_modules/@stryker-mutator/core/bin/stryker.js`

const asked = process.argv.slice(2)
const names = asked.filter((name) => name in parts)
if (asked.includes('--table')) {
  printTable(folder)
} else {
  ensurePackages()
  ensureStryker()
  for (const name of names.length > 0 ? names : Object.keys(parts)) mutate(name)
  printTable(folder)
}

function ensureStryker() {
  if (existsSync(tool)) return
  say(`Installing Stryker ${VERSION} into .mutants/tool ...`)
  mkdirSync(`${folder}tool`, { recursive: true })
  writeFileSync(`${folder}tool/package.json`, '{ "private": true }\n')
  const flags = ['--save-exact', '--no-audit', '--no-fund', '--loglevel=error']
  run('npm', ['install', '--prefix', `${folder}tool`, ...flags, `@stryker-mutator/core@${VERSION}`])
}

function mutate(name) {
  const { files, tests } = parts[name]
  const config = `${folder}${name}.json`
  const settings = {
    mutate: files,
    plugins: ['runner', 'sentences'].map((file) => `${root}scripts/mutants/${file}.mjs`),
    ignorers: ['sentences'],
    testRunner: 'here',
    coverageAnalysis: 'perTest',
    ignoreStatic: true,
    incremental: true,
    incrementalFile: `${folder}${name}.found.json`,
    reporters: ['progress-append-only'],
    concurrency: Number(process.env.TILLSIDE_MUTANTS_AT_ONCE ?? 2),
    timeoutMS: 4000,
    timeoutFactor: 2,
    dryRunTimeoutMinutes: 15,
    tempDirName: '.mutants/tmp',
    ignorePatterns: ['dist', 'dist.next', 'shots', '.mutants', '.git', 'tests/browser', 'tests/checkout'],
    tsconfigFile: 'none.json',
    disableTypeChecks: false,
    allowConsoleColors: false,
    warnings: false,
  }
  writeFileSync(config, JSON.stringify(settings, null, 2))
  say(`part: ${name}`)
  const { status } = spawnSync('nice', ['-n', '15', process.execPath, tool, 'run', config], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, TILLSIDE_MUTANTS_TESTS: tests.join(',') },
  })
  if (status !== 0) say(`FAILED: part ${name} did not run to its end.`)
}

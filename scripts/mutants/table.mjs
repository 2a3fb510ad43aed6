import { existsSync, readFileSync } from 'node:fs'
import { parts } from './parts.mjs'

const NOTICED = ['Killed', 'Timeout']
const MISSED = ['Survived', 'NoCoverage']

/** Prints the score of every file that was run, the sum of all, and each mutant that no test noticed. */
export function printTable(folder) {
  const rows = []
  const missed = []
  const missing = []
  for (const [part, { files }] of Object.entries(parts)) {
    const path = `${folder}${part}.found.json`
    const found = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')).files : {}
    for (const file of files) {
      if (!found[file]) {
        missing.push(file)
        continue
      }
      const { mutants, source } = found[file]
      const count = (of) => mutants.filter(({ status }) => of.includes(status)).length
      rows.push({ file, noticed: count(NOTICED), missed: count(MISSED) })
      const lines = source.split('\n')
      for (const mutant of mutants.filter(({ status }) => MISSED.includes(status))) {
        const { start, end } = mutant.location
        const was =
          start.line === end.line
            ? lines[start.line - 1].slice(start.column - 1, end.column - 1)
            : lines[start.line - 1].trim()
        missed.push(
          `${file}:${start.line}:${start.column} ${mutant.status} ${mutant.mutatorName}: ${short(was)} -> ${short(mutant.replacement ?? '')}`,
        )
      }
    }
  }
  for (const row of [...rows, sumOf('src/money', rows), sumOf('src/book', rows), sumOf('src', rows)]) {
    const { file, noticed, missed: not } = row
    if (noticed + not > 0)
      console.log(
        `${file.padEnd(36)} ${String(noticed).padStart(5)} of ${String(noticed + not).padStart(5)}  ${percent(row)} %`,
      )
  }
  console.log(`\nNot noticed by a test (${missed.length}):`)
  for (const line of missed) console.log(`  ${line}`)
  if (missing.length > 0) console.log(`\nNot run (${missing.length}): ${missing.join(' ')}`)
}

function sumOf(file, rows) {
  const of = rows.filter((row) => row.file.startsWith(`${file}/`))
  const sum = (what) => of.reduce((total, row) => total + row[what], 0)
  return { file: `${file}, all files run`.replace(/^src,/, 'both,'), noticed: sum('noticed'), missed: sum('missed') }
}

function percent({ noticed, missed }) {
  return ((100 * noticed) / (noticed + missed)).toFixed(1)
}

function short(text) {
  const line = text.replace(/\s+/g, ' ').trim()
  return line.length > 70 ? `${line.slice(0, 67)}...` : line
}

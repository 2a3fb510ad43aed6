// Makes what is shipped, called by `npm run ship` after a build: zips for Chromium and Firefox, the sources for Firefox's
// reviewers, and the library's tarball. All of it is made of two builds, which must agree to the byte.
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import { packLibrary } from './pack-library.ts'
import { zipOf } from './zip.ts'

const root = fileURLToPath(new URL('..', import.meta.url))
const { version }: { readonly version: string } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'))

const temporary = mkdtempSync(join(tmpdir(), 'tillside-ship-'))
try {
  const first = make(join(temporary, 'first'))
  execFileSync(process.execPath, [`${root}scripts/build.mjs`], { cwd: root, stdio: 'inherit' })
  const second = make(join(temporary, 'second'))
  if (first !== second) throw new Error(`Two builds of the same sources differ:\n${first}\nand then\n${second}`)
  cpSync(join(temporary, 'second'), `${root}dist/ship`, { recursive: true })
  writeFileSync(`${root}dist/ship/SHA256SUMS`, second)
  process.stdout.write(`Made twice, the same bytes both times. In dist/ship:\n${second}`)
} finally {
  rmSync(temporary, { recursive: true, force: true })
}

/** Makes all files in a folder; gives their sums, one a line, as `sha256sum` writes and checks them. */
function make(folder: string): string {
  mkdirSync(folder, { recursive: true })
  const zip = (name: string, from: string, paths: readonly string[]) =>
    writeFileSync(join(folder, `tillside-${name}-${version}.zip`), zipOf(from, paths))
  zip('chromium', `${root}dist/extension`, filesUnder(`${root}dist/extension`))
  zip('firefox', `${root}dist/firefox`, filesUnder(`${root}dist/firefox`))
  const tracked = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' })
  zip('source', root, tracked.split('\0').filter(Boolean))
  packLibrary(folder)
  const names = readdirSync(folder).sort()
  return names.map((name) => `${sumOf(join(folder, name))}  ${name}\n`).join('')
}

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll(sep, '/'))
}

function sumOf(file: string): string {
  return createHash('sha256').update(readFileSync(file)).digest('hex')
}

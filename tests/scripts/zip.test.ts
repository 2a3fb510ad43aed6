import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { unzipSync } from 'fflate'
import { expect, it, onTestFinished } from 'vitest'
import { zipOf } from '../../scripts/zip.ts'

const FILES = { 'manifest.json': '{}\n', 'pages/a.html': '<p>a</p>\n', 'pages/é.js': 'export {}\n' }

function folderOf(times: Date): string {
  const folder = mkdtempSync(join(tmpdir(), 'tillside-zip-'))
  onTestFinished(() => rmSync(folder, { recursive: true }))
  mkdirSync(join(folder, 'pages'))
  for (const [path, text] of Object.entries(FILES)) {
    writeFileSync(join(folder, path), text)
    utimesSync(join(folder, path), times, times)
  }
  return folder
}

const sum = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

it('is the same bytes whenever the files were written and in whatever order they are named', () => {
  const paths = Object.keys(FILES)
  const early = zipOf(folderOf(new Date('2020-02-29T12:00:00Z')), paths)
  const late = zipOf(folderOf(new Date('2026-11-25T23:59:59Z')), paths.toReversed())
  expect(sum(late)).toBe(sum(early))
})

it('is the same bytes in every time zone', () => {
  const folder = folderOf(new Date('2026-11-25T12:00:00Z'))
  const script = `import('${new URL('../../scripts/zip.ts', import.meta.url)}').then(({ zipOf }) => process.stdout.write(zipOf(${JSON.stringify(folder)}, ${JSON.stringify(Object.keys(FILES))})))`
  const [west, east] = ['America/Los_Angeles', 'Pacific/Auckland'].map((TZ) =>
    sum(execFileSync(process.execPath, ['--import', 'tsx', '-e', script], { env: { ...process.env, TZ } })),
  )
  expect(west).toBe(east)
})

it('gives every file back as it was', () => {
  const zip = unzipSync(zipOf(folderOf(new Date('2026-11-25T12:00:00Z')), Object.keys(FILES)))
  const texts = Object.entries(zip).map(([path, bytes]) => [path, new TextDecoder().decode(bytes)])
  expect(Object.fromEntries(texts)).toEqual(FILES)
})

it('the extension and the package have the same version', () => {
  const [manifest, pkg] = ['manifest.json', 'package.json'].map((name) =>
    JSON.parse(readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8')),
  )
  expect(manifest.version).toBe(pkg.version)
})

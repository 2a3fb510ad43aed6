import { createHash } from 'node:crypto'
import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
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

// PKWARE APPNOTE 4.3.7 and 4.4.6: bytes 10 to 13 of a local header are the time and the date in MS-DOS form, in local time,
// where the date counts years from 1980 (from memory). A clock or time zone that got in would show here.
it('says of every file that it is of the first moment of the format', () => {
  const zip = zipOf(folderOf(new Date('2026-11-25T12:00:00Z')), ['manifest.json'])
  expect([...zip.slice(10, 14)]).toEqual([0, 0, (1 << 5) | 1, 0])
})

it('gives every file back as it was', () => {
  const zip = unzipSync(zipOf(folderOf(new Date('2026-11-25T12:00:00Z')), Object.keys(FILES)))
  const texts = Object.entries(zip).map(([path, bytes]) => [path, new TextDecoder().decode(bytes)])
  expect(Object.fromEntries(texts)).toEqual(FILES)
})

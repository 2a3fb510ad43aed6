import * as z from 'zod/mini'
import { canonical } from '../../background/canonical.ts'
import { sha256 } from '../../background/digest.ts'
import { slug } from '../../background/shapes.ts'
import type { Settings } from '../../background/store.ts'
import { householdSettings, storedEntry } from '../../background/stored-schemas.ts'
import type { DeviceId, Entry } from '../../index.ts'
import { FileError } from './file-error.ts'

/** The version of the file's shape. */
const VERSION = 1

/** The file's shape without its digest. */
export const bookFile = z.strictObject({
  format: z.literal('tillside-book'),
  version: z.literal(VERSION),
  /** The device that wrote it. */
  device: slug<DeviceId>(),
  settings: householdSettings,
  /** Addresses of the shops the guard watched. The browser's permission does not travel. */
  watched: z.array(z.string()),
  entries: z.array(storedEntry),
})

/** The whole book as it travels. */
export interface BookFile {
  readonly device: DeviceId
  readonly settings: Settings
  readonly watched: readonly string[]
  readonly entries: readonly Entry[]
}

/** A file as it was read. */
export interface ReadFile {
  readonly file: BookFile
  /** Whether the file was changed by something else after it was written: its digest does not match. */
  readonly isAltered: boolean
}

/**
 * The whole book as a text: canonical JSON (RFC 8785) with the SHA-256 of all its other members as `sha256`. The same
 * book gives the same bytes, on whatever device.
 */
export async function writeBookFile(book: BookFile): Promise<string> {
  const { device, settings, watched, entries } = book
  const file = { format: 'tillside-book', version: VERSION, device, settings, watched, entries }
  return `${canonical({ ...file, sha256: await sha256(canonical(file)) })}\n`
}

/**
 * Reads what `writeBookFile` wrote. A file that was changed by hand is read if it still has the right shape, and says so.
 *
 * @throws FileError `file-broken` (no whole JSON), `file-not-ours`, `file-newer`, `file-no-book` (a part has another
 *   shape; the sentence names the first)
 */
export async function readBookFile(text: string): Promise<ReadFile> {
  const value = parsed(text)
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== 'tillside-book') {
    throw new FileError('file-not-ours', 'This file is no book of Tillside. Choose one that Tillside has saved.')
  }
  if ('version' in value && typeof value.version === 'number' && value.version > VERSION) {
    throw new FileError('file-newer', 'This file was written by a newer Tillside. Update Tillside, then restore it.')
  }
  const { sha256: digest, ...rest } = { sha256: undefined, ...value }
  const checked = bookFile.safeParse(rest)
  if (!checked.success) {
    const where = checked.error.issues[0]?.path.join(' › ') ?? ''
    throw new FileError(
      'file-no-book',
      `This file has a part that Tillside cannot read: ${where}. Restore an earlier file, or save this one for help.`,
    )
  }
  return { file: checked.data, isAltered: digest !== (await sha256(canonical(rest))) }
}

/** JSON without hiding where it breaks off. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''))
  } catch {
    throw new FileError(
      'file-broken',
      'This file is cut short or was changed so that it cannot be read. Take another copy of it.',
    )
  }
}

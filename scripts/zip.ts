// Zip archives that depend on nothing but what is in them: the same files are the same bytes.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Zippable, zipSync } from 'fflate'

// The format's first day, given by the local clock because the format keeps local time.
const MTIME = new Date(1980, 0, 1)

/** A zip of the files named by their paths under `folder`, with `/` between names, whatever order they are given in. */
export function zipOf(folder: string, paths: readonly string[]): Uint8Array {
  const files: Zippable = {}
  for (const path of [...paths].sort()) files[path] = new Uint8Array(readFileSync(join(folder, path)))
  return zipSync(files, { level: 9, mtime: MTIME })
}

// Packs the built library as npm would publish it.
import { execFileSync } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))

/** The path of the tarball made in `folder`. npm gives every file the same time and order, so the same input is the same bytes. */
export function packLibrary(folder: string): string {
  const args = ['pack', '--json', '--ignore-scripts', '--pack-destination', folder]
  const said = execFileSync('npm', args, { cwd: root, encoding: 'utf8', shell: process.platform === 'win32' })
  const [packed]: { readonly filename: string }[] = JSON.parse(said)
  if (packed === undefined) throw new Error('npm packed nothing. Build the library first.')
  return join(folder, packed.filename)
}

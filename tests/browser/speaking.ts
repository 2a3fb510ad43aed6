import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Extension, openExtension } from './extension.ts'

const built = fileURLToPath(new URL('../../dist/demo', import.meta.url))

/** Messages as browsers read them. */
export type Messages = Readonly<Record<string, { readonly message: string }>>

/**
 * The built extension with these messages alone, under the name of the language that the tests' Chromium is in: Debian's
 * comes with no other language, and a copy of the extension tells its texts without one. What they are written in is said
 * by the messages themselves (`language_tag`), and the pages follow that.
 */
export async function openSpeaking(messages: Messages): Promise<Extension> {
  const folder = await mkdtemp(join(tmpdir(), 'tillside-speaking-'))
  await cp(built, folder, { recursive: true })
  await rm(`${folder}/_locales`, { recursive: true })
  await mkdir(`${folder}/_locales/en`, { recursive: true })
  await writeFile(`${folder}/_locales/en/messages.json`, JSON.stringify(messages))
  const extension = await openExtension({ extension: folder })
  return {
    ...extension,
    async close() {
      await extension.close()
      await rm(folder, { recursive: true, force: true })
    },
  }
}

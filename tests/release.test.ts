import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'

const read = (path: string): string => readFileSync(new URL(`../${path}`, import.meta.url), 'utf8')
const manifest = JSON.parse(read('manifest.json'))

it('extension, package and list of changes have the same version', () => {
  const { version } = JSON.parse(read('package.json'))
  expect(manifest.version).toBe(version)
  expect(/^## (\S+?),? /m.exec(read('src/release/changes.md'))?.[1]).toBe(version)
})

// "Description … no more than 132 characters": Chrome's documentation of the manifest's `description`, from memory.
it.each(readdirSync(new URL('../src/locales', import.meta.url)))(
  'the short description fits the stores: %s',
  (language) => {
    const { message } = JSON.parse(read(`src/locales/${language}/messages.json`)).extension_description
    expect(message.length).toBeGreaterThan(20)
    expect([...message].length).toBeLessThanOrEqual(132)
  },
)

it('the store is told why of every permission, and of no other', () => {
  const why = /## Why each permission\n([\s\S]*?)\n## /.exec(read('src/release/store.md'))?.[1] ?? ''
  expect([...why.matchAll(/^- `(\w+)`: /gm)].map((line) => line[1]).toSorted()).toEqual(manifest.permissions.toSorted())
})

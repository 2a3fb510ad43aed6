import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'

const root = fileURLToPath(new URL('..', import.meta.url))

it('the ten lines of the README run against the built library and print what they say', () => {
  const readme = readFileSync(`${root}README.md`, 'utf8')
  const code = /```ts\n([\s\S]*?)```/.exec(readme)?.[1] ?? ''
  const said = /^\/\/ (.*)$/m.exec(code)?.[1]
  expect(said).toMatch(/^block - Piano lessons/)
  // Inside the project, so that the package's own name resolves to dist/library as it would for a user.
  mkdirSync(`${root}dist`, { recursive: true })
  const file = `${root}dist/readme-example.ts`
  writeFileSync(file, code)
  const printed = execFileSync(process.execPath, [`${root}node_modules/tsx/dist/cli.mjs`, file], { encoding: 'utf8' })
  expect(printed.trim()).toBe(said)
})

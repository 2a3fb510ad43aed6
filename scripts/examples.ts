// The examples of the guides: code blocks marked `ts`, each with the lines it says it prints (`// →`). Used by the tests and
// by the check of the packed library, which run them.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))

const GUIDES = ['README.md', 'src/release/library.md']

/** A code block of a guide, with the heading it stands under and the lines it says it prints. */
export interface Example {
  readonly guide: string
  readonly title: string
  readonly code: string
  readonly prints: readonly string[]
}

/** Every example of every guide, in their order. */
export function examples(): Example[] {
  return GUIDES.flatMap((guide) => {
    const text = readFileSync(`${root}${guide}`, 'utf8')
    return [...text.matchAll(/```ts\n(?<code>[\s\S]*?)```/g)].map(({ index, groups }) =>
      exampleAt(guide, text.slice(0, index), groups?.code ?? ''),
    )
  })
}

function exampleAt(guide: string, before: string, code: string): Example {
  return {
    guide,
    title: [...before.matchAll(/^#+ (.*)$/gm)].at(-1)?.[1] ?? guide,
    code,
    prints: [...code.matchAll(/^\s*\/\/ → (.*)$/gm)].map((line) => line[1] ?? ''),
  }
}

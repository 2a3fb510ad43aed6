import { readdirSync, readFileSync } from 'node:fs'
import { z } from 'zod'
import { englishSentences } from '../../src/book/sentences.en.ts'
import { planSentences } from '../../src/plan/sentences.en.ts'
import { messageFiles } from '../english-messages.ts'

const folder = new URL('../../src/locales/', import.meta.url)
const file = z.record(z.string(), z.strictObject({ message: z.string() }))

/** Texts by file, then by key. */
export type Texts = ReadonlyMap<string, ReadonlyMap<string, string>>

/** The English texts as every language has them: the message files, and the engine's sentences as one more. */
export const english: Texts = new Map([
  ...Object.entries(messageFiles).map(
    ([name, texts]) => [name, new Map(Object.entries(texts).map(([key, { message }]) => [key, message]))] as const,
  ),
  ['sentences', new Map(Object.entries({ ...englishSentences, ...planSentences }))],
])

/** The languages beside English, by their folders. */
export const languages = readdirSync(folder).filter((name) => name !== 'en')

/** The texts of one language. @throws where a file is no JSON, or holds more than messages */
export function textsOf(language: string): Texts {
  const names = readdirSync(new URL(`${language}/`, folder))
  return new Map(
    names.map((name) => {
      const json: unknown = JSON.parse(readFileSync(new URL(`${language}/${name}`, folder), 'utf8'))
      const texts = Object.entries(file.parse(json)).map(([key, { message }]) => [key, message] as const)
      return [name.replace(/\.json$/, ''), new Map(texts)]
    }),
  )
}

/** Every text of a language by its key. */
export function flat(texts: Texts): ReadonlyMap<string, string> {
  return new Map([...texts.values()].flatMap((messages) => [...messages]))
}

/** The names in braces, sorted. */
export function namesIn(text: string): string[] {
  return [...text.matchAll(/\{(\w+)\}/g)].map((m) => m[1] ?? '').sort()
}

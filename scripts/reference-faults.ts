// What a public name's docstring must have.
import type { PublicName } from './reference-names.ts'

/** What is missing, as the end of a sentence; none when all is there. */
export function faultsOf({ kind, doc, code }: PublicName): string[] {
  if (doc === '') return [`(${kind}) has no docstring.`]
  const isSilent = kind === 'function' && /\bthrow new \w+Error\b/.test(code) && !doc.includes('@throws')
  return isSilent ? ['throws an error and does not say which.'] : []
}

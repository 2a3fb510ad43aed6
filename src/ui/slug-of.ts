import { isSlug, type PotId, potId } from '../book/ids.ts'

/**
 * An id for a new pot, made from its name once and kept when the name changes.
 *
 * @param taken ids that are in use
 * @example slugOf('Piano lessons', []) // piano-lessons
 */
export function slugOf(name: string, taken: readonly string[]): PotId {
  const plain = name
    .toLocaleLowerCase('en')
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
  const short = [...plain].slice(0, 24).join('')
  const stem = isSlug(short) ? short : 'pot'
  for (let n = 1; ; n++) {
    const id = n === 1 ? stem : `${stem}-${n}`
    if (!taken.includes(id)) return potId(id)
  }
}

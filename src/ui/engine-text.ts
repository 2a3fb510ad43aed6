import { fillIn } from '../book/say.ts'
import { locale, message } from './browser.ts'

/** The key of the words for a code of the engine. Codes have hyphens, which message keys cannot have. */
export function engineKey(code: string): string {
  return `engine_${code.replaceAll('-', '_')}`
}

/**
 * What the engine says of an error or a file, in the person's language. The engine speaks English, with the details of
 * the case; other languages hear what the code means, and the line of the file it is about. A code without words in that
 * language is told in English.
 *
 * @param row line of a file, from 1, or null
 * @example engineText('bad-date', 'Line 7: "x" is not a day.', 7) // in German: Zeile 7: Ein Datum lässt sich nicht lesen.
 */
export function engineText(code: string, sentence: string, row: number | null = null): string {
  const what = message('language_tag') === 'en' ? '' : message(engineKey(code))
  if (what === '') return sentence
  if (row === null) return what
  return fillIn(message('engine_at_line'), { row: new Intl.NumberFormat(locale()).format(row), what })
}

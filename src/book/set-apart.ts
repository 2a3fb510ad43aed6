// Letters that run right to left: Hebrew to Arabic Extended, and their presentation forms (Unicode blocks).
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/
const FIRST_STRONG_ISOLATE = '\u2068'
const POP_ISOLATE = '\u2069'

/**
 * A value as it stands in a sentence: where either runs right to left, it is set apart by the isolates of Unicode's
 * bidirectional algorithm (UAX 9), so that a shop's Latin name cannot pull the figure beside it to its other side. Else
 * it stays as it is.
 *
 * @param around the sentence it goes into, or any text in that sentence's language
 * @example setApart('Books', 'Tag to {pot}') // Books
 */
export function setApart(value: string, around: string): string {
  if (value === '' || !(RIGHT_TO_LEFT.test(around) || RIGHT_TO_LEFT.test(value))) return value
  return `${FIRST_STRONG_ISOLATE}${value}${POP_ISOLATE}`
}

/**
 * Several names as one phrase of a language: "Books, Gifts and Groceries".
 *
 * @param locale BCP 47
 * @example sayList(['Books', 'Gifts'], 'en-GB') // Books and Gifts
 */
export function sayList(
  parts: readonly string[],
  locale: string,
  type: 'conjunction' | 'disjunction' = 'conjunction',
): string {
  const list = new Intl.ListFormat(locale, { type })
  const around = list.format(['', ''])
  return list.format(parts.map((part) => setApart(part, around)))
}

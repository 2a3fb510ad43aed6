const MARKED = new Map(
  [...'aceghijlnorstuwyzACEGHIJLNORSTUWYZ'].map((letter, i) => [
    letter,
    [...'àçèĝĥïĵļñöřšťûŵýžÀÇÈĜĤÏĴĻÑÖŘŠŤÛŴÝŽ'][i] ?? letter,
  ]),
)
/** How much longer than English a text may well be in another language. */
const LONGER = 0.4

/**
 * A text in no language: its letters are marked, it stands in brackets, and it is 40 % longer. `{names}` stay.
 *
 * @example pseudo('Tag to {pot}') // [Ťàĝ ťö {pot} ~~~~~]
 */
export function pseudo(text: string): string {
  const marked = text.replace(/\{\w+\}|[a-z]/gi, (found) => MARKED.get(found) ?? found)
  return `[${marked} ${tail(Math.ceil(text.length * LONGER))}]`
}

/** In words, so that it wraps as other languages do. */
function tail(length: number): string {
  const words = []
  for (let rest = length; rest > 0; rest -= 8) words.push('~'.repeat(Math.min(7, rest)))
  return words.join(' ')
}

/** What stands in a text outside of pseudo texts: what was not translated, or is data. */
export function outsidePseudo(text: string): string {
  let rest = text
  for (let before = ''; before !== rest; ) {
    before = rest
    rest = rest.replace(/\[[^[\]]*\]/g, ' ')
  }
  return rest
}

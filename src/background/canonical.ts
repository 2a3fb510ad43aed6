/**
 * A value as canonical JSON (RFC 8785): keys in the order of their UTF-16 code units, no spaces, numbers and texts as
 * ECMAScript writes them. Two equal values give the same bytes, in whatever order a browser gives keys back. Members
 * that are `undefined` are left out, as JSON does.
 *
 * @throws Error for what JSON has no text for: a number that is not finite, half of a surrogate pair
 * @example canonical({b: 1, a: [true]}) // '{"a":[true],"b":1}'
 */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`
  if (typeof value === 'object' && value !== null) {
    const members = Object.entries(value).filter(([, member]) => member !== undefined)
    members.sort(([a], [b]) => (a < b ? -1 : 1))
    return `{${members.map(([key, member]) => `${textOf(key)}:${canonical(member)}`).join(',')}}`
  }
  if (typeof value === 'string') return textOf(value)
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${value} cannot be written as JSON.`)
  return JSON.stringify(value ?? null)
}

function textOf(text: string): string {
  if (/\p{Cs}/u.test(text)) throw new Error('A text with half a surrogate pair cannot be written as JSON.')
  return JSON.stringify(text)
}

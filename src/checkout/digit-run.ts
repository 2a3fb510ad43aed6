import type { PlacedToken } from './figure.ts'

const MOST_DIGITS = 24

/** One element for each digit, as rolling counters are made: the whole number, and the token behind it; null elsewhere. */
export function digitByDigit(
  tokens: readonly PlacedToken[],
  at: number,
  end: number,
): { number: string; next: number } | null {
  let number = ''
  let next = at
  for (; next < end && next < at + MOST_DIGITS; next += 1) {
    const token = tokens[next]
    if (!token) break
    if (isDigit(token) && (next === at || token.reach === 0)) number += token.text
    // A space parts thousands: three digits follow, and no fourth.
    else if (isDigit(token) && token.reach === 1 && isThousand(tokens, next)) number += ` ${token.text}`
    else if (/^[.,'’٫٬]$/u.test(token.text) && token.reach === 0 && isDigit(tokens[next + 1])) number += token.text
    else break
  }
  return number.replace(/\D/gu, '').length > 1 ? { number, next } : null
}

/** One digit in an element of its own. */
export function isDigit(token: PlacedToken | undefined): boolean {
  return token?.kind === 'number' && token.text.length === 1 && token.first && token.last
}

function isThousand(tokens: readonly PlacedToken[], at: number): boolean {
  const glued = (place: number): boolean => isDigit(tokens[place]) && tokens[place]?.reach === 0
  return glued(at + 1) && glued(at + 2) && !glued(at + 3)
}

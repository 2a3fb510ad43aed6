import { useEffect, useState } from 'preact/hooks'

/** Where the desk stands: a page's name, and what follows it (an order's id, a pot, a month). */
export interface Place {
  readonly page: string
  readonly rest: readonly string[]
}

/**
 * Reads the part of an address after `#`.
 *
 * @example placeOf('#/orders/0193b000-…') // {page: 'orders', rest: ['0193b000-…']}
 */
export function placeOf(hash: string): Place {
  const [page = '', ...rest] = hash
    .replace(/^#?\/?/, '')
    .split('/')
    .map(decoded)
  return { page, rest: rest.filter((part) => part !== '') }
}

/** The link to a place, to be put into `href`. */
export function linkTo(page: string, ...rest: readonly string[]): string {
  return `#/${[page, ...rest].map(encodeURIComponent).join('/')}`
}

let moves = 0

/** Whether someone has gone from one place of the desk to another since it was opened. */
export function hasMoved(): boolean {
  return moves > 0
}

/** The place in the address bar now; follows links, and the browser's back and forward. */
export function usePlace(): Place {
  const [place, setPlace] = useState(() => placeOf(location.hash))
  useEffect(() => {
    const follow = (): void => {
      moves++
      setPlace(placeOf(location.hash))
    }
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [])
  return place
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part)
  } catch {
    return part
  }
}

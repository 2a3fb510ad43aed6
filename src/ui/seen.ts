/*
 * Hints that were read. A small matter of this browser alone: not part of the book, and no harm if it is lost.
 */

const PREFIX = 'seen:'

/** Whether the person has put this hint away. */
export function isSeen(hint: string): boolean {
  return store()?.getItem(PREFIX + hint) === 'yes'
}

/** Puts a hint away, or brings it back. */
export function noteSeen(hint: string, seen = true): void {
  if (seen) store()?.setItem(PREFIX + hint, 'yes')
  else store()?.removeItem(PREFIX + hint)
}

/** All hints are new again, as for a household that begins. */
export function forgetSeen(): void {
  store()?.clear()
}

/** A browser that blocks all site data throws here; hints then come again. */
function store(): Storage | null {
  try {
    return localStorage
  } catch {
    return null
  }
}

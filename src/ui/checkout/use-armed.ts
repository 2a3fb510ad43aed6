import { useEffect, useRef } from 'preact/hooks'

/** A page could lure a click onto a button that appears under the pointer; so long a fresh button does nothing. */
export const ARM_AFTER_MS = 400

/**
 * Tells whether a control has been in sight long enough to be pressed on purpose. The time starts again when the page
 * becomes visible or changes its size.
 *
 * @param isFramed whether a shop's page lies around this one; a page of our own window needs no waiting
 */
export function useArmed(isFramed: boolean): () => boolean {
  const shownAt = useRef(performance.now())
  useEffect(() => {
    const start = (): void => {
      shownAt.current = performance.now()
    }
    start()
    const end = new AbortController()
    document.addEventListener('visibilitychange', start, { signal: end.signal })
    window.addEventListener('resize', start, { signal: end.signal })
    return () => end.abort()
  }, [])
  return () => !isFramed || performance.now() - shownAt.current >= ARM_AFTER_MS
}

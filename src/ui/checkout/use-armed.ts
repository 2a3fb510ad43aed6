import { useEffect, useRef } from 'preact/hooks'

/** A page could lure a click onto a button that appears under the pointer; so long a fresh button does nothing. */
export const ARM_AFTER_MS = 400

/** How often the browser looks whether something is drawn over this page; the least it allows. */
const COVER_LOOK_MS = 100

/**
 * Tells whether a control has been in sight long enough to be pressed on purpose. The time starts again when the page
 * becomes visible, changes its size, or is seen again after something was drawn over it.
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
    if (isFramed) {
      whenCovered(end.signal, (covered) => {
        if (covered) shownAt.current = Number.POSITIVE_INFINITY
        else if (shownAt.current === Number.POSITIVE_INFINITY) start()
      })
    }
    return () => end.abort()
  }, [isFramed])
  return () => !isFramed || performance.now() - shownAt.current >= ARM_AFTER_MS
}

/** Chromium tells (Intersection Observer v2) whether anything lies over a frame, even what lets clicks through; Firefox does not. */
function whenCovered(signal: AbortSignal, tell: (covered: boolean) => void): void {
  if (!('IntersectionObserverEntry' in window) || !('isVisible' in IntersectionObserverEntry.prototype)) return
  const options = { threshold: 1, trackVisibility: true, delay: COVER_LOOK_MS }
  const observer = new IntersectionObserver((entries) => {
    const last = entries.at(-1)
    if (last && 'isVisible' in last) tell(last.isVisible === false)
  }, options)
  const pane = paneOverAll()
  observer.observe(pane)
  signal.addEventListener('abort', () => {
    observer.disconnect()
    pane.remove()
  })
}

/**
 * A pane of nothing over what is seen of this page. The page itself will not do: once it is scrolled a part of it lies out
 * of sight, and the browser never says again that all of it is seen.
 */
function paneOverAll(): HTMLElement {
  const pane = document.createElement('div')
  pane.className = 'pane-over-all'
  document.body.append(pane)
  return pane
}

import { useEffect, useState } from 'preact/hooks'

/** Where a wide table begins to fit beside the navigation. */
const WIDE = '(min-width: 960px)'

/** Whether the window is wide enough for a table of many figures; a narrow one is given a list. */
export function useIsWide(): boolean {
  const [isWide, setWide] = useState(() => matchMedia(WIDE).matches)
  useEffect(() => {
    const query = matchMedia(WIDE)
    const follow = (): void => setWide(query.matches)
    query.addEventListener('change', follow)
    return () => query.removeEventListener('change', follow)
  }, [])
  return isWide
}

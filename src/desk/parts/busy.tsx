import { useEffect, useState } from 'preact/hooks'

/** Work that is done sooner is not told of: the page would only flicker. */
const TOLD_AFTER_MS = 300

/** Says what is under way once it takes longer than a moment, with how far it has come where that is known. */
export function Busy(props: {
  readonly text: string
  /** From 0 to 1; absent where nobody knows. */
  readonly part?: number
}) {
  const [isTold, setTold] = useState(false)
  useEffect(() => {
    const timer = setTimeout(() => setTold(true), TOLD_AFTER_MS)
    return () => clearTimeout(timer)
  }, [])
  return (
    <div class="busy" role="status">
      {isTold && (
        <>
          <span>{props.text}</span>
          {props.part === undefined ? (
            <progress aria-label={props.text} />
          ) : (
            <progress aria-label={props.text} value={props.part} max={1} />
          )}
        </>
      )}
    </div>
  )
}

import type { ComponentChildren } from 'preact'
import { useEffect, useRef, useState } from 'preact/hooks'

/**
 * A table in a box of its own that scrolls sideways when it must. Only then is the box a stop of the keyboard, named by
 * what the table is about (WCAG 2.2, 1.4.10 and 2.1.1).
 */
export function TableBox(props: {
  readonly label: string
  readonly class?: string
  readonly children: ComponentChildren
}) {
  const box = useRef<HTMLDivElement>(null)
  const [scrolls, setScrolls] = useState(false)
  useEffect(() => {
    const element = box.current
    if (!element) return
    const look = (): void => setScrolls(element.scrollWidth > element.clientWidth + 1)
    const watch = new ResizeObserver(look)
    watch.observe(element)
    if (element.firstElementChild) watch.observe(element.firstElementChild)
    look()
    return () => watch.disconnect()
  }, [])
  const region = scrolls ? ({ role: 'region', tabIndex: 0, 'aria-label': props.label } as const) : {}
  return (
    <div ref={box} class={`table-box ${scrolls ? 'scrolls' : ''} ${props.class ?? ''}`} {...region}>
      {props.children}
    </div>
  )
}

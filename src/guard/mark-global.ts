import type { FigurePlace } from '../background/protocol.ts'

declare global {
  /** Marks where a figure stands on the page; with null takes the mark away. Says whether the figure was found. */
  var tillsideMark: ((figure: FigurePlace | null) => boolean) | undefined
}

/** The paper of a sheet: what fits an envelope, and how many lines stand on its front and on its back. */
export interface Paper {
  readonly name: 'a6' | 'envelope'
  /** The front has the pot's name and what was carried in above its lines. */
  readonly front: number
  readonly back: number
}

/** A6 (105 × 148 mm) and the 3.5 × 6.5 inches of a long envelope, with lines of 6 mm and room for the head. */
export const PAPERS: readonly Paper[] = [
  { name: 'a6', front: 18, back: 19 },
  { name: 'envelope', front: 21, back: 22 },
]

/** Fewer empty lines than this are too few to go on by hand; then another sheet is added. */
const LEAST_BLANK = 8

/** One side of a sheet of paper: some of the lines, and empty ones below them. */
export interface Face<T> {
  readonly isFront: boolean
  readonly lines: readonly T[]
  readonly blank: number
}

/**
 * Puts lines on both sides of as many sheets as they need, with empty lines left to go on by hand. Faces come in pairs, so
 * that a printer that turns the paper puts every front on a front.
 */
export function paperFaces<T>(lines: readonly T[], paper: Paper): Face<T>[] {
  const faces: Face<T>[] = []
  let rest = lines
  for (;;) {
    const isFront = faces.length % 2 === 0
    const room = isFront ? paper.front : paper.back
    const here = rest.slice(0, room)
    faces.push({ isFront, lines: here, blank: room - here.length })
    rest = rest.slice(room)
    const blank = faces.reduce((sum, face) => sum + face.blank, 0)
    if (rest.length === 0 && blank >= LEAST_BLANK && faces.length % 2 === 0) return faces
  }
}

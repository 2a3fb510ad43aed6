/** Chance with a seed: the same seed makes the same page, on every machine. */
export interface Chance {
  /** A whole number from `from` to `to`, both included. */
  int(from: number, to: number): number
  /** True this often: 0.25 is one in four. */
  often(share: number): boolean
  pick<T>(list: readonly T[]): T
  shuffled<T>(list: readonly T[]): T[]
}

/** FNV-1a, 32 bits, with a last stir so that near seeds lie far apart. */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d)
  return (hash ^ (hash >>> 12)) >>> 0
}

/** The mulberry32 generator, common knowledge and in the public domain, started by the hash of the seed. */
export function chanceOf(seed: string): Chance {
  let state = hashOf(seed)
  function next(): number {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 0x1_0000_0000
  }
  const int = (from: number, to: number): number => from + Math.floor(next() * (to - from + 1))
  function pick<T>(list: readonly T[]): T {
    const picked = list[int(0, list.length - 1)]
    if (picked === undefined) throw new RangeError('Nothing to pick from: the list is empty.')
    return picked
  }
  function shuffled<T>(list: readonly T[]): T[] {
    const keyed = list.map((each) => ({ each, key: next() }))
    return keyed.sort((a, b) => a.key - b.key).map(({ each }) => each)
  }
  return { int, often: (share) => next() < share, pick, shuffled }
}

/** The half that the reader is tuned on, and the half kept apart. */
export type Half = 'seen' | 'unseen'

/**
 * The half of a page, by its seed alone; fixed on 25 November 2026, before anything was tuned to these pages. The unseen half also
 * has words, manners and distractions that no page of the seen half has (see `keptFor`).
 */
export function halfOf(seed: string): Half {
  return hashOf(`half ${seed}`) % 2 === 0 ? 'seen' : 'unseen'
}

/** What a half may use of a list: the last of three or more is kept for the unseen half. */
export function keptFor<T>(half: Half, list: readonly T[]): readonly T[] {
  return half === 'unseen' || list.length < 3 ? list : list.slice(0, -1)
}

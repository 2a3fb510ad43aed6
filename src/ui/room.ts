/** What the browser tells of its storage, in bytes; a part it does not tell is null. */
export interface StorageTold {
  /** What this extension may use in all. With `unlimitedStorage` that is what the disk has free and what is used already. */
  readonly quota: number | null
  readonly used: number | null
  /** What the book takes of it. */
  readonly book: number | null
}

/** Below this the browser itself begins to refuse. */
const LEAST = 100_000_000
/** A restore, and an upgrade, lie beside the book until they have taken its place. */
const COPIES = 2

/**
 * The room that is left for the book, where it is so little that entries may soon be refused; null where there is enough
 * or the browser does not tell.
 *
 * @returns bytes
 * @example lowRoom({quota: 60_000_000, used: 20_000_000, book: 1_000_000}) // 40_000_000
 */
export function lowRoom({ quota, used, book }: StorageTold): number | null {
  if (quota === null || used === null) return null
  const left = Math.max(0, quota - used)
  return left < Math.max(LEAST, COPIES * (book ?? 0)) ? left : null
}

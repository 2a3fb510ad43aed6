import type * as z from 'zod/mini'
import type { Entry } from '../index.ts'
import { canonical } from './canonical.ts'
import { sha256 } from './digest.ts'
import type { storedHead } from './stored-schemas.ts'

/*
 * How the book lies in storage.local:
 *
 * - `tillside:head`: settings and workflow, the balances after the last entry, and digests of all else.
 * - `tillside:1:000001` and on: segments of at most 128 entries in the order they were taken in. Each holds the digest
 *   before it and its own, which chains the two, so that a damaged one is found by itself. The number in the middle is
 *   the series: a book that is written anew as a whole (a restore, a new format) goes beside the old one under the next
 *   number, and only the head that names it makes it the book.
 * - `tillside:1:carried`: entries from before the window that later ones may still name (orders not seen through, closed
 *   months), so that only the window has to be read to go on.
 *
 * A change is one `set()` of the head and the segments it touches, which the browser writes as one batch: after a crash
 * it is there whole or not at all. What is written does not grow with the book.
 */

/** The part of `storage.local` the store needs. */
export interface StorageArea {
  get(keys: string[] | null): Promise<Record<string, unknown>>
  set(items: Record<string, unknown>): Promise<void>
  remove(keys: string[]): Promise<void>
}

export type Head = z.infer<typeof storedHead>
export type Settings = Head['settings']
/** A stretch of the book, with the digest before it and its own. */
export interface Segment {
  readonly before: string
  readonly entries: readonly Entry[]
  readonly digest: string
}
/** The head's part that commands change. */
export type Ledger = Pick<Head, 'settings' | 'watched' | 'tags' | 'ahead' | 'held'>

/** What is at hand of the store: the head, and the entries of the window and those carried along. */
export interface Kept {
  readonly head: Head
  /** From before the window, oldest first. */
  readonly carried: readonly Entry[]
  /** The window's segments, oldest first; null for one that cannot be read. */
  readonly window: readonly (Segment | null)[]
}

/** What is wrong with the store, as the code of a `damage_*` message. */
export type Damage = 'missing' | 'head' | 'newer' | 'book'

/** The store will not or cannot take a change. Nothing was written. */
export class StoreError extends Error {
  override readonly name = 'StoreError'
  constructor(
    readonly code: 'store-damaged' | 'store-full' | 'store-failed' | 'no-household' | 'household-exists',
    message: string,
  ) {
    super(message)
  }
}

/** The version of what is stored. A store of a higher one is never written. */
export const FORMAT = 2

export const PREFIX = 'tillside:'
export const HEAD = `${PREFIX}head`
export const carriedKey = (series: number): string => `${PREFIX}${series}:carried`
export const segmentKey = (series: number, n: number): string => `${PREFIX}${series}:${String(n).padStart(6, '0')}`

/** Where a part of a book lies that is to be restored. */
export const stagedKey = (part: number): string => `${PREFIX}staged:${part}`

/** The keys of segments from one number to another, both included. */
export function segmentKeys(series: number, from: number, to: number): string[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => segmentKey(series, from + i))
}

/** Entries of a segment. An entry's place in the book is (segment - 1) * SEGMENT_SIZE + its index there. */
export const SEGMENT_SIZE = 128

/** The segment that holds the entry at a place, counted from zero. */
export function segmentOf(place: number): number {
  return Math.floor(place / SEGMENT_SIZE) + 1
}

/** A segment with its digest. @param before the digest of the segment before it, empty for the first */
export async function sealSegment(before: string, entries: readonly Entry[]): Promise<Segment> {
  return { before, entries, digest: await sha256(`${before}\n${canonical(entries)}`) }
}

/** Whether a segment holds what its digest says. */
export async function isWhole(segment: Segment): Promise<boolean> {
  return (await sealSegment(segment.before, segment.entries)).digest === segment.digest
}

/** The digest of a list of carried entries. */
export function carriedDigest(entries: readonly Entry[]): Promise<string> {
  return sha256(canonical(entries))
}

/** A head with its own digest, which covers every other member. */
export async function signHead(head: Omit<Head, 'sum'>): Promise<Head> {
  return { ...head, sum: await sha256(canonical(head)) }
}

export async function isSigned(head: Head): Promise<boolean> {
  const { sum, ...rest } = head
  return (await signHead(rest)).sum === sum
}

/** The entries of what is at hand, in the order the book took them in. */
export function entriesAtHand(kept: Kept): Entry[] {
  return [...kept.carried, ...kept.window.flatMap((segment) => segment?.entries ?? [])]
}

import * as z from 'zod/mini'
import type { Entry } from '../index.ts'
import { sha256 } from './digest.ts'
import type { Marker } from './marker.ts'
import type { OpenTag } from './protocol.ts'
import { storedEntry, storedHead } from './schemas.ts'

/*
 * How the book lies in storage.local: one head and numbered segments of entries. A change is one `set()` of the head and
 * the segments it touches, which the browser writes as one batch: after a crash it is there whole or not at all. The
 * head chains the digests of all segments, so a missing, cut or altered segment is noticed before anything is written.
 */

/** The part of `storage.local` the store needs. */
export interface StorageArea {
  get(keys: null): Promise<Record<string, unknown>>
  set(items: Record<string, unknown>): Promise<void>
  remove(keys: string[]): Promise<void>
}

type StoredHead = z.infer<typeof storedHead>
export type Head = Omit<StoredHead, 'tags'> & { tags: Record<string, OpenTag> }
export type Settings = Head['settings']
/** The head's part that commands change. */
export type Ledger = Pick<Head, 'settings' | 'watched' | 'tags'>

/** What is kept, as read or last written. */
export interface Kept {
  readonly head: Head
  readonly entries: readonly Entry[]
}

export type Loaded =
  | { readonly status: 'new' }
  | { readonly status: 'ready'; readonly kept: Kept }
  | { readonly status: 'damaged'; readonly what: Damage }

/** What is wrong with the store, as the code of a `damage_*` message. */
export type Damage = 'missing' | 'head' | 'newer' | 'segment' | 'entry' | 'book'

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

export const HEAD = 'tillside:head'
export const segmentKey = (n: number): string => `tillside:entries:${String(n).padStart(6, '0')}`
const SEGMENT_SIZE = 128
const entryList = z.array(storedEntry)

/** Reads and proves everything stored. Writes nothing. */
export async function loadStore(area: StorageArea, marker: Marker): Promise<Loaded> {
  const raw = await area.get(null)
  if (!Object.keys(raw).some((key) => key.startsWith('tillside:'))) {
    return (await marker.read()) ? damaged('missing') : { status: 'new' }
  }
  const found = raw[HEAD]
  if (isNewer(found)) return damaged('newer')
  const parsed = storedHead.safeParse(found)
  if (!parsed.success || parsed.data.sum !== (await headSum(parsed.data))) return damaged('head')
  const head = parsed.data
  const entries: Entry[] = []
  let chain = ''
  for (let n = 1; n <= head.segments; n++) {
    if (n === head.segments && chain !== head.sealed) return damaged('segment')
    const segment = raw[segmentKey(n)]
    if (!Array.isArray(segment)) return damaged('segment')
    chain = await link(chain, segment)
    const list = entryList.safeParse(segment)
    if (!list.success) return damaged('entry')
    entries.push(...list.data)
  }
  if (chain !== head.chain || entries.length !== head.entries) return damaged('segment')
  return { status: 'ready', kept: { head: { ...head, tags: tagsOfToday(head.tags) }, entries } }
}

/** Tags written before an order could be put on several pots had one pot. */
function tagsOfToday(tags: StoredHead['tags']): Record<string, OpenTag> {
  return Object.fromEntries(
    Object.entries(tags).map(([shop, tag]) => {
      if ('lines' in tag) return [shop, tag]
      const { pot, ...rest } = tag
      return [shop, { ...rest, lines: [{ pot, amount: tag.amount }] }]
    }),
  )
}

/** A head for a household that has no entries yet. Nothing is written by this. */
export function newKept(device: Head['device'], settings: Settings): Kept {
  const head: Head = {
    format: 1,
    generation: 0,
    device,
    settings,
    watched: [],
    tags: {},
    entries: 0,
    segments: 0,
    sealed: '',
    chain: '',
    sum: '',
  }
  return { head, entries: [] }
}

/**
 * Writes new entries and changes of the head in one `set()`, and returns what is kept then.
 *
 * @throws StoreError `store-full`, `store-failed`: nothing was written and `kept` still holds
 */
export async function commit(
  area: StorageArea,
  kept: Kept,
  added: readonly Entry[],
  change: Partial<Ledger> = {},
): Promise<Kept> {
  const entries = added.length > 0 ? [...kept.entries, ...added] : kept.entries
  const items: Record<string, unknown> = {}
  let { sealed, chain, segments } = kept.head
  if (added.length > 0) {
    const first = Math.max(1, kept.head.entries % SEGMENT_SIZE === 0 ? segments + 1 : segments)
    if (first > segments) sealed = chain
    segments = Math.ceil(entries.length / SEGMENT_SIZE)
    for (let n = first; n <= segments; n++) {
      const segment = entries.slice((n - 1) * SEGMENT_SIZE, n * SEGMENT_SIZE)
      if (n > first) sealed = chain
      chain = await link(sealed, segment)
      items[segmentKey(n)] = segment
    }
  }
  const { sum: _, ...before } = kept.head
  const unsigned = {
    ...before,
    ...change,
    generation: before.generation + 1,
    entries: entries.length,
    segments,
    sealed,
    chain,
  }
  const head: Head = { ...unsigned, sum: await headSum(unsigned) }
  items[HEAD] = head
  try {
    await area.set(items)
  } catch (cause) {
    throw refusal(cause)
  }
  return { head, entries }
}

function refusal(cause: unknown): StoreError {
  const text = String(cause)
  return /quota/i.test(text)
    ? new StoreError(
        'store-full',
        'The browser has no room left for the book. Nothing was written; save the data to a file.',
      )
    : new StoreError('store-failed', `The browser could not write the book (${text}). Nothing was written; try again.`)
}

function damaged(what: Damage): Loaded {
  return { status: 'damaged', what }
}

function isNewer(head: unknown): boolean {
  return typeof head === 'object' && head !== null && 'format' in head && Number(head.format) > 1
}

function link(chain: string, segment: readonly unknown[]): Promise<string> {
  return sha256(`${chain}\n${canonical(segment)}`)
}

function headSum(head: Omit<Head, 'sum'> | StoredHead): Promise<string> {
  const { sum: _, ...rest } = { sum: '', ...head }
  return sha256(canonical(rest))
}

/** JSON with keys in order: the browser does not promise to give keys back in the order they were stored. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null'
  const pairs = Object.entries(value)
    .filter(([, v]) => v !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${pairs.map(([k, v]) => `${JSON.stringify(k)}:${canonical(v)}`).join(',')}}`
}

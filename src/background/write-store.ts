import { type Book, type Entry, entriesOf, sumsOf, toCarry } from '../index.ts'
import {
  carriedDigest,
  carriedKey,
  entriesAtHand,
  FORMAT,
  HEAD,
  type Head,
  type Kept,
  type Ledger,
  PREFIX,
  SEGMENT_SIZE,
  type Segment,
  type Settings,
  type StorageArea,
  StoreError,
  sealSegment,
  segmentKey,
  signHead,
} from './store.ts'

/** The window is cut back to the first of these when it has grown to the second, so that most writes leave it alone. */
const WINDOW_SEGMENTS = 16
const WINDOW_MOST = 24

/** Segments written in one go where a whole book is written: some megabytes. */
const SEGMENTS_A_WRITE = 64

/** A head for a household that has no entries yet. Nothing is written by this. */
export async function newKept(device: Head['device'], settings: Settings): Promise<Kept> {
  const head = await signHead({
    format: FORMAT,
    generation: 0,
    device,
    settings,
    watched: [],
    tags: {},
    series: 1,
    entries: 0,
    segments: 0,
    last: '',
    first: 1,
    firstBefore: '',
    carried: await carriedDigest([]),
    sums: {},
    gaps: [],
    mended: [],
  })
  return { head, carried: [], window: [] }
}

/**
 * Writes new entries and changes of the head in one `set()`, and returns what is at hand then.
 *
 * @param book the book with the new entries
 * @throws StoreError `store-full`, `store-failed`: nothing was written and `kept` still holds
 */
export async function commit(
  area: StorageArea,
  kept: Kept,
  book: Book,
  added: readonly Entry[],
  change: Partial<Ledger & Pick<Head, 'gaps' | 'mended' | 'sums'>> = {},
): Promise<Kept> {
  const grown = await grow(kept, added)
  const slid = await slide(grown, book)
  const { sum: _, ...before } = slid.head
  const head = await signHead({ ...before, sums: sumsOf(book), ...change, generation: before.generation + 1 })
  const items: Record<string, unknown> = { [HEAD]: head }
  for (const [n, segment] of grown.touched) items[segmentKey(head.series, n)] = segment
  if (slid.carried !== kept.carried) items[carriedKey(head.series)] = slid.carried
  await writeItems(area, items)
  return { head, carried: slid.carried, window: slid.window }
}

/**
 * Writes a whole book beside what is stored and then makes it the book: the head that names it is written last, so that a
 * crash before leaves the old one. What lay there before stays until `clearOld`.
 *
 * @param onProgress told how many entries are written
 */
export async function writeWhole(
  area: StorageArea,
  kept: Kept,
  book: Book,
  ledger: Partial<Ledger & Pick<Head, 'device'>> = {},
  onProgress?: (entries: number) => void,
): Promise<Kept> {
  const entries = [...entriesOf(book)]
  const { sum: _, ...before } = kept.head
  const series = before.series + 1
  let head: Head = await signHead({ ...before, ...ledger, series, entries: 0, segments: 0, last: '', gaps: [] })
  let next: Kept = { head: { ...head, first: 1, firstBefore: '' }, carried: [], window: [] }
  for (let from = 0; from < entries.length; from += SEGMENTS_A_WRITE * SEGMENT_SIZE) {
    const grown = await grow(next, entries.slice(from, from + SEGMENTS_A_WRITE * SEGMENT_SIZE))
    await writeItems(area, Object.fromEntries([...grown.touched].map(([n, s]) => [segmentKey(series, n), s])))
    onProgress?.(grown.head.entries)
    next = grown
  }
  const slid = await slide(next, book)
  const { sum: __, ...unsigned } = slid.head
  head = await signHead({ ...unsigned, sums: sumsOf(book), generation: before.generation + 1 })
  await writeItems(area, { [carriedKey(series)]: slid.carried, [HEAD]: head })
  return { head, carried: slid.carried, window: slid.window }
}

/** Removes what earlier series and formats left behind. */
export async function clearOld(area: StorageArea, head: Head): Promise<void> {
  const mine = `${PREFIX}${head.series}:`
  const keys = Object.keys(await area.get(null)).filter(
    (key) => key.startsWith(PREFIX) && key !== HEAD && !key.startsWith(mine),
  )
  if (keys.length > 0) await area.remove(keys)
}

/** The last segment filled up and new ones begun. A last segment that cannot be read stays as it lies. */
async function grow(kept: Kept, added: readonly Entry[]): Promise<Kept & { touched: Map<number, Segment> }> {
  const touched = new Map<number, Segment>()
  const window = [...kept.window]
  let { entries, segments, last } = kept.head
  const tail = window.at(-1)
  if (tail === null && added.length > 0) entries = segments * SEGMENT_SIZE
  let rest = added
  if (tail && rest.length > 0 && entries % SEGMENT_SIZE !== 0) {
    const fits = SEGMENT_SIZE - (entries % SEGMENT_SIZE)
    const segment = await sealSegment(tail.before, [...tail.entries, ...rest.slice(0, fits)])
    window[window.length - 1] = segment
    touched.set(segments, segment)
    last = segment.digest
    entries += Math.min(fits, rest.length)
    rest = rest.slice(fits)
  }
  while (rest.length > 0) {
    const segment = await sealSegment(last, rest.slice(0, SEGMENT_SIZE))
    segments += 1
    window.push(segment)
    touched.set(segments, segment)
    last = segment.digest
    entries += segment.entries.length
    rest = rest.slice(SEGMENT_SIZE)
  }
  return { head: { ...kept.head, entries, segments, last }, carried: kept.carried, window, touched }
}

/** Cuts the window back when it has grown long, and carries along what later entries may still name. */
async function slide(kept: Kept, book: Book): Promise<Kept> {
  const { head, window } = kept
  if (window.length <= WINDOW_MOST) return kept
  // A window begins with a segment that can be read, for the digest before it.
  const start = window.findIndex((segment, i) => segment !== null && i >= window.length - WINDOW_SEGMENTS)
  const opening = window[start]
  if (!opening) return kept
  const leaving = { ...kept, window: window.slice(0, start) }
  const carried = toCarry(book, entriesAtHand(leaving))
  const next = {
    ...head,
    first: head.first + start,
    firstBefore: opening.before,
    carried: await carriedDigest(carried),
  }
  return { head: next, carried, window: window.slice(start) }
}

/** One `set()`. @throws StoreError `store-full`, `store-failed`: nothing was written */
export async function writeItems(area: StorageArea, items: Record<string, unknown>): Promise<void> {
  try {
    await area.set(items)
  } catch (cause) {
    const text = String(cause)
    throw /quota|no space|disk.*full/i.test(text)
      ? new StoreError(
          'store-full',
          'The browser has no room left for the book. Nothing was written; free some space on the disk, then try again.',
        )
      : new StoreError(
          'store-failed',
          `The browser could not write the book (${text}). Nothing was written; try again.`,
        )
  }
}

import * as z from 'zod/mini'
import type { Entry } from '../index.ts'
import type { Marker } from './marker.ts'
import {
  carriedDigest,
  carriedKey,
  type Damage,
  FORMAT,
  HEAD,
  type Head,
  isSigned,
  isWhole,
  type Kept,
  PREFIX,
  type Segment,
  type StorageArea,
  segmentKey,
  segmentKeys,
} from './store.ts'
import { storedEntry, storedHead, storedSegment } from './stored-schemas.ts'
import { upgrade } from './upgrade-store.ts'

export type Loaded =
  | { readonly status: 'new' }
  | { readonly status: 'ready'; readonly kept: Kept }
  | { readonly status: 'damaged'; readonly what: Damage }

const entryList = z.array(storedEntry)

/**
 * Reads the head, what is carried along and the window, and proves them. A store of an earlier format is brought to this
 * one first; nothing else is written. A segment that cannot be read is left out and stays as it lies.
 */
export async function loadStore(area: StorageArea, marker: Marker): Promise<Loaded> {
  let found = (await area.get([HEAD]))[HEAD]
  if (found === undefined) return (await isUntouched(area, marker)) ? { status: 'new' } : damaged('missing')
  if (formatOf(found) > FORMAT) return damaged('newer')
  if (formatOf(found) < FORMAT) {
    if (!(await upgrade(area))) return damaged('head')
    found = (await area.get([HEAD]))[HEAD]
  }
  const parsed = storedHead.safeParse(found)
  if (!parsed.success || !(await isSigned(parsed.data))) return damaged('head')
  const head = parsed.data
  const raw = await area.get([carriedKey(head.series), ...segmentKeys(head.series, head.first, head.segments)])
  const window = await readSegments(raw, head.series, head.first, head.segments, head.firstBefore, head.last)
  return { status: 'ready', kept: { head, carried: await readCarried(raw[carriedKey(head.series)], head), window } }
}

/**
 * Reads segments that follow one another and proves each by itself and by its neighbours.
 *
 * @param before the digest before the first one, if it is known
 * @param last the digest of the last one, if it is known
 * @returns null for a segment that is missing, unreadable or altered
 */
export async function readSegments(
  raw: Record<string, unknown>,
  series: number,
  from: number,
  to: number,
  before: string | null,
  last: string | null,
): Promise<(Segment | null)[]> {
  const found: (Segment | null)[] = []
  for (let n = from; n <= to; n++) {
    const parsed = storedSegment.safeParse(raw[segmentKey(series, n)])
    found.push(parsed.success && (await isWhole(parsed.data)) ? parsed.data : null)
  }
  // A whole segment in the wrong place shows at its neighbours: forwards from what came before, backwards from the last.
  const follows = linked(
    found,
    before,
    (s) => s.before,
    (s) => s.digest,
  )
  const leads = linked(
    [...found].reverse(),
    last,
    (s) => s.digest,
    (s) => s.before,
  ).reverse()
  return found.map((segment, i) => {
    // At an end whose digest is known nothing else will do: a whole segment may be one from before the last write.
    const isAstray =
      (i === 0 && before !== null && !follows[i]) || (i === found.length - 1 && last !== null && !leads[i])
    return (follows[i] || leads[i]) && !isAstray ? segment : null
  })
}

/** Which segments fit the one before them (in the given direction); one beside a gap fits if it is whole. */
function linked(
  segments: readonly (Segment | null)[],
  start: string | null,
  near: (segment: Segment) => string,
  far: (segment: Segment) => string,
): boolean[] {
  let expected = start
  return segments.map((segment) => {
    const fits = segment !== null && (expected === null ? false : near(segment) === expected)
    expected = segment !== null && (fits || expected === null) ? far(segment) : null
    return fits
  })
}

/** Entries carried along are a copy: when they cannot be read, nothing is lost but the quick way to an old order. */
async function readCarried(raw: unknown, head: Head): Promise<Entry[]> {
  const list = entryList.safeParse(raw ?? [])
  return list.success && (await carriedDigest(list.data)) === head.carried ? list.data : []
}

async function isUntouched(area: StorageArea, marker: Marker): Promise<boolean> {
  if (await marker.read()) return false
  return !Object.keys(await area.get(null)).some((key) => key.startsWith(PREFIX))
}

function formatOf(head: unknown): number {
  return typeof head === 'object' && head !== null && 'format' in head ? Number(head.format) : Number.NaN
}

function damaged(what: Damage): Loaded {
  return { status: 'damaged', what }
}

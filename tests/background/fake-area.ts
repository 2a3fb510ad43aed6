import type { Marker } from '../../src/background/marker.ts'
import type { StorageArea } from '../../src/background/store.ts'

/** storage.local in memory: clones values as JSON does, gives keys back in another order, and can be made to fail. */
export class FakeArea implements StorageArea {
  data: Record<string, unknown> = {}
  sets = 0
  failWith: Error | null = null

  /** How many values were read. */
  reads = 0

  async get(keys: string[] | null): Promise<Record<string, unknown>> {
    const names = (keys ?? Object.keys(this.data)).filter((key) => key in this.data)
    this.reads += names.length
    return reorder(JSON.parse(JSON.stringify(Object.fromEntries(names.map((key) => [key, this.data[key]])))))
  }

  async set(items: Record<string, unknown>): Promise<void> {
    if (this.failWith) throw this.failWith
    this.sets++
    Object.assign(this.data, JSON.parse(JSON.stringify(items)))
  }

  async remove(keys: string[]): Promise<void> {
    for (const key of keys) delete this.data[key]
  }
}

export function fakeMarker(): Marker & { kept: boolean } {
  const marker = {
    kept: false,
    read: async () => marker.kept,
    write: async (kept: boolean) => {
      marker.kept = kept
    },
  }
  return marker
}

/** A lock that runs one piece of work after another, as navigator.locks does. */
export function fakeLock(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve()
  return (work) => {
    const next = last.then(work, work)
    last = next.catch(() => undefined)
    return next
  }
}

function reorder<T>(value: T): T {
  if (Array.isArray(value)) return value.map(reorder) as T
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([k, v]) => [k, reorder(v)]),
  ) as T
}

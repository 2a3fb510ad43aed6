import { openBook } from '../index.ts'
import type { StorageArea } from './store.ts'
import { readFormat1 } from './upgrades/from-1.ts'
import { newKept, writeWhole } from './write-store.ts'

/**
 * Brings a store of an earlier format to this one. The new one is written beside the old, whose entries stay until the
 * new one has been read back (`clearOld`).
 *
 * @returns false when the old one is damaged; then nothing was written
 */
export async function upgrade(area: StorageArea): Promise<boolean> {
  const old = await readFormat1(await area.get(null))
  if (!old) return false
  const { settings, watched, tags, device, generation } = old
  const { schedule: _, isDemo: __, ...household } = settings
  const book = openBook({ ...household, payDates: [] }, old.entries)
  const kept = await newKept(device, settings)
  await writeWhole(area, { ...kept, head: { ...kept.head, generation, series: 0 } }, book, { watched, tags })
  return true
}

import * as z from 'zod/mini'
import type { Entry } from '../../index.ts'
import { canonical } from '../canonical.ts'
import { sha256 } from '../digest.ts'
import type { Head, Ledger } from '../store.ts'
import { storedEntry, storedHead1 } from '../stored-schemas.ts'

/** What a store of format 1 held. */
export interface Book1 extends Ledger {
  readonly device: Head['device']
  readonly generation: number
  readonly entries: readonly Entry[]
}

const entryList = z.array(storedEntry)

/**
 * Reads a store of format 1: `tillside:head`, and `tillside:entries:000001` and on as plain lists of 128 entries, whose
 * digests the head chained. Null when any of it is damaged: a damaged store is not upgraded.
 *
 * @param raw all of storage.local
 */
export async function readFormat1(raw: Record<string, unknown>): Promise<Book1 | null> {
  const parsed = storedHead1.safeParse(raw['tillside:head'])
  if (!parsed.success) return null
  const { sum, ...rest } = parsed.data
  if (sum !== (await sha256(canonical(rest)))) return null
  const entries: Entry[] = []
  let chain = ''
  for (let n = 1; n <= rest.segments; n++) {
    const segment = raw[`tillside:entries:${String(n).padStart(6, '0')}`]
    if (!Array.isArray(segment)) return null
    chain = await sha256(`${chain}\n${canonical(segment)}`)
    const list = entryList.safeParse(segment)
    if (!list.success) return null
    entries.push(...list.data)
  }
  if (chain !== rest.chain || entries.length !== rest.entries) return null
  const { settings, watched, device, generation } = rest
  const tags = Object.fromEntries(
    Object.entries(rest.tags).map(([shop, { pot, ...tag }]) => [
      shop,
      { ...tag, lines: [{ pot, amount: tag.amount }] },
    ]),
  )
  return { settings, watched, tags, device, generation, entries }
}

import { describe, expect, it } from 'vitest'
import { newEntryId, newOrderId } from '../../src/ui/new-id.ts'

describe('ids made by a page', () => {
  // Source: RFC 9562, section 5.7: 48 bits of Unix milliseconds, version 7, variant 10.
  it('are UUIDs of version 7 that carry the time they were made', () => {
    const before = Date.now()
    const id = newEntryId()
    const after = Date.now()
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
    const made = Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16)
    expect(made).toBeGreaterThanOrEqual(before)
    expect(made).toBeLessThanOrEqual(after)
  })

  it('rise within a page, also within one millisecond, and are never the same', () => {
    const ids: string[] = Array.from({ length: 5000 }, (_, i) => (i % 2 === 0 ? newEntryId() : newOrderId()))
    expect([...ids].sort()).toEqual(ids)
    expect(new Set(ids).size).toBe(ids.length)
  })
})

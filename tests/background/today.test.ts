import { describe, expect, it } from 'vitest'
import { addDaysTo, dateIn } from '../../src/background/today.ts'
import { calendarDate } from '../../src/index.ts'

describe('today', () => {
  it('is the household calendar date, not that of Greenwich', () => {
    const instant = Date.parse('2026-11-26T03:30:00Z')
    expect(dateIn('America/Toronto', instant)).toBe('2026-11-25')
    expect(dateIn('Asia/Tokyo', instant)).toBe('2026-11-26')
    expect(dateIn('Europe/Nowhere', instant)).toBe('2026-11-26')
  })

  it('counts days over a change of the clock', () => {
    expect(addDaysTo(calendarDate('2026-10-31'), 2)).toBe('2026-11-02')
    expect(addDaysTo(calendarDate('2026-12-31'), 1)).toBe('2027-01-01')
  })
})

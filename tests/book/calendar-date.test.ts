import { describe, expect, it } from 'vitest'
import { calendarDate, isCalendarDate, sayDate } from '../../src/index.ts'

// JSON Schema Test Suite, draft2020-12/optional/format/date.json (MIT): strings that are not RFC 3339 full-dates.
const invalid = [
  '2021-02-29',
  '20230328',
  '2023-W01',
  '1998-1-20',
  '2100-02-29',
  '1963-06-1৪',
  '+2020-01-01',
  '2020-01-01 ',
]
// Rows of the same file that are.
const valid = ['1963-06-19', '2020-01-31', '2021-02-28', '2020-02-29', '2020-12-31']

describe('a calendar date', () => {
  it.each(invalid)('is not %j', (text) => {
    expect(isCalendarDate(text)).toBe(false)
    expect(() => calendarDate(text)).toThrow(expect.objectContaining({ code: 'bad-date' }))
  })
  it.each(valid)('is %s', (text) => expect(calendarDate(text)).toBe(text))

  it('is said with its weekday, whatever the zone of the machine', () => {
    expect(sayDate(calendarDate('2026-12-04'), 'en-GB')).toBe('Friday 4 December')
    expect(sayDate(calendarDate('2026-12-04'), 'fr-CA')).toMatch(/vendredi 4 décembre/)
  })
})

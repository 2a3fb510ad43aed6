import { describe, expect, it } from 'vitest'
import { demoHousehold } from '../../demo-data/household.ts'
import { demoMonth, statementFiles } from '../../demo-data/statements/demo-month.ts'
import { closingOf } from '../../demo-data/statements/model.ts'
import {
  balanceOf,
  calendarDate,
  deviceId,
  entryId,
  type OpenedStatement,
  openBook,
  openStatement,
  toDecimal,
} from '../../src/index.ts'

const [from, to] = [calendarDate('2026-10-01'), calendarDate('2026-10-31')]
let made = 0
const { settings, entries } = demoHousehold({
  now: Date.UTC(2026, 10, 1, 12),
  today: () => to,
  newId: (msecs) => {
    made += 1
    const [time, count] = [msecs.toString(16).padStart(12, '0'), made.toString(16).padStart(12, '0')]
    return entryId(`${time.slice(0, 8)}-${time.slice(8)}-7000-8000-${count}`)
  },
  device: deviceId('demo'),
})
const household = { ...settings, payDates: [] }
const month = demoMonth(household, entries, from, to)
const files = statementFiles(month)
const opened = files.map((file) => openStatement(file.bytes, { currency: 'CAD' }))

describe("a month of the demo household's account in three formats", () => {
  it('is OFX, camt.053 and CSV in windows-1252, each sound and without a doubt', () => {
    expect(opened.map((one) => one.version)).toEqual(['OFX 1.6 (SGML)', 'camt.053.001.08', 'CSV'])
    expect(opened[2]?.encoding?.name).toBe('windows-1252')
    expect(opened.flatMap((one) => [...one.problems, ...(one.csv?.unsure ?? [])])).toEqual([])
  })

  it('says the same in all three', () => {
    const told = (one: OpenedStatement | undefined): string[] =>
      (one?.lines ?? []).map((line) => `${line.date} ${toDecimal(line.amount)} ${line.name} ${line.text}`).sort()
    expect(month.lines.length).toBeGreaterThan(12)
    expect(told(opened[0])).toHaveLength(month.lines.length)
    expect(told(opened[1])).toEqual(told(opened[0]))
    expect(told(opened[2])).toEqual(told(opened[0]))
    expect(told(opened[0]).join(' ')).toContain('MONTRÉAL')
  })

  it("its closing balance is the book's bank balance", () => {
    const book = openBook(
      household,
      entries.filter((entry) => entry.date <= to),
    )
    const account = household.accounts[0]
    if (!account) throw new Error('the demo household has an account')
    expect(closingOf(month)).toBe(balanceOf(book, `bank:${account.id}`))
    for (const one of opened) {
      expect(one.accounts[0]?.closing?.amount.minor).toBe(closingOf(month))
      expect(one.accounts[0]?.opening?.amount.minor).toBe(month.opening)
    }
  })
})

import Ajv2020 from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { demoHousehold } from '../../demo-data/household.ts'
import { writeBookFile } from '../../src/desk/safe/book-file.ts'
import { bookFileSchema } from '../../src/desk/safe/book-file-schema.ts'
import { calendarDate, deviceId, entryId } from '../../src/index.ts'
import { uuid } from '../book/sample.ts'

// ajv is an independent validator of JSON Schema 2020-12.
const validate = new Ajv2020({ strict: false, validateFormats: false }).compile(bookFileSchema())

async function demoFile(): Promise<Record<string, unknown>> {
  let n = 0
  const demo = demoHousehold({
    now: Date.parse('2026-11-25'),
    today: () => calendarDate('2026-11-25'),
    newId: () => entryId(uuid(++n)),
    device: deviceId('laptop'),
  })
  const { settings, entries } = demo
  return JSON.parse(await writeBookFile({ device: deviceId('laptop'), settings, watched: [], entries }))
}

describe('the JSON Schema of book files', () => {
  it('holds for the whole demo household, and is itself a valid schema', async () => {
    expect(validate(await demoFile()), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true)
  })

  it('leaves one part open: how the files of a bank are laid out', () => {
    const open = JSON.stringify(bookFileSchema()).match(/"\w+":\{[^{}]*"items":\{\}/g)
    expect(open).toEqual([expect.stringContaining('"mappings"')])
    expect(JSON.stringify(bookFileSchema()).match(/:\{\}/g)?.length).toBe(1)
  })

  it.each([
    ['an amount with half a cent', (text: string) => text.replace(/"amount":-?\d+/, '"amount":0.5')],
    ['a day that is none', (text: string) => text.replace(/"date":"[^"]*"/, '"date":"yesterday"')],
    ['an id of another version', (text: string) => text.replace(/-7000-8000-/, '-4000-8000-')],
    ['an unknown kind', (text: string) => text.replace('"kind":"spend"', '"kind":"borrow"')],
    ['a digest too short', (text: string) => text.replace(/"sha256":"../, '"sha256":"')],
  ])('refuses %s', async (_, change) => {
    const before = JSON.stringify(await demoFile())
    const after = change(before)
    expect(after).not.toBe(before)
    expect(validate(JSON.parse(after))).toBe(false)
  })
})

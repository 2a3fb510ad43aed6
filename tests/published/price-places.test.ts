import { codes, data } from 'currency-codes'
import { describe, expect, it } from 'vitest'
import { placeCurrencies } from '../../src/money/currency-places.ts'

// Source: ISO 4217:2015 list one as npm currency-codes 2.2.0 carries it (entity names); region names by CLDR through Intl.
const regionNames = new Intl.DisplayNames('en', { type: 'region', fallback: 'none' })
const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ']
const regions = letters
  .flatMap((a) => letters.map((b) => a + b))
  .filter((region) => regionNames.of(region) !== undefined)
const ours = regions.flatMap((region) => placeCurrencies(region, null).map((currency) => ({ region, currency })))

// Written differently in the two lists (Caribbean Netherlands, US Outlying Islands, Cape Verde), no entity of its own in ISO
// 4217 (South Georgia, which pays in pounds: memory), or newer than this issue of the list (XCG, 2025: memory).
const NOT_COMPARED = ['BQ', 'UM', 'CV', 'GS', 'CW', 'SX']

const plain = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/\p{M}|\(.*?\)/gu, '')
    .toLowerCase()
    .replace(/\bst\b/g, 'saint')
    .replace(/[^a-z]+/g, ' ')
    .replace(/\b(the|islands?|of|republic|and|d)\b/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()

function paysIn(currency: string, region: string): boolean {
  const name = plain(regionNames.of(region) ?? '')
  const entities = data.find(({ code }) => code === currency)?.countries.map(plain) ?? []
  return entities.some((entity) => entity.includes(name) || name.includes(entity))
}

describe('which country pays in which shared-sign currency', () => {
  it('agrees with the entities of ISO 4217', () => {
    expect(ours.length).toBeGreaterThan(150)
    const compared = ours.filter(({ region }) => !NOT_COMPARED.includes(region))
    expect(compared.filter(({ region, currency }) => !paysIn(currency, region))).toEqual([])
  })

  it('names only codes of the list, besides the one that is newer', () => {
    const known = new Set(codes())
    expect(ours.filter(({ currency }) => !known.has(currency)).map(({ region }) => region)).toEqual(['CW', 'SX'])
  })

  it('takes the region first, then the locale, then the home of its language and script', () => {
    expect(placeCurrencies('CA', 'sv-SE')).toEqual(['CAD', 'SEK', 'SEK'])
    expect(placeCurrencies(undefined, 'zh')).toEqual(['CNY'])
    expect(placeCurrencies(undefined, 'zh-HK')).toEqual(['HKD', 'TWD'])
    expect(placeCurrencies(undefined, 'en')).toEqual([])
    expect(placeCurrencies(undefined, null)).toEqual([])
  })
})

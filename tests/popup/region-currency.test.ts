import currencies from 'currency-codes'
import { describe, expect, it } from 'vitest'
import { currencyOfLocale, regionCurrencies } from '../../popup/first-run/region-currency.ts'

describe('the currency a household starts with', () => {
  // Source: entities of ISO 4217 list one, as published in the package currency-codes.
  it('agrees with ISO 4217 for every region it knows', () => {
    const names = new Intl.DisplayNames(['en'], { type: 'region' })
    const plain = (text: string): string =>
      text
        .toLowerCase()
        .normalize('NFD')
        .replace(/\p{M}/gu, '')
        .replace(/\(.*|, .*|^the /g, '')
        .replace('turkiye', 'turkey')
        .replace('south korea', 'korea')
        .trim()
    for (const [region, code] of regionCurrencies) {
      const entities = (currencies.code(code)?.countries ?? []).map(plain)
      const name = plain(names.of(region) ?? '')
      const isListed = entities.some((e) => e.startsWith(name.split(' ')[0] ?? '') || e.includes(name))
      expect([region, code, isListed, entities]).toEqual([region, code, true, entities])
    }
    expect(regionCurrencies.length).toBeGreaterThan(30)
  })

  it.each([
    ['en-CA', 'CAD'],
    ['sv', 'SEK'],
    ['ja', 'JPY'],
    ['de-CH', 'CHF'],
    ['de-DE', 'EUR'],
    ['en-US', 'USD'],
  ])('%s starts with %s', (language, currency) => {
    expect(currencyOfLocale(language)).toBe(currency)
  })
})

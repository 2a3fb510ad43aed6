import { type CurrencyCode, isCurrencyCode } from '../../src/money/currency.ts'

// Regions (ISO 3166-1) of each currency that many browsers are set to. From memory; the tests compare it with the
// entities of ISO 4217 list one. A region that is not here starts with the euro, which the person can change.
const REGIONS: Readonly<Record<string, string>> = {
  AUD: 'AU',
  BRL: 'BR',
  CAD: 'CA',
  CHF: 'CH LI',
  CLP: 'CL',
  COP: 'CO',
  CZK: 'CZ',
  DKK: 'DK',
  GBP: 'GB',
  HKD: 'HK',
  HUF: 'HU',
  IDR: 'ID',
  ILS: 'IL',
  INR: 'IN',
  ISK: 'IS',
  JPY: 'JP',
  KRW: 'KR',
  KWD: 'KW',
  MXN: 'MX',
  MYR: 'MY',
  NOK: 'NO',
  NZD: 'NZ',
  PHP: 'PH',
  PLN: 'PL',
  RON: 'RO',
  SEK: 'SE',
  SGD: 'SG',
  THB: 'TH',
  TRY: 'TR',
  UAH: 'UA',
  USD: 'US PR EC SV',
  ZAR: 'ZA',
}

/** The currency a household in a language's region most likely keeps: `en-CA` is CAD, `sv` is SEK. */
export function currencyOfLocale(language: string): CurrencyCode {
  const region = new Intl.Locale(language).maximize().region ?? ''
  const found = Object.keys(REGIONS).find((code) => REGIONS[code]?.split(' ').includes(region))
  return found && isCurrencyCode(found) ? found : 'EUR'
}

/** Regions this table speaks for, with their currency; for the tests. */
export const regionCurrencies: readonly (readonly [region: string, currency: string])[] = Object.entries(
  REGIONS,
).flatMap(([code, regions]) => regions.split(' ').map((region) => [region, code] as const))

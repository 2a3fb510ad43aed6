import type { CurrencyCode } from './currency.ts'

/**
 * The smallest step of a cash payment, in minor units of ISO 4217, for the currencies where CLDR knows one larger than
 * the minor unit. A currency that is absent has no step here: AUD, NZD and the euro are rounded by national rules
 * (`nationalCashRules`), not by CLDR.
 *
 * Source: CLDR 48.2.0, supplemental/currencyData.json, `fractions`; cash digits default to digits by UTS 35 part 3,
 * "Supplemental Currency Data". CLDR counts some currencies in other digits than ISO (HUF 0 against 2), so the steps are
 * turned into ISO minor units: 5 forints are 500.
 */
export const cldrCashSteps: Readonly<Partial<Record<CurrencyCode, number>>> = {
  // `cashRounding`
  CAD: 5,
  CHF: 5,
  DKK: 50,
  HUF: 500,

  // `cashDigits` 0: cash in whole units, accounts with decimals
  AMD: 100,
  CRC: 100,
  CZK: 100,
  GYD: 100,
  MNT: 100,
  MUR: 100,
  NOK: 100,
  RSD: 100,
  SEK: 100,
  TWD: 100,
  TZS: 100,
  UZS: 100,

  // `digits` 0 where ISO has two or three: nobody uses the decimals, so cash does not either
  AFN: 100,
  ALL: 100,
  COP: 100,
  IDR: 100,
  IQD: 1000,
  IRR: 100,
  KPW: 100,
  LAK: 100,
  LBP: 100,
  MGA: 100,
  MMK: 100,
  PKR: 100,
  SLL: 100,
  SOS: 100,
  SYP: 100,
  YER: 100,
}

import type { CurrencyMark } from './currency-names.ts'

// Which countries pay in the currencies whose signs are shared (`$`, `kr`, `£`, `¥`, `Rs`, `Fr`, dinars ...): ISO 4217 list
// one, entities written as ISO 3166 codes. Currencies with a sign of their own need no line.
const COUNTRIES: Readonly<Record<string, string>> = {
  USD: 'US AS BQ EC FM GU IO MH MP PR PW SV TC TL UM VG VI',
  CAD: 'CA',
  AUD: 'AU CC CX HM KI NF NR TV',
  NZD: 'NZ CK NU PN TK',
  HKD: 'HK',
  SGD: 'SG',
  TWD: 'TW',
  MXN: 'MX',
  ARS: 'AR',
  CLP: 'CL',
  COP: 'CO',
  CUP: 'CU',
  DOP: 'DO',
  UYU: 'UY',
  BBD: 'BB',
  BSD: 'BS',
  BMD: 'BM',
  BZD: 'BZ',
  BND: 'BN',
  KYD: 'KY',
  FJD: 'FJ',
  GYD: 'GY',
  JMD: 'JM',
  LRD: 'LR',
  NAD: 'NA',
  SBD: 'SB',
  SRD: 'SR',
  TTD: 'TT',
  XCD: 'AG AI DM GD KN LC MS VC',
  CVE: 'CV',
  TOP: 'TO',
  WST: 'WS',
  MOP: 'MO',
  NIO: 'NI',
  ZWG: 'ZW',
  PHP: 'PH',
  SEK: 'SE',
  NOK: 'NO BV SJ',
  DKK: 'DK FO GL',
  ISK: 'IS',
  GBP: 'GB GG IM JE GS',
  EGP: 'EG',
  GIP: 'GI',
  FKP: 'FK',
  SHP: 'SH',
  LBP: 'LB',
  SYP: 'SY',
  SDG: 'SD',
  SSP: 'SS',
  JPY: 'JP',
  CNY: 'CN',
  KRW: 'KR',
  KPW: 'KP',
  INR: 'IN',
  PKR: 'PK',
  LKR: 'LK',
  NPR: 'NP',
  MUR: 'MU',
  SCR: 'SC',
  RUB: 'RU',
  BYN: 'BY',
  ETB: 'ET',
  RON: 'RO',
  MDL: 'MD',
  BOB: 'BO',
  VES: 'VE',
  CHF: 'CH LI',
  XOF: 'BJ BF CI GW ML NE SN TG',
  XAF: 'CM CF TD CG GQ GA',
  XPF: 'NC PF WF',
  DJF: 'DJ',
  RWF: 'RW',
  BIF: 'BI',
  GNF: 'GN',
  KMF: 'KM',
  CDF: 'CD',
  RSD: 'RS',
  KWD: 'KW',
  BHD: 'BH',
  JOD: 'JO',
  IQD: 'IQ',
  LYD: 'LY',
  TND: 'TN',
  DZD: 'DZ',
  MKD: 'MK',
  UZS: 'UZ',
  KGS: 'KG',
  TJS: 'TJ',
  SAR: 'SA',
  QAR: 'QA',
  OMR: 'OM',
  YER: 'YE',
  IRR: 'IR',
  AED: 'AE',
  MAD: 'MA EH',
  KES: 'KE',
  UGX: 'UG',
  TZS: 'TZ',
  SOS: 'SO',
  CRC: 'CR',
  GTQ: 'GT',
  HNL: 'HN',
  ALL: 'AL',
  SLE: 'SL',
  AWG: 'AW',
  XCG: 'CW SX',
}
const currencyOf = new Map(
  Object.entries(COUNTRIES).flatMap(([code, regions]) => regions.split(' ').map((region) => [region, code] as const)),
)

// Languages whose home country says nothing about where a page is from.
const WORLD_LANGUAGES = new Set(['en', 'es', 'fr', 'pt', 'ar'])

/**
 * The currencies that the places in the hints pay in, surest first: the region, the locale's own region, the home country
 * of the locale's language (not for English, Spanish, French, Portuguese and Arabic). Only currencies with a shared sign.
 *
 * @param locale a tag that `Intl` understands, or null
 * @example placeCurrencies('CA', 'sv') // ['CAD', 'SEK']
 */
export function placeCurrencies(region: string | undefined, locale: string | null): string[] {
  const parts = locale === null ? null : new Intl.Locale(locale)
  return [region?.toUpperCase(), parts?.region, parts ? homeOf(parts) : undefined].flatMap(
    (place) => currencyOf.get(place ?? '') ?? [],
  )
}

/** The country most readers of a language in its script live in: `zh-HK` is written as in Taiwan, `zh` as in China. */
function homeOf(locale: Intl.Locale): string | undefined {
  if (WORLD_LANGUAGES.has(locale.language)) return undefined
  const script = locale.maximize().script
  return new Intl.Locale(script ? `${locale.language}-${script}` : locale.language).maximize().region
}

/**
 * The one currency a mark stands for: a compatible hint first, then the places, then what the mark usually means.
 * Null when nothing decides.
 */
export function settleCurrency(
  mark: CurrencyMark,
  hinted: readonly string[],
  places: readonly string[],
): string | null {
  if (hinted.length === 1 && hinted[0] !== undefined && mark.codes.includes(hinted[0])) return hinted[0]
  return places.find((code) => mark.codes.includes(code)) ?? mark.usual
}

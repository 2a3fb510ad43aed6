// Taxes that are levied in one country, or at a rate of one country (common practice, no single source). MwSt, TVA and
// VAT are not here: several countries with different money use those names.
const TAXES: readonly (readonly [RegExp, string])[] = [
  [/\b(?:HST|QST|TPS|TVQ|TVH)\b|\bPST\b.*%|\bGST\b.*(?<![\d.])5(?:\.0+)?\s*%/, 'CAD'],
  [/\bGST\b.*(?<![\d.])10(?:\.0+)?\s*%/, 'AUD'],
  [/\bGST\b.*(?<![\d.])15(?:\.0+)?\s*%/, 'NZD'],
  [/\bGST\b.*(?<![\d.])9(?:\.0+)?\s*%/, 'SGD'],
  [/\bmva\b/i, 'NOK'],
  [/消費税/, 'JPY'],
  [/增值税/, 'CNY'],
]

const TAX_NAMES = /[TPHQG]ST\b|T[PV][SQHP]\b|mva|消|增/i

const LONGEST = 60

/** The currencies of the places that levy the taxes a short text names. */
export function taxCurrencies(text: string): readonly string[] {
  if (text.length > LONGEST || !TAX_NAMES.test(text)) return NONE
  return TAXES.flatMap(([pattern, code]) => (pattern.test(text) ? [code] : []))
}

const NONE: readonly string[] = []

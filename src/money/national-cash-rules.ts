import type { CurrencyCode } from './currency.ts'

/** How a total is brought to what notes and coins can pay. */
export interface CashRule {
  /** The smallest step of a cash payment, in minor units: 5 is 0.05 CAD. */
  readonly step: number
  /** Where an amount exactly between two steps goes: away from zero (the default) or towards it. */
  readonly ties?: 'away' | 'towards'
  /** `nearest` (the default), or `towards`: every odd amount goes down towards zero. */
  readonly mode?: 'nearest' | 'towards'
  /**
   * What happens to amounts that rounding would spoil: `unchanged` leaves amounts of one step or less as they are,
   * `up-to-step` makes an amount that would round to nothing one step. Without it they round as any other.
   */
  readonly smallAmounts?: 'unchanged' | 'up-to-step'
}

/** A country's cash rule, as data a household may choose. */
export interface NationalCashRule extends CashRule {
  readonly currency: CurrencyCode
  readonly note: string
  readonly source: string
}

const SYMMETRIC = '1, 2, 6 and 7 go down; 3, 4, 8 and 9 go up.'

/**
 * Published cash rules by ISO 3166 region. They bind nobody here: each is a setting a household takes by naming its
 * region, because many are voluntary or left to the shop. Only cash is rounded, once, on the total; an order paid
 * online never is. Sources are those this project has read; "from memory" marks what was not confirmed.
 */
export const nationalCashRules: Readonly<Record<string, NationalCashRule>> = {
  AU: { currency: 'AUD', step: 5, note: SYMMETRIC, source: 'Casio V-REGI manual p. 81; examples seen second hand' },
  BE: {
    currency: 'EUR',
    step: 5,
    smallAmounts: 'unchanged',
    note: `${SYMMETRIC} Only totals above 0.05; never for internet sales; of a split payment only the cash part.`,
    source: 'Code of Economic Law art. VI.7/1; FPS Finance circular of 26 November 2019',
  },
  CA: { currency: 'CAD', step: 5, note: `${SYMMETRIC} After taxes.`, source: 'Budget 2012, "Rounding"' },
  CH: {
    currency: 'CHF',
    step: 5,
    note: 'Commercial rounding to 5 Rappen; some tills always round down.',
    source: 'CLDR 48.2; kingbill.com on Swiss rounding',
  },
  CZ: { currency: 'CZK', step: 100, note: 'Whole crowns.', source: 'CLDR 48.2' },
  DK: {
    currency: 'DKK',
    step: 50,
    note: 'The order says nearest 50 øre and not where 25 and 75 go; tills take totals of 25 and 75 up.',
    source: 'BEK nr 928 of 19 September 2008, section 2; Casio V-REGI manual p. 81',
  },
  EE: {
    currency: 'EUR',
    step: 5,
    note: `${SYMMETRIC} Since 2025; refunds in cash as well.`,
    source: 'Eesti Pank, questions and answers on rounding',
  },
  FI: {
    currency: 'EUR',
    step: 5,
    note: SYMMETRIC,
    source: 'Casio V-REGI manual p. 81; Act 890/2000 (from memory)',
  },
  HU: { currency: 'HUF', step: 500, note: 'Nearest 5 Ft since 1 March 2008.', source: 'Magyar Nemzeti Bank, mnb.hu' },
  IE: {
    currency: 'EUR',
    step: 5,
    note: `${SYMMETRIC} Voluntary, since 28 October 2015.`,
    source: 'thejournal.ie and cooneycarey.ie on the national rollout',
  },
  IT: { currency: 'EUR', step: 5, note: SYMMETRIC, source: 'from memory; the law was not read' },
  MY: { currency: 'MYR', step: 5, note: SYMMETRIC, source: 'Casio V-REGI manual p. 81' },
  NL: {
    currency: 'EUR',
    step: 5,
    note: `${SYMMETRIC} The shop decides.`,
    source: 'from memory; the text was not read',
  },
  NO: {
    currency: 'NOK',
    step: 100,
    note: '1 to 49 øre down, 50 to 99 up.',
    source: 'Regulation 16 March 2011 no. 294, norges-bank.no',
  },
  NZ: {
    currency: 'NZD',
    step: 10,
    ties: 'towards',
    note: 'The law leaves a total ending in 5 to the shop; the trade advises 1 to 5 down, 6 to 9 up.',
    source: 'Retailers Association as quoted by grownups.co.nz; Casio V-REGI manual p. 81, NZ(B)',
  },
  SE: { currency: 'SEK', step: 100, note: 'Nearest krona since 2010.', source: 'CLDR 48.2; Casio V-REGI manual p. 81' },
  SK: {
    currency: 'EUR',
    step: 5,
    smallAmounts: 'up-to-step',
    note: `${SYMMETRIC} Since 1 July 2022; a total of 0.01 or 0.02 becomes 0.05.`,
    source: 'eKasa receipt rounding, ninedigit/ekasa-cloud',
  },
  US: {
    currency: 'USD',
    step: 5,
    smallAmounts: 'up-to-step',
    note: `${SYMMETRIC} Voluntary; cents remain legal tender. A total of 0.01 or 0.02 may become 0.05.`,
    source: 'NCSL, "Elimination of the Penny", 21 November 2025 (second hand)',
  },
  ZA: {
    currency: 'ZAR',
    step: 10,
    mode: 'towards',
    note: 'Always down. The till manual knows 5 cents; the 5 cent piece has since left circulation.',
    source: 'Casio V-REGI manual p. 81 for the direction; smallest piece from RubyMoney currency data',
  },
}

import type { CurrencyCode } from './currency.ts'

/** The notes and coins in use for a currency, in minor units of ISO 4217, smallest first. */
export interface Pieces {
  readonly notes: readonly number[]
  readonly coins: readonly number[]
}

// Editable defaults, never law: a household leaves out what its bank does not give. Tags of the sources: V-text, read in
// the central bank's text; V-3rd, third-party text; M, from memory and to be confirmed.
const PIECES: Readonly<Partial<Record<CurrencyCode, Pieces>>> = {
  // V-text notes; coins M; frbsf.org. Cent no longer struck for circulation since 12 Nov 2025 but legal tender; $2
  // rare; 50c and $1 coins rare.
  USD: { notes: [100, 200, 500, 1000, 2000, 5000, 10000], coins: [1, 5, 10, 25, 50, 100] },
  // V-3rd; Bank of Canada lists seen second hand. No 1c since 2013; 50c coin rare.
  CAD: { notes: [500, 1000, 2000, 5000, 10000], coins: [5, 10, 25, 100, 200] },
  // V-text; nbb.be, bportugal.pt, hnb.hr. 500 not issued since 2019, legal tender; 1c/2c not issued in some states.
  EUR: { notes: [500, 1000, 2000, 5000, 10000, 20000], coins: [1, 2, 5, 10, 20, 50, 100, 200] },
  // M; Bank of England (memory). Polymer only; Scottish and NI banks issue own notes incl. 100 (and 1 in Scotland).
  GBP: { notes: [500, 1000, 2000, 5000], coins: [1, 2, 5, 10, 20, 50, 100, 200] },
  // M; RBA / Royal Australian Mint (memory). No 1c, 2c since 1992.
  AUD: { notes: [500, 1000, 2000, 5000, 10000], coins: [5, 10, 20, 50, 100, 200] },
  // M; RBNZ (memory). No 5c since 2006.
  NZD: { notes: [500, 1000, 2000, 5000, 10000], coins: [10, 20, 50, 100, 200] },
  // M; SNB / Swissmint (memory).
  CHF: { notes: [1000, 2000, 5000, 10000, 20000, 100000], coins: [5, 10, 20, 50, 100, 200, 500] },
  // M; Riksbank (memory). No øre coins since 2010; 1000 rarely in machines.
  SEK: { notes: [2000, 5000, 10000, 20000, 50000, 100000], coins: [100, 200, 500, 1000] },
  // M; Norges Bank (memory). 50 øre invalid since 1 May 2012 (date V-text, norges-bank.no).
  NOK: { notes: [5000, 10000, 20000, 50000, 100000], coins: [100, 500, 1000, 2000] },
  // M; Nationalbanken (memory). 1000-krone note invalid after 31 May 2025.
  DKK: { notes: [5000, 10000, 20000, 50000], coins: [50, 100, 200, 500, 1000, 2000] },
  // M; Bank of Japan (memory). 2000 rare; new series 3 July 2024.
  JPY: { notes: [1000, 2000, 5000, 10000], coins: [1, 5, 10, 50, 100, 500] },
  // M; RBI (memory). 2000 withdrawn from 19 May 2023 (legal tender); 1, 2, 5 notes legal, 5 and below mostly coins.
  INR: { notes: [1000, 2000, 5000, 10000, 20000, 50000], coins: [50, 100, 200, 500, 1000, 2000] },
  // M; Banxico (memory). 20 note being replaced by coin; 5c coin practically unused.
  MXN: { notes: [2000, 5000, 10000, 20000, 50000, 100000], coins: [5, 10, 20, 50, 100, 200, 500, 1000, 2000] },
  // M; BCB (memory). 1c not struck since 2005; 200 since 2020.
  BRL: { notes: [200, 500, 1000, 2000, 5000, 10000, 20000], coins: [5, 10, 25, 50, 100] },
  // M; SARB (memory). 5c not struck since 2012; 10c/20c in practice; new series 2023.
  ZAR: { notes: [1000, 2000, 5000, 10000, 20000], coins: [10, 20, 50, 100, 200, 500] },
  // M; NBP (memory).
  PLN: { notes: [1000, 2000, 5000, 10000, 20000, 50000], coins: [1, 2, 5, 10, 20, 50, 100, 200, 500] },
  // M; CNB (memory).
  CZK: { notes: [10000, 20000, 50000, 100000, 200000, 500000], coins: [100, 200, 500, 1000, 2000, 5000] },
  // M; MNB (memory). ISO minor unit 2 (CLDR 0); values here in 1/100 Ft.
  HUF: { notes: [50000, 100000, 200000, 500000, 1000000, 2000000], coins: [500, 1000, 2000, 5000, 10000, 20000] },
  // M; TCMB / mint (memory). 1 kurus practically unused; 5-lira coin issued from 2023.
  TRY: { notes: [500, 1000, 2000, 5000, 10000, 20000], coins: [5, 10, 25, 50, 100, 500] },
  // M; Bank of Israel (memory). 5 agorot withdrawn 2008.
  ILS: { notes: [2000, 5000, 10000, 20000], coins: [10, 50, 100, 200, 500, 1000] },
}

/**
 * The notes and coins this library knows for a currency, or null where it knows none (about twenty are known).
 *
 * @example piecesOf('CAD')?.notes // [500, 1000, 2000, 5000, 10000]
 */
export function piecesOf(currency: CurrencyCode): Pieces | null {
  return PIECES[currency] ?? null
}

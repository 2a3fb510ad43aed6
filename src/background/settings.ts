import { accountId, type CurrencyCode, money, type PaySchedule, type Pot } from '../index.ts'
import type { NewPot } from './protocol.ts'
import type { Settings } from './store.ts'

/** Settings of a new household: one bank account, months from the first. */
export function newSettings(
  currency: CurrencyCode,
  timeZone: string,
  schedule: PaySchedule | null,
  pots: readonly NewPot[],
): Settings {
  return {
    currency,
    timeZone,
    monthStartDay: 1,
    pots: pots.map((pot) => potFrom(currency, pot)),
    accounts: [{ id: accountId('main'), name: 'Bank account', kind: 'bank' }],
    schedule,
    isDemo: false,
  }
}

/** A pot from its form. @throws MoneyError when an amount is not one */
export function potFrom(
  currency: CurrencyCode,
  pot: NewPot,
  archived = false,
): Pot & { fill: { cash: number; card: number } } {
  return {
    id: pot.id,
    name: pot.name.trim(),
    kind: pot.kind,
    rule: pot.rule,
    sides: pot.sides,
    floor: amountOf(currency, pot.floor),
    fill: { cash: amountOf(currency, pot.fillCash), card: amountOf(currency, pot.fillCard) },
    archived,
  }
}

/** Minor units of a decimal text; an empty text is nothing. @throws MoneyError */
export function amountOf(currency: CurrencyCode, text: string): number {
  return text.trim() === '' ? 0 : money(currency, text).minor
}

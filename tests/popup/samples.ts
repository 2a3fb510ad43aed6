import type { CheckoutLook, OwnCommands } from '../../src/background/protocol.ts'
import { calendarDate, type PotId, potId } from '../../src/index.ts'

/** A checkout page of an invented shop, as the reader would tell it. */
export function shopPage(amount: string | null, changes: Partial<CheckoutLook> = {}): CheckoutLook {
  const total = amount === null ? null : { amount, currency: 'CAD' }
  const figures =
    amount === null ? [] : [{ label: 'Order total', text: `$${amount}`, used: true, why: 'named as the total' }]
  return {
    shop: 'corvid-books.example',
    origin: 'https://corvid-books.example',
    watched: false,
    page: { stage: 'checkout', total, figures, placeOrderCount: 1 },
    unread: null,
    tag: null,
    ahead: null,
    heldBecause: null,
    seenRate: null,
    unconfirmed: [],
    ...changes,
  }
}

/** One pot for `household.create`, by default stopping what it cannot pay. */
function newPot(
  id: PotId,
  name: string,
  openCash: string,
  openCard: string,
  changes: Partial<OwnCommands['pot.save']['ask']['pot']> = {},
): OwnCommands['pot.save']['ask']['pot'] {
  const base = { kind: 'everyday', rule: 'block', sides: 'both', floor: '0', fillCash: '0', fillCard: '0' } as const
  return { id, name, openCash, openCard, ...base, ...changes }
}

/** Four pots in Canadian dollars: one that fits, one that stops, one that warns, one in notes only. */
export const smallHousehold: OwnCommands['household.create']['ask'] = {
  currency: 'CAD',
  timeZone: 'America/Toronto',
  schedule: { rhythm: 'every-two-weeks', first: calendarDate('2026-12-04') },
  pots: [
    newPot(potId('groceries'), 'Groceries', '120.00', '94.50', { fillCash: '160.00', fillCard: '40.00' }),
    newPot(potId('piano'), 'Piano lessons', '38.00', '12.50', { fillCash: '35.00', fillCard: '25.00' }),
    newPot(potId('garden'), 'Garden', '10.00', '20.00', { rule: 'warn', fillCard: '20.00' }),
    newPot(potId('market'), 'Saturday market', '45.00', '0', { sides: 'cash', fillCash: '45.00' }),
  ],
}

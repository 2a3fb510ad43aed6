import browser from 'webextension-polyfill'
import { BookError, findPot, type Household, type PotId } from '../index.ts'
import { showBadge } from './badge.ts'
import type { Context } from './context.ts'
import type { OwnCommands, PotAhead } from './protocol.ts'
import { Refusal } from './refusal.ts'
import { shopOf } from './shop-host.ts'
import type { Head } from './store.ts'

/*
 * A tag made ahead: "this basket is for Garden", said at a cart, before the shop has named the final total. It holds no
 * money. At the checkout the pot comes chosen, so that one press tags the real total; a tag uses it up, and a day ends it.
 */

/** How long a basket's pot is kept. */
export const AHEAD_LASTS_MS = 24 * 3_600_000

type Ask = OwnCommands['order.ahead']['ask']
type Said = NonNullable<Head['ahead']>

/**
 * Says which pot the basket in a tab's shop is for, or with `pot: null` that it is for none.
 *
 * @throws Refusal `unread-page` where the tab may not be looked at; BookError `unknown-pot`, `archived-pot`
 */
export async function sayAhead(context: Context, ask: Ask): Promise<Record<never, never>> {
  const url = (await browser.tabs.get(ask.tab)).url
  const shop = url === undefined ? null : shopOf(url)
  if (shop === null) {
    throw new Refusal('unread-page', 'This page has not been read. Open the popup on the shop again.')
  }
  const { pot } = ask
  await context.keeper.write(({ head }, book) => {
    if (pot !== null && findPot(book.household, pot).archived) {
      throw new BookError('archived-pot', `${findPot(book.household, pot).name} is archived. Choose another pot.`)
    }
    const others = withoutAhead(fresh(head.ahead ?? {}, context.now()), shop)
    const ahead = pot === null ? others : { ...others, [shop]: { pot, saidAt: context.now() } }
    return { change: { ledger: { ahead } }, answer: null }
  })
  const { kept, book } = await context.keeper.ready()
  await showBadge(ask.tab, book, shop, potAhead(kept.head, shop, context.now())?.pot ?? null)
  return {}
}

/** The pot that a shop's basket is for; null where none was said, a day has gone by, or the pot is no longer open. */
export function potAhead(head: Head, shop: string, now: number): PotAhead | null {
  const said = fresh(head.ahead ?? {}, now)[shop]
  return said && isOpen(head.settings, said.pot) ? { pot: said.pot, until: said.saidAt + AHEAD_LASTS_MS } : null
}

/** What was said ahead, without a shop whose order has its tag now. */
export function withoutAhead(ahead: Said, shop: string): Said {
  const { [shop]: _, ...others } = ahead
  return others
}

/** A clock that was set back must not keep a pot for longer than a day. */
function fresh(ahead: Said, now: number): Said {
  return Object.fromEntries(Object.entries(ahead).filter(([, { saidAt }]) => Math.abs(now - saidAt) < AHEAD_LASTS_MS))
}

function isOpen({ pots }: Pick<Household, 'pots'>, id: PotId): boolean {
  return pots.some((pot) => pot.id === id && !pot.archived)
}

import type { Context } from './context.ts'
import type { Look } from './protocol.ts'
import { Refusal } from './refusal.ts'
import { originOf, shopOf } from './shop-host.ts'
import { guardOpenTabs, permitted, registerGates } from './shops.ts'
import { look } from './view.ts'

/** Lets the guard watch a shop, once the browser's permission is there. @throws Refusal `no-permission` without it */
export async function watchShop(context: Context, ask: { origin: string }): Promise<Look> {
  const origin = originOf(ask.origin)
  if (origin === null || (await permitted([origin])).length === 0) {
    throw new Refusal(
      'no-permission',
      `The browser has not given permission to watch ${ask.origin}. Try again and allow it.`,
    )
  }
  const watched = await context.keeper.write((kept) => {
    const watched = [...new Set([...kept.head.watched, origin])]
    return { change: { ledger: { watched } }, answer: watched }
  })
  await registerGates(watched)
  await guardOpenTabs(origin)
  return look(context)
}

/** Stops watching a shop; the browser's permission can be taken back by the page that asks. */
export async function unwatchShop(context: Context, ask: { host: string }): Promise<Look> {
  const watched = await context.keeper.write((kept) => {
    const watched = kept.head.watched.filter((origin) => shopOf(origin) !== ask.host)
    return { change: { ledger: { watched } }, answer: watched }
  })
  await registerGates(watched)
  return look(context)
}

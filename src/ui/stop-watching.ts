import type { Look } from '../background/protocol.ts'
import { ask } from './ask.ts'
import { giveUpOrigins } from './browser.ts'

/** Ends the watch on a shop and gives the browser's permission for it back, under either scheme and with `www.`. */
export async function stopWatching(host: string): Promise<Look> {
  const look = await ask('shop.unwatch', { host })
  const origins = ['https', 'http'].flatMap((scheme) => [`${scheme}://${host}`, `${scheme}://www.${host}`])
  await giveUpOrigins(origins).catch((cause: unknown) => {
    // The shop is not watched any more; a permission that stays can be taken back in the browser's own settings.
    console.warn('Tillside: the permission could not be given back.', cause)
  })
  return look
}

import { once } from 'node:events'
import { createServer, type IncomingMessage } from 'node:http'
import type { HostilePage } from './page.ts'
import { document } from './page.ts'

/** An order that reached the hostile shop's server, by whatever way. */
export interface HostileOrder {
  readonly method: string
  /** The page it came from, as its forms and links say. */
  readonly from: string
}

/** The hostile shop while it runs. Its pages lie at `/checkout/NAME`; every request to `/order` is an order. */
export interface HostileShop {
  readonly origin: string
  /** The address of a page by its name. */
  url(name: string): string
  orders(): readonly HostileOrder[]
  /** What pages sent to `/tell`: what a hostile page has learnt. */
  told(): readonly string[]
  /** Tells the pages what they may know of the extension. */
  tell(extension: string): void
  clear(): void
  close(): Promise<void>
}

const WAIT_MS = 80

/**
 * Starts the hostile shop, Quarry Lane, on a loopback port: pages written to order past the guard or to fight it. What
 * comes from `wallet.localhost` is another origin, for frames of payment providers.
 *
 * @param pages the pages by name
 * @example const shop = await startHostileShop(ways); await page.goto(shop.url('button'))
 */
export async function startHostileShop(pages: Readonly<Record<string, HostilePage>>): Promise<HostileShop> {
  let orders: HostileOrder[] = []
  let told: string[] = []
  let extension = ''
  const server = createServer((request, response) => {
    const url = new URL(request.url ?? '/', 'http://quarry.localhost')
    const [, room = '', name = ''] = url.pathname.split('/')
    const html = (text: string, headers: Readonly<Record<string, string>> = {}): void => {
      response.writeHead(200, { 'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-cache', ...headers })
      response.end(text)
    }
    void bodyOf(request).then((body) => {
      if (room === 'order') {
        orders.push({ method: request.method ?? '', from: url.searchParams.get('from') ?? '' })
        html('<!doctype html><title>Thank you</title><h1>Thank you for your order</h1><p>Order number QL-20931</p>')
      } else if (room === 'tell') {
        told.push(body)
        html('')
      } else if (room === 'slow') setTimeout(() => html(''), WAIT_MS)
      else {
        const page = pages[decodeURIComponent(name)]
        if (page) html(document(name, page).replaceAll('EXTENSION', extension), page.headers)
        else {
          response.writeHead(404)
          response.end()
        }
      }
    })
  })
  server.listen(0, '127.0.0.1')
  await once(server, 'listening')
  const address = server.address()
  if (address === null || typeof address === 'string') throw new Error('The hostile shop listens on no port.')
  const origin = `http://quarry.localhost:${address.port}`
  return {
    origin,
    url: (name) => `${origin}/checkout/${encodeURIComponent(name)}`,
    orders: () => [...orders],
    told: () => [...told],
    tell(id) {
      extension = id
    },
    clear() {
      orders = []
      told = []
    },
    async close() {
      server.close()
      server.closeAllConnections()
      await once(server, 'close')
    },
  }
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  const chunks: Buffer[] = []
  for await (const chunk of request) if (Buffer.isBuffer(chunk)) chunks.push(chunk)
  return Buffer.concat(chunks).toString('utf8')
}

import { once } from 'node:events'
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import { setTimeout as wait } from 'node:timers/promises'
import { corvidRoutes } from './corvid/routes.ts'
import type { Reply, ShopContext, ShopRequest, ShopRoutes } from './exchange.ts'
import { fernhillRoutes } from './fernhill/routes.ts'
import { Ledger } from './ledger.ts'
import { lunaireRoutes } from './lunaire/routes.ts'
import { type PlacedOrder, type SeenRequest, ShopError, type ShopName, shopNames } from './model.ts'
import { notFound, sorry, unknownHost } from './sorry.ts'

export type { PlacedOrder, SeenRequest, ShopName } from './model.ts'
export { shopNames } from './model.ts'
export { checkoutPath, expectedTotal } from './quote.ts'
export { strangePaths, strangeTotals } from './strange/cases.ts'

/** The demo shop while it runs. */
export interface DemoShop {
  readonly port: number
  /** An address for a browser, such as `http://corvid.localhost:4180/checkout?basket=evening-piano:1`. */
  url(shop: ShopName, path?: string): string
  /** Every order that reached the server since the start or `clearOrders`. */
  orders(): readonly PlacedOrder[]
  clearOrders(): void
  /** Every request that reached the server, of any kind and to any host. */
  requests(): readonly SeenRequest[]
  /** Ends at once: waiting answers are dropped and connections closed. */
  close(): Promise<void>
}

const routes: Readonly<Record<ShopName, ShopRoutes>> = {
  fernhill: fernhillRoutes,
  lunaire: lunaireRoutes,
  corvid: corvidRoutes,
}
const LARGEST_BODY_BYTES = 65_536

/**
 * Starts the three invented shops on one loopback port. They are told apart by the request's Host: browsers resolve
 * `*.localhost` to loopback by themselves; a Node client asks 127.0.0.1 and sets the Host header.
 *
 * Every page that shows or prices a basket takes it from the url, `?basket=seed-mix:2,trowel:1`, and the way of sending as
 * `&shipping=express`. See `catalogue.ts` for ids, `checkoutPath` for the page with the total, `expectedTotal` for the sum.
 *
 * @param options `port` 0 (the default) takes a free one; `delayMs` (250) is how long Lunaire's total is awaited
 * @throws what `node:http` reports when the port is taken
 * @example const shop = await startDemoShop(); await page.goto(shop.url('corvid', '/checkout?basket=evening-piano:1'))
 */
export async function startDemoShop(options: { port?: number; delayMs?: number } = {}): Promise<DemoShop> {
  const context: ShopContext = { ledger: new Ledger(), delayMs: options.delayMs ?? 250 }
  const seen: SeenRequest[] = []
  const closing = new AbortController()
  const server = createServer((request, response) => {
    answer(request, context, seen)
      .catch(ownFault)
      .then((reply) => send(response, reply, closing.signal))
      // A browser that went away, or the end of the server: nobody is left to be told.
      .catch(() => response.destroy())
  })
  server.listen(options.port ?? 0, '127.0.0.1')
  await once(server, 'listening')
  const port = portOf(server)
  return {
    port,
    url: (shop, path = '/') => `http://${shop}.localhost:${port}${path}`,
    orders: () => context.ledger.orders,
    clearOrders: () => context.ledger.clear(),
    requests: () => [...seen],
    close: async () => {
      closing.abort()
      if (!server.listening) return
      const closed = once(server, 'close')
      server.close()
      server.closeAllConnections()
      await closed
    },
  }
}

async function answer(incoming: IncomingMessage, context: ShopContext, seen: SeenRequest[]): Promise<Reply> {
  const host = (incoming.headers.host ?? '').replace(/:\d+$/, '').toLowerCase()
  const target = incoming.url ?? '/'
  const [path = '/'] = target.split('?', 1)
  const query = target.slice(path.length)
  const method = incoming.method ?? 'GET'
  seen.push({ host, method, path, query })
  const shop = shopNames.find((name) => host === `${name}.localhost`)
  if (shop === undefined) return unknownHost(host, portOfRequest(incoming))
  try {
    const request = await readRequest(incoming, method === 'HEAD' ? 'GET' : method, path, query)
    return routes[shop](request, context) ?? notFound(shop)
  } catch (error) {
    if (error instanceof ShopError) return sorry(shop, error)
    throw error
  }
}

async function readRequest(
  incoming: IncomingMessage,
  method: string,
  path: string,
  query: string,
): Promise<ShopRequest> {
  const chunks: Buffer[] = []
  let size = 0
  for await (const chunk of incoming) {
    if (!Buffer.isBuffer(chunk)) continue
    size += chunk.length
    if (size > LARGEST_BODY_BYTES) throw new ShopError('bad-request', 'That was more than an order can hold.')
    chunks.push(chunk)
  }
  const body = Buffer.concat(chunks).toString('utf8')
  const isForm = incoming.headers['content-type']?.startsWith('application/x-www-form-urlencoded') ?? false
  return {
    method,
    path,
    query: new URLSearchParams(query),
    form: new URLSearchParams(isForm ? body : ''),
    body,
    cookie: incoming.headers.cookie ?? '',
  }
}

// A fault of the demo itself is shown in full: whoever sees it is testing.
function ownFault(error: unknown): Reply {
  const body = error instanceof Error ? (error.stack ?? error.message) : String(error)
  return { status: 500, headers: { 'content-type': 'text/plain; charset=utf-8' }, body }
}

async function send(response: ServerResponse, reply: Reply, signal: AbortSignal): Promise<void> {
  if (reply.delayMs !== undefined) await wait(reply.delayMs, undefined, { signal })
  // `no-cache`, not `no-store`: going back in the history may show the page as it was left.
  response.writeHead(reply.status, { 'cache-control': 'no-cache', ...reply.headers })
  response.end(reply.body)
}

function portOf(server: Server): number {
  const address = server.address()
  if (address === null || typeof address === 'string')
    throw new Error('The demo shop has no port; it must listen on TCP.')
  return address.port
}

function portOfRequest(incoming: IncomingMessage): number {
  return incoming.socket.localPort ?? 80
}

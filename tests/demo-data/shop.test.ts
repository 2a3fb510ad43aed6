import { type IncomingHttpHeaders, request } from 'node:http'
import { Decimal } from 'decimal.js'
import fc from 'fast-check'
import { JSDOM } from 'jsdom'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { shops } from '../../demo-data/shop/catalogue.ts'
import { dollarsFrench } from '../../demo-data/shop/price-text.ts'
import { taxCents } from '../../demo-data/shop/quote.ts'
import {
  checkoutPath,
  type DemoShop,
  expectedTotal,
  type ShopName,
  shopNames,
  startDemoShop,
  strangePaths,
  strangeTotals,
} from '../../demo-data/shop/server.ts'

let shop: DemoShop

beforeAll(async () => {
  shop = await startDemoShop({ delayMs: 0 })
})
afterAll(() => shop.close())
beforeEach(() => shop.clearOrders())

describe('expectedTotal', () => {
  it.each([
    // Each worked by hand: items + shipping, then every tax on that sum, rounded half up.
    ['corvid', 'evening-piano:1', undefined, '55.90'], // 46.25 + 6.99 = 53.24; 2.662
    ['fernhill', 'seed-mix:2,trowel:1', undefined, '37.64'], // 8.30 + 18.60 + 8.95 = 35.85; 1.7925
    ['fernhill', 'fork:1,trowel:1', undefined, '90.93'], // 86.60, free from 75.00; 4.33
    ['fernhill', 'seed-mix:1', 'express', '21.68'], // 4.15 + 16.50 = 20.65; 1.0325
    ['lunaire', 'carnet:2,secretaire:1', undefined, '1480.08'], // 1287.30; 64.365 and 128.408175
    ['lunaire', 'carte:1', 'boutique', '4.77'], // 4.15; 0.2075 and 0.41396
  ] as const)('%s %s %s comes to %s', (name, basket, shipping, total) => {
    expect(expectedTotal(name, basket, shipping)).toBe(total)
  })

  it('charges 5.00 and 9.98 on 100.00 in Quebec (rates and figure from memory, common practice, no source)', () => {
    expect(shops.lunaire.taxes.map((tax) => taxCents(10_000, tax))).toEqual([500, 998])
    expect(shops.fernhill.taxes.map((tax) => taxCents(10, tax))).toEqual([1]) // 0.005 goes up
    expect(shops.fernhill.taxes.map((tax) => taxCents(9, tax))).toEqual([0])
  })

  it('takes a coupon off the items before tax, and nothing below its smallest basket', () => {
    expect(expectedTotal('fernhill', 'seed-mix:2,trowel:1', undefined, 'mulch5')).toBe('32.39')
    expect(expectedTotal('fernhill', 'seed-mix:1', undefined, 'MULCH5')).toBe(expectedTotal('fernhill', 'seed-mix:1'))
  })

  it('agrees with a decimal reckoning of any basket', () => {
    fc.assert(
      fc.property(anyBasket, ({ name, lines, shipping }) => {
        const basket = lines.map(([id, quantity]) => `${id}:${quantity}`).join(',')
        expect(expectedTotal(name, basket, shipping)).toBe(decimalTotal(name, lines, shipping))
      }),
    )
  })

  it.each([
    ['fernhill', '', undefined, 'empty-basket'],
    ['fernhill', 'trowel:0', undefined, 'empty-basket'],
    ['fernhill', 'carnet:1', undefined, 'unknown-product'],
    ['fernhill', 'trowel', undefined, 'bad-basket'],
    ['fernhill', 'trowel:-1', undefined, 'bad-quantity'],
    ['corvid', 'heron-waltz:60,heron-waltz:60', undefined, 'bad-quantity'],
    ['corvid', 'heron-waltz:1', 'poste', 'unknown-shipping'],
  ] as const)('refuses %s “%s” %s with %s', (name, basket, shipping, code) => {
    expect(() => expectedTotal(name, basket, shipping)).toThrow(expect.objectContaining({ code }))
  })

  it('refuses a coupon the shop does not have', () => {
    expect(() => expectedTotal('corvid', 'heron-waltz:1', undefined, 'MULCH5')).toThrow(
      expect.objectContaining({ code: 'unknown-coupon' }),
    )
  })
})

describe('Fernhill', () => {
  it.each([
    ['seed-mix:2,trowel:1', undefined],
    ['glasshouse:2', undefined],
    ['gloves:1', 'express'],
  ])('shows on the review page what the basket comes to: %s %s', async (basket, shipping) => {
    const page = await document('fernhill', checkoutPath('fernhill', basket, shipping))
    expect(amount(text(page, '.order-total td'))).toBe(expectedTotal('fernhill', basket, shipping))
    const parts = [...page.querySelectorAll('.totals tbody td')].map((cell) => amount(cell.textContent ?? ''))
    expect(Decimal.sum(...parts).toFixed(2)).toBe(expectedTotal('fernhill', basket, shipping))
  })

  it('has the coupon button before the place-order button, and takes the coupon off when applied', async () => {
    const page = await document('fernhill', `${checkoutPath('fernhill', 'seed-mix:2,trowel:1')}&coupon=mulch5`)
    expect([...page.querySelectorAll('button[type=submit]')].map((button) => button.textContent)).toEqual([
      'Apply',
      'Place order',
    ])
    expect(amount(text(page, '.order-total td'))).toBe('32.39')
    expect(text(page, '.totals')).toContain('\u2212$5.00')
    const unknown = await document('fernhill', `${checkoutPath('fernhill', 'trowel:1')}&coupon=nettle`)
    expect(text(unknown, '.coupon [role=status]')).toContain('nettle')
    expect(amount(text(unknown, '.order-total td'))).toBe(expectedTotal('fernhill', 'trowel:1'))
  })

  it('shows only a subtotal, and its decoys, before the review', async () => {
    for (const path of ['/basket', '/checkout']) {
      const page = await document('fernhill', `${path}?basket=trowel:2`)
      expect(amount(text(page, '.subtotal strong'))).toBe('37.20')
      expect(amount(text(page, '.mini-basket-total'))).toBe('37.20')
      expect(page.body.textContent).not.toContain(expectedTotal('fernhill', 'trowel:2'))
    }
    expect(text(await document('fernhill', '/product/trowel'), 's')).toBe('$22.00')
    expect(text(await document('fernhill', '/product/trowel'), '.saving')).toBe('You save $3.40')
  })

  it('goes from product to confirmation by forms and redirects, and keeps one order', async () => {
    const added = await post('fernhill', '/basket/add', { basket: 'trowel:1', product: 'trowel', quantity: '2' })
    expect([added.status, added.headers.location]).toEqual([303, '/basket?basket=trowel:3'])
    const updated = await post('fernhill', '/basket/update', { basket: 'trowel:3,twine:1', 'quantity-trowel': '0' })
    expect(updated.headers.location).toBe('/basket?basket=twine:1')
    const address = { name: 'Ada Fenwright', street: '2 Mill Row', town: 'Oxley, ON', postcode: 'X1X 1X1' }
    const sent = await post('fernhill', '/checkout/address', { ...address, basket: 'trowel:3', shipping: 'express' })
    expect([sent.status, sent.headers.location]).toEqual([303, '/checkout/review?shipping=express&basket=trowel:3'])
    const cookie = sent.headers['set-cookie']?.[0]?.split(';')[0] ?? ''
    const review = await ask('fernhill', '/checkout/review?shipping=express&basket=trowel:3', { headers: { cookie } })
    expect(review.body).toContain('Ada Fenwright')
    expect(shop.orders()).toEqual([])

    const placed = await submit('fernhill', review.body, '.place', { terms: 'yes' })
    const total = expectedTotal('fernhill', 'trowel:3', 'express')
    expect(shop.orders()).toMatchObject([
      { shop: 'fernhill', total, currency: 'CAD', items: [{ id: 'trowel', quantity: 3, unitPrice: '18.60' }] },
    ])
    const number = shop.orders()[0]?.number ?? ''
    expect([placed.status, placed.headers.location]).toEqual([303, `/confirmation/${number}`])
    const thanks = await document('fernhill', `/confirmation/${number}`)
    expect(text(thanks, '.order-number')).toBe(number)
    expect(thanks.body.textContent).toContain(`$${total}`)
    expect(amount(text(thanks, '.mini-basket-total'))).toBe('0.00')
  })

  it('places nothing without the terms or with a gap in the address', async () => {
    const refused = await post('fernhill', '/checkout/place', { basket: 'trowel:1' })
    expect([refused.status, shop.orders().length]).toEqual([422, 0])
    expect(refused.body).toContain('Please accept the terms')
    const gap = await post('fernhill', '/checkout/address', { basket: 'trowel:1', name: 'Ada' })
    expect(gap.status).toBe(422)
  })
})

describe('Lunaire', () => {
  it.each([
    ['carnet:2,secretaire:1', 'poste'],
    ['carnet:2,secretaire:1', 'messager'],
    ['carte:1', 'boutique'],
  ])('tells the late total of %s by %s in French', async (basket, shipping) => {
    const reply = await ask('lunaire', `/devis?basket=${basket}&shipping=${shipping}`)
    const cents = new Decimal(expectedTotal('lunaire', basket, shipping)).times(100).toNumber()
    expect(JSON.parse(reply.body)).toMatchObject({ total: dollarsFrench(cents) })
  })

  it('groups and marks with no-break spaces and a comma', async () => {
    const reply = await ask('lunaire', '/devis?basket=carnet:2,secretaire:1')
    expect(JSON.parse(reply.body)).toEqual({
      lines: [
        { label: 'Articles', amount: '1\u00a0277,50\u00a0$' },
        { label: 'Livraison', amount: '9,80\u00a0$' },
        { label: 'TPS 5 %', amount: '64,37\u00a0$' },
        { label: 'TVQ 9,975 %', amount: '128,41\u00a0$' },
      ],
      total: '1\u00a0480,08\u00a0$',
    })
  })

  it('carries its products as JSON-LD in CAD and no total of its own', async () => {
    const page = await document('lunaire', '/commande?basket=carnet:1')
    expect(page.documentElement.lang).toBe('fr-CA')
    const data: unknown = JSON.parse(text(page, 'script[type="application/ld+json"]'))
    expect(data).toContainEqual(
      expect.objectContaining({ sku: 'carnet', offers: { '@type': 'Offer', price: '21.50', priceCurrency: 'CAD' } }),
    )
    expect(page.querySelectorAll('.payable')).toHaveLength(0)
  })

  it('takes an order by fetch once, and knows it afterwards', async () => {
    const body = JSON.stringify({ basket: 'carnet:1', shipping: 'messager' })
    const reply = await ask('lunaire', '/commandes', {
      method: 'POST',
      body,
      headers: { 'content-type': 'application/json' },
    })
    const [order, ...others] = shop.orders()
    expect([reply.status, order?.total, others]).toEqual([201, expectedTotal('lunaire', 'carnet:1', 'messager'), []])
    expect(JSON.parse(reply.body)).toMatchObject({ number: order?.number, total: '45,88\u00a0$' })
    expect((await ask('lunaire', `/commandes/${order?.number}`)).body).toBe(reply.body)
    expect((await ask('lunaire', `/merci/${order?.number}`)).status).toBe(200)
    expect((await ask('lunaire', '/merci/000001')).status).toBe(404)
  })

  it.each(['not json', '[]', '{"basket":"carnet:1"}', '{"basket":"","shipping":"poste"}'])(
    'refuses the order %s and keeps nothing',
    async (body) => {
      const reply = await ask('lunaire', '/commandes', { method: 'POST', body })
      expect([reply.status, shop.orders()]).toEqual([400, []])
    },
  )
})

describe('Corvid', () => {
  it('gives its elements the parts of the total, on the page and after a change', async () => {
    const page = await document('corvid', checkoutPath('corvid', 'evening-piano:1'))
    const first: unknown = JSON.parse(text(page, 'cv-checkout > script'))
    expect(first).toMatchObject({ basket: 'evening-piano:1', total: { whole: '55', decimals: '90' } })
    const changed = await ask('corvid', '/quote?basket=chamber-works:2&shipping=courier')
    const [whole = '', decimals] = expectedTotal('corvid', 'chamber-works:2', 'courier').split('.')
    const grouped = whole.replace(/^(\d)(\d{3})$/, '$1,$2')
    expect(JSON.parse(changed.body)).toMatchObject({ total: { whole: grouped, decimals } })
  })

  it('lets nothing inline run and nothing from elsewhere load', async () => {
    const reply = await ask('corvid', checkoutPath('corvid', 'evening-piano:1'))
    expect(reply.headers['content-security-policy']).toContain("script-src 'self'; style-src 'self'")
    expect(reply.body).not.toMatch(/ style="|<style|<script>/)
  })

  it('takes the posted form once and confirms it; saving a basket is no order', async () => {
    const saved = await ask('corvid', '/saved-baskets', { method: 'POST', body: 'evening-piano:1' })
    expect([saved.status, shop.orders()]).toEqual([204, []])
    expect(JSON.parse((await ask('corvid', '/stock?basket=evening-piano:1')).body)).toEqual({ available: true })
    const placed = await post('corvid', '/order', { basket: 'evening-piano:1', shipping: 'post', email: 'a@b.example' })
    const [order] = shop.orders()
    expect(shop.orders()).toMatchObject([
      { shop: 'corvid', total: '55.90', items: [{ id: 'evening-piano', quantity: 1 }] },
    ])
    expect([placed.status, placed.headers.location]).toEqual([303, `/thanks/${order?.number}`])
    const thanks = await document('corvid', `/thanks/${order?.number}`)
    expect(text(thanks, 'dl')).toContain(`${order?.number}`)
    expect(text(thanks, 'dl')).toContain('CA$55.90')
  })

  it('adds a score to the basket', async () => {
    const added = await post('corvid', '/basket/add', {
      basket: 'heron-waltz:1',
      product: 'night-ferry',
      quantity: '1',
    })
    expect(added.headers.location).toBe('/checkout?basket=heron-waltz:1,night-ferry:1')
  })
})

describe('the strange pages', () => {
  it.each([
    ['/strange/changing', 'changing'],
    ['/strange/script-submit', 'script-submit'],
    ['/strange/enter', 'enter'],
    ['/strange/abroad', 'abroad'],
  ] as const)('%s shows its total and takes its order', async (path, name) => {
    const page = await ask('fernhill', path)
    expect(amount(text(new JSDOM(page.body).window.document, '.order-total td'))).toBe(strangeTotals[name])
    const placed = await submit('fernhill', page.body, 'form', {})
    expect(shop.orders().map((order) => order.total)).toEqual([strangeTotals[name]])
    expect((await ask('fernhill', placed.headers.location ?? '')).body).toContain(shop.orders()[0]?.number)
  })

  it('counts the gift wrap', async () => {
    await post('fernhill', '/strange/order', { case: 'changing-wrapped' })
    expect(shop.orders().map((order) => order.total)).toEqual(['45.00'])
    expect((await ask('fernhill', '/strange/changing.js')).body).toContain('$45.00')
  })

  it.each(['/strange/no-total', '/strange/no-total?as=letter'])('%s has no figure in its text', async (path) => {
    const page = await document('fernhill', path)
    expect(text(page, 'main')).not.toMatch(/\d/)
    expect(text(page, 'main button')).toBe('Place order')
  })

  it('has an article without a price, whose newsletter form arrives untouched', async () => {
    const page = await ask('fernhill', '/strange/plain')
    expect(text(new JSDOM(page.body).window.document, 'body')).not.toMatch(/[$\d]/)
    const reply = await submit('fernhill', page.body, '.newsletter', { email: 'wren@castellane.example' })
    expect(reply.status).toBe(303)
    expect(shop.requests().at(-1)).toEqual({
      host: 'fernhill.localhost',
      method: 'POST',
      path: '/newsletter',
      query: '',
    })
    expect(shop.orders()).toEqual([])
  })

  it('refuses an order for nothing it knows', async () => {
    const reply = await post('fernhill', '/strange/order', { case: 'constructor' })
    expect([reply.status, shop.orders()]).toEqual([400, []])
  })
})

describe('the server', () => {
  it('answers an unknown path and an unknown host with a friendly 404', async () => {
    for (const name of shopNames) {
      const reply = await ask(name, '/no/such/page')
      expect([reply.status, reply.headers['content-type']]).toEqual([404, 'text/html; charset=utf-8'])
      expect(reply.body).toContain('An invented shop. Nothing is sold here.')
    }
    const lost = await askHost(`nowhere.localhost:${shop.port}`, '/')
    expect(lost.status).toBe(404)
    expect(lost.body).toContain(`http://corvid.localhost:${shop.port}/`)
    expect((await ask('fernhill', '/product/no-such-thing')).status).toBe(400)
  })

  it('carries the note and loads nothing from elsewhere on every page', async () => {
    const pages: [ShopName, string][] = [
      ...shopNames.map((name): [ShopName, string] => [name, '/']),
      ['fernhill', '/product/trowel'],
      ['fernhill', '/basket?basket=trowel:1'],
      ['fernhill', '/checkout?basket=trowel:1'],
      ['fernhill', checkoutPath('fernhill', 'trowel:1')],
      ['lunaire', checkoutPath('lunaire', 'carnet:1')],
      ['corvid', '/score/night-ferry'],
      ['corvid', checkoutPath('corvid', 'night-ferry:1')],
      ...strangePaths.map((path): [ShopName, string] => ['fernhill', path]),
    ]
    for (const [name, path] of pages) {
      const { status, body } = await ask(name, path)
      expect([path, status]).toEqual([path, 200])
      expect(body).toContain('An invented shop. Nothing is sold here.')
      const targets = [...body.matchAll(/(?:src|href|action)="([^"]*)"/g)].map((match) => match[1] ?? '')
      expect(targets.filter((target) => !/^(\/(?!\/)|data:)/.test(target))).toEqual([])
      for (const target of targets.filter((found) => /^\/.*\.(css|js)$/.test(found))) {
        expect([target, (await ask(name, target)).status]).toEqual([target, 200])
      }
    }
  })

  it('serves every script its scripts ask for', async () => {
    expect(await scriptsFrom('corvid', '/elements/checkout.js')).toHaveLength(5)
    expect(await scriptsFrom('lunaire', '/scripts/shop.js')).toHaveLength(7)
  })

  it('sells cheap and dear things in every shop', () => {
    for (const name of shopNames) {
      const prices = shops[name].products.map((product) => product.cents)
      expect(Math.min(...prices)).toBe(415)
      expect(Math.max(...prices)).toBeGreaterThan(60_000)
    }
  })

  it('numbers orders over all shops, also after they were cleared', async () => {
    await post('corvid', '/order', { basket: 'heron-waltz:1' })
    const before = shop.orders()[0]?.at ?? 0
    shop.clearOrders()
    await post('fernhill', '/checkout/place', { basket: 'trowel:1', terms: 'yes' })
    expect(shop.orders().map((order) => order.at)).toEqual([before + 1])
  })

  it('keeps the late total back while it answers others, and drops it when closed', async () => {
    const slow = await startDemoShop({ delayMs: 3_600_000 })
    const late = sendTo(slow.port, `lunaire.localhost:${slow.port}`, '/devis?basket=carnet:1')
    const dropped = expect(late).rejects.toThrow()
    expect((await sendTo(slow.port, `lunaire.localhost:${slow.port}`, '/')).status).toBe(200)
    expect(slow.requests().map((seen) => seen.path)).toContain('/devis')
    await slow.close()
    await dropped
  })

  it('lets the late total go once its time is over', async () => {
    const slow = await startDemoShop({ delayMs: 40 })
    const start = performance.now()
    const reply = await sendTo(slow.port, `lunaire.localhost:${slow.port}`, '/devis?basket=carnet:1')
    // Node's timers count whole milliseconds, so one may be missing.
    expect(performance.now() - start).toBeGreaterThanOrEqual(39)
    expect(reply.status).toBe(200)
    await slow.close()
  })
})

/** A module script and all that it imports, each of which must be served. */
async function scriptsFrom(name: ShopName, entry: string): Promise<string[]> {
  const found = [entry]
  for (const path of found) {
    const reply = await ask(name, path)
    expect([path, reply.status]).toEqual([path, 200])
    for (const [, file] of reply.body.matchAll(/(?:from|import) '\.\/([\w-]+\.js)'/g)) {
      const next = entry.replace(/[\w-]+\.js$/, `${file}`)
      if (!found.includes(next)) found.push(next)
    }
  }
  return found
}

interface Answer {
  readonly status: number
  readonly headers: IncomingHttpHeaders
  readonly body: string
}

interface Ask {
  readonly method?: string
  readonly body?: string
  readonly headers?: Readonly<Record<string, string>>
}

function ask(name: ShopName, path: string, options: Ask = {}): Promise<Answer> {
  return askHost(`${name}.localhost:${shop.port}`, path, options)
}

function askHost(host: string, path: string, options: Ask = {}): Promise<Answer> {
  return sendTo(shop.port, host, path, options)
}

async function sendTo(port: number, host: string, path: string, options: Ask = {}): Promise<Answer> {
  const { method = 'GET', body = '', headers = {} } = options
  const outgoing = request({ host: '127.0.0.1', port, path, method, headers: { ...headers, host } })
  const answered = new Promise<Answer>((resolve, reject) => {
    outgoing.once('error', reject)
    outgoing.once('response', (response) => {
      let text = ''
      response.setEncoding('utf8')
      response.on('data', (chunk: string) => {
        text += chunk
      })
      response.once('error', reject)
      response.once('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, body: text }))
    })
  })
  outgoing.end(body)
  return answered
}

function post(name: ShopName, path: string, fields: Readonly<Record<string, string>>): Promise<Answer> {
  const headers = { 'content-type': 'application/x-www-form-urlencoded' }
  return ask(name, path, { method: 'POST', body: new URLSearchParams(fields).toString(), headers })
}

/** Posts a form of a page as a browser would: its hidden fields as they stand, and what a person fills in. */
function submit(name: ShopName, body: string, selector: string, filled: Record<string, string>): Promise<Answer> {
  const page = new JSDOM(body).window.document
  const form = page.querySelector(selector)
  if (form === null) throw new Error(`The page has no ${selector}.`)
  const hidden = [...form.querySelectorAll('input[type=hidden]')].map((input) => [
    input.getAttribute('name') ?? '',
    input.getAttribute('value') ?? '',
  ])
  return post(name, form.getAttribute('action') ?? '', { ...Object.fromEntries(hidden), ...filled })
}

async function document(name: ShopName, path: string): Promise<Document> {
  const reply = await ask(name, path)
  expect([path, reply.status]).toEqual([path, 200])
  return new JSDOM(reply.body).window.document
}

function text(page: Document, selector: string): string {
  const found = page.querySelector(selector)
  if (found === null) throw new Error(`The page has no ${selector}.`)
  return found.textContent ?? ''
}

function amount(shown: string): string {
  return shown.replace(/[$€,]/g, '')
}

const anyBasket = fc.constantFrom(...shopNames).chain((name) =>
  fc.record({
    name: fc.constant(name),
    lines: fc.uniqueArray(
      fc.tuple(fc.constantFrom(...shops[name].products.map((product) => product.id)), fc.integer({ min: 1, max: 99 })),
      { minLength: 1, selector: ([id]) => id },
    ),
    shipping: fc.constantFrom(...shops[name].shipping.map((option) => option.id)),
  }),
)

function decimalTotal(name: ShopName, lines: readonly (readonly [string, number])[], shipping: string): string {
  const facts = shops[name]
  const items = lines.reduce((sum, [id, quantity]) => {
    const product = facts.products.find((candidate) => candidate.id === id)
    return sum.plus(new Decimal(product?.cents ?? Number.NaN).div(100).times(quantity))
  }, new Decimal(0))
  const option = facts.shipping.find((candidate) => candidate.id === shipping)
  const free = option?.freeFromCents !== undefined && items.gte(new Decimal(option.freeFromCents).div(100))
  const net = items.plus(free ? 0 : new Decimal(option?.cents ?? Number.NaN).div(100))
  const rates = { fernhill: ['0.05'], lunaire: ['0.05', '0.09975'], corvid: ['0.05'] }[name]
  const taxes = rates.map((rate) => net.times(rate).toDecimalPlaces(2, Decimal.ROUND_HALF_UP))
  return Decimal.sum(net, ...taxes).toFixed(2)
}

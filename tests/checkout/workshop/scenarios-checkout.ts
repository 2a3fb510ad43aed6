import type { Block, Plan, Scenario, Shop, SumRow } from './plan.ts'
import { checkoutPath, goodsOf, payHere, type Reckoning, reckon, type Wishes } from './scenario-parts.ts'

/** A checkout from its sum: heading, lines of goods, sum, payment and button. */
function checkout(shop: Shop, sum: Reckoning, more: readonly Block[] = [], extra: Partial<Plan> = {}): Plan {
  const pay = payHere(shop, sum.total)
  return {
    path: checkoutPath(shop),
    title: shop.say('checkout'),
    top: [{ kind: 'heading', text: shop.say('checkout') }],
    middle: [{ kind: 'sums', rows: sum.rows }, ...more, ...pay.middle],
    end: pay.end,
    stages: ['checkout'],
    total: sum.total,
    ...extra,
  }
}

const linesOf = (lines: ReturnType<typeof goodsOf>['lines']): Block => ({ kind: 'lines', lines })

function plain(name: string, kind: Scenario['kind'], wishes: Wishes, withLines = true): Scenario {
  return {
    name,
    kind,
    plan: (shop) => {
      const { lines, sum } = goodsOf(shop)
      return checkout(shop, reckon(shop, sum, wishes), withLines ? [linesOf(lines)] : [])
    },
  }
}

export const checkouts: readonly Scenario[] = [
  plain('goods, shipping and tax added', 'one page', { shipping: true, tax: 'added' }),
  plain('tax contained in the total', 'one page', { shipping: true, tax: 'contained' }),
  plain('a discount and a fee', 'one page', { discount: true, fee: true }),
  plain('only the sums, named "to pay"', 'one page', { name: 'due' }, false),
  plain('only the sums, named "total"', 'step', { name: 'total' }, false),
  {
    name: 'net, tax and gross',
    kind: 'one page',
    plan: (shop) => {
      const net = shop.price(2000, 60000)
      const tax = shop.share(net, 20)
      const rows: SumRow[] = [
        { label: shop.say('net'), amount: net },
        { label: shop.say('tax'), amount: tax },
        { label: shop.say('total'), amount: net + tax, strong: true },
      ]
      return checkout(shop, { rows, total: net + tax })
    },
  },
  {
    name: 'ways of sending to choose from, the chosen one in the sum',
    kind: 'step',
    plan: (shop) => {
      const { lines, sum } = goodsOf(shop)
      const [legend = '', one = '', two = ''] = shop.list('ways')
      const sending = shop.price(290, 990)
      const rows: SumRow[] = [
        { label: shop.say('items'), amount: sum },
        { label: shop.say('shipping'), amount: sending },
        { label: shop.say('total'), amount: sum + sending, strong: true },
      ]
      const ways: Block = {
        kind: 'ways',
        legend,
        ways: [
          [one, sending],
          [two, shop.price(1300, 1990)],
        ],
      }
      return checkout(shop, { rows, total: sum + sending }, [linesOf(lines), ways])
    },
  },
  {
    name: 'several sellers with sums of their own, and one of all',
    kind: 'marketplace',
    plan: (shop) => {
      const sellers = [shop.price(1000, 20000), shop.price(1000, 20000)] as const
      const post = [shop.price(200, 900), shop.price(200, 900)] as const
      const own = sellers.map(
        (goods, at): Block => ({
          kind: 'sums',
          rows: [
            { label: `${at === 0 ? 'Brindle & Co' : 'Osier House'} – ${shop.say('items')}`, amount: goods },
            { label: shop.say('shipping'), amount: post[at] ?? 0 },
          ],
        }),
      )
      const total = sellers[0] + sellers[1] + post[0] + post[1]
      const rows: SumRow[] = [{ label: shop.say('due'), amount: total, strong: true }]
      return checkout(shop, { rows, total }, own)
    },
  },
  {
    name: 'weights and prices by the kilogram',
    kind: 'grocery',
    plan: (shop) => {
      const { lines } = goodsOf(shop)
      const weighed = lines.map((line) => {
        const grams = shop.int(2, 30) * 50
        const sum = shop.share(line.unit, grams / 10)
        return { name: line.name, count: `${grams} g × ${shop.money(line.unit)}/kg`, unit: line.unit, sum }
      })
      const items = weighed.reduce((all, line) => all + line.sum, 0)
      return checkout(shop, reckon(shop, items, { tax: 'none', shipping: true }), [{ kind: 'lines', lines: weighed }])
    },
  },
  {
    name: 'a deposit now, the rest on arrival',
    kind: 'travel',
    plan: (shop) => {
      const stay = shop.price(20000, 200000)
      const now = shop.share(stay, 30)
      const rows: SumRow[] = [
        { label: shop.say('total'), amount: stay },
        { label: shop.say('dueNow'), amount: now, strong: true },
        { label: shop.say('dueLater'), amount: stay - now },
      ]
      return checkout(shop, { rows, total: now })
    },
  },
  {
    name: 'a stay with nights, a fee and tax, all paid at once',
    kind: 'travel',
    plan: (shop) => {
      const night = shop.price(5000, 20000)
      const nights = shop.int(2, 9)
      const lines = [{ name: shop.list('goods')[0] ?? '', count: String(nights), unit: night, sum: night * nights }]
      return checkout(
        shop,
        reckon(shop, night * nights, { shipping: false, fee: true, tax: 'added', discount: false }),
        [{ kind: 'lines', lines }],
      )
    },
  },
  plain('a file to download: nothing is sent', 'download', { shipping: false, discount: false }),
  {
    name: 'one thing to download, nothing but its total',
    kind: 'download',
    plan: (shop) => {
      const total = shop.price(200, 9000)
      return checkout(shop, { rows: [{ label: shop.say('due'), amount: total, strong: true }], total })
    },
  },
  {
    name: 'a trial: nothing today, then a price by the month',
    kind: 'subscription',
    plan: (shop) => {
      const month = shop.price(400, 3000)
      const rows: SumRow[] = [{ label: shop.say('dueNow'), amount: 0, strong: true }]
      return checkout(shop, { rows, total: 0 }, [{ kind: 'text', text: shop.put('monthly', month) }])
    },
  },
  {
    name: 'a first month cheaper than the next',
    kind: 'subscription',
    plan: (shop) => {
      const month = shop.price(900, 3000)
      const first = shop.share(month, 50)
      const rows: SumRow[] = [
        { label: shop.say('items'), amount: month },
        { label: shop.say('discount'), amount: first - month },
        { label: shop.say('dueNow'), amount: first, strong: true },
      ]
      return checkout(shop, { rows, total: first }, [{ kind: 'text', text: shop.put('monthly', month) }])
    },
  },
  {
    name: 'instalments offered beside the total',
    kind: 'instalments',
    plan: (shop) => {
      const { lines, sum } = goodsOf(shop)
      const made = reckon(shop, sum)
      return checkout(shop, made, [
        linesOf(lines),
        { kind: 'text', text: shop.put('instalment', shop.share(made.total, 33)) },
      ])
    },
  },
  {
    name: 'a gift card takes off a part',
    kind: 'gift card',
    plan: (shop) => {
      const { sum } = goodsOf(shop)
      const made = reckon(shop, sum, { tax: 'none', name: 'total' })
      const gift = shop.share(made.total, shop.int(10, 60))
      const rows: SumRow[] = [
        ...made.rows,
        { label: shop.say('gift'), amount: -gift },
        { label: shop.say('due'), amount: made.total - gift, strong: true },
      ]
      const left: Block = { kind: 'text', text: shop.put('giftLeft', shop.price(100, 5000)) }
      return checkout(shop, { rows, total: made.total - gift }, shop.often(0.5) ? [left] : [])
    },
  },
  {
    name: 'a gift card pays for all',
    kind: 'gift card',
    plan: (shop) => {
      const { sum } = goodsOf(shop)
      const rows: SumRow[] = [
        { label: shop.say('items'), amount: sum },
        { label: shop.say('gift'), amount: -sum },
        { label: shop.say('due'), amount: 0, strong: true },
      ]
      return checkout(shop, { rows, total: 0 })
    },
  },
  {
    name: 'the total restated about in another money',
    kind: 'two currencies',
    plan: (shop) => {
      const { sum } = goodsOf(shop)
      const made = reckon(shop, sum)
      const other = `≈ ${shop.pick(['CHF', 'AUD', 'SGD', 'CAD'])} ${shop.int(10, 999)}.${shop.int(10, 99)}`
      return checkout(shop, made, [{ kind: 'text', text: other }])
    },
  },
  {
    name: 'a gift of money, with a fee carried by the giver',
    kind: 'donation',
    plan: (shop) => {
      const gift = shop.price(500, 20000)
      const fee = shop.share(gift, 3)
      const [legend = ''] = shop.list('goods')
      const rows: SumRow[] = [
        { label: shop.say('items'), amount: gift },
        { label: shop.say('fee'), amount: fee },
        { label: shop.say('total'), amount: gift + fee, strong: true },
      ]
      const choose: Block = {
        kind: 'ways',
        legend,
        ways: [
          [shop.money(gift), gift],
          [shop.money(gift * 2), gift * 2],
        ],
      }
      return checkout(shop, { rows, total: gift + fee }, shop.often(0.5) ? [choose] : [])
    },
  },
  {
    name: 'seats with a fee for each order',
    kind: 'tickets',
    plan: (shop) => {
      const { lines, sum } = goodsOf(shop, 2)
      return checkout(shop, reckon(shop, sum, { shipping: false, fee: true, tax: 'none' }), [linesOf(lines)])
    },
  },
  {
    name: 'two ways to pay at once, each with a button',
    kind: 'one page',
    plan: (shop) => {
      const { sum } = goodsOf(shop)
      const made = checkout(shop, reckon(shop, sum))
      const last = made.end[0]
      if (last?.kind !== 'buttons') throw new TypeError('A checkout ends in buttons.')
      return { ...made, top: [...made.top, { kind: 'buttons', buttons: last.buttons.filter((each) => each.orders) }] }
    },
  },
]

import {
  addDays,
  type Book,
  type CalendarDate,
  chargeOrder,
  confirmOrder,
  dueDates,
  type Entry,
  expectRefund,
  type Household,
  holdOrder,
  money,
  type OrderId,
  type OrderWish,
  ofMinor,
  orderId,
  type PotId,
  potId,
  type Renewal,
  refundOrder,
  releaseOrder,
  type Stamp,
  workOut,
} from '../../src/index.ts'

/** One step of an order: so many days ago, made from the book as it then is. */
interface Step {
  readonly ago: number
  readonly make: (book: Book, stamp: Stamp, order: OrderId) => Entry
}

const cad = (cents: number) => ofMinor('CAD', cents)
const clothes = potId('clothes')
const groceries = potId('groceries')
const things = potId('household')
const presents = potId('presents')
const tyres = potId('winter-tyres')

/** Subscriptions of the household, with next days that follow from the day the demo is opened on. */
export function demoRenewals(today: CalendarDate) {
  const monthly = { unit: 'month', count: 1 } as const
  return [
    {
      id: 'film-club',
      name: 'Film club',
      shop: 'lantern-films.example',
      pot: potId('household'),
      amount: 1_299,
      first: addDays(today, -57),
      every: monthly,
    },
    {
      id: 'pattern-library',
      name: 'Pattern library',
      shop: 'wool-and-weather.example',
      pot: potId('clothes'),
      amount: 5_400,
      first: addDays(today, -300),
      every: { unit: 'year', count: 1 } as const,
    },
  ] satisfies Renewal[]
}

/**
 * The lives of orders: one split over two pots and charged in part, money back that came and money that is expected, one
 * abroad, an estimate with its margin, instalments, a hold that has lapsed, and what renews.
 *
 * @param next a stamp so many days before today, with a new id
 */
export function orderLives(
  household: Household,
  today: CalendarDate,
  book: Book,
  next: (date: CalendarDate) => Stamp,
  post: (entry: Entry) => Book,
): void {
  let now = book
  const live = (wish: OrderWish, tagged: number, ...steps: readonly Step[]): void => {
    const first = next(addDays(today, -tagged))
    const order = orderId(first.id)
    now = post(holdOrder(now, first, order, workOut(household, wish, first.date).purchase))
    for (const { ago, make } of steps) now = post(make(now, next(addDays(today, -ago)), order))
  }
  live(splitOrder, 6, confirmed(6, 'TT-3391'), {
    ago: 4,
    make: (b, s, o) => chargeOrder(b, s, o, cad(2_058), undefined, { items: [0] }),
  })
  live(
    one('wool-and-weather.example', 6_400, clothes),
    16,
    confirmed(16, 'WW-7120'),
    charged(14, 6_400),
    {
      ago: 9,
      make: (b, s, o) => expectRefund(b, s, o, cad(3_100)),
    },
    { ago: 4, make: (b, s, o) => refundOrder(b, s, o, cad(3_100)) },
  )
  live(one('lantern-lamps.example', 4_850, things), 12, confirmed(12, '20417'), charged(10, 4_850), {
    ago: 3,
    make: (b, s, o) => expectRefund(b, s, o, cad(4_850)),
  })
  live(
    abroad,
    20,
    confirmed(20, 'LL 88-2'),
    {
      ago: 17,
      make: (b, s, o) => chargeOrder(b, s, o, cad(5_771), undefined, { foreign: money('EUR', '38.00') }),
    },
    { ago: 17, make: (b, s, o) => releaseOrder(b, s, o, 'complete') },
  )
  live(one('millrace-larder.example', 5_290, groceries, '10'), 13, confirmed(13, 'ML-5502'), charged(12, 5_412), {
    ago: 12,
    make: (b, s, o) => releaseOrder(b, s, o, 'complete'),
  })
  live(one('millrace-larder.example', 4_640, groceries, '10'), 1, confirmed(1, 'ML-5577'))
  live(inParts(today), 20, confirmed(20, 'HW-91'), charged(19, 8_000))
  live(one('tallow-and-twine.example', 1_420, things), 18, confirmed(18, 'TT-3340'))
  for (const renewal of demoRenewals(today).filter((r) => r.every.unit === 'month')) {
    for (const due of dueDates(renewal.first, renewal.every, renewal.first, addDays(today, -1))) {
      const stamp = next(due)
      const order = orderId(stamp.id)
      const wish = { ...one(renewal.shop, renewal.amount, renewal.pot), renewal: { id: renewal.id, due } }
      now = post(holdOrder(now, stamp, order, workOut(household, wish, due).purchase))
      now = post(chargeOrder(now, next(due), order, cad(renewal.amount)))
    }
  }
}

/** Candles for the house and a game as a present, with 4.90 of shipping that follows both. */
const splitOrder: OrderWish = {
  shop: 'tallow-and-twine.example',
  total: cad(4_530),
  split: {
    by: 'item',
    items: [
      { name: 'Beeswax candles, six', amount: cad(1_840), pot: things },
      { name: 'The Ferry, a game', amount: cad(2_200), pot: presents },
    ],
    shared: [{ kind: 'shipping', amount: cad(490) }],
  },
}

const abroad: OrderWish = {
  shop: 'lys-og-linned.example',
  total: money('EUR', '38.00'),
  split: { by: 'pot', pot: things },
  foreign: { rate: { home: '1.4850', per: '1' }, feePercent: '2.5', from: 'given' },
}

/** Three times 80.00, each held from its day. */
function inParts(today: CalendarDate): OrderWish {
  const dates = [-20, 10, 40].map((n) => addDays(today, n))
  const split = { by: 'pot', pot: tyres } as const
  return { shop: 'hub-and-wheel.example', total: cad(24_000), split, instalments: { reserve: 'by-part', dates } }
}

function one(shop: string, cents: number, pot: PotId, marginPercent?: string): OrderWish {
  const wish: OrderWish = { shop, total: cad(cents), split: { by: 'pot', pot } }
  return marginPercent === undefined ? wish : { ...wish, marginPercent }
}

function charged(ago: number, cents: number): Step {
  return { ago, make: (b, s, o) => chargeOrder(b, s, o, cad(cents)) }
}

function confirmed(ago: number, number: string): Step {
  return {
    ago,
    make: (b, s, o) => {
      const said = confirmOrder(b, s, o, { number, from: 'page' })
      if (said.kind !== 'confirmed') throw new Error(`The demo confirms ${number} twice.`)
      return said.entry
    },
  }
}

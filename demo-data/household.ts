import { addDays, formatISO, getDay, parseISO } from 'date-fns'
import {
  accountId,
  append,
  type Book,
  balanceOf,
  type CalendarDate,
  calendarDate,
  chargeOrder,
  confirmOrder,
  type DeviceId,
  type Earner,
  type Entry,
  type EntryId,
  entriesOf,
  fillPot,
  type Household,
  holdOrder,
  type OrderId,
  ofMinor,
  openBook,
  openPot,
  orderId,
  type PaySchedule,
  type PotPlan,
  potId,
  receivePay,
  type Stamp,
  spendFrom,
} from '../src/index.ts'
import { fortnight } from './household/fortnight.ts'
import { demoRenewals, orderLives } from './household/orders.ts'
import { type Cents, type DemoPlan, demoPots } from './household/pots.ts'

const TIME_ZONE = 'America/Toronto'
const TURNS = 6
const DAY_MS = 86_400_000
const PAY_CENTS = 72_400

/** What the demo is made with: the day it is opened on, ids that sort by time, and the device. */
export interface DemoMaker {
  readonly now: number
  readonly today: (timeZone: string) => CalendarDate
  readonly newId: (msecs: number) => EntryId
  readonly device: DeviceId
}

type DemoSettings = Pick<Household, 'currency' | 'timeZone' | 'monthStartDay' | 'planning'> & {
  pots: (Household['pots'][number] & { fill: { cash: number; card: number } })[]
  accounts: Household['accounts'][number][]
  schedule: PaySchedule
  earners: Earner[]
  renewals: ReturnType<typeof demoRenewals>
  ordering: { marginPercent: string; foreignFeePercent: string }
  isDemo: boolean
}

/**
 * An invented household with twelve weeks of history that ends today: paid every second Friday in Canadian dollars, whose
 * cash rounds to five cents. Its Piano lessons pot has 41.20 left (38.00 cash, 12.50 card, 9.30 held).
 */
export function demoHousehold(maker: DemoMaker): { settings: DemoSettings; entries: Entry[] } {
  const today = maker.today(TIME_ZONE)
  const lastPay = addDays(parseISO(today), -((getDay(parseISO(today)) + 2) % 7))
  const firstPay = addDays(lastPay, -14 * TURNS)
  const schedule: PaySchedule = { rhythm: 'every-two-weeks', first: dateOf(firstPay) }
  const settings: DemoSettings = {
    currency: 'CAD',
    timeZone: TIME_ZONE,
    monthStartDay: 1,
    pots: demoPots.map((row) => row.pot),
    accounts: [{ id: accountId('main'), name: 'Bank account', kind: 'bank' }],
    schedule,
    earners: [{ id: 'ingunn', name: 'Ingunn', pay: PAY_CENTS, schedules: [schedule] }],
    renewals: demoRenewals(today),
    ordering: { marginPercent: '10', foreignFeePercent: '2.5' },
    planning: { sinkingFunds: 'after-essentials', roundTo: 500 },
    isDemo: true,
  }
  // Told twice: once from nothing to see what the weeks come to, then from the opening amounts that lead to today's.
  const from = addDays(firstPay, -1)
  const drift = tell(maker, settings, from, today, new Map())
  const opening: Cents = new Map(
    demoPots.map(({ pot, now }) => {
      const cash = now.cash - balanceOf(drift, `cash:${pot.id}`)
      return [pot.id, { cash, card: now.card - balanceOf(drift, `card:${pot.id}`) }]
    }),
  )
  const planned = demoPots.map(({ pot, plan }) => {
    const { cash, card } = opening.get(pot.id) ?? { cash: 0, card: 0 }
    return { ...pot, plan: planOf(plan, lastPay, { date: dateOf(from), in: cash + card }) }
  })
  const entries = [...entriesOf(tell(maker, settings, from, today, opening))]
  return { settings: { ...settings, pots: planned }, entries }
}

/** A plan whose goal, if it has one, is due some days after a pay and was begun with the household's history. */
function planOf(
  { goal, ...plan }: DemoPlan,
  lastPay: Date,
  since: NonNullable<NonNullable<PotPlan['goal']>['since']>,
): PotPlan {
  if (!goal) return plan
  const { target, paysAhead, everyYears } = goal
  const due = dateOf(addDays(lastPay, 14 * paysAhead + 5))
  return { ...plan, goal: { target, due, since, ...(everyYears === undefined ? {} : { everyYears }) } }
}

/** Tells the household's weeks day by day up to today. */
function tell(maker: DemoMaker, settings: DemoSettings, from: Date, today: CalendarDate, opening: Cents): Book {
  const { schedule: _, isDemo: __, ...rest } = settings
  const household: Household = { ...rest, payDates: [] }
  const cents = (minor: number) => ofMinor('CAD', minor)
  let book = openBook(household, [])
  let ticks = maker.now - DAY_MS * 90
  const stamp = (date: CalendarDate) => {
    ticks += 1000
    return { id: maker.newId(ticks), device: maker.device, date }
  }
  const post = (entry: Entry): void => {
    book = append(book, entry)
  }
  for (const { pot } of demoPots) {
    const amounts = opening.get(pot.id)
    if (!amounts || amounts.cash + amounts.card === 0) continue
    post(openPot(household, stamp(dateOf(from)), pot.id, { cash: cents(amounts.cash), card: cents(amounts.card) }))
  }
  for (let turn = 0; turn <= TURNS; turn++) {
    const pay = addDays(from, 1 + 14 * turn)
    const day = (n: number): CalendarDate => dateOf(addDays(pay, n))
    post(receivePay(household, stamp(day(0)), cents(PAY_CENTS)))
    for (const { pot } of demoPots) {
      post(fillPot(household, stamp(day(0)), pot.id, { cash: cents(pot.fill.cash), card: cents(pot.fill.card) }))
    }
    // Before what came last, so that the latest entries are of the last days.
    if (turn === TURNS) {
      orderLives(household, today, book, stamp, (entry) => {
        post(entry)
        return book
      })
    }
    const happenings = turn === TURNS ? lately(lastDay(day, today)) : fortnight(turn)
    for (const h of happenings) {
      if (day(h.day) > today) continue
      if ('cash' in h) {
        post(spendFrom(household, stamp(day(h.day)), potId(h.pot), 'cash', cents(h.cash), h.purpose))
        continue
      }
      const order = orderId(stamp(day(h.day)).id)
      const purchase = { shop: h.shop, lines: [{ pot: potId(h.pot), amount: cents(h.order) }] }
      post(holdOrder(book, stamp(day(h.day)), order, purchase))
      const charged = day(h.day + h.chargedAfter)
      if (charged <= today) post(chargeOrder(book, stamp(charged), order, cents(h.order)))
      else post(wentThrough(book, stamp(day(h.day)), order))
    }
  }
  return book
}

/** An order that is held still: the shop confirmed it. */
function wentThrough(book: Book, stamp: Stamp, order: OrderId): Entry {
  const said = confirmOrder(book, stamp, order, { number: 'CO-4471', from: 'page' })
  if (said.kind !== 'confirmed') throw new Error('The demo confirms one order twice.')
  return said.entry
}

/** Since the latest pay: a few spends, and one order at Corvid the card has not charged yet (9.30). */
function lately(day: number): ReturnType<typeof fortnight> {
  const soon = Math.min(day, 1)
  return [
    { day: 0, pot: 'groceries', cash: 7_895, purpose: 'weekly shop' },
    { day: soon, pot: 'market', cash: 2_600, purpose: 'leeks, honey' },
    { day: day, pot: 'piano-lessons', shop: 'corvid.localhost', order: 930, chargedAfter: 30 },
  ]
}

function lastDay(day: (n: number) => CalendarDate, today: CalendarDate): number {
  let n = 0
  while (n < 13 && day(n + 1) <= today) n++
  return n
}

function dateOf(date: Date): CalendarDate {
  return calendarDate(formatISO(date, { representation: 'date' }))
}

import { addDays, formatISO, parseISO } from 'date-fns'
import {
  accountId,
  append,
  type Book,
  type CalendarDate,
  calendarDate,
  chargeOrder,
  type DeviceId,
  deviceId,
  type Entry,
  entriesOf,
  entryId,
  fillPot,
  type Household,
  holdOrder,
  type OrderId,
  ofMinor,
  openBookAt,
  orderId,
  type Pot,
  potId,
  receivePay,
  reverse,
  spendFrom,
  sumsOf,
  toCarry,
} from '../src/index.ts'
import { seeded } from './seeded.ts'

/** How large an invented household is made. */
export interface LongHousehold {
  readonly years: number
  readonly pots: number
  readonly entries: number
  /** The same seed gives the same household. */
  readonly seed: number
  /** The last day. */
  readonly until: CalendarDate
}

const DAY_MS = 86_400_000
const DEVICE: DeviceId = deviceId('0193b000-0000-7000-8000-00000000beef')

/**
 * A household of many years, made from a seed: pay and fills every second week, spends at the counter, orders that are
 * charged days later, some of them in parts, and a mistake now and then that is taken back. For measuring what decades
 * cost; the sums are of no interest.
 *
 * @returns the household and its entries in order, their ids sorting by their days
 */
export function longHousehold(size: LongHousehold): { household: Household; entries: Entry[] } {
  const random = seeded(size.seed)
  const pick = (n: number): number => Math.floor(random() * n)
  const pots = Array.from({ length: size.pots }, (_, i) => potOf(i))
  const household: Household = {
    currency: 'CAD',
    timeZone: 'America/Toronto',
    monthStartDay: 1,
    pots,
    accounts: [{ id: accountId('main'), name: 'Bank account', kind: 'bank' }],
    payDates: [],
  }
  const end = parseISO(size.until)
  const days = size.years * 365
  const perDay = size.entries / days
  const entries: Entry[] = []
  const waiting = new Map<number, { order: OrderId; cents: number; parts: number }[]>()
  const wait = (on: number, order: OrderId, cents: number, parts: number): void => {
    waiting.set(on, [...(waiting.get(on) ?? []), { order, cents, parts }])
  }
  let book = openBookAt(household, { sums: {}, before: 0 }, [])
  let made = 0
  let date = calendarDate(dateText(addDays(end, -days)))
  let ticks = 0
  const stamp = (day: number) => {
    ticks += 1
    return { id: idAt(end.getTime() - (days - day) * DAY_MS, ticks), device: DEVICE, date }
  }
  const cents = (minor: number) => ofMinor('CAD', minor)
  const post = (entry: Entry): void => {
    book = append(book, entry)
    entries.push(entry)
    made += 1
  }
  for (let day = 0; day <= days && made < size.entries; day++) {
    date = calendarDate(dateText(addDays(end, day - days)))
    if (day % 14 === 0) {
      // The engine's log of a book that long is not needed to make the next fortnight.
      book = onlyOpen(book)
      post(receivePay(household, stamp(day), cents(size.pots * 9_000)))
      for (const pot of pots) post(fillPot(household, stamp(day), pot.id, { cash: cents(4_000), card: cents(4_500) }))
    }
    for (const due of waiting.get(day) ?? []) {
      const part = Math.ceil(due.cents / due.parts)
      post(chargeOrder(book, stamp(day), due.order, cents(part)))
      if (due.parts > 1) wait(day + 3, due.order, due.cents - part, due.parts - 1)
    }
    while (made < (day + 1) * perDay && made < size.entries) {
      const pot = pots[pick(pots.length)]?.id ?? potId('pot-0')
      if (random() < 0.62) {
        const spend = spendFrom(
          household,
          stamp(day),
          pot,
          random() < 0.7 ? 'cash' : 'card',
          cents(50 + pick(2_500)),
          WORDS[pick(WORDS.length)] ?? '',
        )
        post(spend)
        if (random() < 0.01) post(reverse(book, stamp(day), spend.id))
      } else {
        const at = stamp(day)
        const order = orderId(at.id)
        const amount = 500 + pick(6_000)
        post(
          holdOrder(book, at, order, {
            shop: SHOPS[pick(SHOPS.length)] ?? '',
            lines: [{ pot, amount: cents(amount) }],
          }),
        )
        wait(day + 1 + pick(5), order, amount, random() < 0.1 ? 2 : 1)
      }
    }
  }
  return { household, entries }
}

const WORDS = ['bread', 'milk and eggs', 'a card', 'seeds', 'soup', 'tram', 'paper', 'two lamps', 'apples', 'thread']
const SHOPS = ['corvid.example', 'fernhill.example', 'lunaire.example', 'millrace-larder.example', 'tallow.example']

function potOf(i: number): Pot {
  return {
    id: potId(`pot-${i}`),
    name: `Pot ${i + 1}`,
    kind: 'everyday',
    rule: i % 3 === 0 ? 'block' : 'warn',
    sides: 'both',
    floor: 0,
    fill: { cash: 4_000, card: 4_500 },
    archived: false,
  }
}

/** A UUIDv7 (RFC 9562) of a time, with a counter where the random bits are: the same seed gives the same ids. */
function idAt(msecs: number, count: number): Entry['id'] {
  const time = msecs.toString(16).padStart(12, '0')
  return entryId(`${time.slice(0, 8)}-${time.slice(8)}-7000-8000-${count.toString(16).padStart(12, '0')}`)
}

/** The same balances with only the steps of orders that still hold money at hand. */
function onlyOpen(book: Book): Book {
  return openBookAt(book.household, { sums: sumsOf(book), before: 0 }, toCarry(book, [...entriesOf(book)]))
}

function dateText(date: Date): string {
  return formatISO(date, { representation: 'date' })
}

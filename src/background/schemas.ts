import * as z from 'zod/mini'
import {
  type AccountId,
  type CalendarDate,
  type CurrencyCode,
  type DeviceId,
  type EntryId,
  isCalendarDate,
  isCurrencyCode,
  isMonthName,
  isSlug,
  isUuidV7,
  type MonthName,
  type OrderId,
  type PotId,
} from '../index.ts'

/*
 * The shapes that are let in: what a page asks, and what the store gives back. Everything behind the door is typed by
 * what passed here.
 */

const slug = <T extends string>() => z.custom<T>((v) => typeof v === 'string' && isSlug(v))
const uuid = <T extends string>() => z.custom<T>((v) => typeof v === 'string' && isUuidV7(v))
const short = z.string().check(z.maxLength(400))
/** A decimal text a person typed; `money()` says what is wrong with it. */
const decimal = z.string().check(z.maxLength(40))
const whole = z.int()
const date = z.custom<CalendarDate>((v) => typeof v === 'string' && isCalendarDate(v))
const currency = z.custom<CurrencyCode>((v) => typeof v === 'string' && isCurrencyCode(v))
const potId = slug<PotId>()
const entryId = uuid<EntryId>()
const orderId = uuid<OrderId>()
const nonce = z.string().check(z.regex(/^[0-9a-f]{32}$/))
const none = z.strictObject({})
const readAmount = z.strictObject({ amount: decimal, currency: short })
const dayOfMonth = z.int().check(z.gte(1), z.lte(31))

export const paySchedule = z.discriminatedUnion('rhythm', [
  z.strictObject({ rhythm: z.enum(['weekly', 'every-two-weeks']), first: date }),
  z.strictObject({
    rhythm: z.literal('twice-a-month'),
    first: date,
    days: z.readonly(z.tuple([dayOfMonth, dayOfMonth])),
  }),
  z.strictObject({ rhythm: z.literal('monthly'), first: date, day: dayOfMonth }),
  z.strictObject({ rhythm: z.literal('last-working-day'), first: date }),
])

const at = z.union([z.strictObject({ tab: z.int() }), z.strictObject({ nonce })])

const newPot = z.strictObject({
  id: potId,
  name: z.string().check(z.minLength(1), z.maxLength(200)),
  kind: z.enum(['everyday', 'sinking', 'reserve']),
  rule: z.enum(['block', 'warn', 'allow']),
  sides: z.enum(['both', 'cash', 'card']),
  floor: decimal,
  fillCash: decimal,
  fillCard: decimal,
  openCash: decimal,
  openCard: decimal,
})

const seenPage = z.strictObject({
  stage: z.enum(['product', 'cart', 'checkout', 'confirmation', 'other']),
  total: z.nullable(readAmount),
  figures: z.array(z.strictObject({ label: short, text: short, used: z.boolean(), why: short })).check(z.maxLength(20)),
  placeOrderCount: whole,
})

/** What our own pages may ask. */
export const ownRequests = {
  'book.look': none,
  'book.entries': z.strictObject({ from: z.int().check(z.gte(0)) }),
  'household.create': z.strictObject({
    currency,
    timeZone: short,
    schedule: z.nullable(paySchedule),
    pots: z.array(newPot).check(z.minLength(1), z.maxLength(200)),
  }),
  'household.demo': none,
  'household.leave-demo': none,
  'pot.save': z.strictObject({ id: entryId, pot: newPot, archived: z.boolean() }),
  'spend.add': z.strictObject({
    id: entryId,
    pot: potId,
    side: z.enum(['cash', 'card']),
    amount: decimal,
    purpose: short,
    date,
  }),
  'fill.add': z.strictObject({
    id: entryId,
    pot: potId,
    cash: decimal,
    card: decimal,
    from: z.enum(['unplaced', 'outside']),
    date,
  }),
  'pay.add': z.strictObject({ id: entryId, amount: decimal, date }),
  'entry.undo': z.strictObject({ id: entryId, target: entryId }),
  'checkout.look': z.strictObject({ at }),
  'order.assess': z.strictObject({ shop: short, total: decimal, order: z.nullable(orderId) }),
  'order.tag': z.strictObject({
    id: entryId,
    order: orderId,
    at,
    total: decimal,
    pot: potId,
    reason: z.nullable(z.string().check(z.maxLength(1000))),
  }),
  'order.again': z.strictObject({ at }),
  'panel.close': z.strictObject({ nonce }),
  'shop.watch': z.strictObject({ origin: short }),
  'shop.unwatch': z.strictObject({ host: short }),
  'store.raw': none,
} as const

/** What the gate on a watched shop may ask. */
export const pageRequests = {
  'page.hello': none,
  'page.bring-reader': none,
  'page.seen': z.strictObject({ page: seenPage }),
  'page.held': z.strictObject({ nonce, because: z.enum(['untagged', 'changed', 'placed-before']), page: seenPage }),
  'page.placed': z.strictObject({ order: orderId }),
} as const

/** The outer shape of every message. */
export const envelope = z.strictObject({ command: z.string(), ask: z.unknown() })

const amounts = z.array(z.strictObject({ account: z.string(), amount: whole }))
const base = {
  id: entryId,
  version: z.literal(1),
  device: slug<DeviceId>(),
  date,
  postings: z.custom<[]>((v) => amounts.safeParse(v).success),
  places: z.custom<[]>((v) => amounts.safeParse(v).success),
  note: z.exactOptional(z.string()),
  line: z.exactOptional(z.string()),
  happened: z.exactOptional(date),
}
const lines = z.array(z.strictObject({ pot: potId, amount: whole }))
const goOnReason = z.exactOptional(z.string())
const account = slug<AccountId>()
const month = z.custom<MonthName>((v) => typeof v === 'string' && isMonthName(v))
const pieces = z.array(z.strictObject({ denomination: whole, count: whole }))
const settleEnd = z.union([z.strictObject({ pot: potId }), z.strictObject({ account })])
const sweepTarget = z.union([...settleEnd.def.options, z.strictObject({ debt: z.string().check(z.maxLength(200)) })])
const sides = z.strictObject({ cash: whole, card: whole })
const potMonth = {
  pot: potId,
  name: z.string(),
  carriedIn: sides,
  opened: sides,
  filled: sides,
  spent: sides,
  counted: sides,
  settled: sides,
  swept: sides,
  carriedOut: sides,
  held: whole,
}
const monthSummary = z.strictObject({
  month,
  from: date,
  to: date,
  currency: z.string(),
  pots: z.array(z.strictObject(potMonth)),
  unplaced: whole,
  accounts: z.array(z.strictObject({ account, name: z.string(), balance: whole, agreedOn: z.nullable(date) })),
})

/** An entry as it is stored. Its sums are checked by the book itself. */
export const storedEntry = z.discriminatedUnion('kind', [
  z.strictObject({ ...base, kind: z.literal('opening') }),
  z.strictObject({ ...base, kind: z.literal('pay') }),
  z.strictObject({ ...base, kind: z.literal('fill'), pot: potId }),
  z.strictObject({ ...base, kind: z.literal('spend'), pot: potId, purpose: z.string() }),
  z.strictObject({ ...base, kind: z.literal('order'), order: orderId, shop: z.string(), lines, goOnReason }),
  z.strictObject({ ...base, kind: z.literal('adjust'), order: orderId, lines, goOnReason }),
  z.strictObject({ ...base, kind: z.literal('charge'), order: orderId, lines }),
  z.strictObject({ ...base, kind: z.literal('release'), order: orderId }),
  z.strictObject({ ...base, kind: z.literal('refund'), order: orderId, lines }),
  z.strictObject({ ...base, kind: z.literal('count'), pot: potId, pieces, expected: whole }),
  z.strictObject({ ...base, kind: z.literal('settle'), from: settleEnd, to: settleEnd, pieces }),
  z.strictObject({ ...base, kind: z.literal('sweep'), pot: potId, to: sweepTarget, month }),
  z.strictObject({ ...base, kind: z.literal('transfer'), from: account, to: account }),
  z.strictObject({
    ...base,
    kind: z.literal('close'),
    month,
    through: date,
    summary: monthSummary,
    digest: z.string(),
  }),
  z.strictObject({ ...base, kind: z.literal('reopen'), month, reason: z.string() }),
  z.strictObject({ ...base, kind: z.literal('agree'), account, on: date, balance: whole }),
  z.strictObject({ ...base, kind: z.literal('seen'), entries: z.array(entryId), line: z.string() }),
  z.strictObject({ ...base, kind: z.literal('reversal'), reverses: entryId }),
])

const pot = z.strictObject({
  id: potId,
  name: z.string(),
  kind: z.enum(['everyday', 'sinking', 'reserve']),
  rule: z.enum(['block', 'warn', 'allow']),
  sides: z.enum(['both', 'cash', 'card']),
  floor: whole,
  fill: z.strictObject({ cash: whole, card: whole }),
  archived: z.boolean(),
})

const openTag = z.strictObject({
  order: orderId,
  shop: z.string(),
  pot: potId,
  amount: z.strictObject({ currency, minor: whole }),
  read: z.nullable(readAmount),
  taggedAt: z.number(),
  placedAt: z.nullable(z.number()),
})

const householdSettings = z.strictObject({
  currency,
  timeZone: z.string(),
  monthStartDay: whole,
  pots: z.array(pot),
  accounts: z.array(z.strictObject({ id: slug<AccountId>(), name: z.string(), kind: z.enum(['bank', 'credit']) })),
  schedule: z.nullable(paySchedule),
  isDemo: z.boolean(),
})

/** A stretch of the book as it is stored. */
export const storedSegment = z.strictObject({
  /** Digest of the segment before, empty for the first. */
  before: z.string(),
  entries: z.array(storedEntry),
  digest: z.string(),
})

/** The head of the store: settings and workflow beside the book, its balances, and what the entries must add up to. */
export const storedHead = z.strictObject({
  format: z.literal(2),
  generation: whole,
  device: slug<DeviceId>(),
  settings: householdSettings,
  watched: z.array(z.string()),
  tags: z.record(z.string(), openTag),
  /** Which of the books that may lie side by side is the book. */
  series: whole,
  /** The place the next entry takes; places of a segment that was lost stay empty. */
  entries: whole,
  segments: whole,
  /** Digest of the last segment. */
  last: z.string(),
  /** The window's first segment, and the digest before it. */
  first: whole,
  firstBefore: z.string(),
  /** Digest of the entries carried along from before the window. */
  carried: z.string(),
  /** Balances after the last entry, in minor units by account; zeros are left out. */
  sums: z.record(z.string(), whole),
  /** Segments that could not be read when the whole book was last looked through. */
  gaps: z.array(whole),
  /** What was found and mended by itself, latest last. */
  mended: z.array(z.strictObject({ date, what: z.literal('sums') })),
  /** Digest of this head without `sum`. */
  sum: z.string(),
})

/** The head of format 1, before the balances lay in it. Kept for its upgrade. */
export const storedHead1 = z.strictObject({
  format: z.literal(1),
  generation: whole,
  device: slug<DeviceId>(),
  settings: householdSettings,
  watched: z.array(z.string()),
  tags: z.record(z.string(), openTag),
  entries: whole,
  segments: whole,
  sealed: z.string(),
  /** Chain of the digests of all segments. */
  chain: z.string(),
  sum: z.string(),
})

import * as z from 'zod/mini'
import { currency, date, decimal, entryId, lines, orderId, potId, short, slug, whole } from './shapes.ts'

/* The shapes of an order's life: what a page asks, what its entries keep, and what the household has decided. */

const MOST_ITEMS = 2000
const sharedKind = z.enum(['shipping', 'tax', 'tip', 'fee', 'discount', 'credit', 'difference'])
const place = z.int().check(z.gte(0), z.lte(MOST_ITEMS))
const places = z.array(place).check(z.maxLength(MOST_ITEMS))
const rate = { home: decimal, per: decimal, fee: decimal, from: z.enum(['given', 'seen']) }
const reserve = z.enum(['whole', 'by-part'])
const renewalRef = z.strictObject({ id: slug<string>(), due: date })
const potAmounts = z.array(z.strictObject({ pot: potId, amount: decimal })).check(z.maxLength(200))
const releaseReason = z.enum(['complete', 'lapsed', 'not-placed', 'cancelled'])
const account = z.nullable(slug<string>())

/** An order as a page means it, in decimal texts of the shop's currency. */
const wish = z.strictObject({
  total: decimal,
  currency,
  split: z.discriminatedUnion('by', [
    z.strictObject({ by: z.literal('pot'), pot: potId }),
    z.strictObject({ by: z.literal('amount'), lines: potAmounts, rest: z.nullable(potId) }),
    z.strictObject({
      by: z.literal('share'),
      shares: z.array(z.strictObject({ pot: potId, share: decimal })).check(z.maxLength(200)),
    }),
    z.strictObject({
      by: z.literal('item'),
      items: z.array(z.strictObject({ name: short, amount: decimal, pot: potId })).check(z.maxLength(MOST_ITEMS)),
      shared: z.array(z.strictObject({ kind: sharedKind, amount: decimal })).check(z.maxLength(40)),
    }),
  ]),
  foreign: z.nullable(z.strictObject(rate)),
  margin: z.nullable(decimal),
  credit: z.nullable(decimal),
  instalments: z.nullable(
    z.strictObject({
      reserve,
      dates: z.array(date).check(z.maxLength(60)),
    }),
  ),
  renewal: z.nullable(renewalRef),
})

const every = z.strictObject({ unit: z.enum(['day', 'week', 'month', 'year']), count: whole })
const step = { id: entryId, order: orderId }

/** What our own pages may ask of orders. */
export const orderRequests = {
  'order.weigh': z.strictObject({ shop: short, order: z.nullable(orderId), wish }),
  'order.confirm': z.strictObject({ ...step, number: z.nullable(short), total: z.nullable(decimal) }),
  'order.charge': z.strictObject({
    ...step,
    amount: decimal,
    date,
    lines: z.nullable(potAmounts),
    items: z.nullable(places),
    foreign: z.nullable(decimal),
    account,
    acceptsAbove: z.boolean(),
    /** Names the entry that lets the rest go, where this charge completes the order. */
    complete: z.nullable(entryId),
  }),
  'order.charge-untagged': z.strictObject({
    ...step,
    charge: entryId,
    shop: short.check(z.minLength(1)),
    amount: decimal,
    pots: potAmounts,
    date,
    account,
  }),
  'order.release': z.strictObject({ ...step, why: releaseReason }),
  'order.hold-part': z.strictObject(step),
  'order.expect-refund': z.strictObject({ ...step, amount: decimal, items: z.nullable(places) }),
  'order.refund': z.strictObject({
    ...step,
    amount: decimal,
    date,
    lines: z.nullable(potAmounts),
    items: z.nullable(places),
    account,
  }),
  'renewal.save': z.strictObject({
    id: slug<string>(),
    name: short.check(z.minLength(1)),
    shop: z.nullable(short),
    pot: potId,
    amount: decimal,
    first: date,
    every,
    end: z.nullable(date),
  }),
  'renewal.pay': z.strictObject({ ...step, charge: entryId, renewal: slug<string>(), due: date, date }),
  'order.rules': z.strictObject({ holdDays: whole, marginPercent: decimal, foreignFeePercent: decimal }),
} as const

export const wishShape = wish

/** What an order's entry keeps beside its lines. */
const orderDetails = z.strictObject({
  by: z.exactOptional(z.enum(['item', 'amount', 'share'])),
  items: z.exactOptional(z.array(z.strictObject({ name: z.string(), amount: whole, pot: potId }))),
  shared: z.exactOptional(z.array(z.strictObject({ kind: sharedKind, amount: whole }))),
  foreign: z.exactOptional(z.strictObject({ currency, amount: whole, ...rate })),
  margin: z.exactOptional(whole),
  credit: z.exactOptional(whole),
  instalments: z.exactOptional(z.strictObject({ reserve, parts: z.array(z.strictObject({ date, lines })) })),
  renewal: z.exactOptional(renewalRef),
})

/** Fields that the entries of an order have beside those of all entries. */
export const orderFields = {
  details: { details: z.exactOptional(orderDetails) },
  confirm: {
    order: orderId,
    number: z.exactOptional(z.string()),
    from: z.exactOptional(z.literal('page')),
    lines: z.exactOptional(lines),
  },
  instalment: { order: orderId, part: whole, lines },
  charge: { foreign: z.exactOptional(z.strictObject({ currency, amount: whole })) },
  release: { why: z.exactOptional(releaseReason) },
  items: { items: z.exactOptional(z.array(whole)) },
} as const

/** What a household has decided for its orders, as it is stored. */
export const orderSettings = {
  renewals: z.exactOptional(
    z.array(
      z.strictObject({
        id: slug<string>(),
        name: z.string(),
        shop: z.exactOptional(z.string()),
        pot: potId,
        amount: whole,
        first: date,
        every,
        end: z.exactOptional(date),
      }),
    ),
  ),
  ordering: z.exactOptional(
    z.strictObject({
      holdDays: z.exactOptional(whole),
      marginPercent: z.exactOptional(z.string()),
      foreignFeePercent: z.exactOptional(z.string()),
    }),
  ),
} as const

const read = z.nullable(z.strictObject({ amount: decimal, currency: short }))
const amount = z.strictObject({ currency, minor: whole })
const tagged = {
  order: orderId,
  shop: z.string(),
  amount,
  read,
  taggedAt: z.number(),
  placedAt: z.nullable(z.number()),
}

/** A tag that is not seen through. */
export const openTag = z.strictObject({ ...tagged, lines: z.readonly(z.array(z.strictObject({ pot: potId, amount }))) })

/** As it was stored in format 1, when an order had one pot. */
export const openTag1 = z.strictObject({ ...tagged, pot: potId })

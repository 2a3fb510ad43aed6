import * as z from 'zod/mini'
import type { DeviceId } from '../index.ts'
import { monthendRequests } from './monthend-schemas.ts'
import { orderRequests, wishShape } from './order-schemas.ts'
import { paySchedule, planRequests } from './plan-schemas.ts'
import { currency, date, decimal, entryId, orderId, potId, short, slug, whole } from './shapes.ts'
import { householdSettings, storedEntry } from './stored-schemas.ts'

/* The shapes that are let in by message. Everything behind the door is typed by what passed here. */

const nonce = z.string().check(z.regex(/^[0-9a-f]{32}$/))
const none = z.strictObject({})
const readAmount = z.strictObject({ amount: decimal, currency: short })
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

/** What a page says of the order itself; pages read by an older gate do not tell it. */
const seenOrder = {
  orderNumber: z.exactOptional(z.nullable(short)),
  items: z.exactOptional(
    z.array(z.strictObject({ name: short, amount: z.nullable(decimal), quantity: z.number() })).check(z.maxLength(500)),
  ),
  parts: z.exactOptional(z.array(z.strictObject({ kind: short, amount: decimal })).check(z.maxLength(40))),
}

const seenPage = z.strictObject({
  stage: z.enum(['product', 'cart', 'checkout', 'confirmation', 'other']),
  total: z.nullable(readAmount),
  figures: z.array(z.strictObject({ label: short, text: short, used: z.boolean(), why: short })).check(z.maxLength(20)),
  placeOrderCount: whole,
  ...seenOrder,
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
  'checkout.mark': z.strictObject({ tab: z.int(), figure: z.nullable(z.strictObject({ label: short, text: short })) }),
  'order.assess': z.strictObject({ shop: short, total: decimal, order: z.nullable(orderId) }),
  'order.tag': z.strictObject({
    id: entryId,
    order: orderId,
    at,
    wish: wishShape,
    reason: z.nullable(z.string().check(z.maxLength(1000))),
  }),
  ...orderRequests,
  ...planRequests,
  ...monthendRequests,
  'order.again': z.strictObject({ at }),
  'order.ahead': z.strictObject({ tab: z.int(), pot: z.nullable(potId) }),
  'panel.close': z.strictObject({ nonce }),
  'shop.watch': z.strictObject({ origin: short }),
  'shop.unwatch': z.strictObject({ host: short }),
  'store.raw': none,
  'book.settings': none,
  'restore.stage': z.strictObject({
    part: z.int().check(z.gte(0)),
    entries: z.array(storedEntry).check(z.maxLength(5000)),
  }),
  'restore.take': z.strictObject({
    parts: z.int().check(z.gte(0), z.lte(10_000)),
    count: z.int().check(z.gte(0)),
    device: slug<DeviceId>(),
    settings: householdSettings,
  }),
  'household.erase': z.strictObject({ word: z.literal('erase') }),
} as const

/** What the gate on a watched shop may ask. */
export const pageRequests = {
  'page.hello': none,
  'page.bring-reader': none,
  'page.seen': z.strictObject({ page: seenPage }),
  'page.held': z.strictObject({ nonce, because: z.enum(['untagged', 'changed', 'placed-before']), page: seenPage }),
  'page.placed': z.strictObject({ order: orderId }),
  'page.panel': z.strictObject({ nonce }),
  'page.fought': none,
} as const

/** The outer shape of every message. */
export const envelope = z.strictObject({ command: z.string(), ask: z.unknown() })

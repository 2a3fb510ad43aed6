import * as z from 'zod/mini'
import type { AccountId, DeviceId } from '../index.ts'
import { monthendEntries, monthendSettings } from './monthend-schemas.ts'
import { openTag, openTag1, orderFields, orderSettings } from './order-schemas.ts'
import { paydayField, paySchedule, planSettings, potPlan } from './plan-schemas.ts'
import { currency, date, entryId, lines, orderId, potId, slug, whole } from './shapes.ts'

/* The shapes of what the store keeps, and of what a book file holds. */

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
const goOnReason = z.exactOptional(z.string())

/** An entry as it is stored. Its sums are checked by the book itself. */
export const storedEntry = z.discriminatedUnion('kind', [
  z.strictObject({ ...base, kind: z.literal('opening') }),
  z.strictObject({ ...base, kind: z.literal('pay'), ...paydayField }),
  z.strictObject({ ...base, kind: z.literal('fill'), pot: potId, ...paydayField }),
  z.strictObject({ ...base, kind: z.literal('spend'), pot: potId, purpose: z.string() }),
  z.strictObject({
    ...base,
    kind: z.literal('order'),
    order: orderId,
    shop: z.string(),
    lines,
    goOnReason,
    ...orderFields.details,
  }),
  z.strictObject({ ...base, kind: z.literal('adjust'), order: orderId, lines, goOnReason, ...orderFields.details }),
  z.strictObject({ ...base, kind: z.literal('confirm'), ...orderFields.confirm }),
  z.strictObject({ ...base, kind: z.literal('instalment'), ...orderFields.instalment }),
  z.strictObject({ ...base, kind: z.literal('charge'), order: orderId, lines, ...orderFields.charge }),
  z.strictObject({ ...base, kind: z.literal('release'), order: orderId, ...orderFields.release }),
  z.strictObject({ ...base, kind: z.literal('expect'), order: orderId, lines, ...orderFields.items }),
  z.strictObject({ ...base, kind: z.literal('refund'), order: orderId, lines, ...orderFields.items }),
  z.strictObject({ ...base, ...monthendEntries.count }),
  z.strictObject({ ...base, ...monthendEntries.settle }),
  z.strictObject({ ...base, ...monthendEntries.sweep }),
  z.strictObject({ ...base, ...monthendEntries.transfer }),
  z.strictObject({ ...base, ...monthendEntries.close }),
  z.strictObject({ ...base, ...monthendEntries.reopen }),
  z.strictObject({ ...base, ...monthendEntries.agree }),
  z.strictObject({ ...base, ...monthendEntries.seen }),
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
  plan: z.exactOptional(potPlan),
})

export const householdSettings = z.strictObject({
  currency,
  timeZone: z.string(),
  monthStartDay: whole,
  pots: z.array(pot),
  accounts: z.array(z.strictObject({ id: slug<AccountId>(), name: z.string(), kind: z.enum(['bank', 'credit']) })),
  schedule: z.nullable(paySchedule),
  ...planSettings,
  ...orderSettings,
  ...monthendSettings,
  isDemo: z.boolean(),
})

/** A stretch of the book as it is stored. */
export const storedSegment = z.strictObject({
  /** Digest of the segment before, empty for the first. */
  before: z.string(),
  entries: z.array(storedEntry),
  digest: z.string(),
})

const heldCounts = z.strictObject({ untagged: whole, changed: whole, 'placed-before': whole })

/** The head of the store: settings and workflow beside the book, its balances, and what the entries must add up to. */
export const storedHead = z.strictObject({
  format: z.literal(2),
  generation: whole,
  device: slug<DeviceId>(),
  settings: householdSettings,
  watched: z.array(z.string()),
  tags: z.record(z.string(), openTag),
  /** The pots of baskets, by shop, said before there is a total to tag. Absent where none ever was. */
  ahead: z.exactOptional(z.record(z.string(), z.strictObject({ pot: potId, saidAt: z.number() }))),
  /** How often the guard held an order, by month and why. Absent where it never did. */
  held: z.exactOptional(z.record(z.string(), heldCounts)),
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
  tags: z.record(z.string(), openTag1),
  entries: whole,
  segments: whole,
  sealed: z.string(),
  /** Chain of the digests of all segments. */
  chain: z.string(),
  sum: z.string(),
})

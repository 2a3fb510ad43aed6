import * as z from 'zod/mini'
import { type AccountId, type CsvMapping, isMonthName, type MonthName } from '../index.ts'
import { currency, date, decimal, entryId, orderId, potId, short, slug, whole } from './shapes.ts'

/* The shapes of the month-end: what its pages ask, and what its entries are stored as. */

const account = slug<AccountId>()
const month = z.custom<MonthName>((v) => typeof v === 'string' && isMonthName(v))
const pieces = z.array(z.strictObject({ denomination: whole, count: whole })).check(z.maxLength(100))
const settleEnd = z.union([z.strictObject({ pot: potId }), z.strictObject({ account })])
const sweepTarget = z.union([
  z.strictObject({ pot: potId }),
  z.strictObject({ account }),
  z.strictObject({ debt: z.string().check(z.maxLength(200)) }),
])
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

/** The month-end's kinds of entries, as they are stored, beside what every entry carries. */
export const monthendEntries = {
  count: { kind: z.literal('count'), pot: potId, pieces, expected: whole },
  settle: { kind: z.literal('settle'), from: settleEnd, to: settleEnd, pieces },
  sweep: { kind: z.literal('sweep'), pot: potId, to: sweepTarget, month },
  transfer: { kind: z.literal('transfer'), from: account, to: account, lineOf: z.exactOptional(account) },
  close: { kind: z.literal('close'), month, through: date, summary: monthSummary, digest: z.string() },
  reopen: { kind: z.literal('reopen'), month, reason: z.string() },
  agree: { kind: z.literal('agree'), account, on: date, balance: whole },
  seen: {
    kind: z.literal('seen'),
    entries: z.array(entryId),
    line: z.string(),
    account: z.exactOptional(account),
  },
} as const

/** How a bank's CSV is read. Its columns are looked at by the reader whenever it is used (`bad-mapping`). */
const csvMapping = z.custom<CsvMapping>((v) => mappingShape.safeParse(v).success && JSON.stringify(v).length < 20_000)
const mappingShape = z.looseObject({
  delimiter: z.string(),
  header: z.nullable(z.array(z.string())),
  amount: z.looseObject({ kind: z.string() }),
  columns: z.looseObject({ date: whole }),
  currency,
})

/** The month-end's part of the settings. */
export const monthendSettings = {
  statements: z.exactOptional(
    z.strictObject({
      accounts: z.record(z.string(), account),
      mappings: z.array(csvMapping).check(z.maxLength(50)),
    }),
  ),
}

const lineAsk = z.strictObject({ line: z.string().check(z.maxLength(2000)), account, date })
const potParts = z
  .array(z.strictObject({ id: entryId, pot: potId, amount: decimal }))
  .check(z.minLength(1), z.maxLength(50))
const posting = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('charge'),
    parts: z
      .array(
        z.strictObject({
          id: entryId,
          from: lineAsk,
          order: orderId,
          amount: decimal,
          foreign: z.nullable(z.strictObject({ currency, amount: decimal })),
        }),
      )
      .check(z.minLength(1), z.maxLength(50)),
    completes: z.array(z.strictObject({ id: entryId, order: orderId })).check(z.maxLength(50)),
  }),
  z.strictObject({ kind: z.literal('refund'), id: entryId, from: lineAsk, order: orderId, amount: decimal }),
  z.strictObject({
    kind: z.literal('seen'),
    id: entryId,
    from: lineAsk,
    entries: z.array(entryId).check(z.minLength(1), z.maxLength(50)),
  }),
  z.strictObject({ kind: z.literal('spend'), from: lineAsk, pots: potParts, purpose: short }),
  z.strictObject({ kind: z.literal('pay'), id: entryId, from: lineAsk, amount: decimal }),
  z.strictObject({ kind: z.literal('into-pots'), from: lineAsk, pots: potParts }),
  z.strictObject({ kind: z.literal('drawn'), from: lineAsk, pots: potParts }),
  z.strictObject({
    kind: z.literal('transfer'),
    id: entryId,
    from: lineAsk,
    source: account,
    target: account,
    amount: decimal,
    other: z.nullable(z.strictObject({ id: entryId, from: lineAsk })),
  }),
  z.strictObject({
    kind: z.literal('renewal'),
    id: entryId,
    charge: entryId,
    order: orderId,
    renewal: short,
    due: date,
    from: lineAsk,
    amount: decimal,
  }),
])

/** What the month-end's pages may ask. */
export const monthendRequests = {
  'account.save': z.strictObject({
    account,
    name: z.string().check(z.minLength(1), z.maxLength(200)),
    kind: z.enum(['bank', 'credit']),
  }),
  'statement.remember': z.strictObject({
    key: z.string().check(z.maxLength(200)),
    account,
    mapping: z.nullable(csvMapping),
  }),
  'statement.post': z.strictObject({ posts: z.array(posting).check(z.minLength(1), z.maxLength(5000)) }),
  'statement.agree': z.strictObject({ id: entryId, account, on: date, balance: decimal }),
  'count.save': z.strictObject({
    counts: z
      .array(z.strictObject({ id: entryId, pot: potId, pieces, post: z.boolean() }))
      .check(z.minLength(1), z.maxLength(200)),
  }),
  'settle.tick': z.strictObject({ id: entryId, from: settleEnd, to: settleEnd, pieces }),
  'month.close': z.strictObject({
    id: entryId,
    month,
    sweeps: z
      .array(z.strictObject({ id: entryId, pot: potId, to: sweepTarget, cash: decimal, card: decimal }))
      .check(z.maxLength(400)),
    budgets: z.array(z.strictObject({ pot: potId, monthly: decimal })).check(z.maxLength(400)),
  }),
  'month.reopen': z.strictObject({ id: entryId, month, reason: z.string().check(z.maxLength(1000)) }),
} as const

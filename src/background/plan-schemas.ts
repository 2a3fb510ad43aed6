import * as z from 'zod/mini'
import { date, decimal, entryId, potId, short, slug, whole } from './shapes.ts'

/* The shapes of planning: what a household has decided, and what a page asks on payday and over a sheet. */

const dayOfMonth = z.int().check(z.gte(1), z.lte(31))
const schedule = {
  first: date,
  until: z.exactOptional(date),
  weekend: z.exactOptional(z.enum(['before', 'after'])),
  daysOff: z.exactOptional(z.readonly(z.array(date).check(z.maxLength(400)))),
}

export const paySchedule = z.discriminatedUnion('rhythm', [
  z.strictObject({ rhythm: z.enum(['weekly', 'every-two-weeks']), ...schedule }),
  z.strictObject({
    rhythm: z.literal('twice-a-month'),
    ...schedule,
    days: z.readonly(z.tuple([dayOfMonth, dayOfMonth])),
  }),
  z.strictObject({ rhythm: z.literal('monthly'), ...schedule, day: dayOfMonth }),
  z.strictObject({ rhythm: z.literal('last-working-day'), ...schedule }),
])

const earner = z.strictObject({
  id: slug<string>(),
  name: z.string().check(z.maxLength(200)),
  pay: whole,
  schedules: z.readonly(z.array(paySchedule).check(z.maxLength(40))),
})

const planning = z.strictObject({
  sinkingFunds: z.enum(['first', 'after-essentials']),
  roundTo: whole,
  bank: z.exactOptional(
    z.strictObject({
      kind: z.enum(['counter', 'machine']),
      gives: z.readonly(z.array(whole).check(z.maxLength(100))),
    }),
  ),
})

const goal = z.strictObject({
  target: whole,
  due: date,
  everyYears: z.exactOptional(whole),
  since: z.exactOptional(z.strictObject({ date, in: whole })),
  yearlyRate: z.exactOptional(short),
})

/** What is planned for a pot, as it is asked and as it is stored; amounts are minor units. */
export const potPlan = z.strictObject({
  importance: z.exactOptional(z.literal([1, 2, 3])),
  monthly: z.exactOptional(whole),
  goal: z.exactOptional(goal),
  reserveMonths: z.exactOptional(whole),
  split: z.exactOptional(z.enum(['cash', 'card', 'learned'])),
  wish: z.exactOptional(z.enum(['small', 'large'])),
})

/** The household's own part of the settings. */
export const planSettings = {
  earners: z.exactOptional(z.array(earner).check(z.maxLength(20))),
  planning: z.exactOptional(planning),
}

const fills = z.array(z.strictObject({ id: entryId, pot: potId, cash: decimal, card: decimal })).check(z.maxLength(200))
const sheetLine = z.strictObject({
  id: entryId,
  pot: potId,
  date,
  way: z.enum(['in', 'out']),
  side: z.enum(['cash', 'card']),
  amount: decimal,
  purpose: short,
})

/** What our own pages may ask for planning. */
export const planRequests = {
  'plan.save': z.strictObject({ earners: z.array(earner).check(z.maxLength(20)), planning }),
  'pot.plan': z.strictObject({ pot: potId, plan: potPlan, fill: z.strictObject({ cash: whole, card: whole }) }),
  'fill.plan': z.strictObject({ id: entryId, date, amount: decimal, fills }),
  'payday.undo': z.strictObject({ payday: entryId, ids: z.array(entryId).check(z.maxLength(201)) }),
  'sheet.add': z.strictObject({ lines: z.array(sheetLine).check(z.minLength(1), z.maxLength(200)) }),
} as const

/** Names the payday an entry was placed with, so that it can be taken back as one. */
export const paydayField = { payday: z.exactOptional(entryId) }

import * as z from 'zod/mini'
import {
  type CalendarDate,
  type CurrencyCode,
  type EntryId,
  isCalendarDate,
  isCurrencyCode,
  isSlug,
  isUuidV7,
  type OrderId,
  type PotId,
} from '../index.ts'

/* The smallest shapes, of which the schemas of all domains are made. */

export const slug = <T extends string>() => z.custom<T>((v) => typeof v === 'string' && isSlug(v))
export const uuid = <T extends string>() => z.custom<T>((v) => typeof v === 'string' && isUuidV7(v))
export const short = z.string().check(z.maxLength(400))
/** A decimal text a person typed; `money()` says what is wrong with it. */
export const decimal = z.string().check(z.maxLength(40))
export const whole = z.int()
export const date = z.custom<CalendarDate>((v) => typeof v === 'string' && isCalendarDate(v))
export const currency = z.custom<CurrencyCode>((v) => typeof v === 'string' && isCurrencyCode(v))
export const potId = slug<PotId>()
export const entryId = uuid<EntryId>()
export const orderId = uuid<OrderId>()
export const lines = z.array(z.strictObject({ pot: potId, amount: whole }))

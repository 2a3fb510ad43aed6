import { BookError } from './book-error.ts'

declare const brand: unique symbol
type Branded<Name extends string> = string & { readonly [brand]: Name }

/** Names one pot for as long as the book lives: short, lower case, chosen once (`piano-lessons`). */
export type PotId = Branded<'PotId'>
/** Names one entry: a UUIDv7 (RFC 9562), so that entries sort by the time they were made. */
export type EntryId = Branded<'EntryId'>
/** Names one online order across all its entries: a UUIDv7 made when it is first tagged. */
export type OrderId = Branded<'OrderId'>
/** Names the browser profile that wrote an entry. */
export type DeviceId = Branded<'DeviceId'>
/** Names a bank account or a credit card of the household (`main`, `visa`). */
export type AccountId = Branded<'AccountId'>

const SLUG = /^[\p{L}\p{N}][\p{L}\p{N}_-]{0,63}$/u
const UUID_V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/

/** Whether a text can name a pot or an account: 1 to 64 letters, digits, - and _, a letter or digit first. */
export function isSlug(text: string): boolean {
  return SLUG.test(text)
}

/** Whether a text is a lower-case UUIDv7. */
export function isUuidV7(text: string): boolean {
  return UUID_V7.test(text)
}

/** Brands a pot's id. @throws BookError `bad-id` when it is empty, too long or has spaces or marks other than - and _ */
export function potId(text: string): PotId {
  return slug<PotId>(text, 'pot')
}

/** Brands a device's id, by the rules of `potId`. @throws BookError `bad-id` */
export function deviceId(text: string): DeviceId {
  return slug<DeviceId>(text, 'device')
}

/** Brands an account's id, by the rules of `potId`. @throws BookError `bad-id` */
export function accountId(text: string): AccountId {
  return slug<AccountId>(text, 'account')
}

/** Brands an entry's id. @throws BookError `bad-id` when it is not a UUIDv7 */
export function entryId(text: string): EntryId {
  return uuid<EntryId>(text, 'entry')
}

/** Brands an order's id. @throws BookError `bad-id` when it is not a UUIDv7 */
export function orderId(text: string): OrderId {
  return uuid<OrderId>(text, 'order')
}

function slug<T extends string>(text: string, what: string): T {
  if (!isSlug(text)) {
    throw new BookError('bad-id', `"${text}" cannot name a ${what}. Use letters, digits, - and _ (at most 64).`)
  }
  return text as T
}

function uuid<T extends string>(text: string, what: string): T {
  if (!isUuidV7(text)) {
    throw new BookError('bad-id', `"${text}" cannot name an ${what}. Use a lower-case UUID version 7 (RFC 9562).`)
  }
  return text as T
}

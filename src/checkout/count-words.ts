import type { Vocabulary } from './vocabulary.ts'
import { plain } from './words.ts'

const TIMES =
  /^(\d{1,3})\s*[x×]$|^[x×]\s*(\d{1,3})$|^(\d{1,3})\s*[x×]\s+\p{L}|[\p{L}\p{P}\d]\s+[x×]\s*(\d{1,3})$|^[(（]?[x×]\s*(\d{1,3})[)）]?$|[(（][x×]?\s*(\d{1,3})\s*[x×]?[)）]$/u

const PAYMENTS = /(?<!\p{L})\d{1,2}\s*[x×]\s+(?:de|di|da|à|of|von|van|po|af|av|od)$/iu

const LONGEST = 120

/** How many of a thing a text says ("Qty: 2"), and whether it names the thing too ("2 × Mug"); null when it gives no count. */
export function countIn(text: string, words: Vocabulary): { quantity: number; named: boolean } | null {
  if (text.length > LONGEST || !/\d/.test(text)) return null
  const quantity = quantityIn(text, words)
  return quantity === null ? null : { quantity, named: /\p{L}{2}/u.test(withoutCount(text, words)) }
}

/** "Qty: 2", "2 ×", "Mug × 2", "3 pcs"; null when the text gives no count. */
function quantityIn(text: string, words: Vocabulary): number | null {
  // `3x de` before an amount counts payments.
  if (PAYMENTS.test(text)) return null
  const times = /[x×(（]/.test(text) ? TIMES.exec(text) : null
  const number = times?.slice(1).find((group) => group !== undefined)
  if (number) return whole(number)
  const named = words.quantity.first(plain(text))
  if (!named) return null
  const flat = plain(text)
  const after = /^[\s:.=(]*[x×]?\s*(\d{1,3})(?!\d|[.,]\d)/u.exec(flat.slice(named.at + named.length))?.[1]
  const before = /(?:^|\s)(\d{1,3})\s*$/u.exec(flat.slice(0, named.at))?.[1]
  return whole(after ?? before ?? '')
}

/** A whole number from 1 to 999, else null. */
export function whole(digits: string): number | null {
  const number = Number.parseInt(digits, 10)
  return Number.isInteger(number) && number > 0 && number < 1000 ? number : null
}

/** A text without the count that it begins or ends with. */
export function withoutCount(text: string, words: Vocabulary): string {
  const flat = plain(text)
  const quantity = words.quantity.first(flat)
  if (quantity && quantity.at === 0) return text.slice(quantity.length).replace(/^[\s:.\d]+/u, '')
  return text.replace(/^\d{1,3}\s*[x×]\s*|\s*[(（]?[x×]\s*\d{1,3}[)）]?$/gu, '').trim()
}

import type { CheckoutReading } from '../../../src/checkout/reading.ts'
import { inShort } from '../pages/short.ts'
import type { Expected } from './plan.ts'

/** How a reading compares with what a person would say. */
export interface Verdict {
  readonly total: 'right' | 'wrong' | 'missed' | 'invented'
  readonly controls: boolean
  readonly number: boolean
  readonly stage: boolean
  readonly read: ReturnType<typeof inShort>
}

/** Judges one reading. Amounts are compared as numbers: `55.9 EUR` is `55.90 EUR`, `1200.00 HUF` is `1200 HUF`. */
export function judge(reading: CheckoutReading, expected: Expected): Verdict {
  const read = inShort(reading)
  return {
    total: totalOf(read.total, expected.total),
    controls: same(read.placeOrder, expected.placeOrder),
    number: read.orderNumber === expected.orderNumber,
    stage: expected.stages.includes(read.stage),
    read,
  }
}

function totalOf(read: string | null, expected: string | null): Verdict['total'] {
  if (read === null) return expected === null ? 'right' : 'missed'
  if (expected === null) return 'invented'
  return bare(read) === bare(expected) ? 'right' : 'wrong'
}

function bare(total: string): string {
  const [amount = '', currency = ''] = total.split(' ')
  return `${amount.includes('.') ? amount.replace(/\.?0+$/, '') : amount} ${currency}`
}

function same(a: readonly string[], b: readonly string[]): boolean {
  return JSON.stringify(a.map(shown).sort()) === JSON.stringify(b.map(shown).sort())
}

/** What can be seen of a text: white space once, no marks of direction. */
function shown(text: string): string {
  return text
    .replace(/\s+/gu, ' ')
    .replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, '')
    .trim()
}

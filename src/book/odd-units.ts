import type { Money } from '../money/money.ts'

/**
 * Who got the odd cents of an allocation: for each part, how many minor units it has beyond its exact quota cut short
 * (0 or 1; 0 or -1 for a negative amount). They sum to what cutting all quotas short would have left over.
 *
 * @param amount minor units that were allocated
 * @param weights plain decimal texts, at least one above zero
 */
export function oddUnits(amount: number, weights: readonly string[], parts: readonly Money[]): number[] {
  const places = Math.max(...weights.map((w) => w.split('.')[1]?.length ?? 0))
  const whole = weights.map((w) => {
    const [integer = '0', fraction = ''] = w.split('.')
    return BigInt(integer + fraction.padEnd(places, '0'))
  })
  const all = whole.reduce((sum, w) => sum + w, 0n)
  return whole.map((w, n) => {
    // BigInt division cuts towards zero, as the quota is cut for either sign.
    const odd = (parts[n]?.minor ?? 0) - Number((BigInt(amount) * w) / all)
    return odd === 0 ? 0 : odd
  })
}

/** Cents as a plain amount: `55.90`. */
export function amountText(cents: number): string {
  const digits = String(Math.abs(cents)).padStart(3, '0')
  return `${cents < 0 ? '-' : ''}${digits.slice(0, -2)}.${digits.slice(-2)}`
}

/** Cents as English Canada writes them: `$1,234.50`, `−$5.00` (with the minus sign U+2212). */
export function dollars(cents: number): string {
  const { whole, decimals } = priceParts(cents)
  return `${cents < 0 ? '\u2212' : ''}$${whole}.${decimals}`
}

/** Cents as French Canada writes them, with no-break spaces (U+00A0): `1 234,50 $`. */
export function dollarsFrench(cents: number): string {
  const { whole, decimals } = priceParts(cents)
  return `${cents < 0 ? '\u2212' : ''}${whole.replaceAll(',', '\u00a0')},${decimals}\u00a0$`
}

/** The digits before the mark, in groups of three, and the two after it. The sign is left to the caller. */
export function priceParts(cents: number): { readonly whole: string; readonly decimals: string } {
  const [whole = '0', decimals = '00'] = amountText(Math.abs(cents)).split('.')
  return { whole: whole.replace(/\B(?=(\d{3})+$)/g, ','), decimals }
}

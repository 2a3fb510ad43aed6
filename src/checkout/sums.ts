/** One amount that can be part of a sum. */
export interface Term {
  /** Ten-thousandths; what is taken off is negative. */
  readonly value: number
  /** `base`: the items, or the sum before tax. `tax` may be contained in the items. `maybe`: nobody knows its label. */
  readonly role: 'base' | 'tax' | 'discount' | 'credit' | 'added' | 'maybe'
}

/** How a total comes about. */
export interface Closure {
  /** How many amounts other than zero add up to it. */
  readonly terms: number
  /** Amounts that it leaves out although they usually count (not taxes: those may be contained already). */
  readonly left: readonly Term[]
}

const MOST_TERMS = 10

/**
 * Whether a total is the sum of a base and any of the other terms; of several ways, the one that uses most of them.
 * The arithmetic of invoices and checkouts: items + shipping + tax − discount − credit, where tax and discount may be
 * contained in the items already.
 *
 * @example closure(650000, [{value: 550000, role: 'base'}, {value: 50000, role: 'tax'}, {value: 50000, role: 'added'}])
 */
export function closure(total: number, terms: readonly Term[]): Closure | null {
  const bases = terms.filter((term) => term.role === 'base')
  const others = terms.filter((term) => term.role !== 'base' && term.value !== 0).slice(0, MOST_TERMS)
  let best: Closure | null = null
  for (const base of basesOf(bases)) {
    for (let choice = (1 << others.length) - 1; choice >= 0; choice -= 1) {
      const used = others.filter((_, place) => choice & (1 << place))
      const sum = used.reduce((total, term) => total + term.value, base.value)
      if (sum !== total) continue
      const left = others.filter((term) => !used.includes(term) && term.role !== 'tax' && term.role !== 'maybe')
      // An amount with an unknown label may take part, but proves little.
      const found = { terms: base.count + used.filter((term) => term.role !== 'maybe').length, left }
      if (!best || found.terms - 2 * found.left.length > best.terms - 2 * best.left.length) best = found
    }
  }
  return best
}

/** Each base alone, and all of them together (several sellers, several groups of items). */
function basesOf(bases: readonly Term[]): { value: number; count: number }[] {
  const alone = bases.map((base) => ({ value: base.value, count: base.value === 0 ? 0 : 1 }))
  const sum = bases.reduce((total, base) => total + base.value, 0)
  return bases.length > 1 ? [...alone, { value: sum, count: bases.length }] : alone
}

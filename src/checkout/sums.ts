/** One amount that can be part of a sum. */
export interface Term {
  /** Ten-thousandths; what is taken off is negative. */
  readonly value: number
  /** Where it was read, for the caller. */
  readonly index?: number
  /** `base`: the items, or the sum before tax. `tax` may be contained in the items. `maybe`: nobody knows its label. */
  readonly role: 'base' | 'tax' | 'discount' | 'credit' | 'added' | 'maybe'
}

/** How a total comes about. */
export interface Closure {
  /** How many amounts other than zero add up to it, not counting those nobody knows the label of. */
  readonly terms: number
  readonly used: readonly Term[]
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
      const sum = used.reduce((all, term) => all + term.value, base.value)
      if (sum !== total) continue
      const left = others.filter((term) => !used.includes(term) && term.role !== 'tax' && term.role !== 'maybe')
      const found = { terms: base.count + proven(used, others, bases.length > 0), used, left }
      if (!best || worth(found) > worth(best)) best = found
    }
  }
  return best
}

function worth({ terms, used, left }: Closure): number {
  return terms - 2 * left.length - used.length / 100
}

/**
 * An amount with an unknown label may take part, but proves little. Where no items are named, though, unknown amounts that
 * all take part are the items.
 */
function proven(used: readonly Term[], others: readonly Term[], named: boolean): number {
  const unknown = others.filter((term) => term.role === 'maybe')
  const all = !named && unknown.length > 0 && unknown.every((term) => used.includes(term))
  return used.filter((term) => term.role !== 'maybe').length + (all ? 1 : 0)
}

/** Each base alone, and all of them together (several sellers, several groups of items); nothing where none is named. */
function basesOf(bases: readonly Term[]): { value: number; count: number }[] {
  if (bases.length === 0) return [{ value: 0, count: 0 }]
  const alone = bases.map((base) => ({ value: base.value, count: base.value === 0 ? 0 : 1 }))
  const sum = bases.reduce((total, base) => total + base.value, 0)
  return bases.length > 1 ? [...alone, { value: sum, count: bases.length }] : alone
}

import type { Entry, Posting } from './entry.ts'

/**
 * Adds up postings by account, and nothing else: entries are not checked, sorted or kept. For those that were proved before,
 * such as the ones of a sealed stretch of the store; a whole book goes through it in pieces and is never held at once.
 *
 * @example const totals = new Totals(); totals.add(entries); totals.sums() // {'cash:piano': 3800, notes: 3800}
 */
export class Totals {
  readonly #places = new Map<string, number>()
  #sums = new Float64Array(256)

  add(entries: readonly Entry[]): void {
    for (const { postings, places } of entries) {
      this.#post(postings)
      this.#post(places)
    }
  }

  /** Every sum that is not zero, in minor units by account: the shape of `sumsOf`. */
  sums(): Record<string, number> {
    const found: Record<string, number> = {}
    for (const [account, place] of this.#places) {
      const sum = this.#sums[place] ?? 0
      if (sum !== 0) found[account] = sum
    }
    return found
  }

  #post(postings: readonly Posting<string>[]): void {
    for (const { account, amount } of postings) {
      const place = this.#places.get(account) ?? this.#newPlace(account)
      this.#sums[place] = (this.#sums[place] ?? 0) + amount
    }
  }

  #newPlace(account: string): number {
    const place = this.#places.size
    this.#places.set(account, place)
    if (place === this.#sums.length) {
      const wider = new Float64Array(place * 2)
      wider.set(this.#sums)
      this.#sums = wider
    }
    return place
  }
}

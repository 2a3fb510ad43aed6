import { likeness, type MerchantText } from './match-text.ts'
import { IS_NAMED, MAY_BE } from './match-weigh.ts'

/** Names of shops against texts of lines, each pair compared once at most. */
export class Names {
  readonly #names: MerchantText[] = []
  readonly #ids = new Map<string, number>()
  readonly #byLetter = new Map<string, Set<number>>()
  readonly #texts = new Map<string, Map<number, number>>()
  readonly #alike = new Map<string, readonly number[]>()

  /** The number of a name; the same name has the same number. */
  idOf(name: MerchantText): number {
    const key = name.key
    const known = this.#ids.get(key)
    if (known !== undefined) return known
    const id = this.#names.length
    this.#names.push(name)
    this.#ids.set(key, id)
    for (const word of name.words) {
      const letter = word[0] ?? ''
      const same = this.#byLetter.get(letter)
      if (same) same.add(id)
      else this.#byLetter.set(letter, new Set([id]))
    }
    return id
  }

  /** How much a text looks like a name, 0 to 100. */
  likeness(text: MerchantText, id: number): number {
    let known = this.#texts.get(text.key)
    if (!known) {
      known = new Map()
      this.#texts.set(text.key, known)
    }
    const before = known.get(id)
    if (before !== undefined) return before
    const name = this.#names[id]
    const now = name ? likeness(text, name) : 0
    known.set(id, now)
    return now
  }

  /** Names that a text may be, best first. Only names that share a word's first letter are compared. */
  alike(text: MerchantText): readonly number[] {
    const key = text.key
    const before = this.#alike.get(key)
    if (before) return before
    const ids = new Set<number>()
    for (const word of text.words) for (const id of this.#byLetter.get(word[0] ?? '') ?? []) ids.add(id)
    const found = [...ids]
      .filter((id) => this.likeness(text, id) >= MAY_BE)
      .sort((a, b) => this.likeness(text, b) - this.likeness(text, a) || a - b)
    this.#alike.set(key, found)
    return found
  }

  isNamed(text: MerchantText, id: number): boolean {
    return this.likeness(text, id) >= IS_NAMED
  }
}

import type { Pot } from '../book/household.ts'
import type { CurrencyCode } from '../money/currency.ts'
import type { Money } from '../money/money.ts'
import { type AmountProblem, plainSigns, readAmount } from './amount-text.ts'
import { matchPots } from './pot-match.ts'

/** What a line of quick entry says so far. */
export type QuickLine =
  | { readonly kind: 'empty' }
  | { readonly kind: 'bad-amount'; readonly problem: AmountProblem }
  /** An amount, and no pot yet (`word` empty) or a word that names none. */
  | { readonly kind: 'no-pot'; readonly amount: Money; readonly word: string }
  /** Pots the words may mean, best first, and what is left of the words as the purpose, for each. */
  | {
      readonly kind: 'ready'
      readonly amount: Money
      readonly choices: readonly { readonly pot: Pot; readonly purpose: string }[]
    }

const PART_OF_AMOUNT = /^[\d.,'’\u066b\u066c+*/()-]+$/
const ENDS_OPEN = /[+*/(-]$/
const STARTS_OPEN = /^[+*/)-]/

/**
 * Reads a line such as `12.50 groceries bread`: the amount (sums are welcome), then the pot by the beginning of its
 * name, then the purpose.
 *
 * @example readQuickLine('12.50+3 gro bread', pots, 'CAD', 'en-CA') // 15.50, Groceries, "bread"
 */
export function readQuickLine(line: string, pots: readonly Pot[], currency: CurrencyCode, language: string): QuickLine {
  const words = plainSigns(line).trim().split(/\s+/)
  if (words.length === 1 && words[0] === '') return { kind: 'empty' }
  const count = amountWords(words)
  const read = readAmount(words.slice(0, count).join(''), currency, language)
  if (!read.ok) return { kind: 'bad-amount', problem: read.problem === 'empty' ? 'not_a_number' : read.problem }
  if (read.money.minor === 0) return { kind: 'bad-amount', problem: 'empty' }
  const rest = words.slice(count)
  const choices = matchPots(pots, rest).map(({ pot, words: named }) => ({ pot, purpose: rest.slice(named).join(' ') }))
  if (choices.length === 0) return { kind: 'no-pot', amount: read.money, word: rest[0] ?? '' }
  return { kind: 'ready', amount: read.money, choices }
}

/** How many of the first words are the amount: numbers, joined by signs that may stand alone. */
function amountWords(words: readonly string[]): number {
  let count = 0
  for (const word of words) {
    const bare = word.replace(/\p{Sc}/gu, '')
    const isPart = PART_OF_AMOUNT.test(bare) || (bare === '' && word !== '') || /^\d+x[\d.,]+$/i.test(bare)
    if (!isPart) break
    const before = words[count - 1]?.replace(/\p{Sc}/gu, '')
    const joins = count === 0 || before === '' || bare === '' || ENDS_OPEN.test(before ?? '') || STARTS_OPEN.test(bare)
    if (!joins) break
    count += 1
  }
  return count
}

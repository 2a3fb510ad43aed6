import type { ControlKind, LabelKind, Lexicon, StageWords } from './lexicon/index.ts'
import { type PhraseFinder, type Phrases, phraseFinder, phraseIndex } from './words.ts'

/** The lists of some lexicons, made ready to search. */
export interface Vocabulary {
  readonly labels: Phrases<LabelKind>
  readonly controls: Phrases<ControlKind>
  readonly stages: Phrases<StageWords>
  readonly rates: PhraseFinder
  readonly bounds: PhraseFinder
  readonly included: PhraseFinder
  readonly excluded: PhraseFinder
  readonly plus: PhraseFinder
  readonly later: PhraseFinder
  readonly quantity: PhraseFinder
  readonly orderNumber: PhraseFinder
  readonly otherNumber: PhraseFinder
  readonly terms: PhraseFinder
}

/** The order decides between phrases of one length: what must not be taken for a total comes first. */
export const labelKinds: readonly LabelKind[] = [
  'dueNow',
  'aside',
  'rounding',
  'net',
  'items',
  'payable',
  'grandTotal',
  'paid',
  'discount',
  'credit',
  'tip',
  'fee',
  'shipping',
  'tax',
  'summary',
  'total',
]
/** The same for controls. */
export const controlKinds: readonly ControlKind[] = [
  'pays',
  'addToCart',
  'other',
  'completes',
  'buys',
  'vague',
  'toCheckout',
]
/**
 * Work on a text in the languages of a vocabulary, done once for each distinct text: pages repeat themselves, and are read
 * again and again. Forgotten where a page never repeats itself.
 */
export function oncePerText<Value>(
  work: (text: string, words: Vocabulary) => Value,
): (text: string, words: Vocabulary) => Value {
  const kept = new WeakMap<Vocabulary, { known: Map<string, Value>; older: Map<string, Value> }>()
  return (text, words) => {
    const own = kept.get(words) ?? { known: new Map<string, Value>(), older: new Map<string, Value>() }
    kept.set(words, own)
    const before = own.known.get(text)
    if (before !== undefined) return before
    if (own.known.size >= MOST_KEPT) {
      own.older = own.known
      own.known = new Map()
    }
    const value = own.older.get(text) ?? work(text, words)
    own.known.set(text, value)
    return value
  }
}

const MOST_KEPT = 5_000

const stageWords: readonly StageWords[] = ['thanks', 'history', 'checkout', 'cart']

// The lists never change, so each set of languages is made ready once.
const ready = new Map<string, Vocabulary>()

/** Makes the lists of these lexicons searchable together. */
export function vocabularyOf(lexicons: readonly Lexicon[]): Vocabulary {
  const key = lexicons.map((lexicon) => lexicon.language).join(' ')
  const known = ready.get(key)
  if (known) return known
  const finder = (pick: (lexicon: Lexicon) => readonly string[]): PhraseFinder =>
    phraseFinder(lexicons.map((lexicon) => ({ phrases: pick(lexicon), spaced: lexicon.spaced })))
  const index = <Key>(keys: readonly Key[], pick: (lexicon: Lexicon, key: Key) => readonly string[]): Phrases<Key> =>
    phraseIndex(
      lexicons.flatMap((lexicon) => keys.map((key) => ({ key, phrases: pick(lexicon, key), spaced: lexicon.spaced }))),
    )
  const made: Vocabulary = {
    labels: index(labelKinds, (lexicon, kind) =>
      kind === 'aside' ? [...lexicon.labels.aside, ...lexicon.rates] : lexicon.labels[kind],
    ),
    controls: index(controlKinds, (lexicon, kind) => lexicon.controls[kind]),
    stages: index(stageWords, (lexicon, kind) => lexicon.stages[kind]),
    rates: finder((lexicon) => lexicon.rates),
    bounds: finder((lexicon) => lexicon.bounds),
    included: finder((lexicon) => lexicon.included),
    excluded: finder((lexicon) => lexicon.excluded),
    plus: finder((lexicon) => lexicon.plus),
    later: finder((lexicon) => lexicon.later),
    quantity: finder((lexicon) => lexicon.quantity),
    orderNumber: finder((lexicon) => lexicon.orderNumber),
    otherNumber: finder((lexicon) => lexicon.otherNumber),
    terms: finder((lexicon) => lexicon.terms),
  }
  ready.set(key, made)
  return made
}

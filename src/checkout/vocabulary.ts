import type { ControlKind, LabelKind, Lexicon, StageWords } from './lexicon/index.ts'
import { type PhraseFinder, phraseFinder } from './words.ts'

/** The lists of some lexicons, made ready to search. */
export interface Vocabulary {
  readonly labels: ReadonlyMap<LabelKind, PhraseFinder>
  readonly controls: ReadonlyMap<ControlKind, PhraseFinder>
  readonly stages: ReadonlyMap<StageWords, PhraseFinder>
  readonly included: PhraseFinder
  readonly excluded: PhraseFinder
  readonly plus: PhraseFinder
  readonly later: PhraseFinder
  readonly quantity: PhraseFinder
  readonly orderNumber: PhraseFinder
  readonly otherNumber: PhraseFinder
  readonly terms: PhraseFinder
}

// The order decides between phrases of one length: what must not be taken for a total comes first.
const LABEL_KINDS: readonly LabelKind[] = [
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
const CONTROL_KINDS: readonly ControlKind[] = ['pays', 'toCheckout', 'addToCart', 'other', 'completes', 'buys', 'vague']
const STAGE_WORDS: readonly StageWords[] = ['thanks', 'history', 'checkout', 'cart']

// Compiling a few hundred phrases costs a millisecond; the lists never change, so each set is compiled once.
const compiled = new Map<string, Vocabulary>()

/** Makes the lists of these lexicons searchable together. */
export function vocabularyOf(lexicons: readonly Lexicon[]): Vocabulary {
  const key = lexicons.map((lexicon) => lexicon.language).join(' ')
  const known = compiled.get(key)
  if (known) return known
  const finder = (pick: (lexicon: Lexicon) => readonly string[]): PhraseFinder =>
    phraseFinder(lexicons.map((lexicon) => ({ phrases: pick(lexicon), spaced: lexicon.spaced })))
  const made: Vocabulary = {
    labels: new Map(LABEL_KINDS.map((kind) => [kind, finder((lexicon) => lexicon.labels[kind])])),
    controls: new Map(CONTROL_KINDS.map((kind) => [kind, finder((lexicon) => lexicon.controls[kind])])),
    stages: new Map(STAGE_WORDS.map((kind) => [kind, finder((lexicon) => lexicon.stages[kind])])),
    included: finder((lexicon) => lexicon.included),
    excluded: finder((lexicon) => lexicon.excluded),
    plus: finder((lexicon) => lexicon.plus),
    later: finder((lexicon) => lexicon.later),
    quantity: finder((lexicon) => lexicon.quantity),
    orderNumber: finder((lexicon) => lexicon.orderNumber),
    otherNumber: finder((lexicon) => lexicon.otherNumber),
    terms: finder((lexicon) => lexicon.terms),
  }
  compiled.set(key, made)
  return made
}

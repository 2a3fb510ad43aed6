import { type Cuts, createCuts } from './cuts.ts'
import { attribute, callOn, fits, holderOf, isElement, nearest, rootOf, select } from './dom.ts'
import type { Lexicon } from './lexicon/lexicon.ts'
import { type MachineValues, readMachineValues } from './machine-values.ts'
import { type Changed, dirtyBoxes } from './page-changes.ts'
import { type PageText, readPageText, renewPageText } from './page-text.ts'
import { type ReadOptions, readGround } from './read-page.ts'
import type { CheckoutReading, Evidence } from './reading.ts'
import { createSight } from './sight.ts'
import { readStream, renewStream, type Stream } from './stream.ts'

/** Reads one page again and again, each time only what changed since. */
export interface PageReader {
  /** Reads the page as it is now; equals what a new reader would read. Never throws. */
  read(options: ReadOptions, lexicons: readonly Lexicon[]): CheckoutReading
  /** Takes note of changes in any of the sources; a reading that follows must know them all. */
  changed(records: readonly Changed[]): void
  /** Has the next reading look also for new shadow roots on old elements: no record tells of those. */
  lookForRoots(): void
  /** The shadow roots and documents that were walked since the last call: what has to be watched from now on. */
  takeSources(): readonly Node[]
}

/** What is kept of a page between two readings. */
interface Kept {
  readonly page: PageText
  readonly stream: Stream
  readonly machine: MachineValues
  readonly lang: string | null
}

const MOST_PENDING = 5_000
const FEW = 50

// Where pages write for machines; and what tells their language.
const MACHINE = 'script[type], [itemscope], [itemprop], [typeof], [property], meta, input[autocomplete]'
const MACHINE_ATTRIBUTES: ReadonlySet<string> = new Set(
  'type itemscope itemtype itemprop typeof content property name value autocomplete lang xml:lang http-equiv'.split(
    ' ',
  ),
)

/**
 * Makes a reader for one document. What is drawn, and what styles hide, is asked anew each time; what markup and texts say is
 * kept until `changed` tells that it may be different.
 *
 * @example
 * const reader = createPageReader(document)
 * new MutationObserver((records) => reader.changed(records)).observe(document, { ... })
 * reader.read({ url: location.href }, lexicons)
 */
export function createPageReader(document: Document): PageReader {
  const cuts = createCuts()
  let kept: Kept | null = null
  let pending: Changed[] = []
  let thorough = false
  function read(options: ReadOptions, lexicons: readonly Lexicon[]): CheckoutReading {
    const isAgain = kept !== null
    try {
      kept = kept ? renewed(document, kept, { records: pending, thorough }, cuts) : readAnew(document, cuts)
      pending = []
      thorough = false
      return readGround({ document, options, sight: createSight(), ...kept }, lexicons)
    } catch (error) {
      kept = null
      // What was kept may hold parts that are gone for good (a frame's document): then the page is read anew.
      if (isAgain) return read(options, lexicons)
      // A page can be hostile or broken in ways nobody has thought of; the guard must go on with "not known".
      return nothingRead(error)
    }
  }
  return {
    read,
    changed(records) {
      if (!kept) return
      if (pending.length + records.length > MOST_PENDING) kept = null
      else pending.push(...records)
    },
    lookForRoots() {
      thorough = true
    },
    takeSources: () => kept?.page.walk.sources.splice(0) ?? [],
  }
}

/** Reads a page once: what `readCheckout` does, with the words of the languages given. Never throws. */
export function readPage(document: Document, options: ReadOptions, lexicons: readonly Lexicon[]): CheckoutReading {
  return createPageReader(document).read(options, lexicons)
}

function readAnew(document: Document, cuts: Cuts): Kept {
  const page = readPageText(document, cuts)
  return { page, stream: readStream(page), machine: readMachineValues(document), lang: langOf(document) }
}

interface Changes {
  readonly records: readonly Changed[]
  readonly thorough: boolean
}

function renewed(document: Document, kept: Kept, { records, thorough }: Changes, cuts: Cuts): Kept {
  const dirty = dirtyBoxes(kept.page, document, records, thorough)
  const again = dirty && dirty.size > 0 ? renewPageText(kept.page, dirty) : null
  if (!dirty || (dirty.size > 0 && !again)) return readAnew(document, cuts)
  const page = again?.page ?? kept.page
  const stream = again ? renewStream(kept.stream, page, again.changes) : kept.stream
  const old = !kept.machine.tokens && !records.some((record) => concernsMachines(record, kept.machine))
  return {
    page,
    stream,
    machine: old ? kept.machine : readMachineValues(document),
    lang: old ? kept.lang : langOf(document),
  }
}

/** Whether a change may be of what the page states for machines. Says yes rather too often. */
function concernsMachines(change: Changed, { found }: MachineValues): boolean {
  const { type, target, attributeName, addedNodes, removedNodes } = change
  if (type === 'attributes') return MACHINE_ATTRIBUTES.has(attributeName ?? '')
  if (nearest(holderOf(target), MACHINE)) return true
  return (
    Array.from(removedNodes).some((node) => found.length > FEW || found.some((element) => node.contains(element))) ||
    Array.from(addedNodes).some(
      (node) => isElement(node) && (fits(node, MACHINE) || callOn(node, 'querySelector', MACHINE) !== null),
    )
  )
}

function langOf(document: Document): string | null {
  const root = rootOf(document)
  const lang = root ? (attribute(root, 'lang') ?? attribute(root, 'xml:lang')) : null
  if (lang && lang.trim() !== '') return lang.trim()
  const [inner] = select(document, 'body[lang], main[lang], meta[http-equiv="content-language" i]', 1)
  return inner ? (attribute(inner, 'lang') ?? attribute(inner, 'content')) : null
}

function nothingRead(error: unknown): CheckoutReading {
  const why = `The page could not be read: ${error instanceof Error ? error.message : 'unknown error'}.`
  const evidence: Evidence = { figure: 'stage', source: 'text', label: '', text: '', used: false, why, element: null }
  return { stage: 'other', total: null, parts: [], items: [], orderNumber: null, placeOrder: [], evidence: [evidence] }
}

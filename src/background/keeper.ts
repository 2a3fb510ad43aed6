import { append, type Book, type CalendarDate, type Entry, openBook, payDates } from '../index.ts'
import type { Marker } from './marker.ts'
import {
  commit,
  type Damage,
  type Kept,
  type Ledger,
  loadStore,
  newKept,
  type Settings,
  type StorageArea,
  StoreError,
} from './store.ts'
import { addDaysTo } from './today.ts'

/** The household as the worker holds it between commands; all of it can be read again from the store. */
export type Held =
  | { readonly status: 'new' }
  | { readonly status: 'ready'; readonly kept: Kept; readonly book: Book }
  | { readonly status: 'damaged'; readonly what: Damage }

/** What a command wants written. */
export interface Change {
  readonly entries?: readonly Entry[]
  readonly ledger?: Partial<Ledger>
}

/** How far ahead pay dates are worked out, in days. */
const AHEAD_DAYS = 70

/**
 * The only writer of the book. Reads once, then keeps what it wrote; every write is decided and done inside one lock, so
 * two pages asking at once are answered one after the other, each from the book the other left.
 */
export class Keeper {
  #held: Promise<Held> | null = null

  constructor(
    private readonly area: StorageArea,
    private readonly marker: Marker,
    private readonly lock: <T>(work: () => Promise<T>) => Promise<T>,
    private readonly today: (timeZone: string) => CalendarDate,
  ) {}

  /** The household now. Entries of a ready one are balanced and fit its pots. */
  look(): Promise<Held> {
    this.#held ??= this.#load()
    return this.#held
  }

  /** The ready household. @throws StoreError `store-damaged`, `no-household` */
  async ready(): Promise<{ kept: Kept; book: Book }> {
    const held = await this.look()
    if (held.status === 'ready') return { ...held, book: this.#withPayDates(held.kept.head.settings, held.book) }
    throw held.status === 'damaged'
      ? new StoreError(
          'store-damaged',
          'The stored book is damaged. Nothing will be written over it; save its data to a file.',
        )
      : new StoreError('no-household', 'There is no household yet. Set one up first.')
  }

  /**
   * Runs a command that may write. `decide` sees the book as it stands and says what to write; its answer is given once
   * that is written.
   *
   * @throws what `decide` and the store throw; then nothing was written
   */
  write<T>(decide: (kept: Kept, book: Book) => { change: Change; answer: T }): Promise<T> {
    return this.lock(async () => {
      const { kept, book } = await this.ready()
      const { change, answer } = decide(kept, book)
      if (change.entries?.length || change.ledger) {
        // The new book is made first: an entry the book refuses is never stored.
        const settings = change.ledger?.settings
        const base = settings ? openBook(this.#household(settings), kept.entries) : book
        const next = (change.entries ?? []).reduce(append, base)
        const written = await commit(this.area, kept, change.entries ?? [], change.ledger)
        this.#held = Promise.resolve({ status: 'ready', kept: written, book: next })
      }
      return answer
    })
  }

  /** Begins a household. @throws StoreError `household-exists`, `store-damaged` */
  create(device: Kept['head']['device'], settings: Settings, open: (book: Book) => readonly Entry[]): Promise<void> {
    return this.lock(async () => {
      const held = await this.look()
      if (held.status === 'damaged') await this.ready()
      if (held.status === 'ready') throw new StoreError('household-exists', 'A household is kept here already.')
      const empty = openBook(this.#household(settings), [])
      const entries = open(empty)
      const book = entries.reduce(append, empty)
      const kept = await commit(this.area, newKept(device, settings), entries)
      await this.marker.write(true)
      this.#held = Promise.resolve({ status: 'ready', kept, book })
    })
  }

  /** Forgets everything. Only for a household that was never real. */
  erase(): Promise<void> {
    return this.lock(async () => {
      const keys = Object.keys(await this.area.get(null)).filter((key) => key.startsWith('tillside:'))
      await this.marker.write(false)
      await this.area.remove(keys)
      this.#held = null
    })
  }

  /** Everything stored, as it lies there. */
  async raw(): Promise<string> {
    return JSON.stringify(await this.area.get(null), null, 2)
  }

  async #load(): Promise<Held> {
    const loaded = await loadStore(this.area, this.marker)
    if (loaded.status !== 'ready') return loaded
    const { kept } = loaded
    // The witness may be missing after a crash right after the first write.
    await this.marker.write(true)
    try {
      return { status: 'ready', kept, book: openBook(this.#household(kept.head.settings), kept.entries) }
    } catch (cause) {
      console.error('Tillside: the stored entries do not make a book.', cause)
      return { status: 'damaged', what: 'book' }
    }
  }

  /** A worker that lives past midnight must not count from yesterday's pay dates. */
  #withPayDates(settings: Settings, book: Book): Book {
    return { ...book, household: this.#household(settings) }
  }

  #household(settings: Settings): Book['household'] {
    const { schedule, isDemo: _, ...household } = settings
    const today = this.today(settings.timeZone)
    // A household of before earners were told apart has one schedule.
    const earners = household.earners ?? (schedule ? [{ id: 'pay', name: '', pay: 0, schedules: [schedule] }] : [])
    const schedules = earners.flatMap((earner) => earner.schedules)
    return { ...household, earners, payDates: payDates(schedules, today, addDaysTo(today, AHEAD_DAYS)) }
  }
}

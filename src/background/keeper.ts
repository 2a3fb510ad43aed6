import {
  append,
  type Book,
  BookError,
  type CalendarDate,
  type Entry,
  openBook,
  openBookAt,
  payDates,
  sumsOf,
  Totals,
  withHousehold,
} from '../index.ts'
import { loadStore, readSegments } from './load-store.ts'
import type { Marker } from './marker.ts'
import type { OwnCommands } from './protocol.ts'
import {
  type Damage,
  entriesAtHand,
  type Head,
  type Kept,
  type Ledger,
  PREFIX,
  SEGMENT_SIZE,
  type Segment,
  type Settings,
  type StorageArea,
  StoreError,
  segmentKeys,
  segmentOf,
  stagedKey,
} from './store.ts'
import { addDaysTo } from './today.ts'
import { clearOld, commit, newKept, writeItems, writeWhole } from './write-store.ts'

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

/** Segments in a message to the desk, and in a reading of older ones: some hundred kilobytes. */
const SEGMENTS_A_MESSAGE = 16
const SEGMENTS_A_READ = 32

/** Mendings that are remembered. */
const MENDED_MOST = 10

/** Refusals that may only mean that an entry is not at hand. */
const NAMES_ANOTHER: ReadonlySet<BookError['code']> = new Set(['unknown-order', 'unknown-entry'])

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
   * that is written. The book is opened at its latest entries; a command that names an older one is run again on the
   * whole book.
   *
   * @throws what `decide` and the store throw; then nothing was written
   */
  write<T>(decide: (kept: Kept, book: Book) => { change: Change; answer: T }): Promise<T> {
    return this.lock(async () => {
      const { kept, book } = await this.ready()
      try {
        return await this.#run(kept, book, decide)
      } catch (cause) {
        if (book.before === 0 || !(cause instanceof BookError && NAMES_ANOTHER.has(cause.code))) throw cause
        return await this.#run(kept, await this.#whole(kept), decide)
      }
    })
  }

  /** Like `write`, with every entry at hand: for what looks far back, such as closing a month. */
  writeOnWhole<T>(decide: (kept: Kept, book: Book) => { change: Change; answer: T }): Promise<T> {
    return this.lock(async () => {
      const { kept, book } = await this.ready()
      return this.#run(kept, book.before === 0 ? book : await this.#whole(kept), decide)
    })
  }

  async #run<T>(kept: Kept, book: Book, decide: (kept: Kept, book: Book) => { change: Change; answer: T }): Promise<T> {
    const { change, answer } = decide(kept, book)
    const { entries = [], ledger } = change
    if (entries.length > 0 || ledger) {
      // The new book is made first: an entry the book refuses is never stored.
      const base = ledger?.settings ? withHousehold(book, this.#household(ledger.settings)) : book
      const next = entries.reduce(append, base)
      const written = await commit(this.area, kept, next, entries, ledger)
      const isCutBack = written.head.first !== kept.head.first || next.before !== this.#before(kept)
      this.#hold(written, isCutBack ? this.#open(written) : next)
    }
    return answer
  }

  /** Begins a household. @throws StoreError `household-exists`, `store-damaged` */
  create(device: Head['device'], settings: Settings, open: (book: Book) => readonly Entry[]): Promise<void> {
    return this.lock(async () => {
      const held = await this.look()
      if (held.status === 'damaged') await this.ready()
      if (held.status === 'ready') throw new StoreError('household-exists', 'A household is kept here already.')
      const empty = openBook(this.#household(settings), [])
      const entries = open(empty)
      const kept = await commit(this.area, await newKept(device, settings), entries.reduce(append, empty), entries)
      await this.marker.write(true)
      this.#hold(kept, this.#open(kept))
    })
  }

  /**
   * Puts another book in the place of the one kept, whole: a restored or joined one. Where none is kept, or the one kept
   * is damaged, it is the first. A household's device stays its own.
   *
   * @throws StoreError `store-full`, `store-failed`: then the old one stands
   */
  replace(book: Book, device: Head['device'], settings: Settings): Promise<void> {
    return this.lock(async () => {
      const held = await this.look()
      const isReady = held.status === 'ready'
      const kept = isReady ? held.kept : await this.#besideAll(device, settings)
      // Open orders of the old book are not those of the new one, although some may be in both.
      const written = await writeWhole(this.area, kept, book, isReady ? { settings, tags: {} } : { settings })
      await this.marker.write(true)
      this.#hold(written, this.#open(written))
      await clearOld(this.area, written.head)
    })
  }

  /** Lays a part of a book to be restored beside the one kept. Part 0 clears parts from before. */
  stage(part: number, entries: readonly Entry[]): Promise<void> {
    return this.lock(async () => {
      if (part === 0) {
        const old = Object.keys(await this.area.get(null)).filter((key) => key.startsWith(stagedKey(0).slice(0, -1)))
        if (old.length > 0) await this.area.remove(old)
      }
      await writeItems(this.area, { [stagedKey(part)]: entries })
    })
  }

  /** The parts laid down, as they lie there. */
  staged(parts: number): Promise<Record<string, unknown>> {
    return this.area.get(Array.from({ length: parts }, (_, part) => stagedKey(part)))
  }

  /** Forgets everything. */
  erase(): Promise<void> {
    return this.lock(async () => {
      const keys = Object.keys(await this.area.get(null)).filter((key) => key.startsWith(PREFIX))
      await this.marker.write(false)
      await this.area.remove(keys)
      this.#held = null
    })
  }

  /** Everything stored, as it lies there. */
  async raw(): Promise<string> {
    return JSON.stringify(await this.area.get(null), null, 2)
  }

  /** The whole book, every entry at hand: for what looks far back. It is not kept. @throws StoreError */
  async whole(): Promise<Book> {
    const { kept } = await this.ready()
    return this.#whole(kept)
  }

  /**
   * Entries from a place on, as many as fit a message; places of a segment that cannot be read are empty.
   *
   * @returns `next`, the place to go on from, which is `end` when there are no more
   */
  async entriesFrom(place: number): Promise<OwnCommands['book.entries']['answer']> {
    const { kept } = await this.ready()
    const { entries: end, segments, sums } = kept.head
    if (place >= end) return { entries: [], next: end, end, sums }
    const from = segmentOf(place)
    const to = Math.min(segments, from + SEGMENTS_A_MESSAGE - 1)
    const entries = (await this.#segments(kept, from, to)).flatMap((segment, i) =>
      (segment?.entries ?? []).slice(i === 0 ? place % SEGMENT_SIZE : 0),
    )
    return { entries, next: to === segments ? end : to * SEGMENT_SIZE, end, sums }
  }

  /**
   * Looks through the whole store: proves every segment, adds all entries up and compares with the balances kept beside
   * them. Balances that differ are mended from the entries; a segment that cannot be read is noted. Old series go.
   * Other commands go on meanwhile.
   *
   * @returns whether all was found well
   */
  async verify(): Promise<boolean> {
    const { kept } = await this.ready()
    const totals = new Totals()
    const gaps: number[] = []
    const take = (segments: readonly (Segment | null)[], from: number): void => {
      gaps.push(...segments.flatMap((segment, i) => (segment ? [] : [from + i])))
      for (const segment of segments) totals.add(segment?.entries ?? [])
    }
    let place = 1
    for await (const segments of this.#older(kept, 1, kept.head.first - 1)) {
      take(segments, place)
      place += segments.length
    }
    return this.lock(async () => {
      const { kept: now, book } = await this.ready()
      // Another window of the book: it is looked through next time.
      if (now.head.series !== kept.head.series || now.head.first !== kept.head.first) return true
      take(now.window, now.head.first)
      const isSame = (sums: Readonly<Record<string, number>>): boolean =>
        JSON.stringify(sorted(sums)) === JSON.stringify(sorted(now.head.sums))
      const differ = gaps.length === 0 && !isSame(totals.sums())
      // What is mended comes from the whole book with all its checks.
      const sums = differ ? sumsOf(await this.#whole(now)) : now.head.sums
      if (differ || gaps.length !== now.head.gaps.length) {
        const mended = differ
          ? [...now.head.mended, { date: this.today(now.head.settings.timeZone), what: 'sums' as const }].slice(
              -MENDED_MOST,
            )
          : now.head.mended
        const written = await commit(this.area, now, book, [], { gaps, sums, mended })
        this.#hold(written, this.#open(written))
      }
      await clearOld(this.area, now.head)
      return !differ && gaps.length === 0
    })
  }

  /** A new household under a series that nothing lies under, where what is there cannot be read. */
  async #besideAll(device: Head['device'], settings: Settings): Promise<Kept> {
    const fresh = await newKept(device, settings)
    const series = Object.keys(await this.area.get(null)).map((key) => Number(key.split(':')[1]))
    return { ...fresh, head: { ...fresh.head, series: Math.max(0, ...series.filter(Number.isInteger)) } }
  }

  async #load(): Promise<Held> {
    const loaded = await loadStore(this.area, this.marker)
    if (loaded.status !== 'ready') return loaded
    const { kept } = loaded
    // The witness may be missing after a crash right after the first write. No reader waits for it to be put back.
    this.marker.write(true).catch((cause: unknown) => console.warn('Tillside: the witness was not written.', cause))
    try {
      return { status: 'ready', kept, book: this.#open(kept) }
    } catch (cause) {
      console.error('Tillside: the stored entries do not make a book.', cause)
      return { status: 'damaged', what: 'book' }
    }
  }

  #hold(kept: Kept, book: Book): void {
    this.#held = Promise.resolve({ status: 'ready', kept, book })
  }

  /** The book at its latest entries. */
  #open(kept: Kept): Book {
    const at = { sums: kept.head.sums, before: this.#before(kept) }
    return openBookAt(this.#household(kept.head.settings), at, entriesAtHand(kept))
  }

  /** How many entries are not at hand, those that were lost with their segment among them. */
  #before(kept: Kept): number {
    return kept.head.entries - entriesAtHand(kept).length
  }

  async #whole(kept: Kept): Promise<Book> {
    const older = await this.#segments(kept, 1, kept.head.first - 1)
    return this.#fold(kept, [...older, ...kept.window])
  }

  /** All segments as a book; where one is lost, the balances are those kept beside the entries. */
  #fold(kept: Kept, segments: readonly (Segment | null)[]): Book {
    const household = this.#household(kept.head.settings)
    const entries = segments.flatMap((segment) => segment?.entries ?? [])
    return segments.includes(null)
      ? openBookAt(household, { sums: kept.head.sums, before: 0 }, entries)
      : openBook(household, entries)
  }

  /** Segments by number: those of the window as they are held, older ones as they lie. */
  async #segments(kept: Kept, from: number, to: number): Promise<(Segment | null)[]> {
    const { first } = kept.head
    const found: (Segment | null)[] = []
    for await (const segments of this.#older(kept, from, Math.min(to, first - 1))) found.push(...segments)
    return [...found, ...kept.window.slice(Math.max(0, from - first), Math.max(0, to - first + 1))]
  }

  /** Segments from before the window, a few at a time. */
  async *#older(kept: Kept, from: number, to: number): AsyncGenerator<(Segment | null)[]> {
    const { series, first, firstBefore } = kept.head
    let before = from === 1 ? '' : null
    for (let n = from; n <= to; n += SEGMENTS_A_READ) {
      const end = Math.min(to, n + SEGMENTS_A_READ - 1)
      const raw = await this.area.get(segmentKeys(series, n, end))
      const found = await readSegments(raw, series, n, end, before, end === first - 1 ? firstBefore : null)
      yield found
      before = found.at(-1)?.digest ?? null
    }
  }

  /** A worker that lives past midnight must not count from yesterday's pay dates. */
  #withPayDates(settings: Settings, book: Book): Book {
    return { ...book, household: this.#household(settings) }
  }

  #household(settings: Settings): Book['household'] {
    const { schedule, isDemo: _, statements: __, ...household } = settings
    const today = this.today(settings.timeZone)
    // A household of before earners were told apart has one schedule.
    const earners = household.earners ?? (schedule ? [{ id: 'pay', name: '', pay: 0, schedules: [schedule] }] : [])
    const schedules = earners.flatMap((earner) => earner.schedules)
    return { ...household, earners, payDates: payDates(schedules, today, addDaysTo(today, AHEAD_DAYS)) }
  }
}

function sorted(sums: Readonly<Record<string, number>>): [string, number][] {
  return Object.entries(sums).sort(([a], [b]) => (a < b ? -1 : 1))
}

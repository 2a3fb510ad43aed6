import type { MonthendCommands } from '../../src/background/monthend-protocol.ts'
import { wishFrom } from '../../src/background/order-wish.ts'
import type {
  At,
  CheckoutLook,
  HouseholdView,
  Look,
  OpenTag,
  OwnCommands,
  Reply,
} from '../../src/background/protocol.ts'
import { Refusal } from '../../src/background/refusal.ts'
import type { RestoreCommands } from '../../src/background/restore-protocol.ts'
import type { Damage } from '../../src/background/store.ts'
import {
  accountId,
  append,
  assess,
  type Book,
  BookError,
  balances,
  type CalendarDate,
  calendarDate,
  confirmOrder,
  type DeviceId,
  deviceId,
  type Entry,
  entriesOf,
  fillPot,
  findEntry,
  type Household,
  isReversed,
  lastUndoable,
  money,
  ofMinor,
  openBook,
  openPot,
  type Pot,
  payDates,
  potsForShop,
  receivePay,
  releaseOrder,
  reverse,
  smallestRemoval,
  spendFrom,
  sumsOf,
  tagOrder,
  unplaced,
  withHousehold,
  workOut,
} from '../../src/index.ts'
import { newEntryId } from '../../src/ui/new-id.ts'
import { smallHousehold } from './samples.ts'

/** The desk's own pages are tested against the real worker, not against this one. */
type Handled = Exclude<keyof OwnCommands, keyof (MonthendCommands & RestoreCommands)>
type Handlers = { [C in Handled]: (ask: OwnCommands[C]['ask']) => OwnCommands[C]['answer'] }

/** The worker's commands over the real engine, in memory: for tests of our pages, and for looking at them. */
export class FakeWorker {
  book: Book | null = null
  isDemo = false
  damaged: Damage | null = null
  watched: string[] = []
  tags = new Map<string, OpenTag>()
  /** Every command asked, in order. */
  readonly asked: { readonly command: string; readonly ask: unknown }[] = []
  /** Whether the page still shows the figures it was read for. */
  showsFigures = true
  /** When set, the next answers are withheld until it resolves. */
  gate: Promise<void> | null = null
  /** When set, every command fails with it. */
  failure: { code: string; message: string } | null = null

  constructor(
    public today: CalendarDate = calendarDate('2026-12-01'),
    public checkout: CheckoutLook = noPage,
    readonly device: DeviceId = deviceId('test-device'),
  ) {}

  /** Answers a message as the worker's listener would. */
  async answer(message: unknown): Promise<Reply<unknown>> {
    if (typeof message !== 'object' || message === null || !('command' in message) || !('ask' in message)) {
      return { ok: false, code: 'bad-message', message: 'This message is not one of Tillside.' }
    }
    const { command, ask } = message
    this.asked.push({ command: String(command), ask })
    await this.gate
    if (this.failure) return { ok: false, ...this.failure }
    try {
      const handler = new Map<unknown, unknown>(Object.entries(this.handlers)).get(command)
      if (typeof handler !== 'function') return { ok: false, code: 'unknown-command', message: String(command) }
      return { ok: true, value: structuredClone(handler(ask)) }
    } catch (cause) {
      if (!(cause instanceof Error)) throw cause
      return { ok: false, code: 'code' in cause ? String(cause.code) : 'unexpected', message: cause.message }
    }
  }

  /** How often a command was asked. */
  count(command: keyof OwnCommands): number {
    return this.asked.filter((a) => a.command === command).length
  }

  /** The entries of the book, oldest first. */
  entries(): Entry[] {
    return [...entriesOf(this.ready())]
  }

  private ready(): Book {
    if (!this.book) throw new BookError('bad-household', 'There is no household yet.')
    return this.book
  }

  private post(id: Entry['id'], make: (book: Book) => Entry): Look {
    const book = this.ready()
    if (!findEntry(book, id)) this.book = append(book, make(book))
    return this.look()
  }

  private look(): Look {
    if (this.damaged !== null) return { status: 'damaged', what: this.damaged }
    return this.book ? { status: 'ready', view: viewOf(this.book, this) } : { status: 'new' }
  }

  private tagHere(): OpenTag | null {
    return this.tags.get(this.checkout.shop ?? '') ?? this.checkout.tag
  }

  private stamp(id: Entry['id'], date = this.today) {
    return { id, device: this.device, date }
  }

  private readonly handlers: Handlers = {
    'book.look': () => this.look(),
    'book.entries': ({ from }) => {
      const entries = this.entries()
      return { entries: entries.slice(from), next: entries.length, end: entries.length, sums: sumsOf(this.ready()) }
    },
    'household.create': ({ currency, timeZone, schedule, pots }) => {
      const household: Household = {
        currency,
        timeZone,
        monthStartDay: 1,
        pots: pots.map((p) => potOf(currency, p, false)),
        accounts: [{ id: accountId('main'), name: 'Bank account', kind: 'bank' }],
        payDates: schedule ? payDates(schedule, this.today, calendarDate('2027-12-31')) : [],
      }
      this.book = openBook(
        household,
        pots.flatMap((p) => {
          const sides = { cash: money(currency, p.openCash), card: money(currency, p.openCard) }
          if (sides.cash.minor + sides.card.minor === 0) return []
          return [openPot(household, this.stamp(newEntryId()), p.id, sides)]
        }),
      )
      return this.look()
    },
    'household.demo': () => {
      this.isDemo = true
      return this.handlers['household.create'](smallHousehold)
    },
    'household.leave-demo': () => {
      this.book = null
      this.isDemo = false
      return this.look()
    },
    'pot.save': ({ id, pot, archived }) => {
      const book = this.ready()
      const next = potOf(book.household.currency, pot, archived)
      const isNew = !book.household.pots.some((p) => p.id === pot.id)
      const pots = isNew ? [...book.household.pots, next] : book.household.pots.map((p) => (p.id === pot.id ? next : p))
      this.book = withHousehold(book, { ...book.household, pots })
      const cash = money(book.household.currency, pot.openCash)
      const card = money(book.household.currency, pot.openCard)
      if (!isNew || cash.minor + card.minor === 0) return this.look()
      return this.post(id, (b) => openPot(b.household, this.stamp(id), pot.id, { cash, card }))
    },
    'spend.add': ({ id, pot, side, amount, purpose, date }) =>
      this.post(id, ({ household }) =>
        spendFrom(household, this.stamp(id, date), pot, side, money(household.currency, amount), purpose),
      ),
    'fill.add': ({ id, pot, cash, card, from, date }) =>
      this.post(id, ({ household }) => {
        const sides = { cash: money(household.currency, cash), card: money(household.currency, card) }
        return fillPot(household, this.stamp(id, date), pot, sides, from)
      }),
    'pay.add': ({ id, amount, date }) =>
      this.post(id, ({ household }) => receivePay(household, this.stamp(id, date), money(household.currency, amount))),
    'entry.undo': ({ id, target }) => {
      const undone = findEntry(this.ready(), target)
      const look = this.post(id, (book) => reverse(book, this.stamp(id), target))
      if (undone && 'order' in undone) this.forgetTag(undone.order)
      return look
    },
    'checkout.mark': ({ figure }) => ({ isFound: figure !== null && this.showsFigures }),
    'checkout.look': ({ at }) => {
      if ('nonce' in at && this.checkout.heldBecause === null) throw unknownNonce()
      return { ...this.checkout, tag: this.tagHere() }
    },
    'order.assess': ({ shop, total, order }) => {
      const book = this.ready()
      const amount = money(book.household.currency, total)
      return potsForShop(book, shop).map(({ pot, usedHere }) => {
        const purchase = { shop, lines: [{ pot, amount }], ...(order ? { order } : {}) }
        return { pot, usedHere, verdict: assess(book, purchase, this.today) }
      })
    },
    'order.weigh': ({ shop, order, wish }) => {
      const book = this.ready()
      const meant = wishFrom(shop, wish)
      const { purchase, split, converted, whole } = workOut(book.household, meant, this.today)
      const { currency } = book.household
      const sum = (all: number, l: { amount: number }): number => all + l.amount
      return {
        verdict: assess(book, order ? { ...purchase, order } : purchase, this.today),
        split,
        converted,
        whole: ofMinor(currency, whole.reduce(sum, 0)),
        held: ofMinor(currency, purchase.lines.map((l) => ({ amount: l.amount.minor })).reduce(sum, 0)),
        removal: smallestRemoval(book, meant, this.today, order ?? undefined),
      }
    },
    'order.confirm': ({ id, order, number, total }) => {
      const book = this.ready()
      const said = {
        ...(number === null ? {} : { number }),
        ...(total === null ? {} : { total: money(book.household.currency, total) }),
      }
      const answer = confirmOrder(book, this.stamp(id), order, said)
      if (answer.kind === 'confirmed') this.book = append(book, answer.entry)
      this.checkout = { ...this.checkout, unconfirmed: this.checkout.unconfirmed.filter((u) => u.order !== order) }
      return { kind: answer.kind }
    },
    'order.release': ({ id, order, why }) => {
      this.post(id, (book) => releaseOrder(book, this.stamp(id), order, why))
      this.checkout = { ...this.checkout, unconfirmed: this.checkout.unconfirmed.filter((u) => u.order !== order) }
      return {}
    },
    'order.charge': () => this.notFaked('order.charge'),
    'order.charge-untagged': () => this.notFaked('order.charge-untagged'),
    'order.hold-part': () => this.notFaked('order.hold-part'),
    'order.expect-refund': () => this.notFaked('order.expect-refund'),
    'order.refund': () => this.notFaked('order.refund'),
    'plan.save': () => this.notFaked('plan.save'),
    'pot.plan': () => this.notFaked('pot.plan'),
    'fill.plan': () => this.notFaked('fill.plan'),
    'payday.undo': () => this.notFaked('payday.undo'),
    'sheet.add': () => this.notFaked('sheet.add'),
    'renewal.save': () => this.notFaked('renewal.save'),
    'renewal.pay': () => this.notFaked('renewal.pay'),
    'order.rules': () => this.notFaked('order.rules'),
    'order.tag': ({ id, order, at, wish, reason }) => {
      const book = this.ready()
      const shop = this.shopAt(at)
      const { purchase, whole } = workOut(book.household, wishFrom(shop, wish), this.today)
      if (findEntry(book, id)) {
        const verdict = assess(book, { ...purchase, order }, this.today)
        return { kind: 'tagged', entry: id, verdict, adjusted: false }
      }
      if (whole.every((l) => l.amount === 0)) return { kind: 'nothing-to-pay' }
      const answer = tagOrder(book, this.stamp(id), order, purchase, reason ?? undefined)
      if (answer.kind === 'blocked' || answer.kind === 'needs-reason') return answer
      const read = this.checkout.page?.total ?? null
      const amount = ofMinor(
        book.household.currency,
        whole.reduce((sum, l) => sum + l.amount, 0),
      )
      this.tags.set(shop, { order, shop, lines: purchase.lines, amount, read, taggedAt: 0, placedAt: null })
      if (answer.kind === 'unchanged') return answer
      this.book = append(book, answer.entry)
      return { kind: 'tagged', entry: id, verdict: answer.verdict, adjusted: answer.entry.kind === 'adjust' }
    },
    'order.ahead': ({ pot }) => {
      this.checkout = { ...this.checkout, ahead: pot === null ? null : { pot, until: Date.UTC(2026, 11, 2, 15, 40) } }
      return {}
    },
    'order.again': ({ at }) => {
      this.shopAt(at)
      return {}
    },
    'panel.close': () => ({}),
    'shop.watch': ({ origin }) => {
      this.watched = [...this.watched, new URL(origin).hostname]
      this.checkout = { ...this.checkout, watched: true }
      return this.look()
    },
    'shop.unwatch': ({ host }) => {
      this.watched = this.watched.filter((h) => h !== host)
      this.checkout = { ...this.checkout, watched: false }
      return this.look()
    },
    'store.raw': () => ({ json: JSON.stringify(this.book ? [...entriesOf(this.book)] : []) }),
  }

  /** A command of the desk, which no test of the popup asks: an error, not an answer that was never worked out. */
  private notFaked(command: string): never {
    throw new Error(`The test's worker does not know ${command}.`)
  }

  private shopAt(at: At): string {
    if ('nonce' in at && this.checkout.heldBecause === null) throw unknownNonce()
    return this.checkout.shop ?? ''
  }

  private forgetTag(order: string): void {
    for (const [shop, tag] of this.tags) if (tag.order === order) this.tags.delete(shop)
    if (this.checkout.tag?.order === order) this.checkout = { ...this.checkout, tag: null }
  }
}

const noPage: CheckoutLook = {
  shop: null,
  origin: null,
  watched: false,
  page: null,
  unread: 'not-a-web-page',
  tag: null,
  ahead: null,
  heldBecause: null,
  seenRate: null,
  unconfirmed: [],
}

function unknownNonce(): Refusal {
  return new Refusal('unknown-nonce', 'This panel holds no order. Go back to the shop and place the order again.')
}

function viewOf(book: Book, worker: FakeWorker): HouseholdView {
  const standing = [...entriesOf(book)].filter((e) => e.kind !== 'reversal' && !isReversed(book, e.id))
  return {
    household: book.household,
    schedule: null,
    isDemo: worker.isDemo,
    today: worker.today,
    device: worker.device,
    balances: Object.fromEntries(balances(book)),
    unplaced: unplaced(book),
    recent: standing.slice(-12).reverse(),
    undoable: lastUndoable(book),
    held: {},
    series: worker.device,
    gaps: 0,
    mended: [],
    statements: { accounts: {}, mappings: [] },
    watched: worker.watched,
  }
}

function potOf(currency: Household['currency'], p: OwnCommands['pot.save']['ask']['pot'], archived: boolean): Pot {
  const minor = (text: string): number => money(currency, text).minor
  const { id, name, kind, rule, sides } = p
  const fill = { cash: minor(p.fillCash), card: minor(p.fillCard) }
  return { id, name, kind, rule, sides, floor: minor(p.floor), fill, archived }
}

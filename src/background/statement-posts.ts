import {
  append,
  type Book,
  BookError,
  chargeOrder,
  type Entry,
  type EntryId,
  fillPot,
  findEntry,
  findOrder,
  holdOrder,
  type Money,
  money,
  type OrderId,
  orderSums,
  receivePay,
  refundOrder,
  releaseOrder,
  type Stamp,
  seenOnStatement,
  spendFrom,
  transferMoney,
} from '../index.ts'
import type { LineAsk, PotPartAsk, StatementPosting } from './monthend-protocol.ts'

/** The lines a posting settles. */
export function linesOf(post: StatementPosting): string[] {
  if (post.kind === 'charge') return [...new Set(post.parts.map((part) => part.from.line))]
  if (post.kind === 'transfer' && post.other) return [post.from.line, post.other.from.line]
  return [post.from.line]
}

/** The id a posting is known by: one that is in the book was posted before. */
export function idOf(post: StatementPosting): EntryId | undefined {
  if (post.kind === 'charge') return post.parts[0]?.id
  return 'pots' in post ? post.pots[0]?.id : post.id
}

/** Money goes out before it comes back, and renewals and charges make the orders that refunds are for. */
export function inPostingOrder(posts: readonly StatementPosting[]): StatementPosting[] {
  return [...posts].sort((a, b) => Number(a.kind === 'refund') - Number(b.kind === 'refund'))
}

/** Makes entries one after another, each on the book with those before it. */
export class Posting {
  readonly entries: Entry[] = []

  constructor(
    private book: Book,
    private readonly stampOf: (book: Book, id: EntryId, from: LineAsk) => Stamp,
  ) {}

  /** @throws BookError, MoneyError */
  add(post: StatementPosting): void {
    switch (post.kind) {
      case 'charge':
        for (const { id, from, order, amount, foreign } of post.parts) {
          const how = foreign ? { foreign: money(foreign.currency, foreign.amount) } : {}
          this.#put(id, from, (book, stamp) => chargeOrder(book, stamp, order, this.#above(amount), from.account, how))
        }
        for (const { id, order } of post.completes) this.#complete(post, id, order)
        return
      case 'refund':
        this.#put(post.id, post.from, (book, stamp) =>
          refundOrder(book, stamp, post.order, this.#above(post.amount), post.from.account),
        )
        return
      case 'seen':
        this.#see(post.id, post.from, post.entries)
        return
      case 'spend':
        this.#parts(post.pots, post.from, (book, stamp, part, amount) =>
          spendFrom(book.household, stamp, part.pot, 'card', amount, post.purpose, post.from.account),
        )
        return
      case 'pay':
        this.#put(post.id, post.from, (book, stamp) =>
          receivePay(book.household, stamp, this.#above(post.amount), post.from.account),
        )
        return
      case 'into-pots':
        this.#parts(post.pots, post.from, (book, stamp, part, amount) =>
          fillPot(book.household, stamp, part.pot, { card: amount }, 'outside', post.from.account),
        )
        return
      case 'drawn':
        this.#parts(post.pots, post.from, (book, stamp, part, amount) =>
          fillPot(book.household, stamp, part.pot, { cash: amount }, 'unplaced', post.from.account),
        )
        return
      case 'transfer':
        this.#put(post.id, post.from, (book, stamp) => {
          const amount = this.#above(post.amount)
          return transferMoney(book.household, stamp, post.source, post.target, amount, post.from.account)
        })
        if (post.other) this.#see(post.other.id, post.other.from, [post.id])
        return
      case 'renewal':
        this.#renewal(post)
    }
  }

  #see(id: EntryId, from: LineAsk, entries: readonly EntryId[]): void {
    this.#put(id, from, (book, stamp) => seenOnStatement(book, stamp, from.line, entries, from.account))
  }

  /** An order that is paid lets the rest of its hold go; one that holds nothing any more is complete by itself. */
  #complete(post: Extract<StatementPosting, { kind: 'charge' }>, id: EntryId, order: OrderId): void {
    const part = post.parts.find((p) => p.order === order)
    const state = part && findOrder(this.book, part.order)
    if (!part || !state || orderSums(state).held === 0) return
    const { line: _, ...stamp } = this.stampOf(this.book, id, part.from)
    this.#append(releaseOrder(this.book, stamp, part.order, 'complete'))
  }

  #renewal(post: Extract<StatementPosting, { kind: 'renewal' }>): void {
    const renewal = this.book.household.renewals?.find((r) => r.id === post.renewal)
    if (!renewal) throw new BookError('bad-renewal', `There is no renewal "${post.renewal}" in this household.`)
    const amount = this.#above(post.amount)
    const purchase = {
      shop: renewal.shop ?? renewal.name,
      lines: [{ pot: renewal.pot, amount }],
      details: { renewal: { id: renewal.id, due: post.due } },
    }
    const { line: _, ...stamp } = this.stampOf(this.book, post.id, post.from)
    this.#append(holdOrder(this.book, stamp, post.order, purchase))
    this.#put(post.charge, post.from, (book, own) => chargeOrder(book, own, post.order, amount, post.from.account))
  }

  #parts(
    parts: readonly PotPartAsk[],
    from: LineAsk,
    make: (book: Book, stamp: Stamp, part: PotPartAsk, amount: Money) => Entry,
  ): void {
    for (const part of parts) {
      this.#put(part.id, from, (book, stamp) => make(book, stamp, part, this.#above(part.amount)))
    }
  }

  #put(id: EntryId, from: LineAsk, make: (book: Book, stamp: Stamp) => Entry): void {
    if (findEntry(this.book, id)) return
    this.#append(make(this.book, { ...this.stampOf(this.book, id, from), line: from.line }))
  }

  #append(entry: Entry): void {
    this.book = append(this.book, entry)
    this.entries.push(entry)
  }

  #above(text: string): Money {
    const amount = money(this.book.household.currency, text)
    if (amount.minor > 0) return amount
    throw new BookError('bad-amount', `"${text}" is nothing to post. Enter an amount above zero.`)
  }
}

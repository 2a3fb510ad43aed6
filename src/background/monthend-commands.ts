import {
  agreeBalance,
  BookError,
  closingEntries,
  countPot,
  type Entry,
  findEntry,
  findPot,
  money,
  ofMinor,
  postedLines,
  reopenMonth,
  settleMove,
} from '../index.ts'
import type { Context } from './context.ts'
import type { MonthendCommands } from './monthend-protocol.ts'
import type { Look } from './protocol.ts'
import { amountOf } from './settings.ts'
import { stampOn, stampToday } from './stamp.ts'
import { idOf, inPostingOrder, linesOf, Posting } from './statement-posts.ts'
import { look } from './view.ts'

type Ask<C extends keyof MonthendCommands> = MonthendCommands[C]['ask']
type Nothing = Record<never, never>

/** Adds an account, or renames one; what an account is never changes. @throws BookError `bad-household` */
export async function saveAccount(context: Context, ask: Ask<'account.save'>): Promise<Look> {
  await context.keeper.write(({ head: { settings } }) => {
    const known = settings.accounts.find((a) => a.id === ask.account)
    if (known && known.kind !== ask.kind) {
      throw new BookError('bad-household', `${known.name} cannot become another kind of account. Add a new one.`)
    }
    const account = { id: ask.account, name: ask.name.trim(), kind: ask.kind }
    const accounts = known
      ? settings.accounts.map((a) => (a.id === ask.account ? account : a))
      : [...settings.accounts, account]
    return { change: { ledger: { settings: { ...settings, accounts } } }, answer: null }
  })
  return look(context)
}

/** Remembers a bank's files: a mapping takes the place of the one with the same header. @throws BookError `unknown-account` */
export async function rememberStatement(context: Context, ask: Ask<'statement.remember'>): Promise<Look> {
  await context.keeper.write(({ head: { settings } }) => {
    if (!settings.accounts.some((a) => a.id === ask.account)) {
      throw new BookError('unknown-account', `There is no account "${ask.account}" in this household.`)
    }
    const before = settings.statements ?? { accounts: {}, mappings: [] }
    const header = (mapping: typeof ask.mapping): string => JSON.stringify(mapping?.header)
    const others = before.mappings.filter((m) => header(m) !== header(ask.mapping))
    const mappings = ask.mapping ? [...others, ask.mapping].slice(-MAPPINGS_MOST) : before.mappings
    const statements = { accounts: { ...before.accounts, [ask.key]: ask.account }, mappings }
    return { change: { ledger: { settings: { ...settings, statements } } }, answer: null }
  })
  return look(context)
}

const MAPPINGS_MOST = 20

/**
 * Posts what a person accepted of a statement, all or none. A line that is in the book already is left alone and named,
 * so no line is posted twice, whoever asks and how often.
 *
 * @throws BookError, MoneyError
 */
export function postStatement(
  context: Context,
  ask: Ask<'statement.post'>,
): Promise<MonthendCommands['statement.post']['answer']> {
  return context.keeper.writeOnWhole((kept, book) => {
    const taken = new Set(postedLines(book))
    const already: string[] = []
    const posting = new Posting(book, (now, id, from) => stampOn(context, kept, now, id, from.date))
    let posted = 0
    for (const post of inPostingOrder(ask.posts)) {
      const id = idOf(post)
      const lines = linesOf(post)
      const known = lines.filter((line) => taken.has(line))
      if ((id !== undefined && findEntry(book, id)) || known.length > 0) {
        already.push(...known)
        continue
      }
      posting.add(post)
      for (const line of lines) taken.add(line)
      posted++
    }
    return { change: { entries: posting.entries }, answer: { posted, already } }
  })
}

/** Notes that a statement's closing balance agrees. @throws BookError, MoneyError */
export function agree(context: Context, ask: Ask<'statement.agree'>): Promise<Nothing> {
  return context.keeper.write((kept, book) => {
    const balance = money(book.household.currency, ask.balance)
    const make = () => agreeBalance(book, stampToday(context, kept, book, ask.id), ask.account, ask.on, balance)
    return { change: { entries: findEntry(book, ask.id) ? [] : [make()] }, answer: {} }
  })
}

/** Notes counted envelopes, all or none. @throws BookError */
export function saveCounts(context: Context, ask: Ask<'count.save'>): Promise<Nothing> {
  return context.keeper.write((kept, book) => {
    const entries: Entry[] = ask.counts
      .filter(({ id }) => !findEntry(book, id))
      .map(({ id, pot, pieces, post }) => countPot(book, stampToday(context, kept, book, id), pot, pieces, { post }))
    return { change: { entries }, answer: {} }
  })
}

/** Enters one tick of the settling list. @throws BookError */
export function tickSettle(context: Context, ask: Ask<'settle.tick'>): Promise<Nothing> {
  return context.keeper.write((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: {} }
    const stamp = stampToday(context, kept, book, ask.id)
    return { change: { entries: [settleMove(book, stamp, ask.from, ask.to, ask.pieces)] }, answer: {} }
  })
}

/** Sweeps, signs off, and opens the next month, all or none. @throws BookError, MoneyError */
export async function closeTheMonth(context: Context, ask: Ask<'month.close'>): Promise<Look> {
  await context.keeper.writeOnWhole((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: null }
    const { currency, timeZone } = book.household
    const { settings } = kept.head
    const stamp = { id: ask.id, device: kept.head.device, date: context.today(timeZone) }
    const of = (text: string) => ofMinor(currency, amountOf(currency, text))
    const sweeps = ask.sweeps.map((sweep) => ({ ...sweep, cash: of(sweep.cash), card: of(sweep.card) }))
    const entries = closingEntries(book, stamp, ask.month, sweeps)
    if (ask.budgets.length === 0) return { change: { entries }, answer: null }
    const budgets = new Map(
      ask.budgets.map(({ pot, monthly }) => [findPot(book.household, pot).id, money(currency, monthly).minor] as const),
    )
    const pots = settings.pots.map((pot) => {
      const monthly = budgets.get(pot.id)
      return monthly === undefined ? pot : { ...pot, plan: { ...pot.plan, monthly } }
    })
    return { change: { entries, ledger: { settings: { ...settings, pots } } }, answer: null }
  })
  return look(context)
}

/** Opens a closed month again. @throws BookError */
export async function reopenTheMonth(context: Context, ask: Ask<'month.reopen'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: null }
    const stamp = { id: ask.id, device: kept.head.device, date: context.today(book.household.timeZone) }
    return { change: { entries: [reopenMonth(book, stamp, ask.month, ask.reason)] }, answer: null }
  })
  return look(context)
}

import {
  append,
  type Book,
  BookError,
  type Entry,
  type EntryId,
  entriesOf,
  fillPot,
  findEntry,
  findPot,
  isReversed,
  money,
  ofMinor,
  type PotPlan,
  potBalance,
  receivePay,
  reverse,
  type Sides,
  type Stamp,
  spendFrom,
} from '../index.ts'
import type { Context } from './context.ts'
import type { PlanCommands, SheetLineText } from './plan-protocol.ts'
import type { Look } from './protocol.ts'
import { amountOf } from './settings.ts'
import { stampOn, stampToday } from './stamp.ts'
import type { Settings } from './store.ts'
import { look } from './view.ts'

type Ask<C extends keyof PlanCommands> = PlanCommands[C]['ask']

/** Keeps who earns and how the household plans. @throws BookError `bad-household` */
export async function savePlanning(context: Context, ask: Ask<'plan.save'>): Promise<Look> {
  await context.keeper.write((kept) => {
    const settings: Settings = { ...kept.head.settings, earners: [...ask.earners], planning: ask.planning }
    return { change: { ledger: { settings } }, answer: null }
  })
  return look(context)
}

/** Keeps what is planned for a pot. @throws BookError `unknown-pot`, `bad-household` */
export async function savePotPlan(context: Context, ask: Ask<'pot.plan'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const { settings } = kept.head
    const before = findPot(book.household, ask.pot)
    const plan = withBeginning(ask.plan, before.plan, () => ({
      date: context.today(settings.timeZone),
      in: potBalance(book, ask.pot).left.minor,
    }))
    const pots = settings.pots.map((pot) => (pot.id === ask.pot ? { ...pot, plan, fill: { ...ask.fill } } : pot))
    return { change: { ledger: { settings: { ...settings, pots } } }, answer: null }
  })
  return look(context)
}

/** A goal's course begins when it is first set, and anew when its target or date changes. */
function withBeginning(
  plan: PotPlan,
  before: PotPlan | undefined,
  now: () => NonNullable<NonNullable<PotPlan['goal']>['since']>,
): PotPlan {
  const { goal } = plan
  if (!goal || goal.since) return plan
  const was = before?.goal
  const isSame = was?.since !== undefined && was.target === goal.target && was.due === goal.due
  return { ...plan, goal: { ...goal, since: isSame && was?.since ? was.since : now() } }
}

/**
 * Enters a payday: the pay, and every fill, all or none. Asked again with the same ids it changes nothing.
 *
 * @throws MoneyError, BookError
 */
export async function addPayday(context: Context, ask: Ask<'fill.plan'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const { household } = book
    const { currency } = household
    const stamp = (id: EntryId) => stampOn(context, kept, book, id, ask.date)
    const entries: Entry[] = []
    const enter = (made: Entry): void => {
      const known = findEntry(book, made.id)
      if (!known) entries.push(made)
      else if (JSON.stringify(known.postings) !== JSON.stringify(made.postings)) {
        const what = 'This payday is in the book already, with other amounts. Look at it before you enter it again.'
        throw new BookError('id-reused', what)
      }
    }
    const pay = ofMinor(currency, amountOf(currency, ask.amount))
    if (pay.minor !== 0) enter({ ...receivePay(household, stamp(ask.id), pay), payday: ask.id })
    for (const { id, pot, cash, card } of ask.fills) {
      const sides = {
        cash: ofMinor(currency, amountOf(currency, cash)),
        card: ofMinor(currency, amountOf(currency, card)),
      }
      enter({ ...fillPot(household, stamp(id), pot, sides), payday: ask.id })
    }
    if (pay.minor === 0 && ask.fills.length === 0) {
      throw new BookError('bad-amount', 'There is no pay and no fill to enter. Enter what arrived, or fill a pot.')
    }
    return { change: { entries }, answer: null }
  })
  return look(context)
}

/** Takes a whole payday back, the latest of it first. @throws BookError `unknown-entry` when nothing of it stands */
export async function undoPayday(context: Context, ask: Ask<'payday.undo'>): Promise<Look> {
  await context.keeper.writeOnWhole((kept, book) => {
    if (ask.ids.some((id) => findEntry(book, id))) return { change: {}, answer: null }
    const standing = paydayEntries(book, ask.payday).reverse()
    if (standing.length === 0) {
      throw new BookError('unknown-entry', 'Nothing of this payday stands any more, so there is nothing to take back.')
    }
    const entries: Entry[] = []
    let next = book
    for (const [index, target] of standing.entries()) {
      const id = ask.ids[index]
      if (id === undefined) {
        throw new BookError('bad-id', `This payday has ${standing.length} entries; ${ask.ids.length} ids are too few.`)
      }
      const entry = reverse(next, stampToday(context, kept, book, id), target.id)
      entries.push(entry)
      next = append(next, entry)
    }
    return { change: { entries }, answer: null }
  })
  return look(context)
}

function paydayEntries(book: Book, payday: EntryId): Entry[] {
  return [...entriesOf(book)].filter(
    (entry) => 'payday' in entry && entry.payday === payday && !isReversed(book, entry.id),
  )
}

/** Enters lines that were written on paper, all or none. @throws MoneyError, BookError */
export async function addSheetLines(context: Context, ask: Ask<'sheet.add'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const entries = ask.lines
      .filter((line) => !findEntry(book, line.id))
      .map((line) => lineEntry(book, line, stampOn(context, kept, book, line.id, line.date)))
    return { change: { entries }, answer: null }
  })
  return look(context)
}

function lineEntry(book: Book, line: SheetLineText, stamp: Stamp): Entry {
  const { household } = book
  const { pot, side, way, purpose } = line
  const amount = money(household.currency, line.amount)
  if (way === 'out') return spendFrom(household, stamp, pot, side, amount, purpose)
  const sides: Sides = side === 'cash' ? { cash: amount } : { card: amount }
  const note = purpose.trim()
  return fillPot(household, { ...stamp, ...(note === '' ? {} : { note }) }, pot, sides, 'outside')
}

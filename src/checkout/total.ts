import type { Control } from './controls.ts'
import { attribute, ownNames } from './dom.ts'
import type { FoundItem } from './items.ts'
import type { Meaning } from './label.ts'
import type { Liveness } from './liveness.ts'
import type { MachineValues } from './machine-values.ts'
import type { CurrencyFinding, PageCurrency } from './page-currency.ts'
import type { Box, PageText } from './page-text.ts'
import { type Pricer, scaled, takenOff } from './pricer.ts'
import type { Row } from './rows.ts'
import type { Stream } from './stream.ts'
import { type Closure, closure, type Term } from './sums.ts'
import type { Vocabulary } from './vocabulary.ts'
import { plain } from './words.ts'

/** A row whose amount and currency are read. */
export interface PricedRow extends Row {
  readonly amount: string
  /** Ten-thousandths. */
  readonly value: number
  readonly money: CurrencyFinding | null
}

/** A row that may be the total, and how much speaks for it. */
export interface Candidate {
  readonly row: PricedRow
  readonly score: number
  readonly reasons: readonly string[]
  readonly closure: Closure | null
  /** The rows it was added up with, or stands among. */
  readonly group: readonly PricedRow[]
}

export interface TotalContext {
  readonly page: PageText
  readonly stream: Stream
  readonly words: Vocabulary
  readonly live: Liveness
  readonly rows: readonly PricedRow[]
  readonly items: readonly FoundItem[]
  readonly controls: readonly Control[]
  readonly machine: MachineValues
  /** The page comes after the order. */
  readonly confirmation: boolean
}

const STRENGTH: Readonly<Partial<Record<Meaning, number>>> = {
  dueNow: 10,
  payable: 6,
  grandTotal: 5,
  total: 3.5,
  paid: 2,
  summary: 2,
}
const MOST_CANDIDATES = 60
const MOST_ROWS = 60
const MOST_CLIMBS = 14
const ORDERING: ReadonlySet<Control['kind']> = new Set(['pays', 'buys', 'completes'])

/** Reads the amount and the currency of each row; rows that cannot be read as one number are dropped. */
export function priceRows(rows: readonly Row[], pricer: Pricer, currency: PageCurrency): PricedRow[] {
  return rows.flatMap((row) => {
    const amount = pricer.amount(row.figure)
    const value = amount === null ? null : scaled(amount)
    if (amount === null || value === null) return []
    return [{ ...row, amount, value, money: currency.of(row.figure, row.label) }]
  })
}

/**
 * Every row that may be the total, best first. What speaks for one: its label, the arithmetic (items, shipping, tax,
 * discounts and credits add up to it), the same amount on the button that pays or in the page's data.
 */
export function rankTotals(context: TotalContext): Candidate[] {
  const buttons = controlsOf(context)
  const lines = itemRanges(context)
  const { rows } = context
  const labelled = rows
    .filter((row) => strengthOf(row, buttons) !== null && !isIn(lines, row.index))
    .slice(0, MOST_CANDIDATES)
  const candidates = labelled.map((row) => weigh(context, rows, row, buttons))
  if (!candidates.some((candidate) => candidate.closure)) candidates.push(...unlabelled(context, rows, lines))
  return candidates.sort((a, b) => b.score - a.score)
}

/** The known control that a row's amount stands on: `null` on a control that does something else. */
type Buttons = ReadonlyMap<number, Control | null>

function controlsOf({ page, rows, controls }: TotalContext): Buttons {
  const known = new Map(controls.map((control) => [control.element, control]))
  const all = new Set(page.controls)
  const buttons = new Map<number, Control | null>()
  for (const row of rows) {
    let box: Box | null = row.figure.box
    for (let step = 0; box && step < 5; step += 1, box = box.parent) {
      if (!all.has(box.element) || box.name.includes('-')) continue
      buttons.set(row.index, known.get(box.element) ?? null)
      break
    }
  }
  return buttons
}

function strengthOf(row: PricedRow, buttons: Buttons): number | null {
  const control = buttons.get(row.index)
  if (control && ORDERING.has(control.kind)) return 4
  return row.meaning === null ? null : (STRENGTH[row.meaning] ?? null)
}

function itemRanges({ items, stream }: TotalContext): (readonly [number, number])[] {
  return items.map((item) => stream.within(item.box))
}

function isIn(ranges: readonly (readonly [number, number])[], index: number): boolean {
  return ranges.some(([from, to]) => index >= from && index < to)
}

function weigh(context: TotalContext, rows: readonly PricedRow[], row: PricedRow, buttons: Buttons): Candidate {
  const reasons: string[] = []
  let score = strengthOf(row, buttons) ?? 0
  const add = (points: number, why: string): void => {
    score += points
    reasons.push(why)
  }
  if (context.confirmation && row.meaning === 'paid') add(3, 'the order is placed, so what was paid is the total')
  if (context.confirmation && row.value === 0 && row.meaning !== 'grandTotal')
    add(-9, 'nothing is left to pay after the order')
  const { found, group } = closes(context, rows, row)
  if (found && found.terms >= 2) {
    add(4.5, 'the parts add up to it')
    for (const left of found.left) add(left.role === 'credit' ? -2.5 : -1.5, 'a part beside it is left out of the sum')
  } else if (found) add(0.5, 'equals the items')
  else if (group.length >= 2 && row.meaning !== 'dueNow') add(-0.5, 'the parts beside it do not add up to it')
  const onButton = context.rows.some((other) => other.value === row.value && other !== row && ordersOn(buttons, other))
  if (onButton) add(3, 'the button that orders shows the same amount')
  const stated = statedTotals(context.machine).find((money) => scaled(money.amount) === row.value)
  if (stated) add(2, `the page's data agrees (${stated.path})`)
  if (isPageFurniture(row.figure.box)) add(-5, "stands in the page's head or in a small cart")
  if (row.figure.about) add(-6, 'is given as "about"')
  if (row.value < 0) add(-8, 'is less than nothing')
  if (row.value === 0 && !found && group.some((other) => other.value > 0)) add(-6, 'is zero beside parts that are not')
  if (isForeign(row, group)) add(-3, 'is in another currency than its parts')
  if (isEmphasised(row.figure.box)) add(0.3, 'is emphasised')
  return { row, score, reasons, closure: found && found.terms >= 2 ? found : null, group }
}

function ordersOn(buttons: Buttons, row: PricedRow): boolean {
  const control = buttons.get(row.index)
  return control !== undefined && control !== null && ORDERING.has(control.kind)
}

/** Looks for the smallest box around the row in which the arithmetic closes. */
function closes(
  context: TotalContext,
  rows: readonly PricedRow[],
  row: PricedRow,
): { found: Closure | null; group: PricedRow[] } {
  let box: Box | null = row.box
  let nearest: PricedRow[] = []
  let trivial: { found: Closure; group: PricedRow[] } | null = null
  let before = -1
  for (let level = 0; box && level < MOST_CLIMBS; level += 1, box = box.parent) {
    const [from, to] = context.stream.within(box)
    const inside = rows.filter(
      (other) => other !== row && other.index >= from && other.index < to && roleOf(other, row) !== null,
    )
    if (inside.length > MOST_ROWS) break
    if (inside.length === before || !inside.some((other) => isPart(other.meaning))) continue
    before = inside.length
    if (nearest.length === 0) nearest = inside
    const found = closure(row.value, [...termsOf(inside, row), ...itemTerms(context, inside)])
    if (found && found.terms >= 2) return { found, group: inside }
    if (found) trivial ??= { found, group: inside }
  }
  return trivial ?? { found: null, group: nearest }
}

function isPart(meaning: Meaning | null): boolean {
  return (
    meaning !== null &&
    !['aside', 'included', 'summary', 'total', 'grandTotal', 'payable', 'dueNow', 'paid'].includes(meaning)
  )
}

function roleOf(row: PricedRow, total: PricedRow): Term['role'] | null {
  if (row.money?.code !== total.money?.code || row.figure.about) return null
  if (row.chosen) return isPart(row.meaning) ? 'maybe' : null
  switch (row.meaning) {
    case 'items':
    case 'net':
      return 'base'
    case 'total':
    case 'grandTotal':
      return row.value === total.value ? null : 'base'
    case 'tax':
      return 'tax'
    case 'discount':
      return 'discount'
    case 'credit':
      return 'credit'
    case 'shipping':
    case 'fee':
    case 'tip':
    case 'rounding':
      return 'added'
    case 'aside':
      return row.figure.negative ? 'maybe' : null
    case null:
      return 'maybe'
    default:
      return null
  }
}

function termsOf(rows: readonly PricedRow[], total: PricedRow): Term[] {
  return rows.flatMap((row) => {
    const role = roleOf(row, total)
    if (role === null) return []
    const value = role === 'discount' || role === 'credit' ? scaled(takenOff(row.amount)) : row.value
    return value === null ? [] : [{ value, role, index: row.index }]
  })
}

/** Where no subtotal is shown, the items themselves are the base. */
function itemTerms(context: TotalContext, rows: readonly PricedRow[]): Term[] {
  if (context.items.length === 0 || rows.some((row) => row.meaning === 'items')) return []
  const lines = context.items.reduce((sum, item) => sum + (item.shown ?? 0), 0)
  const units = context.items.reduce((sum, item) => sum + (item.shown ?? 0) * (item.sure ? 1 : item.quantity), 0)
  return [...new Set([lines, units])].map((value) => ({ value, role: 'base' }))
}

/** Amounts without a known label: where known parts add up to one, or the page's own order data names it. */
function unlabelled(
  context: TotalContext,
  rows: readonly PricedRow[],
  lines: readonly (readonly [number, number])[],
): Candidate[] {
  const found: Candidate[] = []
  const stated = new Set(statedTotals(context.machine).map((money) => scaled(money.amount)))
  for (const row of rows
    .filter((each) => each.meaning === null && each.value > 0 && !isIn(lines, each.index))
    .slice(0, MOST_CANDIDATES)) {
    const { found: sum, group } = closes(context, rows, row)
    const parts = group.filter((other) => isPart(other.meaning)).length
    if (sum && sum.terms >= 2 && sum.left.length === 0 && parts >= 2) {
      found.push({ row, score: 4.5, reasons: ['no known label, but the parts add up to it'], closure: sum, group })
    } else if (stated.has(row.value)) {
      found.push({
        row,
        score: 2.5,
        reasons: ["no known label, but the page's order data states it"],
        closure: null,
        group,
      })
    }
  }
  return found
}

/** Totals that the page states for machines: of an order or invoice, or marked as the transaction's amount. */
function statedTotals(machine: MachineValues): MachineValues['money'] {
  return machine.money.filter(
    ({ outer, type, property, path }) =>
      property === 'transaction-amount' ||
      ((outer === 'Order' || outer === 'Invoice') &&
        (type === outer || path.includes('totalPaymentDue')) &&
        !path.includes('minimum')),
  )
}

const SMALL_CART =
  /mini-?(?:cart|basket)|cart-?(?:drawer|flyout|dropdown|preview|popup)|basket-?(?:drawer|flyout|dropdown)/i

/** Heads, menus and small carts repeat old sums on every page. A head inside a form or a section is not the page's. */
export function isPageFurniture(start: Box): boolean {
  for (let box: Box | null = start; box; box = box.parent) {
    const element = box.element
    const role = attribute(element, 'role')
    if (box.name === 'nav' || role === 'navigation' || role === 'banner') return true
    if (box.name === 'header' && isTopLevel(box)) return true
    if (SMALL_CART.test(ownNames(element))) return true
  }
  return false
}

function isTopLevel(box: Box): boolean {
  for (let at = box.parent; at; at = at.parent) {
    if (['main', 'form', 'section', 'article', 'aside', 'dialog'].includes(at.name)) return false
  }
  return true
}

function isEmphasised(start: Box): boolean {
  let box: Box | null = start
  for (let step = 0; box && step < 4; step += 1, box = box.parent) {
    if (['strong', 'b', 'h2', 'h3', 'h4', 'tfoot', 'output'].includes(box.name)) return true
  }
  return false
}

function isForeign(row: PricedRow, group: readonly PricedRow[]): boolean {
  const codes = group.filter((other) => isPart(other.meaning)).map((other) => other.money?.code)
  return codes.length > 0 && row.money !== null && !codes.includes(row.money.code)
}

/** Words near a row that say a part of the sum is not known yet: "calculated at checkout". */
export function saysLater(context: TotalContext, row: PricedRow): string | null {
  let box: Box | null = row.box
  for (let level = 0; box && level < MOST_CLIMBS; level += 1, box = box.parent) {
    const [from, to] = context.stream.within(box)
    if (to - from > 80) return null
    for (let at = from; at < to; at += 1) {
      const item = context.stream.items[at]
      if (item?.kind === 'words' && context.words.later.first(plain(item.text)) && context.live.words(at))
        return item.text
    }
  }
  return null
}

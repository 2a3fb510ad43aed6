import { closes, isPart, type PricedRow, type TotalContext } from './add-up.ts'
import type { Box } from './box.ts'
import type { Control } from './controls.ts'
import type { Meaning } from './label.ts'
import type { MachineValues } from './machine-values.ts'
import type { PageCurrency } from './page-currency.ts'
import { trait } from './page-elements.ts'
import { isEmphasised, isPageFurniture } from './page-place.ts'
import { type Pricer, scaled } from './pricer.ts'
import type { Row } from './rows.ts'
import type { Closure } from './sums.ts'

/** A row that may be the total, and how much speaks for it. */
export interface Candidate {
  readonly row: PricedRow
  readonly score: number
  readonly reasons: readonly string[]
  readonly closure: Closure | null
  /** The rows it was added up with, or stands among. */
  readonly group: readonly PricedRow[]
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

function controlsOf({ rows, controls }: TotalContext): Buttons {
  const known = new Map(controls.map((control) => [control.element, control]))
  const buttons = new Map<number, Control | null>()
  for (const row of rows) {
    let box: Box | null = row.figure.box
    for (let step = 0; box && step < 5; step += 1, box = box.parent) {
      if ((box.traits & trait.control) === 0 || box.name.includes('-')) continue
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
  if (!(found && found.terms >= 2) && isOfOffer(context, row))
    add(-7, 'stands beside a control that puts things into the cart')
  if (row.figure.about) add(-6, 'is given as "about"')
  if (row.value < 0) add(-8, 'is less than nothing')
  if (row.value === 0 && !found && group.some((other) => other.value > 0)) add(-6, 'is zero beside parts that are not')
  if (isForeign(row, group)) add(-3, 'is in another currency than its parts')
  if (isEmphasised(row.figure.box)) add(0.3, 'is emphasised')
  return { row, score, reasons, closure: found && found.terms >= 2 ? found : null, group }
}

const OFFER_LEAVES = 24

/** A sum of its own beside "add to cart", with nothing that leads to paying: a bundle, or a count times a price. */
function isOfOffer({ controls, rows }: TotalContext, row: PricedRow): boolean {
  let box: Box | null = row.box
  for (let step = 0; box && step < 4 && box.to - box.from <= OFFER_LEAVES; step += 1, box = box.parent) {
    const { from, to } = box
    // Another total within: the box is no longer about this one alone.
    if (
      rows.some((other) => other !== row && other.meaning !== null && other.meaning in STRENGTH && isInside(other, box))
    )
      return false
    const within = controls.filter((control) => control.box.from >= from && control.box.to <= to)
    if (within.some((control) => control.toCheckout || ORDERING.has(control.kind))) return false
    if (within.some((control) => control.kind === 'addToCart')) return true
  }
  return false
}

function isInside({ figure }: PricedRow, box: Box | null): boolean {
  return box !== null && figure.from >= box.from && figure.to < box.to
}

function ordersOn(buttons: Buttons, row: PricedRow): boolean {
  const control = buttons.get(row.index)
  return control !== undefined && control !== null && ORDERING.has(control.kind)
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

function isForeign(row: PricedRow, group: readonly PricedRow[]): boolean {
  const codes = group.filter((other) => isPart(other.meaning)).map((other) => other.money?.code)
  return codes.length > 0 && row.money !== null && !codes.includes(row.money.code)
}

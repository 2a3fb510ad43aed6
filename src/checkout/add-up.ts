import type { Box } from './box.ts'
import type { Control } from './controls.ts'
import type { FoundItem } from './items.ts'
import type { Meaning } from './label.ts'
import type { Liveness } from './liveness.ts'
import type { MachineValues } from './machine-values.ts'
import type { PageText } from './page-text.ts'
import type { CurrencyFinding } from './places.ts'
import { scaled, takenOff } from './pricer.ts'
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

const MOST_ROWS = 60

const MOST_CLIMBS = 14

/** Looks for the smallest box around the row in which the arithmetic closes. */
export function closes(
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

export function isPart(meaning: Meaning | null): boolean {
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

import type { PricedRow, TotalContext } from './add-up.ts'
import type { FoundItem } from './items.ts'
import type { Meaning } from './label.ts'
import { isPageFurniture } from './page-place.ts'
import { takenOff } from './pricer.ts'
import type { Evidence, PartKind, ReadPart } from './reading.ts'
import type { Candidate } from './total.ts'

const KINDS: Readonly<Partial<Record<Meaning, PartKind>>> = {
  items: 'items',
  shipping: 'shipping',
  tax: 'tax',
  discount: 'discount',
  credit: 'credit',
  fee: 'fee',
  tip: 'tip',
  rounding: 'other',
}

/**
 * The figures that lead to the total: those it was added up with, or stands among. Without a total, every part the page
 * shows, copies once.
 */
export function partsOf(context: TotalContext, total: Candidate | null): { parts: ReadPart[]; evidence: Evidence[] } {
  const rows = total && total.group.length > 0 ? total.group : loose(context)
  const parts: ReadPart[] = []
  const evidence: Evidence[] = []
  const said = new Set(rows.filter((row) => !row.chosen).map((row) => row.meaning))
  for (const row of rows) {
    // The chosen way of sending is a part only where no line of the sum says it.
    if (row.chosen && said.has(row.meaning)) continue
    const kind = row.meaning === null ? unnamedKind(context, total, row) : KINDS[row.meaning]
    if (!kind || !row.money || (total?.row.money && row.money.code !== total.row.money.code)) continue
    const amount = kind === 'discount' || kind === 'credit' ? takenOff(row.amount) : row.amount
    const label = row.label.replace(/\s*[:：]\s*$/u, '').trim()
    parts.push({ kind, label, amount, currency: row.money.code })
    evidence.push({
      figure: 'part',
      source: 'label',
      label,
      text: row.figure.text,
      used: true,
      why: `reads as ${kind}`,
      element: row.figure.box.element,
    })
  }
  return { parts, evidence }
}

/** A row with an unknown label is a part only where the sum needs it: the items, if nothing else names them. */
function unnamedKind(context: TotalContext, total: Candidate | null, row: PricedRow): PartKind | undefined {
  if (!total?.closure || context.items.some((item) => isWithin(context, item, row))) return undefined
  const named = total.group.some((other) => other.meaning === 'items')
  const lines = context.items.reduce((sum, item) => sum + (item.shown ?? 0), 0)
  if (!named && context.items.length > 0 && row.value === lines) return 'items'
  if (!total.closure.used.some((term) => term.index === row.index)) return undefined
  return named || row.value < 0 ? 'other' : 'items'
}

function isWithin({ stream }: TotalContext, item: FoundItem, row: PricedRow): boolean {
  const [from, to] = stream.within(item.box)
  return row.index >= from && row.index < to
}

function loose({ rows }: TotalContext): PricedRow[] {
  const seen = new Set<string>()
  return rows.filter((row) => {
    const key = `${row.meaning} ${row.value} ${row.label}`
    if (seen.has(key) || isPageFurniture(row.figure.box)) return false
    seen.add(key)
    return true
  })
}

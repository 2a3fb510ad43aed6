import { bestNamed, type Column } from './csv-columns.ts'
import type { CsvMapping } from './csv-mapping.ts'
import type { Scheme } from './csv-scheme.ts'
import { roleScore } from './csv-words.ts'

/** What the columns hold that are not day, amount, balance or currency: told by the header, texts by what they are. */
export function otherColumns(
  columns: readonly Column[],
  date: Column,
  scheme: Scheme,
  currency: number | null,
): CsvMapping['columns'] {
  const { amount } = scheme
  const used = new Set<number | null>([date.index, scheme.balance, currency])
  for (const column of amount.kind === 'two-columns' ? [amount.out, amount.in] : [amount.column]) used.add(column)
  if (amount.kind === 'direction') used.add(amount.direction)
  const take = (role: Parameters<typeof roleScore>[1], test: (c: Column) => boolean): number | null => {
    const found = bestNamed(columns, role, (c) => !used.has(c.index) && test(c))
    if (found) used.add(found.index)
    return found?.index ?? null
  }
  const valueDate = take('valueDate', (c) => isBlank(c) || c.dates >= 0.9)
  const paidOn = take('paidOn', (c) => isBlank(c) || c.dates >= 0.9)
  const originalAmount = take('originalAmount', (c) => isBlank(c) || c.amounts >= 0.9)
  const originalCurrency = take('originalCurrency', (c) => isBlank(c) || c.codes >= 0.9)
  const rate = take('rate', (c) => isBlank(c) || c.amounts >= 0.9)
  const fee = take('fee', (c) => isBlank(c) || c.amounts >= 0.9)
  const status = take('status', (c) => isBlank(c) || c.values.size > 0)
  const account = take('account', (c) => c.values.size > 0 && c.values.size <= 4 && c.filled >= 0.9 && c.dates === 0)
  take('otherAccount', () => true)
  const kind = take('kind', (c) => c.values.size > 0 && c.dates === 0 && c.amounts === 0)
  const texts = columns.filter(
    (c) => !used.has(c.index) && (isWorded(c) || isReference(c) || (c.dates < 0.5 && c.amounts < 0.95 && !isBlank(c))),
  )
  const references = texts.filter((c) => isReference(c)).map((c) => c.index)
  const worded = texts.filter((c) => !references.includes(c.index))
  const named = bestNamed(worded, 'name', () => true)
  const described = bestNamed(worded, 'text', (c) => c !== named)
  const widest = [...worded].filter((c) => c.letters > 0.4).sort((a, b) => b.longest - a.longest)[0]
  const name = named ?? described ?? widest ?? null
  const rest = worded.filter((c) => c !== name && (c.letters > 0.2 || isWorded(c)))
  return {
    date: date.index,
    valueDate,
    paidOn,
    name: name ? [name.index] : [],
    text: rest.map((c) => c.index),
    references,
    balance: scheme.balance,
    currency,
    fee,
    originalAmount,
    originalCurrency,
    rate,
    status,
    account,
    kind,
  }
}

/** A column this file leaves blank; its header may still say what the next file will hold there. */
function isBlank(c: Column): boolean {
  return c.filled === 0
}

function isWorded(c: Column): boolean {
  return Math.max(roleScore(c.folded, 'text'), roleScore(c.folded, 'name')) >= 2
}

function isReference(c: Column): boolean {
  const score = roleScore(c.folded, 'reference')
  return score >= 1 && score > Math.max(roleScore(c.folded, 'text'), roleScore(c.folded, 'name'))
}

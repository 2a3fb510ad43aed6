import { type DecimalMark, plainAmount } from './csv-amounts.ts'
import type { Column } from './csv-columns.ts'
import { foldCell } from './csv-columns.ts'
import type { CsvAmount } from './csv-mapping.ts'
import type { CsvRow } from './csv-rows.ts'
import { directionWords, roleScore } from './csv-words.ts'

/** A way to read amounts, how much speaks for it, and what. */
export interface Scheme {
  readonly amount: CsvAmount
  readonly balance: number | null
  readonly score: number
  readonly evidence: string
  /** Whether the balance column proves it. */
  readonly proven: boolean
}

/** Rows on which a running balance is tried. */
const TRIED = 400
/** More amount columns than this are not tried against each other. */
const MOST_COLUMNS = 16

/**
 * All ways in which the amount columns of a table can be read, the best first. A balance that runs on by the amounts is
 * the strongest evidence, for the columns and for the sign; then the header's words; then signs and blanks.
 */
export function findSchemes(columns: readonly Column[], rows: readonly CsvRow[], mark: DecimalMark): Scheme[] {
  const money = columns.filter(isAmountColumn).slice(0, MOST_COLUMNS)
  const tried = rows.slice(0, TRIED)
  const readings = [...signed(money), ...twoColumns(money, tried, mark), ...withDirection(money, columns)]
  const all = readings.flatMap(({ amount, score, evidence }): Scheme[] => {
    const used = amount.kind === 'two-columns' ? [amount.out, amount.in] : [amount.column]
    const balances = money.filter((c) => !used.includes(c.index) && roleScore(c.folded, 'fee') < 3)
    const bare: Scheme = { amount, balance: null, score, evidence, proven: false }
    const chained = balances.flatMap((column): Scheme[] => {
      const words = Math.min(roleScore(column.folded, 'balance'), 3)
      const chain = runsOn(amount, column.index, tried, mark)
      if (chain.links >= 1 && chain.kept >= 0.9 * chain.links) {
        const proof = `The balance runs on by these amounts in ${chain.kept} of ${chain.links} steps.`
        return [
          {
            amount,
            balance: column.index,
            score: score + words + (chain.links === 1 ? 5 : 10) * (chain.kept / chain.links),
            evidence: proof,
            proven: true,
          },
        ]
      }
      return words >= 3 && chain.links < 1 ? [{ ...bare, balance: column.index, score: score + words }] : []
    })
    const named = balances.find((c) => roleScore(c.folded, 'balance') >= 3)
    return chained.length > 0 ? chained : [{ ...bare, balance: named?.index ?? null }]
  })
  return all.sort((a, b) => b.score - a.score)
}

type Reading = Pick<Scheme, 'amount' | 'score' | 'evidence'>

/** Amounts, and no numbers of another kind: those have no decimals, or their header names them. */
function isAmountColumn(c: Column): boolean {
  if (c.amounts < 0.95 || c.dates > 0.5) return false
  const other = (['reference', 'account', 'otherAccount', 'originalAmount', 'rate', 'kind', 'text'] as const).map(
    (role) => roleScore(c.folded, role),
  )
  const named = (['amount', 'out', 'in', 'balance', 'fee'] as const).map((role) => roleScore(c.folded, role))
  return Math.max(...named) >= 1 ? Math.max(...named) >= Math.max(...other) : Math.max(...other) < 1
}

function signed(money: readonly Column[]): Reading[] {
  return money
    .filter((c) => c.filled >= 0.9)
    .flatMap((c): Reading[] => {
      const words = nameScore(c, 'amount') - Math.max(nameScore(c, 'balance'), nameScore(c, 'fee'))
      const signs = c.negatives > 0 ? 1 : 0
      const decimals = c.marks['.'] + c.marks[','] > 0 ? 0.5 : 0
      const score = words + signs + decimals
      const evidence = c.negatives > 0 ? 'Money out has a minus.' : 'The column has no minus at all.'
      return [
        { amount: { kind: 'signed', column: c.index, turned: false }, score, evidence },
        {
          amount: { kind: 'signed', column: c.index, turned: true },
          score: score - 0.6,
          evidence: 'Taken with the sign turned.',
        },
      ]
    })
}

/** Two columns of which every row fills one, the other blank or zero. */
function twoColumns(money: readonly Column[], rows: readonly CsvRow[], mark: DecimalMark): Reading[] {
  return money.flatMap((out) =>
    money.flatMap((into): Reading[] => {
      if (out.index === into.index) return []
      const words = nameScore(out, 'out') + nameScore(into, 'in')
      const one = rows.filter((row) => isFilled(row, out.index, mark) !== isFilled(row, into.index, mark)).length
      const both =
        rows.some((row) => isFilled(row, out.index, mark)) && rows.some((row) => isFilled(row, into.index, mark))
      const named = nameScore(out, 'out') >= 1 && nameScore(into, 'in') >= 1
      if (one < 0.95 * rows.length || !(both || named)) return []
      const outNegative = out.negatives > 0.5
      const minus = outNegative && into.negatives === 0 ? 1.5 : 0
      const evidence = named ? 'The header names money out and money in.' : 'Each row fills one of the two columns.'
      return [
        {
          amount: { kind: 'two-columns', out: out.index, in: into.index, outNegative },
          score: 1.5 + words + minus,
          evidence,
        },
      ]
    }),
  )
}

/** An amount column beside one that holds two words or letters, one for each way. */
function withDirection(money: readonly Column[], columns: readonly Column[]): Reading[] {
  return columns.flatMap((c): Reading[] => {
    const values = [...c.values]
    const out = values.filter((value) => isOneOf(directionWords.out, value))
    const into = values.filter((value) => isOneOf(directionWords.in, value))
    if (values.length === 0 || values.length > 4 || out.length + into.length < values.length || c.filled < 0.9)
      return []
    const words = nameScore(c, 'direction')
    if (words < 1 && (out.length === 0 || into.length === 0)) return []
    return money
      .filter((m) => m.filled >= 0.9 && m.negatives === 0)
      .map((m): Reading => {
        const balance = Math.max(nameScore(m, 'balance'), nameScore(m, 'fee'))
        return {
          amount: { kind: 'direction', column: m.index, direction: c.index, out, in: into },
          score: 3 + nameScore(m, 'amount') - balance,
          evidence: `A column says which way the money went (${values.join(', ')}).`,
        }
      })
  })
}

function isOneOf(words: readonly string[], value: string): boolean {
  return words.includes(value)
}

function nameScore(column: Column, role: 'amount' | 'out' | 'in' | 'balance' | 'fee' | 'direction'): number {
  return roleScore(column.folded, role)
}

function isFilled(row: CsvRow, column: number, mark: DecimalMark): boolean {
  const plain = plainAmount(row.cells[column] ?? '', mark)
  return plain !== null && /[1-9]/.test(plain)
}

/** The amount of a row as plain signed decimal text; null when it has none, or its direction is not known. */
export function rowAmount(amount: CsvAmount, row: CsvRow, mark: DecimalMark): string | null {
  const at = (column: number): string | null => plainAmount(row.cells[column] ?? '', mark)
  if (amount.kind === 'signed') {
    const plain = at(amount.column)
    return plain === null || !amount.turned ? plain : turn(plain)
  }
  if (amount.kind === 'two-columns') {
    const [out, into] = [at(amount.out), at(amount.in)]
    const filled = (text: string | null): text is string => text !== null && /[1-9]/.test(text)
    if (filled(out) && filled(into)) return null
    if (filled(out)) return amount.outNegative ? out : turn(out)
    if (filled(into)) return into
    return out ?? into
  }
  const plain = at(amount.column)
  const direction = foldCell(row.cells[amount.direction] ?? '')
  if (plain === null) return null
  if (amount.out.includes(direction)) return turn(plain)
  return amount.in.includes(direction) ? plain : null
}

function turn(plain: string): string {
  return plain.startsWith('-') ? plain.slice(1) : `-${plain}`
}

/** In how many steps from row to row the balance changes by the amount, oldest first or newest first. */
function runsOn(
  amount: CsvAmount,
  balance: number,
  rows: readonly CsvRow[],
  mark: DecimalMark,
): { links: number; kept: number } {
  const known = rows.flatMap((row) => {
    const [a, b] = [scaled(rowAmount(amount, row, mark)), scaled(plainAmount(row.cells[balance] ?? '', mark))]
    return a === null || b === null ? [] : [{ a, b }]
  })
  let [down, up] = [0, 0]
  for (const [i, { a, b }] of known.entries()) {
    const before = known[i - 1]
    if (!before) continue
    if (before.b + a === b) down += 1
    if (b + before.a === before.b) up += 1
  }
  return { links: Math.max(known.length - 1, 0), kept: Math.max(down, up) }
}

/** Ten-thousandths, enough for every currency; null when the text has more decimals. */
function scaled(plain: string | null): bigint | null {
  const match = plain === null ? null : /^(-?)(\d+)(?:\.(\d{0,4})0*)?$/.exec(plain)
  if (!match) return null
  const size = BigInt((match[2] ?? '') + (match[3] ?? '').padEnd(4, '0'))
  return match[1] === '-' ? -size : size
}

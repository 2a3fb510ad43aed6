import { isCurrencyCode } from '../../money/currency.ts'

/** What stands before the decimals. */
export type DecimalMark = '.' | ','

// Abbreviations that stand beside amounts, from general knowledge. Other letters make a text of it: `K3`, `A12`.
// biome-ignore format: a list
const ABBREVIATIONS = new Set(['kr', 'zł', 'zl', 'kč', 'kc', 'fr', 'sfr', 'ft', 'lei', 'r', 'rs', 'rm', 'tl', 'din', 'kn', 'лв', 'руб', 'р', 'грн', 'eur', 'euro', 'dm', 'c$', 'ca$', 'us$', 'a$', 'nz$', 'hk$', 'r$', 's$'])

/** Whether a text beside a figure names money: a sign, a code of ISO 4217, or a usual abbreviation. */
function namesMoney(text: string): boolean {
  const folded = text.toLowerCase().replace(/\.$/, '')
  return /^\p{Sc}$/u.test(text) || isCurrencyCode(text.toUpperCase()) || ABBREVIATIONS.has(folded)
}

const BODY = {
  '.': /^(?:\d+|\d{1,3}(?:[, '’]\d{3})+|\d{1,2}(?:,\d{2})*,\d{3})?(?:\.\d*)?$/,
  ',': /^(?:\d+|\d{1,3}(?:[. '’]\d{3})+)?(?:,\d*)?$/,
} as const

/** A cell taken apart: digits and marks, whether it is below zero, and the name for money beside it, if any. */
interface AmountParts {
  readonly body: string
  readonly negative: boolean
  readonly money: string
}

const CELL =
  /^(\()?([^\d.,()+\-−–']{0,5}?)([+\-−–])?([^\d.,()+\-−–']{0,5}?)([\d.,'’ ]*\d[\d.,'’ ]*)([+\-−–])?([^\d.,()+\-−–']{0,5}?)([+\-−–])?(\))?$/u

function partsOf(text: string): AmountParts | null {
  if (text.length > 48) return null
  const clean = text.replace(/[\u00A0\u2000-\u200A\u202F\u2060\s]+/gu, ' ').trim()
  const match = CELL.exec(clean)
  if (!match) return null
  const [
    ,
    open = '',
    before = '',
    sign1 = '',
    before2 = '',
    body = '',
    sign2 = '',
    after = '',
    sign3 = '',
    close = '',
  ] = match
  const signs = sign1 + sign2 + sign3
  if (signs.length > 1 || (open === '') !== (close === '') || (open !== '' && signs !== '')) return null
  const names = [before, before2, after].map((name) => name.trim()).filter((name) => name !== '')
  // DR and CR behind a figure are a sign, not a name for money.
  const direction = names.length === 1 ? /^(dr|cr)\.?$/i.exec(names[0] ?? '')?.[1]?.toLowerCase() : undefined
  if (direction !== undefined && signs !== '') return null
  if (direction === undefined && (names.length > 1 || !names.every(namesMoney))) return null
  const negative = open !== '' || (signs !== '' && signs !== '+') || direction === 'dr'
  return { body: body.trim(), negative, money: direction === undefined ? (names[0] ?? '') : '' }
}

/** Whether a cell may be an amount, whatever its decimal mark. */
export function looksLikeAmount(text: string): boolean {
  const parts = partsOf(text)
  return parts !== null && (BODY['.'].test(parts.body) || BODY[','].test(parts.body))
}

/**
 * An amount as plain decimal text (`-1234.50`), never in floating point; null when the cell is not one with this mark.
 * Groups of thousands may be set off by the other mark, spaces of any kind or apostrophes; a minus may be any dash, before
 * or behind; brackets and a trailing `DR` mean below zero.
 */
export function plainAmount(text: string, mark: DecimalMark): string | null {
  const parts = partsOf(text)
  if (!parts || !BODY[mark].test(parts.body)) return null
  const [whole = '', decimals = ''] = parts.body.split(mark)
  const digits = whole.replace(/\D/g, '')
  return `${parts.negative ? '-' : ''}${digits === '' ? '0' : digits}${decimals === '' ? '' : `.${decimals}`}`
}

/** The name for money that stands in an amount's cell (`EUR`, `€`); '' when none. */
export function moneyNameIn(text: string): string {
  return partsOf(text)?.money ?? ''
}

/** How many cells speak for a decimal mark; `three` counts those with three digits behind their only mark. */
export interface MarkVotes {
  readonly '.': number
  readonly ',': number
  readonly three: number
}

/** What the cells of amount columns say about the decimal mark, without a doubt each. */
export function markVotes(cells: readonly string[]): MarkVotes {
  const votes = { '.': 0, ',': 0, three: 0 }
  for (const cell of cells) {
    const body = partsOf(cell)?.body ?? ''
    const marks = [...body].filter((char) => char === '.' || char === ',')
    const last = marks.at(-1)
    if (last !== '.' && last !== ',') continue
    const other = last === '.' ? ',' : '.'
    const behind = body.length - body.lastIndexOf(last) - 1
    if (marks.includes(other)) votes[marks.filter((m) => m === last).length > 1 ? other : last] += 1
    else if (marks.length > 1) votes[other] += 1
    else if (behind !== 3 || body.startsWith('0')) votes[last] += 1
    else votes.three += 1
  }
  return votes
}

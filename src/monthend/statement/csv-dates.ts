import { type CalendarDate, isCalendarDate } from '../../book/calendar-date.ts'

/** In which order a date's numbers stand. Dates with the year first, or with the month's name, need none. */
export type DateOrder = 'dmy' | 'mdy' | 'ymd'

/** The orders a bank may write, the commonest first. */
export const DATE_ORDERS = ['dmy', 'mdy', 'ymd'] as const satisfies readonly DateOrder[]

const TIME =
  /^(?:(?:T|,?\s+)\d{1,2}[:.h]\d{2}(?:[:.]\d{2}(?:[.,]\d{1,9})?)?\s*(?:[ap]\.?m\.?)?\s*(?:Z|[+-]\d{2}:?\d{2}|[A-Z]{3,4})?)?$/i
const YEAR_FIRST = /^(\d{4})([-/. ])(\d{1,2})\2(\d{1,2})(?!\d)/
const SOLID = /^((?:19|20)\d{2})(\d{2})(\d{2})(?!\d)/
const NUMBERS = /^(\d{1,2})([-/. ])\s?(\d{1,2})\2\s?(\d{4}|\d{2})(?!\d)/
const DAY_NAME_YEAR =
  /^(\d{1,2})(?:st|nd|rd|th|er|º|ª)?[-/. ]+(?:de )?(\p{L}{3,12})\.?[-/., ]+(?:de )?(\d{4}|\d{2})(?!\d)/iu
const NAME_DAY_YEAR = /^(\p{L}{3,12})\.?[ -](\d{1,2})(?:st|nd|rd|th)?,?[ -](\d{4})(?!\d)/iu

/**
 * The day a cell names, read in the given order; null when it names none: 31/02 is no day in any order. A time behind it,
 * and its zone, are passed over: the day as written is the bank's.
 */
export function dayOf(cell: string, order: DateOrder): CalendarDate | null {
  const text = cell.trim()
  // A weekday may stand before the day; `March 4, 2026` has none.
  return dayIn(text, order) ?? (/^\p{L}{2,}/u.test(text) ? dayIn(text.replace(/^\p{L}{2,}\.?,?\s/u, ''), order) : null)
}

function dayIn(text: string, order: DateOrder): CalendarDate | null {
  const fixed = YEAR_FIRST.exec(text)
  if (fixed) return day(fixed[1], fixed[3], fixed[4], text.slice(fixed[0].length))
  const solid = SOLID.exec(text)
  if (solid) return day(solid[1], solid[2], solid[3], text.slice(solid[0].length))
  const numbers = NUMBERS.exec(text)
  if (numbers) {
    const [whole, a, , b, c = ''] = numbers
    const rest = text.slice(whole.length)
    if (order === 'ymd') return c.length === 2 ? day(fullYear(a), b, c, rest) : null
    return order === 'dmy' ? day(fullYear(c), b, a, rest) : day(fullYear(c), a, b, rest)
  }
  const named = DAY_NAME_YEAR.exec(text)
  if (named) return day(fullYear(named[3]), monthNamed(named[2]), named[1], text.slice(named[0].length))
  const american = NAME_DAY_YEAR.exec(text)
  if (american) return day(american[3], monthNamed(american[1]), american[2], text.slice(american[0].length))
  return null
}

/** `dayOf` for a whole file, which says the same days over and over. */
export function dayReader(order: DateOrder): (cell: string) => CalendarDate | null {
  const known = new Map<string, CalendarDate | null>()
  return (cell) => {
    let day = known.get(cell)
    if (day === undefined) {
      day = dayOf(cell, order)
      known.set(cell, day)
    }
    return day
  }
}

/** Whether a cell is written like a date, even of a day that does not exist (31/02). */
export function looksLikeDate(cell: string): boolean {
  const text = cell.trim()
  return (
    text.length < 48 &&
    (DATE_ORDERS.some((order) => dayOf(text, order) !== null) || NUMBERS.test(text) || YEAR_FIRST.test(text))
  )
}

function day(
  year: string | undefined,
  month: string | undefined,
  date: string | undefined,
  rest: string,
): CalendarDate | null {
  const text = `${year ?? ''}-${(month ?? '').padStart(2, '0')}-${(date ?? '').padStart(2, '0')}`
  return TIME.test(rest) && isCalendarDate(text) ? text : null
}

/** Two digits: 70 to 99 are of the last century, as POSIX's strptime takes them (there from 69 on). */
function fullYear(text: string | undefined): string {
  if (text?.length !== 2) return text ?? ''
  return (text >= '70' ? '19' : '20') + text
}

// Languages in which banks write months out. Short and long forms come from CLDR.
const LANGUAGES = ['en', 'de', 'fr', 'es', 'it', 'nl', 'pt', 'pl', 'sv', 'da', 'nb', 'fi', 'cs', 'hu', 'ro', 'tr']
let monthNames: Map<string, string> | null = null

function monthNamed(name: string | undefined): string {
  monthNames ??= new Map(LANGUAGES.flatMap(monthsOf))
  return monthNames.get(bare(name ?? '')) ?? ''
}

function monthsOf(language: string): [string, string][] {
  return (['short', 'long'] as const).flatMap((style) => {
    const format = new Intl.DateTimeFormat(language, { month: style, day: 'numeric', timeZone: 'UTC' })
    return Array.from({ length: 12 }, (_, i): [string, string] => {
      const parts = format.formatToParts(new Date(Date.UTC(2026, i, 15)))
      return [bare(parts.find((part) => part.type === 'month')?.value ?? ''), String(i + 1)]
    })
  })
}

function bare(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[^\p{L}]/gu, '')
    .toLowerCase()
}

/** Which order the dates of a file are in, and by what. */
export interface OrderFound {
  readonly order: DateOrder
  readonly evidence: string
  /** Another order that fits every date as well and gives other days; null when there is none. */
  readonly other: DateOrder | null
}

/**
 * Finds the order of a column's dates from all of them: an order that makes a day of every cell; where two do, dots mean
 * day first (common practice, no source), and a bank lists its lines by day, so an order in which they run is the one.
 */
export function findOrder(cells: readonly string[]): OrderFound {
  const read = DATE_ORDERS.map((order) => ({ order, days: cells.map((cell) => dayOf(cell, order)) }))
  const counted = read.map(({ order, days }) => ({ order, days, valid: days.filter((d) => d !== null).length }))
  const most = Math.max(...counted.map((c) => c.valid))
  const fitting = counted.filter((c) => c.valid === most)
  const [first, ...others] = fitting
  const rival = others.find((other) => other.days.some((d, i) => d !== first?.days[i]))
  if (!first) return { order: 'dmy', evidence: 'There are no dates.', other: null }
  if (!rival) {
    const evidence =
      fitting.length > 1 ? 'The dates can be read in one way only.' : sayOrder(first.order, cells, counted)
    return { order: first.order, evidence, other: null }
  }
  if (cells.every((cell) => /^\s*\d{1,2}\.\s?\d{1,2}\.\s?\d{2}/.test(cell))) {
    return { order: 'dmy', evidence: 'Dates with dots have the day first.', other: null }
  }
  const running = fitting.filter((c) => runs(c.days))
  if (running.length === 1 && running[0] && new Set(running[0].days).size > 2) {
    return { order: running[0].order, evidence: 'Read in this order, the lines run by day.', other: null }
  }
  const [near, far] = [...(running.length > 1 ? running : fitting)].sort((a, b) => span(a.days) - span(b.days))
  const evidence = 'Every date fits two orders; this one puts the lines nearer together.'
  return { order: near?.order ?? first.order, evidence, other: far?.order ?? rival.order }
}

function sayOrder(
  order: DateOrder,
  cells: readonly string[],
  counted: readonly { order: DateOrder; days: readonly (CalendarDate | null)[] }[],
): string {
  const against = cells.findIndex((_, i) => counted.some((c) => c.order !== order && c.days[i] === null))
  return `"${cells[against] ?? ''}" is a day in this order only.`
}

function runs(days: readonly (CalendarDate | null)[]): boolean {
  const known = days.filter((d) => d !== null)
  const up = known.every((d, i) => i === 0 || d >= (known[i - 1] ?? d))
  return up || known.every((d, i) => i === 0 || d <= (known[i - 1] ?? d))
}

/** Days between the first and the last. */
function span(days: readonly (CalendarDate | null)[]): number {
  const known = days.filter((d) => d !== null).sort()
  const instant = (d: string | undefined): number => Date.parse(`${d ?? '1970-01-01'}T00:00:00Z`)
  return (instant(known.at(-1)) - instant(known[0])) / 86_400_000
}

import { ofMinor, toDecimal } from '../../src/index.ts'
import type { BankLine, BankMonth } from './model.ts'

/** How a bank writes CSV. */
export interface CsvDialect {
  readonly delimiter: ';' | ',' | '\t'
  readonly lineEnd: '\r\n' | '\n'
  readonly decimalMark: '.' | ','
  readonly grouped: boolean
  readonly dates: 'dmy-dots' | 'mdy-slashes' | 'ymd'
  readonly amounts: 'signed' | 'turned' | 'two-columns' | 'direction'
  readonly balance: boolean
  readonly newestFirst: boolean
  readonly preamble: boolean
  readonly footer: boolean
  readonly quoteAll: boolean
  readonly language: 'en' | 'de' | 'fr'
}

const TITLES = {
  en: [
    'Booking date',
    'Payee',
    'Details',
    'Amount',
    'Debit',
    'Credit',
    'Debit/Credit',
    'Balance',
    'Currency',
    'Status',
    'Purchase date',
  ],
  de: [
    'Buchungstag',
    'Empfänger',
    'Verwendungszweck',
    'Betrag',
    'Soll',
    'Haben',
    'S/H',
    'Saldo',
    'Währung',
    'Status',
    'Kaufdatum',
  ],
  fr: [
    "Date d'opération",
    'Bénéficiaire',
    'Libellé',
    'Montant',
    'Débit',
    'Crédit',
    'Sens',
    'Solde',
    'Devise',
    'État',
    "Date d'achat",
  ],
} as const
const STATUS = {
  en: ['booked', 'pending'],
  de: ['gebucht', 'vorgemerkt'],
  fr: ['comptabilisé', 'en attente'],
} as const
const TOTAL = { en: 'Total', de: 'Summe', fr: 'Total' } as const

/** Writes a month as CSV text. `encodeWindows1252` makes the bytes many a bank still sends. */
export function writeCsv(month: BankMonth, dialect: CsvDialect): string {
  const [date, payee, details, amount, debit, credit, way, balance, currency, status, paidOn] = TITLES[dialect.language]
  const money = (minor: number): string => amountText(toDecimal(ofMinor(month.currency, minor)), dialect)
  const titles = [
    date,
    paidOn,
    payee,
    details,
    ...(dialect.amounts === 'two-columns'
      ? [debit, credit]
      : dialect.amounts === 'direction'
        ? [amount, way]
        : [amount]),
    ...(dialect.balance ? [balance] : []),
    currency,
    status,
  ]
  let sum = month.opening
  const rows = month.lines.map((line) => {
    if (!line.pending) sum += line.amount
    return [
      dateText(line.date, dialect),
      line.paidOn === null ? '' : dateText(line.paidOn, dialect),
      line.name,
      line.text,
      ...amountCells(line, dialect, money),
      ...(dialect.balance ? [line.pending ? '' : money(sum)] : []),
      month.currency,
      STATUS[dialect.language][line.pending ? 1 : 0],
    ]
  })
  if (dialect.newestFirst) rows.reverse()
  const width = titles.length
  const blank = (cells: readonly string[]): string[] => [...cells, ...Array<string>(width - cells.length).fill('')]
  const all = [
    ...(dialect.preamble ? [['IBAN', month.account], ['Period', `${month.from} - ${month.to}`], []] : []),
    titles,
    ...rows,
    ...(dialect.footer ? [blank([TOTAL[dialect.language], '', '', '', '1'])] : []),
  ]
  return all.map((row) => row.map((cell) => quoted(cell, dialect)).join(dialect.delimiter) + dialect.lineEnd).join('')
}

function amountCells(line: BankLine, dialect: CsvDialect, money: (minor: number) => string): string[] {
  const size = Math.abs(line.amount)
  if (dialect.amounts === 'two-columns') return line.amount < 0 ? [money(size), ''] : ['', money(size)]
  if (dialect.amounts === 'direction') {
    const letters = dialect.language === 'de' ? 'SH' : 'DC'
    return [money(size), letters.charAt(line.amount < 0 ? 0 : 1)]
  }
  return [money(dialect.amounts === 'turned' ? -line.amount : line.amount)]
}

function amountText(decimal: string, dialect: CsvDialect): string {
  const [whole = '', decimals] = decimal.split('.')
  const group = dialect.decimalMark === ',' ? '.' : ','
  const grouped = dialect.grouped ? whole.replace(/\B(?=(?:\d{3})+$)/g, group) : whole
  return decimals === undefined ? grouped : grouped + dialect.decimalMark + decimals
}

function dateText(date: string, dialect: CsvDialect): string {
  const [year, month, day] = date.split('-')
  if (dialect.dates === 'ymd') return date
  return dialect.dates === 'dmy-dots' ? `${day}.${month}.${year}` : `${month}/${day}/${year}`
}

function quoted(cell: string, dialect: CsvDialect): string {
  const must = dialect.quoteAll || cell.includes(dialect.delimiter) || /["\r\n]/.test(cell)
  return must ? `"${cell.replaceAll('"', '""')}"` : cell
}

// Windows-1252, bytes 80 to 9F, by the mapping table of the Unicode Consortium; 0 stands where a byte has no meaning.
const UPPER = '€\0‚ƒ„…†‡ˆ‰Š‹Œ\0Ž\0\0‘’“”•–—˜™š›œ\0žŸ'

/** A text in windows-1252; a character it has not becomes a question mark, as banks do it. */
export function encodeWindows1252(text: string): Uint8Array {
  return Uint8Array.from(
    [...text].map((char) => {
      const unit = char.codePointAt(0) ?? 0x3f
      if (unit < 0x80 || (unit > 0x9f && unit < 0x100)) return unit
      const upper = UPPER.indexOf(char)
      return upper < 0 ? 0x3f : 0x80 + upper
    }),
  )
}

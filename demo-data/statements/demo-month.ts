import { type CalendarDate, type Entry, type Household, ofMinor } from '../../src/index.ts'
import { type BankLine, type BankMonth, bankLine } from './model.ts'
import { writeCamt } from './write-camt.ts'
import { encodeWindows1252, writeCsv } from './write-csv.ts'
import { writeOfx } from './write-ofx.ts'

const ACCOUNT = '000-4417-0925'

/**
 * What the demo household's invented bank knows of a month: every entry of the book that moves the bank account becomes a
 * line, the notes of a payday one withdrawal. It agrees with the book to the cent; change its lines to make it differ.
 */
export function demoMonth(
  household: Household,
  entries: readonly Entry[],
  from: CalendarDate,
  to: CalendarDate,
): BankMonth {
  const account = household.accounts[0]?.id
  const moved = (entry: Entry): number =>
    entry.places.filter((p) => p.account === `bank:${account}`).reduce((sum, p) => sum + p.amount, 0)
  const opening = entries.filter((entry) => entry.date < from).reduce((sum, entry) => sum + moved(entry), 0)
  const shops = new Map(
    entries.flatMap((entry) => (entry.kind === 'order' ? [[entry.order, entry.shop] as const] : [])),
  )
  const lines = new Map<string, Pick<BankLine, 'date' | 'amount' | 'name'> & Partial<BankLine>>()
  for (const entry of entries) {
    const amount = moved(entry)
    if (entry.date < from || entry.date > to || amount === 0) continue
    // All notes of a day are drawn at once; everything else is a line of its own.
    const key = entry.kind === 'fill' ? `notes ${entry.date}` : entry.id
    const before = lines.get(key)?.amount ?? 0
    lines.set(key, { date: entry.date, amount: before + amount, ...whatFor(entry, shops) })
  }
  const ordered = [...lines.values()].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  const plain = { account: ACCOUNT, owner: 'Ravndal-Okafor', currency: household.currency, from, to } as const
  return { ...plain, opening: ofMinor(household.currency, opening).minor, lines: ordered.map(bankLine) }
}

type Words = Pick<BankLine, 'name' | 'text' | 'kind'>

function whatFor(entry: Entry, shops: ReadonlyMap<string, string>): Words {
  if (entry.kind === 'pay') return { name: 'Brightwater School Board', text: 'Salary', kind: 'pay' }
  if (entry.kind === 'fill') return { name: 'Withdrawal at counter', text: 'Notes', kind: 'cash' }
  if ('order' in entry) {
    const host = shops.get(entry.order) ?? 'shop'
    const text = entry.kind === 'refund' ? 'Refund' : 'Card purchase'
    return { name: onCard(host), text, kind: 'card' }
  }
  return { name: 'Transfer', text: '', kind: 'transfer' }
}

/** A shop's name as card statements shorten it: capitals, 22 characters, the town behind. */
function onCard(host: string): string {
  const name = (host.split('.')[0] ?? host).replaceAll('-', ' ').toUpperCase()
  return `${name.slice(0, 22)} MONTRÉAL QC`
}

/** A file as the bank hands it over. */
export interface StatementFile {
  readonly name: string
  readonly bytes: Uint8Array
}

/** The same month in the three formats: OFX 1.6, camt.053 version 8, and CSV with semicolons in windows-1252. */
export function statementFiles(month: BankMonth): readonly [StatementFile, StatementFile, StatementFile] {
  const csv = writeCsv(month, {
    delimiter: ';',
    lineEnd: '\r\n',
    decimalMark: ',',
    grouped: true,
    dates: 'dmy-dots',
    amounts: 'signed',
    balance: true,
    newestFirst: true,
    preamble: true,
    footer: true,
    quoteAll: false,
    language: 'fr',
  })
  const encoder = new TextEncoder()
  const ofx = writeOfx(month, { syntax: 'sgml-bare', decimalMark: '.', dates: 'day' })
  return [
    { name: `statement-${month.to}.ofx`, bytes: encoder.encode(ofx) },
    { name: `statement-${month.to}.xml`, bytes: encoder.encode(writeCamt(month, { version: 8, prefix: '' })) },
    { name: `statement-${month.to}.csv`, bytes: encodeWindows1252(csv) },
  ]
}

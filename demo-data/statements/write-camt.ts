import { ofMinor, toDecimal } from '../../src/index.ts'
import { type BankLine, type BankMonth, closingOf } from './model.ts'

/** How a bank writes camt.053: version 2 and version 8 put status and names in other places. */
export interface CamtDialect {
  readonly version: 2 | 8
  readonly prefix: '' | 'ns2:'
}

// Family and sub-family of the bank transaction code.
const CODES = {
  card: ['CCRD', 'POSD'],
  transfer: ['ICDT', 'ESCT'],
  cash: ['CCRD', 'CWDL'],
  check: ['ICHQ', 'CCHQ'],
  fee: ['MDOP', 'FEES'],
  interest: ['MCOP', 'INTR'],
  pay: ['RCDT', 'SALA'],
} as const

/** Writes a month as a camt.053 file, in UTF-8. */
export function writeCamt(month: BankMonth, dialect: CamtDialect): string {
  const tag = (name: string, inner: string, attributes = ''): string =>
    `<${dialect.prefix}${name}${attributes}>${inner}</${dialect.prefix}${name}>`
  const text = (name: string, value: string): string => (value === '' ? '' : tag(name, escaped(value)))
  const amount = (minor: number): string =>
    tag('Amt', toDecimal(ofMinor(month.currency, Math.abs(minor))), ` Ccy="${month.currency}"`) +
    tag('CdtDbtInd', minor < 0 ? 'DBIT' : 'CRDT')
  const balance = (code: string, minor: number, date: string): string =>
    tag('Bal', tag('Tp', tag('CdOrPrtry', tag('Cd', code))) + amount(minor) + tag('Dt', tag('Dt', date)))
  const party = (name: string): string => (dialect.version === 8 ? tag('Pty', text('Nm', name)) : text('Nm', name))
  const entry = (line: BankLine): string => {
    const [family, sub] = line.kind === null ? ['', ''] : CODES[line.kind]
    const code =
      family === '' ? '' : tag('Domn', tag('Cd', 'PMNT') + tag('Fmly', tag('Cd', family) + tag('SubFmlyCd', sub)))
    const status = line.pending ? 'PDNG' : 'BOOK'
    const details =
      tag('Refs', tag('EndToEndId', 'NOTPROVIDED')) +
      (line.name === '' ? '' : tag('RltdPties', tag(line.amount < 0 ? 'Cdtr' : 'Dbtr', party(line.name)))) +
      (line.text === '' ? '' : tag('RmtInf', text('Ustrd', line.text))) +
      (line.paidOn === null ? '' : tag('RltdDts', tag('TxDtTm', `${line.paidOn}T18:30:00-05:00`)))
    return tag(
      'Ntry',
      amount(line.amount) +
        tag('Sts', dialect.version === 8 ? tag('Cd', status) : status) +
        tag('BookgDt', tag('Dt', line.date)) +
        tag('ValDt', tag('Dt', line.date)) +
        tag('AcctSvcrRef', line.reference) +
        tag('BkTxCd', code) +
        tag('NtryDtls', tag('TxDtls', details)),
    )
  }
  const name = dialect.prefix === '' ? 'xmlns' : 'xmlns:ns2'
  const statement =
    tag('Id', `${month.account}-${month.to}`) +
    tag('CreDtTm', `${month.to}T23:59:00`) +
    tag('FrToDt', tag('FrDtTm', `${month.from}T00:00:00`) + tag('ToDtTm', `${month.to}T23:59:59`)) +
    tag(
      'Acct',
      tag('Id', tag('Othr', text('Id', month.account))) +
        tag('Ccy', month.currency) +
        tag('Ownr', text('Nm', month.owner)),
    ) +
    balance('OPBD', month.opening, month.from) +
    balance('CLBD', closingOf(month), month.to) +
    month.lines.map(entry).join('\n')
  const header = tag('GrpHdr', tag('MsgId', 'DEMO') + tag('CreDtTm', `${month.to}T23:59:00`))
  const version = `urn:iso:std:iso:20022:tech:xsd:camt.053.001.0${dialect.version}`
  return `<?xml version="1.0" encoding="UTF-8"?>\n${tag('Document', tag('BkToCstmrStmt', header + tag('Stmt', statement)), ` ${name}="${version}"`)}\n`
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
}

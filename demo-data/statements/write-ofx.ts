import { ofMinor, toDecimal } from '../../src/index.ts'
import { type BankLine, type BankMonth, closingOf } from './model.ts'

/** How a bank writes OFX: 1.x in SGML, with or without end tags, or 2.x in XML. */
export interface OfxDialect {
  readonly syntax: 'sgml-bare' | 'sgml-closed' | 'xml'
  readonly decimalMark: '.' | ','
  readonly dates: 'day' | 'with-zone'
}

const TYPES = {
  card: 'POS',
  transfer: 'XFER',
  cash: 'ATM',
  check: 'CHECK',
  fee: 'FEE',
  interest: 'INT',
  pay: 'DIRECTDEP',
} as const

/** Writes a month as an OFX file, in UTF-8. */
export function writeOfx(month: BankMonth, dialect: OfxDialect): string {
  const leaf = (name: string, text: string): string =>
    dialect.syntax === 'sgml-bare' ? `<${name}>${escaped(text)}\n` : `<${name}>${escaped(text)}</${name}>\n`
  const amount = (minor: number): string => toDecimal(ofMinor(month.currency, minor)).replace('.', dialect.decimalMark)
  const date = (day: string): string => day.replaceAll('-', '') + (dialect.dates === 'day' ? '' : '233000.000[-5:EST]')
  const line = (one: BankLine): string =>
    `<STMTTRN>\n${leaf('TRNTYPE', one.pending ? 'HOLD' : one.kind ? TYPES[one.kind] : one.amount < 0 ? 'DEBIT' : 'CREDIT')}` +
    leaf('DTPOSTED', date(one.date)) +
    (one.paidOn === null ? '' : leaf('DTUSER', date(one.paidOn))) +
    leaf('TRNAMT', amount(one.amount)) +
    leaf('FITID', one.reference) +
    (one.name === '' ? '' : leaf('NAME', one.name)) +
    `${one.text === '' ? '' : leaf('MEMO', one.text)}</STMTTRN>\n`
  const body =
    `<OFX>\n<SIGNONMSGSRSV1><SONRS><STATUS>\n${leaf('CODE', '0')}${leaf('SEVERITY', 'INFO')}</STATUS>\n` +
    `${leaf('DTSERVER', date(month.to))}${leaf('LANGUAGE', 'ENG')}</SONRS></SIGNONMSGSRSV1>\n` +
    `<BANKMSGSRSV1><STMTTRNRS>\n${leaf('TRNUID', '1')}<STATUS>\n${leaf('CODE', '0')}${leaf('SEVERITY', 'INFO')}</STATUS>\n` +
    `<STMTRS>\n${leaf('CURDEF', month.currency)}<BANKACCTFROM>\n${leaf('BANKID', '000')}${leaf('ACCTID', month.account)}` +
    `${leaf('ACCTTYPE', 'CHECKING')}</BANKACCTFROM>\n` +
    `<BANKTRANLIST>\n${leaf('DTSTART', date(month.from))}${leaf('DTEND', date(month.to))}${month.lines.map(line).join('')}` +
    `</BANKTRANLIST>\n<LEDGERBAL>\n${leaf('BALAMT', amount(closingOf(month)))}${leaf('DTASOF', date(month.to))}</LEDGERBAL>\n` +
    '</STMTRS></STMTTRNRS></BANKMSGSRSV1>\n</OFX>\n'
  return header(dialect) + body
}

function header({ syntax }: OfxDialect): string {
  if (syntax === 'xml') {
    return '<?xml version="1.0" encoding="UTF-8" standalone="no"?>\n<?OFX OFXHEADER="200" VERSION="220" SECURITY="NONE" OLDFILEUID="NONE" NEWFILEUID="NONE"?>\n'
  }
  return 'OFXHEADER:100\nDATA:OFXSGML\nVERSION:160\nSECURITY:NONE\nENCODING:UNICODE\nCHARSET:NONE\nCOMPRESSION:NONE\nOLDFILEUID:NONE\nNEWFILEUID:NONE\n\n'
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
}

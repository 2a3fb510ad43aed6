import { type CurrencyCode, isCurrencyCode } from '../../money/currency.ts'
import { toDecimal } from '../../money/money.ts'
import { MonthendError } from '../monthend-error.ts'
import { balanceRemark, checkBalance } from './balance-check.ts'
import { camtEntry } from './camt-entry.ts'
import { camtDate, camtSigned } from './camt-money.ts'
import { type DraftLine, type Namer, namer } from './draft.ts'
import type { AccountStatement, ReadAccounts, StatementBalance, StatementRemark } from './opened.ts'
import { type Tag, tagAt, tagsNamed, textAt } from './tag.ts'
import type { Progress } from './utf.ts'
import { readXml } from './xml.ts'

const MESSAGES: Readonly<Record<string, string>> = {
  BkToCstmrAcctRpt: 'Rpt',
  BkToCstmrStmt: 'Stmt',
  BkToCstmrDbtCdtNtfctn: 'Ntfctn',
}
// Booked balances, the nearest to the statement's start and end first: opening, previous closing, interim.
const OPENING = ['OPBD', 'PRCD', 'ITBD']
const CLOSING = ['CLBD', 'ITBD']
const AVAILABLE = ['CLAV', 'ITAV']

/**
 * Reads ISO 20022 camt.052 (report), camt.053 (statement) and camt.054 (notification), of any version: they differ in
 * places that are looked for one after the other.
 *
 * @throws MonthendError `hostile-file`, `broken-file`, `too-deep`, `not-a-statement`, `no-currency`
 */
export function* readCamt(text: string): Generator<Progress, ReadAccounts & { version: string }> {
  const root = yield* readXml(text)
  const version = /camt\.\d{3}\.\d{3}\.\d{2}/.exec(root.attributes.xmlns ?? Object.values(root.attributes).join(' '))
  const message = root.children.find((child) => Object.hasOwn(MESSAGES, child.name))
  if (!message) {
    const found = root.children[0]?.name ?? root.name
    throw new MonthendError(
      'not-a-statement',
      `The XML file holds "${found}", not a camt.052, .053 or .054 message. Ask the bank for camt.053 or CSV.`,
    )
  }
  const name = namer()
  const statements = tagsNamed(message, MESSAGES[message.name] ?? '').map((tag) => readStatement(tag, name))
  return {
    version: version?.[0] ?? 'camt',
    accounts: statements.map((s) => s.account),
    problems: statements.flatMap((s) => s.problems),
    remarks: statements.flatMap((s) => s.remarks),
  }
}

interface OneStatement {
  readonly account: AccountStatement
  readonly problems: MonthendError[]
  readonly remarks: StatementRemark[]
}

function readStatement(tag: Tag, name: Namer): OneStatement {
  const account = tagAt(tag, 'Acct')
  const number = (textAt(account, 'Id', 'IBAN') ?? textAt(account, 'Id', 'Othr', 'Id') ?? '').replaceAll(' ', '')
  const holder = { number, owner: textAt(account, 'Ownr', 'Nm') }
  const { drafts, problems, remarks } = readEntries(tagsNamed(tag, 'Ntry'), holder)
  const balances = tagsNamed(tag, 'Bal')
  const currency = currencyOf(tag, balances)
  const named = name.all(drafts, number)
  const [openingTag, closingTag] = [findBalance(balances, OPENING, 'first'), findBalance(balances, CLOSING, 'last')]
  // A report may give one interim balance, which is where it stands now.
  const opening = openingTag === closingTag ? null : balanceOf(openingTag)
  const closing = balanceOf(closingTag)
  const check: AccountStatement['check'] =
    problems.length > 0 ? { outcome: 'unknown' } : checkBalance(opening, closing, named.lines)
  const statement: AccountStatement = {
    account: number,
    number,
    kind: textAt(account, 'Tp', 'Cd') === 'CARD' ? 'credit' : 'bank',
    currency,
    from: dayOf(tagAt(tag, 'FrToDt'), 'Fr'),
    to: dayOf(tagAt(tag, 'FrToDt'), 'To'),
    opening,
    closing,
    available: balanceOf(findBalance(balances, AVAILABLE, 'last')),
    check,
    lines: named.lines,
    withdrawn: [],
  }
  const others = named.lines.filter((line) => line.amount.currency !== currency)
  const foreign = others.map((line): StatementRemark => {
    const amount = `${toDecimal(line.amount)} ${line.amount.currency}`
    const message = `Line ${line.place.row}: ${amount} stands on an account kept in ${currency}.`
    return { code: 'line-in-other-currency', message, row: line.place.row }
  })
  return {
    account: statement,
    problems,
    remarks: [...remarks, ...named.remarks, ...foreign, ...balanceRemark(number, check)],
  }
}

function readEntries(
  tags: readonly Tag[],
  holder: Parameters<typeof camtEntry>[2],
): { drafts: DraftLine[]; problems: MonthendError[]; remarks: StatementRemark[] } {
  const drafts: DraftLine[] = []
  const problems: MonthendError[] = []
  const remarks: StatementRemark[] = []
  for (const [i, tag] of tags.entries()) {
    try {
      const read = camtEntry(tag, i + 1, holder)
      drafts.push(...read.lines)
      remarks.push(...read.remarks)
    } catch (error) {
      if (!(error instanceof MonthendError)) throw error
      problems.push(error)
    }
  }
  return { drafts, problems, remarks }
}

/** The account's own currency; else that of its balances, else that of its entries. */
function currencyOf(tag: Tag, balances: readonly Tag[]): CurrencyCode {
  const first = [...balances, ...tagsNamed(tag, 'Ntry')].map((t) => tagAt(t, 'Amt')?.attributes.Ccy ?? null)
  const said = [textAt(tag, 'Acct', 'Ccy'), ...first].find((code) => code !== null && isCurrencyCode(code))
  if (said && isCurrencyCode(said)) return said
  throw new MonthendError('no-currency', `The statement at line ${tag.row} names no currency.`, tag.row)
}

function findBalance(balances: readonly Tag[], codes: readonly string[], which: 'first' | 'last'): Tag | null {
  for (const code of codes) {
    const all = balances.filter((tag) => textAt(tag, 'Tp', 'CdOrPrtry', 'Cd') === code)
    const tag = which === 'first' ? all[0] : all.at(-1)
    if (tag) return tag
  }
  return null
}

function balanceOf(tag: Tag | null): StatementBalance | null {
  return tag && { amount: camtSigned(tag), date: camtDate(tagAt(tag, 'Dt')), from: 'statement' }
}

function dayOf(span: Tag | null, end: 'Fr' | 'To'): AccountStatement['from'] {
  const found = span && (tagAt(span, `${end}Dt`) ?? tagAt(span, `${end}DtTm`))
  return found ? camtDate({ ...found, children: [{ ...found, name: 'DtTm', children: [] }] }) : null
}

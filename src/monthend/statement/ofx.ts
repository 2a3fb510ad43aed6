import type { CalendarDate } from '../../book/calendar-date.ts'
import { type CurrencyCode, isCurrencyCode } from '../../money/currency.ts'
import { MonthendError } from '../monthend-error.ts'
import { balanceRemark, checkBalance, openingFrom } from './balance-check.ts'
import { bankKey, type DraftLine, type Namer, namer } from './draft.ts'
import { ofxDate } from './ofx-date.ts'
import { ofxAmount, ofxLine } from './ofx-line.ts'
import type { AccountStatement, ReadAccounts, StatementBalance, StatementRemark } from './opened.ts'
import { readSgml } from './sgml.ts'
import { type Tag, tagAt, tagsBelow, textAt } from './tag.ts'
import type { Progress } from './utf.ts'
import { readXml, refuseDoctype } from './xml.ts'

/**
 * Reads OFX 1.x (SGML) and 2.x (XML): bank and credit card statements, one or many. The rules of the specification are
 * known from memory and from what other readers' tests say of it.
 *
 * @throws MonthendError `hostile-file`, `broken-file`, `too-deep`, `no-currency`, `not-a-statement`
 */
export function* readOfx(text: string): Generator<Progress, ReadAccounts & { version: string }> {
  refuseDoctype(text)
  const head = text.slice(0, Math.max(0, text.search(/<OFX>/i)))
  const isXml = /<\?OFX\b/i.test(head)
  const root = isXml ? inCapitals(yield* readXml(text)) : yield* readSgml(text)
  const number = /VERSION\s*[:=]\s*"?(\d)(\d)/i.exec(head.replace(/<\?xml[^>]*>/i, ''))
  const version = `OFX ${number ? `${number[1]}.${number[2]}` : isXml ? '2' : '1'} (${isXml ? 'XML' : 'SGML'})`
  const name = namer()
  const statements = [
    ...tagsBelow(root, 'STMTRS').map((tag) => readStatement(tag, 'bank', name)),
    ...tagsBelow(root, 'CCSTMTRS').map((tag) => readStatement(tag, 'credit', name)),
  ]
  const refusals = [...tagsBelow(root, 'STMTTRNRS'), ...tagsBelow(root, 'CCSTMTTRNRS')].flatMap(bankError)
  if (statements.length === 0) {
    const said = refusals[0] ? ` ${refusals[0].message}` : ''
    throw new MonthendError('not-a-statement', `The OFX file holds no statement of a bank account or card.${said}`)
  }
  return {
    version,
    accounts: statements.map((s) => s.account),
    problems: statements.flatMap((s) => s.problems),
    remarks: [...refusals, ...statements.flatMap((s) => s.remarks)],
  }
}

function inCapitals(tag: Tag): Tag {
  return { ...tag, name: tag.name.toUpperCase(), children: tag.children.map(inCapitals) }
}

function bankError(answer: Tag): StatementRemark[] {
  if (textAt(answer, 'STATUS', 'SEVERITY')?.toUpperCase() !== 'ERROR') return []
  const words = textAt(answer, 'STATUS', 'MESSAGE') ?? `code ${textAt(answer, 'STATUS', 'CODE') ?? 'unknown'}`
  return [{ code: 'bank-reports-error', message: `The bank answered with an error: ${words}.`, row: answer.row }]
}

interface OneStatement {
  readonly account: AccountStatement
  readonly problems: MonthendError[]
  readonly remarks: StatementRemark[]
}

function readStatement(tag: Tag, kind: 'bank' | 'credit', name: Namer): OneStatement {
  const currency = textAt(tag, 'CURDEF')?.toUpperCase() ?? ''
  if (!isCurrencyCode(currency)) {
    throw new MonthendError('no-currency', `The statement at line ${tag.row} names no currency (CURDEF).`, tag.row)
  }
  const from = tagAt(tag, kind === 'bank' ? 'BANKACCTFROM' : 'CCACCTFROM')
  const number = textAt(from, 'ACCTID') ?? ''
  const bank = textAt(from, 'BANKID')
  const key = bank === null ? number : `${bank}/${number}`
  const list = tagAt(tag, 'BANKTRANLIST')
  const { drafts, problems, remarks } = readLines(
    // Wherever they stand: a bank may forget the list around them.
    [...tagsBelow(tag, 'STMTTRN'), ...tagsBelow(tag, 'STMTTRNP')],
    currency,
  )
  const { kept, withdrawn } = corrected(drafts)
  const named = name.all(kept, key)
  const closing = balance(tagAt(tag, 'LEDGERBAL'), currency)
  const opening = problems.length === 0 ? openingFrom(closing, named.lines) : null
  const check = checkBalance(opening, closing, named.lines)
  const account: AccountStatement = {
    account: key,
    number,
    kind,
    currency,
    from: dateAt(list, 'DTSTART'),
    to: dateAt(list, 'DTEND'),
    opening,
    closing,
    available: balance(tagAt(tag, 'AVAILBAL'), currency),
    check,
    lines: named.lines,
    withdrawn: withdrawn.map((reference) => bankKey(key, reference)),
  }
  return { account, problems, remarks: [...remarks, ...named.remarks, ...balanceRemark(key, check)] }
}

function readLines(
  tags: readonly Tag[],
  currency: CurrencyCode,
): { drafts: { line: DraftLine; action: string }[]; problems: MonthendError[]; remarks: StatementRemark[] } {
  const drafts: { line: DraftLine; action: string }[] = []
  const problems: MonthendError[] = []
  const remarks: StatementRemark[] = []
  for (const [i, tag] of tags.entries()) {
    try {
      const read = ofxLine(tag, currency, i + 1)
      drafts.push({ line: read.line, action: textAt(tag, 'CORRECTACTION')?.toUpperCase() ?? 'REPLACE' })
      remarks.push(...read.remarks)
    } catch (error) {
      if (!(error instanceof MonthendError)) throw error
      problems.push(error)
    }
  }
  return { drafts, problems, remarks }
}

/** CORRECTFITID with CORRECTACTION: REPLACE puts a line in an earlier one's place, DELETE takes the earlier one away. */
function corrected(drafts: readonly { line: DraftLine; action: string }[]): { kept: DraftLine[]; withdrawn: string[] } {
  // The last corrector of each reference; a bank may give the corrected line its old reference again.
  const corrector = new Map(drafts.map((d) => [d.line.corrects, d] as const))
  const isGone = (d: { line: DraftLine; action: string }): boolean => {
    const by = d.line.reference === null ? undefined : corrector.get(d.line.reference)
    return by !== undefined && by !== d
  }
  const isDelete = (d: { line: DraftLine; action: string }): boolean =>
    d.line.corrects !== null && d.action === 'DELETE'
  const kept = drafts.filter((d) => !isDelete(d) && !isGone(d)).map((d) => d.line)
  return { kept, withdrawn: drafts.filter(isDelete).flatMap((d) => d.line.corrects ?? []) }
}

function balance(tag: Tag | null, currency: CurrencyCode): StatementBalance | null {
  const text = textAt(tag, 'BALAMT')
  if (!tag || text === null) return null
  return { amount: ofxAmount(currency, text, tag.row), date: dateAt(tag, 'DTASOF'), from: 'statement' }
}

/** A day beside the lines. Banks leave some of them blank or zero; nothing hangs on it, so it is then left out. */
function dateAt(tag: Tag | null, name: string): CalendarDate | null {
  const text = textAt(tag, name)
  if (text === null || !tag) return null
  try {
    return ofxDate(text, tag.row)
  } catch (error) {
    if (error instanceof MonthendError) return null
    throw error
  }
}

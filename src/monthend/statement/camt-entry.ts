import { add, type Money, negate, subtract } from '../../money/money.ts'
import { MonthendError } from '../monthend-error.ts'
import { camtKind } from './camt-kind.ts'
import { camtDate, camtSigned, chargesIncluded, chargesOn, detailAmount, instructed } from './camt-money.ts'
import type { DraftLine } from './draft.ts'
import type { StatementRemark } from './opened.ts'
import { type Tag, tagAt, tagsBelow, tagsNamed, textAt } from './tag.ts'

/** The account a statement is about, to tell the other party from its own holder. */
export interface Holder {
  readonly number: string
  readonly owner: string | null
}

/**
 * Reads one Ntry: one line, or for a batch whose parts add up one line for each part. A part's charges that the batch's
 * sum holds beyond its parts become a line of their own.
 *
 * @throws MonthendError `bad-date`, `bad-amount`, `bad-line`
 */
export function camtEntry(tag: Tag, entry: number, holder: Holder): { lines: DraftLine[]; remarks: StatementRemark[] } {
  const amount = camtSigned(tag)
  const details = tagsNamed(tag, 'NtryDtls').flatMap((group) => tagsNamed(group, 'TxDtls'))
  const whole = entryLine(tag, entry, amount, holder, details.length === 1 ? details[0] : undefined)
  if (details.length < 2) return { lines: [whole], remarks: [] }
  const parts = batchParts(tag, amount, details)
  if (!parts) {
    const message = `The batch at line ${tag.row} is kept whole: its parts are not all told, or do not add up to it.`
    return { lines: [whole], remarks: [{ code: 'batch-kept-whole', message, row: tag.row }] }
  }
  const batch = whole.reference ?? textAt(tag, 'NtryDtls', 'Btch', 'PmtInfId') ?? `line ${tag.row}`
  const lines = details.map((detail, i): DraftLine => {
    const part = entryLine(tag, entry, parts.amounts[i] ?? amount, holder, detail)
    const own = textAt(detail, 'Refs', 'AcctSvcrRef')
    const reference = own !== null && own !== whole.reference ? own : whole.reference && `${whole.reference}/${i + 1}`
    return { ...part, reference, batch, fee: null }
  })
  if (parts.rest.minor !== 0) {
    const reference = whole.reference && `${whole.reference}/charges`
    const bare = { name: '', references: [], original: null, fee: null } as const
    lines.push({ ...whole, ...bare, amount: parts.rest, reference, batch, kind: 'fee' })
  }
  return { lines, remarks: [] }
}

/** The parts' signed amounts if they, or they and the charges, make up the entry: with their own directions or with its. */
function batchParts(tag: Tag, entry: Money, details: readonly Tag[]): { amounts: Money[]; rest: Money } | null {
  const sizes = details.map((detail) => detailAmount(detail, entry.currency))
  const known = sizes.filter((size) => size !== null)
  if (known.length < details.length) return null
  const likeEntry = known.map((size) => (entry.minor < 0 ? negate(size) : size))
  const own = known.map((size, i) => {
    const said = details[i] && textAt(details[i], 'CdtDbtInd')
    return (said ?? textAt(tag, 'CdtDbtInd')) === 'DBIT' ? negate(size) : size
  })
  const charges = chargesOn(tag, entry.currency)?.minor ?? 0
  for (const amounts of [own, likeEntry]) {
    const rest = subtract(
      entry,
      amounts.reduce((a, b) => add(a, b)),
    )
    if (rest.minor === 0 || (charges !== 0 && rest.minor === -charges)) return { amounts, rest }
  }
  return null
}

function entryLine(tag: Tag, entry: number, amount: Money, holder: Holder, detail: Tag | undefined): DraftLine {
  const status = textAt(tag, 'Sts', 'Cd') ?? textAt(tag, 'Sts') ?? 'BOOK'
  const booked = camtDate(tagAt(tag, 'BookgDt'))
  const valueDate = camtDate(tagAt(tag, 'ValDt'))
  const date = booked ?? valueDate
  if (date === null) {
    throw new MonthendError('bad-date', `The entry at line ${tag.row} has neither a booking nor a value date.`, tag.row)
  }
  const parties = detail && otherParty(detail, amount, holder)
  return {
    reference: textAt(tag, 'AcctSvcrRef') ?? (detail ? textAt(detail, 'Refs', 'AcctSvcrRef') : null),
    corrects: null,
    date,
    valueDate,
    paidOn: detail ? paidOn(detail) : null,
    amount,
    status: status === 'BOOK' ? 'booked' : 'pending',
    name: parties ?? '',
    text: textOf(tag, detail),
    references: detail ? referencesOf(detail) : [],
    original: detail ? instructed(detail, amount) : null,
    fee: feeOf(tag, detail, amount),
    reversal: textAt(tag, 'RvslInd') === 'true' || textAt(tag, 'RvslInd') === '1',
    kind: camtKind(detail ?? null) ?? camtKind(tag),
    balance: null,
    batch: null,
    place: { row: tag.row, entry },
  }
}

/** Money out goes to the creditor, money in comes from the debtor; the other way round if that is the holder himself. */
function otherParty(detail: Tag, amount: Money, holder: Holder): string | null {
  const roles = amount.minor < 0 ? (['Cdtr', 'Dbtr'] as const) : (['Dbtr', 'Cdtr'] as const)
  const found = roles.flatMap((role) => {
    const parties = tagAt(detail, 'RltdPties')
    const name =
      textAt(parties, role, 'Nm') ?? textAt(parties, role, 'Pty', 'Nm') ?? textAt(parties, `Ultmt${role}`, 'Nm')
    const number = textAt(parties, `${role}Acct`, 'Id', 'IBAN') ?? textAt(parties, `${role}Acct`, 'Id', 'Othr', 'Id')
    const isHolder = (number !== null && number === holder.number) || (name !== null && name === holder.owner)
    return name === null ? [] : [{ name, isHolder }]
  })
  return (found.find((party) => !party.isHolder) ?? found[0])?.name ?? null
}

function textOf(tag: Tag, detail: Tag | undefined): string {
  const remittance = detail ? tagAt(detail, 'RmtInf') : null
  const free = tagsNamed(remittance, 'Ustrd').map((t) => t.text)
  const structured = remittance ? tagsBelow(remittance, 'AddtlRmtInf').map((t) => t.text) : []
  const said = [...free, ...structured].filter((t) => t !== '')
  if (said.length > 0) return said.join(' ')
  return (detail && textAt(detail, 'AddtlTxInf')) ?? textAt(tag, 'AddtlNtryInf') ?? ''
}

function referencesOf(detail: Tag): string[] {
  const refs = tagAt(detail, 'Refs')
  const remittance = tagAt(detail, 'RmtInf')
  const creditor = remittance ? tagsBelow(remittance, 'CdtrRefInf').flatMap((info) => textAt(info, 'Ref') ?? []) : []
  const all = [textAt(refs, 'EndToEndId'), textAt(refs, 'ChqNb'), ...creditor]
  return all.filter((ref) => ref !== null && ref !== 'NOTPROVIDED').filter((ref) => ref !== null)
}

function paidOn(detail: Tag): DraftLine['paidOn'] {
  const dates = tagAt(detail, 'RltdDts')
  const found = dates && (tagAt(dates, 'TxDtTm') ?? tagAt(dates, 'AccptncDtTm'))
  return found ? camtDate({ ...found, children: [{ ...found, name: 'DtTm', children: [] }] }) : null
}

function feeOf(tag: Tag, detail: Tag | undefined, amount: Money): Money | null {
  for (const place of [tag, detail]) {
    const charges = place && chargesOn(place, amount.currency)
    if (!place || !charges || charges.minor === 0) continue
    const before = detail ? detailAmount(detail, amount.currency) : null
    if (chargesIncluded(place, amount, before, charges)) return charges
  }
  return null
}

import type { StatementMemory } from '../../../background/monthend-protocol.ts'
import type { Household } from '../../../book/household.ts'
import type { AccountId } from '../../../book/ids.ts'
import type { StatementClose } from '../../../monthend/agree-balance.ts'
import type { AccountStatement } from '../../../monthend/statement/opened.ts'
import type { StatementLine } from '../../../monthend/statement-line.ts'
import type { OpenedFile } from '../thread-commands.ts'

/** A file that was opened, and which account of the household each of its accounts is. */
export interface Source {
  readonly name: string
  readonly bytes: Uint8Array
  readonly file: OpenedFile
  readonly accounts: readonly AccountId[]
  /** The person looked at it and said that it is right. */
  readonly isUsed: boolean
}

/** What an account of a file is remembered by: its key, or the header of a CSV file that names none. */
export function memoryKey(file: OpenedFile, statement: AccountStatement): string {
  if (statement.account !== '') return statement.account
  return `csv ${file.csv?.mapping.header?.join(' ') ?? ''}`.slice(0, 200)
}

/** The account a statement most likely is: the one it was last time, else the first of its kind. */
export function likelyAccount(
  household: Household,
  memory: StatementMemory,
  file: OpenedFile,
  statement: AccountStatement,
): AccountId | undefined {
  const remembered = memory.accounts[memoryKey(file, statement)]
  if (remembered !== undefined && household.accounts.some((a) => a.id === remembered)) return remembered
  const kind = statement.kind ?? 'bank'
  return (household.accounts.find((a) => a.kind === kind) ?? household.accounts[0])?.id
}

/** The lines of all files in use, each with the household's own name of its account. */
export function linesOf(sources: readonly Source[]): StatementLine[] {
  return sources.filter((s) => s.isUsed).flatMap((source) => ownLines(source).flat())
}

/**
 * What the statements in use say of each account, several of one account joined: the first one's opening balance, the
 * last one's closing balance. A statement that tells no closing balance is left out.
 */
export function closesOf(sources: readonly Source[]): StatementClose[] {
  const byAccount = new Map<AccountId, StatementClose[]>()
  for (const close of singleCloses(sources)) {
    byAccount.set(close.account, [...(byAccount.get(close.account) ?? []), close])
  }
  return [...byAccount.values()].flatMap((list) => {
    const sorted = [...list].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
    const [first, last] = [sorted[0], sorted.at(-1)]
    return first && last ? [{ ...last, opening: first.opening, lines: sorted.flatMap((c) => c.lines) }] : []
  })
}

function singleCloses(sources: readonly Source[]): StatementClose[] {
  return sources
    .filter((s) => s.isUsed)
    .flatMap((source) => {
      const lines = ownLines(source)
      return source.file.accounts.flatMap((statement, i): StatementClose[] => {
        const [account, own] = [source.accounts[i], lines[i] ?? []]
        const last = own.reduce<StatementLine['date'] | null>((d, l) => (d === null || l.date > d ? l.date : d), null)
        const on = statement.closing?.date ?? statement.to ?? last
        if (!statement.closing || account === undefined || on === null) return []
        const opening = statement.opening?.amount ?? null
        return [{ account, opening, closing: statement.closing.amount, on, lines: own }]
      })
    })
}

function ownLines(source: Source): StatementLine[][] {
  return source.file.accounts.map((statement, i) => {
    const account = source.accounts[i] ?? ''
    // Two files that name no account could hold the same words: the household's account tells their lines apart.
    return statement.lines.map((line) => ({
      ...line,
      id: statement.account === '' ? `${account} ${line.id}` : line.id,
      account,
    }))
  })
}

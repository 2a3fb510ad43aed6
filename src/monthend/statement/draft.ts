import { toDecimal } from '../../money/money.ts'
import type { StatementLine } from '../statement-line.ts'
import type { StatementRemark } from './opened.ts'

/** A line as it was read, before it is named. */
export type DraftLine = Omit<StatementLine, 'id' | 'idFrom' | 'account' | 'replaces'> & {
  /** The bank's own reference, unique on the account; null when there is none. */
  readonly reference: string | null
  /** The bank's reference of an earlier line that this one replaces. */
  readonly corrects: string | null
}

// What banks write where they have no reference.
const NO_REFERENCE = /^(?:not ?provided|non ?ref|none|n\/?a|0+|-+)$/i

/** Gives the lines of one file their identity: one after the other, or all of an account at once. */
export interface Namer {
  /** Names a line by what it says. */
  readonly one: (draft: DraftLine, account: string) => StatementLine
  /** Names the lines of an account, by the bank's references where it gives any. */
  readonly all: (
    drafts: readonly DraftLine[],
    account: string,
  ) => { lines: StatementLine[]; remarks: StatementRemark[] }
}

/**
 * Gives the lines of one file their identity. A reference of the bank's that stands on different movements is no
 * reference, and those lines are named by what they say; one that stands on equal movements keeps them apart by number,
 * so that none is lost. Ids are unique within the file.
 */
export function namer(): Namer {
  const seen = new Map<string, number>()
  const name = (draft: DraftLine, account: string, reference: string | null): StatementLine => {
    const key = reference === null ? contentKey(draft, account) : bankKey(account, reference)
    const count = (seen.get(key) ?? 0) + 1
    seen.set(key, count)
    // Written out: half a million lines are made here, and copying them costs more than reading them.
    return {
      id: count > 1 ? `${key}#${count}` : key,
      idFrom: reference === null ? 'content' : 'bank',
      account,
      date: draft.date,
      valueDate: draft.valueDate,
      paidOn: draft.paidOn,
      amount: draft.amount,
      status: draft.status,
      name: draft.name,
      text: draft.text,
      references: draft.references,
      original: draft.original,
      fee: draft.fee,
      reversal: draft.reversal,
      kind: draft.kind,
      balance: draft.balance,
      replaces: draft.corrects === null ? null : bankKey(account, draft.corrects),
      batch: draft.batch,
      place: draft.place,
    }
  }
  return {
    one: (draft, account) => name(draft, account, null),
    all: (drafts, account) => {
      const { shared, remarks } = sharedReferences(drafts)
      const own = (draft: DraftLine): string | null => {
        const reference = usable(draft.reference)
        return reference === null || shared.has(reference) ? null : reference
      }
      return { lines: drafts.map((draft) => name(draft, account, own(draft))), remarks }
    },
  }
}

/** References that stand on different movements, and a remark on every one that stands on more than one. */
function sharedReferences(drafts: readonly DraftLine[]): { shared: Set<string>; remarks: StatementRemark[] } {
  const byReference = new Map<string, DraftLine[]>()
  for (const draft of drafts) {
    const reference = usable(draft.reference)
    if (reference === null) continue
    const same = byReference.get(reference)
    if (same) same.push(draft)
    else byReference.set(reference, [draft])
  }
  const shared = new Set<string>()
  const remarks: StatementRemark[] = []
  for (const [reference, same] of byReference) {
    if (same.length < 2) continue
    const differ = new Set(same.map((d) => `${d.date} ${d.amount.minor} ${d.name} ${d.text}`)).size > 1
    if (differ) shared.add(reference)
    remarks.push({
      code: 'same-reference',
      message: `The bank gives ${same.length} lines the reference "${reference}". All are kept; check whether one is doubled.`,
      row: same[1]?.place.row ?? null,
    })
  }
  return { shared, remarks }
}

/** The id a bank's reference gives. */
export function bankKey(account: string, reference: string): string {
  return `${account}:${reference}`
}

function usable(reference: string | null): string | null {
  return reference === null || NO_REFERENCE.test(reference) ? null : reference
}

/** Equal movements get equal keys, and are then numbered: so two texts with one hash are told apart all the same. */
function contentKey(draft: DraftLine, account: string): string {
  const texts = [draft.name, draft.text, ...draft.references].join(' ')
  const folded = texts.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim()
  return `${account}:${draft.date}:${toDecimal(draft.amount)}${draft.amount.currency}:${hashOf(folded)}`
}

/** Two FNV-1a hashes of 32 bits (offsets apart), 16 hexadecimal digits. Guards against chance, not against intent. */
function hashOf(text: string): string {
  let [a, b] = [0x811c9dc5, 0x1b873593]
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i)
    a = Math.imul(a ^ unit, 0x01000193)
    b = Math.imul(b ^ unit, 0x01000197)
  }
  return [a, b].map((half) => (half >>> 0).toString(16).padStart(8, '0')).join('')
}

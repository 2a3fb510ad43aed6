import { BookError } from './book-error.ts'
import type { Entry } from './entry.ts'

/**
 * Refuses postings that an entry of its kind may not have, whatever the book: a settling move that changes a pot's
 * *left*, a transfer that touches a pot, a fact that moves money.
 *
 * @throws BookError `left-changes`, `unbalanced`
 */
export function checkKind(entry: Entry): void {
  switch (entry.kind) {
    case 'settle':
      checkSettle(entry)
      break
    case 'transfer':
      mustBeEmpty(entry, entry.postings.length === 0 && !entry.places.some((p) => p.account === 'notes'))
      break
    case 'expect':
    case 'close':
    case 'reopen':
    case 'agree':
    case 'seen':
      mustBeEmpty(entry, entry.postings.length === 0 && entry.places.length === 0)
      break
    case 'confirm':
    case 'instalment':
    case 'release':
      mustBeEmpty(entry, entry.places.length === 0 && entry.postings.every((p) => isHold(p.account)))
      break
    case 'count':
      mustBeEmpty(
        entry,
        entry.postings.every((p) => p.account === `cash:${entry.pot}` || p.account === 'over-short'),
      )
      break
    default:
  }
}

/** The proof that settling is no borrowing: in every pot, cash and card together stay what they were. */
function checkSettle(entry: Entry): void {
  const left = new Map<string, number>()
  for (const { account, amount } of entry.postings) {
    const [side, pot] = account.split(':')
    const isSide = pot !== undefined && (side === 'cash' || side === 'card')
    const key = isSide ? pot : ''
    // Any posting that is not on a pot's side counts as a change by itself.
    left.set(key, (left.get(key) ?? 0) + (isSide ? amount : Number.NaN))
  }
  if ([...left.values()].some((change) => change !== 0)) {
    throw new BookError('left-changes', `Entry ${entry.id} would change what a pot has left, so it does not settle.`)
  }
}

function isHold(account: string): boolean {
  return account.startsWith('held:') || account === 'on-order'
}

function mustBeEmpty(entry: Entry, holds: boolean): void {
  if (!holds) throw new BookError('unbalanced', `Entry ${entry.id} posts money that its kind may not move.`)
}

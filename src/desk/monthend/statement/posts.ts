import type { LineAsk, PotPartAsk, StatementPosting } from '../../../background/monthend-protocol.ts'
import { type AccountId, accountId, type PotId } from '../../../book/ids.ts'
import { type Money, negate, toDecimal } from '../../../money/money.ts'
import type { StatementMatch } from '../../../monthend/match-types.ts'
import type { StatementLine } from '../../../monthend/statement-line.ts'
import type { Ids } from '../ids.ts'

/** The lines by identity; `account` is the household's. */
export type Lines = ReadonlyMap<string, StatementLine>

/**
 * The posting of a match a person (or its sureness) accepted.
 *
 * @param isComplete whether an order that is charged less than it holds is paid with it
 */
export function postOfMatch(match: StatementMatch, lines: Lines, ids: Ids, isComplete: boolean): StatementPosting[] {
  const fromOf = (id: string): LineAsk | null => {
    const line = lines.get(id)
    return line ? { line: id, account: accountId(line.account), date: line.date } : null
  }
  const [first = '', second = ''] = match.lines
  const from = fromOf(first)
  const line = lines.get(first)
  if (!from || !line) return []
  switch (match.kind) {
    case 'charge': {
      const parts = match.parts.flatMap((part) => {
        const own = fromOf(part.line)
        const original = lines.get(part.line)?.original
        const foreign = original && match.parts.length === 1 ? abroad(original.amount) : null
        const id = ids.entry(`charge ${part.line} ${part.order}`)
        return own ? [{ id, from: own, order: part.order, amount: toDecimal(part.amount), foreign }] : []
      })
      const completed = isComplete ? match.orders : match.completes
      const completes = completed.map((order) => ({ id: ids.entry(`complete ${first} ${order}`), order }))
      return parts.length > 0 ? [{ kind: 'charge', parts, completes }] : []
    }
    case 'refund':
      return match.parts.map((part) => ({
        kind: 'refund',
        id: ids.entry(`refund ${part.line}`),
        from,
        order: part.order,
        amount: toDecimal(part.amount),
      }))
    case 'seen':
      return [{ kind: 'seen', id: ids.entry(`seen ${first}`), from, entries: match.entries }]
    case 'renewal': {
      if (!match.renewal) return []
      const { renewal, due } = match.renewal
      return [
        {
          kind: 'renewal',
          id: ids.entry(`renewal ${first}`),
          charge: ids.entry(`renewal charge ${first}`),
          order: ids.order(`renewal ${first}`),
          renewal,
          due,
          from,
          amount: absolute(line.amount),
        },
      ]
    }
    case 'transfer': {
      const other = fromOf(second)
      if (!other) return []
      return [
        {
          kind: 'transfer',
          id: ids.entry(`transfer ${first}`),
          from,
          source: from.account,
          target: other.account,
          amount: absolute(line.amount),
          other: { id: ids.entry(`transfer ${second}`), from: other },
        },
      ]
    }
  }
}

/** What a line nobody tagged turned out to be. */
export type UntaggedAs =
  | { readonly kind: 'spend' | 'into-pots' | 'drawn'; readonly pot: PotId }
  | { readonly kind: 'pay' }
  | { readonly kind: 'transfer'; readonly account: AccountId }

/** The posting of a line nobody tagged. */
export function postOfLine(line: StatementLine, as: UntaggedAs, ids: Ids): StatementPosting {
  const from: LineAsk = { line: line.id, account: accountId(line.account), date: line.date }
  const amount = absolute(line.amount)
  const id = ids.entry(`${as.kind} ${line.id}`)
  switch (as.kind) {
    case 'pay':
      return { kind: 'pay', id, from, amount }
    case 'transfer': {
      const [source, target] = line.amount.minor < 0 ? [from.account, as.account] : [as.account, from.account]
      return { kind: 'transfer', id, from, source, target, amount, other: null }
    }
    case 'spend': {
      const pots: PotPartAsk[] = [{ id, pot: as.pot, amount }]
      return { kind: 'spend', from, pots, purpose: purposeOf(line) }
    }
    default:
      return { kind: as.kind, from, pots: [{ id, pot: as.pot, amount }] }
  }
}

/** What a line says, for a sheet. */
export function purposeOf(line: StatementLine): string {
  return [line.name, line.text]
    .filter((part) => part !== '')
    .join(' ')
    .slice(0, 200)
}

function absolute(m: Money): string {
  return toDecimal(m.minor < 0 ? negate(m) : m)
}

function abroad(m: Money): { currency: Money['currency']; amount: string } {
  return { currency: m.currency, amount: absolute(m) }
}

import { ofMinor } from '../money/money.ts'
import { chooseBest } from './match-choose.ts'
import { buildGraph, type Graph } from './match-edges.ts'
import { SURE, UNCHARGED } from './match-judge.ts'
import { leftoversOf } from './match-leftover.ts'
import { matchOfGroup, matchOfPair } from './match-made.ts'
import { partMatches } from './match-parts.ts'
import type { MatchOptions, OrderToMatch, StatementMatch, StatementMatching } from './match-types.ts'
import { MonthendError } from './monthend-error.ts'
import type { StatementLine } from './statement-line.ts'

/**
 * Puts the lines of one or more statements together with what the book expects: orders to be charged, money to come
 * back, entries the book has already, renewals. The choice is the best over all lines at once, by exact amounts, the
 * shop's name in the bank's text, and days; one order may be charged in several lines and one line may charge several
 * orders, where the sums are exact. Each match comes with its reasons and how sure it is; what is not sure is for the
 * person to decide. Nothing is posted here, and the same input always gives the same answer.
 *
 * @param orders of the book by `ordersToMatch`, or by hand
 * @throws MonthendError `other-currency` when lines and orders are not all of one currency
 * @example matchStatement(readStatement(file), ordersToMatch(book), whatElseToMatch(book)).matches[0].reasons
 */
export function matchStatement(
  lines: readonly StatementLine[],
  orders: readonly OrderToMatch[],
  options: MatchOptions = {},
): StatementMatching {
  checkCurrency(lines, orders)
  const posted = options.posted ?? new Set<string>()
  const isNew = (line: StatementLine): boolean => line.status === 'booked' && !posted.has(line.id)
  const graph = buildGraph(uniqueLines(lines).filter(isNew), orders, options)
  const choice = chooseBest(graph)
  const currency = lines[0]?.amount.currency ?? orders[0]?.amount.currency
  if (currency === undefined) return NOTHING
  const money = (minor: number) => ofMinor(currency, minor)
  const lineOf = new Array<number>(graph.targets.length).fill(-1)
  choice.targetOf.forEach((target, line) => {
    if (target >= 0) lineOf[target] = line
  })
  const made: StatementMatch[] = []
  choice.targetOf.forEach((target, line) => {
    if (target >= 0) made.push(matchOfPair(graph, choice, lineOf, line, money))
  })
  for (const group of choice.groups) made.push(matchOfGroup(graph, group, money))
  made.push(...partMatches(graph, choice, made, money))
  const matches = inOrder(
    graph,
    made.map((match) => (match.kind === 'refund' ? refundOfNothing(match, made, orders) : match)),
  )
  return {
    matches,
    ...leftoversOf(graph, matches, orders, options, lines),
    pending: lines.filter((line) => line.status === 'pending').map((line) => line.id),
    posted: lines.filter((line) => line.status === 'booked' && posted.has(line.id)).map((line) => line.id),
    isProven: choice.isProven,
  }
}

const NOTHING: StatementMatching = {
  matches: [],
  untagged: [],
  uncharged: [],
  unseen: [],
  pending: [],
  posted: [],
  isProven: true,
}

/** A line read twice, from overlapping statements, is one line. */
function uniqueLines(lines: readonly StatementLine[]): StatementLine[] {
  return [...new Map(lines.map((line) => [line.id, line])).values()]
}

function checkCurrency(lines: readonly StatementLine[], orders: readonly OrderToMatch[]): void {
  const currencies = new Set([...lines, ...orders].map((x) => x.amount.currency))
  if (currencies.size <= 1) return
  throw new MonthendError(
    'other-currency',
    `The statement and the book are in different currencies (${[...currencies].join(', ')}). Choose the statement of an account in the household's currency.`,
  )
}

/** Money can only come back from what was charged; a refund before its charge is asked about. */
function refundOfNothing(
  match: StatementMatch,
  all: readonly StatementMatch[],
  orders: readonly OrderToMatch[],
): StatementMatch {
  const [id] = match.orders
  if (match.kind !== 'refund' || id === undefined) return match
  const order = orders.find((o) => o.order === id)
  const sumOf = (kind: StatementMatch['kind']): number =>
    all
      .filter((m) => m.kind === kind)
      .flatMap((m) => m.parts)
      .reduce((sum, part) => sum + (part.order === id ? part.amount.minor : 0), 0)
  const charged = (order?.charged?.minor ?? 0) - (order?.refunded?.minor ?? 0) + sumOf('charge')
  if (sumOf('refund') <= charged) return match
  const confidence = match.confidence * UNCHARGED
  return { ...match, confidence, isSure: confidence >= SURE }
}

function inOrder(graph: Graph, matches: readonly StatementMatch[]): StatementMatch[] {
  const place = new Map(graph.lines.map((line, i) => [line.line.id, i]))
  const first = (match: StatementMatch): number => place.get(match.lines[0] ?? '') ?? 0
  return [...matches].sort((a, b) => first(a) - first(b))
}

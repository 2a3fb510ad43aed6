import { dayNumber } from '../book/calendar-date.ts'
import { ofMinor } from '../money/money.ts'
import type { Graph, ReadyLine } from './match-edges.ts'
import { suggestPots } from './match-suggest.ts'
import type { MatchOptions, OrderToMatch, StatementMatch, StatementMatching } from './match-types.ts'
import type { StatementLine } from './statement-line.ts'

type Leftovers = Pick<StatementMatching, 'untagged' | 'uncharged' | 'unseen'>

/** What no match accounts for: lines without an order, orders without a line, entries without a line. */
export function leftoversOf(
  graph: Graph,
  matches: readonly StatementMatch[],
  orders: readonly OrderToMatch[],
  options: MatchOptions,
  lines: readonly StatementLine[],
): Leftovers {
  const matchedLines = new Set(matches.flatMap((m) => m.lines))
  const charged = new Set(matches.filter((m) => m.kind === 'charge').flatMap((m) => m.orders))
  const seen = new Set(matches.flatMap((m) => m.entries))
  // Lines posted before count too: the statement still shows up to which day the card had charged nothing.
  const days = lines.map((l) => dayNumber(l.date))
  const [first, last] = [Math.min(...days), Math.max(...days)]
  const suggest = suggestPots(options.habits ?? [])
  const open = (order: OrderToMatch): number => order.held?.minor ?? order.amount.minor - (order.charged?.minor ?? 0)
  const byLook = new Map<string, ReadyLine[]>()
  for (const line of graph.lines) {
    const same = byLook.get(look(line))
    if (same) same.push(line)
    else byLook.set(look(line), [line])
  }
  return {
    untagged: graph.lines
      .filter((l) => !matchedLines.has(l.line.id))
      .map((l) => ({
        line: l.line.id,
        amount: l.line.amount,
        suggestions: suggest(l.text),
        twin: byLook.get(look(l))?.find((other) => matchedLines.has(other.line.id))?.line.id ?? null,
      })),
    uncharged: orders
      .filter((o) => open(o) > 0 && !o.isOff && !charged.has(o.order) && dayNumber(o.date) <= last)
      .map((o) => ({
        order: o.order,
        amount: ofMinor(o.amount.currency, open(o)),
        days: last - dayNumber(o.date),
      })),
    unseen: (options.entries ?? [])
      .filter((e) => !seen.has(e.entry) && dayNumber(e.date) >= first && dayNumber(e.date) <= last)
      .map((e) => e.entry),
  }
}

function look(line: ReadyLine): string {
  return `${line.amount} ${line.text.key}`
}

import { useMemo, useState } from 'preact/hooks'
import type { StatementPosting } from '../../../background/monthend-protocol.ts'
import type { OrderId } from '../../../book/ids.ts'
import { findOrder } from '../../../book/order-state.ts'
import type { StatementMatch, StatementMatching } from '../../../monthend/match-types.ts'
import { amountText } from '../../../ui/money-text.ts'
import { Notice } from '../../../ui/notice.tsx'
import { t, tn } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { useWrite } from '../../plan/use-write.ts'
import { useIds } from '../ids.ts'
import { LineText } from './line-text.tsx'
import { MatchText } from './match-row.tsx'
import { type Lines, postOfLine, postOfMatch } from './posts.ts'
import { Question } from './question.tsx'
import { Untagged } from './untagged.tsx'

/** What was matched, to be accepted; what is doubtful, to be answered; what is left over, by name. */
export function Matches({ matching, lines }: { matching: StatementMatching; lines: Lines }) {
  const { book } = useHousehold()
  const { write, isBusy, error } = useWrite()
  const ids = useIds()
  const [refused, setRefused] = useState<ReadonlySet<string>>(new Set())
  const sure = matching.matches.filter((m) => m.isSure)
  const doubtful = matching.matches.filter((m) => !m.isSure && !refused.has(keyOf(m)))
  const alone = useMemo(() => {
    const no = matching.matches.filter((m) => !m.isSure && refused.has(keyOf(m)))
    const lonely = no
      .flatMap((m) => m.lines)
      .flatMap((id) => {
        const line = lines.get(id)
        return line ? [{ line: id, amount: line.amount, suggestions: [], twin: null }] : []
      })
    return [...matching.untagged, ...lonely]
  }, [matching, refused, lines])
  const post = (posts: StatementPosting[]): void => {
    if (posts.length > 0) void write('statement.post', { posts })
  }
  const accept = (match: StatementMatch, isComplete: boolean): void => post(postOfMatch(match, lines, ids, isComplete))
  const pending = matching.pending.flatMap((id) => lines.get(id) ?? [])
  const isAllDone = matching.matches.length + matching.untagged.length === 0
  return (
    <>
      <WentWrong error={error} />
      {matching.posted.length > 0 && <p role="status">{tn('match_posted', matching.posted.length)}</p>}
      {isAllDone && <Notice outcome="allow">{t('match_all_done')}</Notice>}
      {sure.length > 0 && (
        <section aria-labelledby="sure-title">
          <h2 id="sure-title">{tn('match_sure', sure.length)}</h2>
          <button
            type="button"
            class="primary"
            disabled={isBusy}
            onClick={() => post(sure.flatMap((m) => postOfMatch(m, lines, ids, false)))}
          >
            {tn('match_accept_sure', sure.length)}
          </button>
          <details>
            <summary>{t('match_look')}</summary>
            <ul class="matches">
              {sure.map((match) => (
                <li key={keyOf(match)}>
                  <MatchText match={match} lines={lines} />
                </li>
              ))}
            </ul>
          </details>
        </section>
      )}
      {doubtful.length > 0 && (
        <section aria-labelledby="doubt-title">
          <h2 id="doubt-title">{tn('match_doubtful', doubtful.length)}</h2>
          <ul class="matches">
            {doubtful.map((match) => (
              <Question
                key={keyOf(match)}
                match={match}
                lines={lines}
                isBusy={isBusy}
                onYes={(isComplete, order) => accept(order ? forOrder(match, order) : match, isComplete)}
                onNo={() => setRefused(new Set([...refused, keyOf(match)]))}
              />
            ))}
          </ul>
        </section>
      )}
      {alone.length > 0 && (
        <section aria-labelledby="untagged-title">
          <h2 id="untagged-title">{tn('match_untagged', alone.length)}</h2>
          <ul class="matches">
            {alone.map((untagged) => {
              const line = lines.get(untagged.line)
              return line ? (
                <Untagged
                  key={untagged.line}
                  untagged={untagged}
                  line={line}
                  isBusy={isBusy}
                  onAnswer={(as) => post([postOfLine(line, as, ids)])}
                />
              ) : null
            })}
          </ul>
        </section>
      )}
      {matching.uncharged.length > 0 && (
        <section aria-labelledby="uncharged-title">
          <h2 id="uncharged-title">{tn('match_uncharged', matching.uncharged.length)}</h2>
          <ul class="matches">
            {matching.uncharged.map((u) => (
              <li key={u.order}>
                {tn('match_uncharged_order', u.days, {
                  shop: findOrder(book, u.order)?.shop ?? '',
                  amount: amountText(u.amount),
                })}
              </li>
            ))}
          </ul>
        </section>
      )}
      {pending.length > 0 && (
        <section aria-labelledby="pending-title">
          <h2 id="pending-title">{tn('match_pending', pending.length)}</h2>
          <ul class="matches">
            {pending.map((line) => (
              <li key={line.id}>
                <LineText line={line} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}

/** The same lines for another order than the one that was found. */
function forOrder(match: StatementMatch, order: OrderId): StatementMatch {
  return { ...match, orders: [order], completes: [], parts: match.parts.map((part) => ({ ...part, order })) }
}

function keyOf(match: StatementMatch): string {
  return [...match.lines, ...match.orders, ...match.entries].join(' ')
}

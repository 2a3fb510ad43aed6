import type { Weighed, WishText } from '../../background/protocol.ts'
import type { Household } from '../../book/household.ts'
import { OutcomeMark } from '../mark.tsx'
import { amountText } from '../money-text.ts'
import { sayVerdict } from '../say-verdict.ts'
import { listText, type TextKey, t, tn } from '../text.ts'

/** The verdict on an order as a whole: each pot's part with its own mark, the sentences, and what would have to go. */
export function SplitOutcome(props: {
  readonly household: Household
  readonly weighed: Weighed
  readonly wish: WishText
}) {
  const { household, weighed, wish } = props
  const { verdict, split } = weighed
  const nameOf = (id: string): string => household.pots.find((p) => p.id === id)?.name ?? id
  const odd = split.lines.filter((l) => l.odd !== 0).map((l) => nameOf(l.pot))
  return (
    <section class={`verdict verdict-${verdict.outcome}`}>
      <h3>
        <OutcomeMark outcome={verdict.outcome} />
        {t(HEADLINE[verdict.outcome])}
      </h3>
      {verdict.lines.length > 1 && (
        <ul class="split-lines">
          {verdict.lines.map((line) => (
            <li key={line.pot}>
              <OutcomeMark outcome={line.outcome} />
              <span class="split-name">{nameOf(line.pot)}</span>
              <span class="split-amount">{amountText(line.amount)}</span>
              <span class="split-left">{t('split_leaves', { amount: amountText(line.after.left) })}</span>
            </li>
          ))}
        </ul>
      )}
      {odd.length > 0 && <p class="field-hint">{tn('split_odd', odd.length, { pots: listText(odd) })}</p>}
      {sayVerdict(household, verdict)
        .filter((_, n) => verdict.lines.length === 1 || verdict.reasons[n]?.outcome !== 'allow')
        .map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      <TakeOut weighed={weighed} wish={wish} />
    </section>
  )
}

const HEADLINE: Readonly<Record<Weighed['verdict']['outcome'], TextKey>> = {
  allow: 'verdict_allow',
  warn: 'verdict_warn',
  block: 'verdict_block',
}

/** The fewest items without which the order would fit. */
export function TakeOut({ weighed, wish }: { weighed: Weighed; wish: WishText }) {
  const { removal } = weighed
  if (!removal || wish.split.by !== 'item') return null
  const { items } = wish.split
  if (removal.isAll) return <p>{t('take_out_all')}</p>
  const names = removal.items.map((n) => items[n]).flatMap((i) => (i ? [`${i.name} (${i.amount})`] : []))
  return <p class="take-out">{t('take_out', { items: listText(names) })}</p>
}

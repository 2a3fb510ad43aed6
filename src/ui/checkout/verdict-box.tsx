import type { PotChoice } from '../../background/protocol.ts'
import type { Household } from '../../book/household.ts'
import { OutcomeMark } from '../mark.tsx'
import { amountText } from '../money-text.ts'
import { sayVerdict } from '../say-verdict.ts'
import { listText, type TextKey, t } from '../text.ts'

/** The engine's answer for the chosen pot: mark, word and sentences; on a stop also what would help. */
export function VerdictBox(props: {
  readonly household: Household
  readonly chosen: PotChoice
  readonly choices: readonly PotChoice[]
}) {
  const { household, chosen, choices } = props
  const { outcome } = chosen.verdict
  return (
    <section class={`verdict verdict-${outcome}`}>
      <h3>
        <OutcomeMark outcome={outcome} />
        {t(headline(chosen))}
      </h3>
      {sayVerdict(household, chosen.verdict).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {outcome === 'block' && <Help household={household} chosen={chosen} choices={choices} />}
    </section>
  )
}

function headline({ verdict }: PotChoice): TextKey {
  if (verdict.outcome === 'block') return 'verdict_block'
  if (verdict.outcome === 'warn') return 'verdict_warn'
  return verdict.reasons.some((r) => r.code === 'uses-notes') ? 'verdict_allow_notes' : 'verdict_allow'
}

const MOST_NAMED = 3

/** What would make the order possible: a smaller one, another pot, or a fill. */
function Help(props: { household: Household; chosen: PotChoice; choices: readonly PotChoice[] }) {
  const { household, chosen } = props
  const first = chosen.verdict.reasons[0]
  const nameOf = (id: string): string => household.pots.find((p) => p.id === id)?.name ?? id
  const able = props.choices.filter((c) => c.verdict.outcome === 'allow').slice(0, MOST_NAMED)
  return (
    <ul class="verdict-help">
      {able.length > 0 && (
        <li>
          {t('help_other_pots', {
            pots: listText(
              able.map((c) => nameOf(c.pot)),
              'disjunction',
            ),
          })}
        </li>
      )}
      {first?.code === 'below-zero' && (
        <>
          {first.before.left.minor > 0 && <li>{t('help_smaller', { amount: amountText(first.before.left) })}</li>}
          <li>{t('help_fill', { pot: nameOf(chosen.pot), amount: amountText(first.short) })}</li>
        </>
      )}
    </ul>
  )
}

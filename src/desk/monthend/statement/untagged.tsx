import { useState } from 'preact/hooks'
import { hasSide } from '../../../book/household.ts'
import { accountId, potId } from '../../../book/ids.ts'
import type { UntaggedLine } from '../../../monthend/match-types.ts'
import type { StatementLine } from '../../../monthend/statement-line.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { LineText } from './line-text.tsx'
import { purposeOf, type UntaggedAs } from './posts.ts'

/** A line nothing in the book accounts for: what was it, and which pot? */
export function Untagged(props: {
  readonly untagged: UntaggedLine
  readonly line: StatementLine
  readonly isBusy: boolean
  readonly onAnswer: (as: UntaggedAs) => void
}) {
  const { line, untagged } = props
  const { book } = useHousehold()
  const isOut = line.amount.minor < 0
  const isCash = line.kind === 'cash'
  const [value, setValue] = useState(() => firstValue(untagged, line))
  const kind = isOut ? (isCash ? 'drawn' : 'spend') : 'into-pots'
  const pots = book.household.pots.filter((p) => !p.archived && hasSide(p, isCash ? 'cash' : 'card'))
  const others = book.household.accounts.filter((a) => a.id !== line.account)
  const suggested = untagged.suggestions.flatMap((s) => pots.find((p) => p.id === s.pot) ?? [])
  const rest = pots.filter((p) => !suggested.includes(p))
  const label = t(isOut ? (isCash ? 'untagged_which_envelope' : 'untagged_which_pot') : 'untagged_what_is_it')
  return (
    <li class="untagged">
      <LineText line={line} />
      {untagged.twin !== null && <p class="field-error">{t('untagged_twin')}</p>}
      <div class="untagged-answer">
        <select
          aria-label={`${label}: ${purposeOf(line)}`}
          value={value}
          onChange={(event) => setValue(event.currentTarget.value)}
        >
          <option value="">{label}</option>
          {suggested.length > 0 && (
            <optgroup label={t('untagged_suggested')}>
              {suggested.map((pot) => (
                <option key={pot.id} value={`pot ${pot.id}`}>
                  {pot.name}
                </option>
              ))}
            </optgroup>
          )}
          {!isOut && <option value="pay">{t('untagged_pay')}</option>}
          <optgroup label={t('untagged_pots')}>
            {rest.map((pot) => (
              <option key={pot.id} value={`pot ${pot.id}`}>
                {pot.name}
              </option>
            ))}
          </optgroup>
          {others.length > 0 && (
            <optgroup label={t(isOut ? 'untagged_transfer_to' : 'untagged_transfer_from')}>
              {others.map((a) => (
                <option key={a.id} value={`account ${a.id}`}>
                  {a.name}
                </option>
              ))}
            </optgroup>
          )}
        </select>
        <button
          type="button"
          disabled={props.isBusy || value === ''}
          onClick={() => {
            const answer = answerOf(value, kind)
            if (answer) props.onAnswer(answer)
          }}
        >
          {t('untagged_post')}
        </button>
      </div>
    </li>
  )
}

/** A suggestion is chosen beforehand only where it is the only one. */
function firstValue({ suggestions }: UntaggedLine, line: StatementLine): string {
  const [only] = suggestions
  if (only && suggestions.length === 1) return `pot ${only.pot}`
  return line.kind === 'pay' ? 'pay' : ''
}

function answerOf(value: string, kind: 'spend' | 'into-pots' | 'drawn'): UntaggedAs | null {
  if (value === 'pay') return { kind: 'pay' }
  const [what, id = ''] = value.split(' ')
  if (what === 'account') return { kind: 'transfer', account: accountId(id) }
  return what === 'pot' ? { kind, pot: potId(id) } : null
}

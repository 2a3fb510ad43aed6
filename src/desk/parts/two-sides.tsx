import type { PotBalance } from '../../book/balances.ts'
import { OutcomeMark } from '../../ui/mark.tsx'
import { amountText } from '../../ui/money-text.ts'
import { sillReach } from '../../ui/sill.ts'
import { SillBar } from '../../ui/sill-bar.tsx'
import { t } from '../../ui/text.ts'

/**
 * The two sides of a pot (or of all pots) as the sum they are: in the envelope + at the bank − held = left, over the bar
 * that draws it. The same on every page of the desk.
 */
export function TwoSides(props: {
  readonly balance: PotBalance
  /** What each pay puts in, by side, in minor units: small marks on the bar. */
  readonly notches?: { readonly cash: number; readonly card: number }
}) {
  const { balance, notches } = props
  const { cash, card, held, left, spokenFor, freeCash } = balance
  const scale = Math.max(sillReach(balance), notches?.cash ?? 0, notches?.card ?? 0, 1)
  return (
    <div class="two-sides">
      <dl>
        <div class="ts-cash">
          <dt>{t('ts_cash')}</dt>
          <dd>
            {amountText(cash)}
            {spokenFor.minor > 0 && (
              <small>{t('ts_spoken', { spoken: amountText(spokenFor), free: amountText(freeCash) })}</small>
            )}
          </dd>
        </div>
        <div class="ts-card">
          <dt>
            <Sign sign="+" word={t('ts_plus')} />
            {t('ts_card')}
          </dt>
          <dd>{amountText(card)}</dd>
        </div>
        <div class="ts-held">
          <dt>
            <Sign sign="−" word={t('ts_minus')} />
            {t('ts_held')}
          </dt>
          <dd>{amountText(held)}</dd>
        </div>
        <div class={left.minor < 0 ? 'ts-left below' : 'ts-left'}>
          <dt>
            <Sign sign="=" word={t('ts_equals')} />
            {t('ts_left')}
          </dt>
          <dd>
            {left.minor < 0 && <OutcomeMark outcome="block" />}
            {amountText(left)}
          </dd>
        </div>
      </dl>
      {notches ? (
        <SillBar balance={balance} scale={scale} notches={notches} />
      ) : (
        <SillBar balance={balance} scale={scale} />
      )}
    </div>
  )
}

function Sign({ sign, word }: { sign: string; word: string }) {
  return (
    <>
      <span class="ts-sign" aria-hidden="true">
        {sign}
      </span>
      <span class="unseen">{word} </span>
    </>
  )
}

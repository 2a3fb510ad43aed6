import { useState } from 'preact/hooks'
import type { CheckoutLook } from '../../background/protocol.ts'
import type { Pot } from '../../book/household.ts'
import { ask } from '../ask.ts'
import { locale } from '../browser.ts'
import { t } from '../text.ts'
import { WentWrong } from '../went-wrong.tsx'

/**
 * The pot a basket is for, said before the shop has named the final total: what was said and until when it is kept, the
 * way to take it back, and in the popup at a cart or checkout the way to say it. Elsewhere nothing is shown.
 */
export function PotAhead(props: {
  /** The shop's tab; null in the panel, where the real total is there to be tagged. */
  readonly tab: number | null
  readonly look: CheckoutLook
  readonly pots: readonly Pot[]
  readonly chosen: Pot | null
  readonly onChanged: () => Promise<void>
}) {
  const { tab, look, chosen } = props
  const [error, setError] = useState<unknown>(null)
  const said = props.pots.find((pot) => pot.id === look.ahead?.pot)
  const isBasket = look.page?.stage === 'cart' || look.page?.stage === 'checkout'
  const say = (pot: Pot | null): void => {
    if (tab === null) return
    setError(null)
    ask('order.ahead', { tab, pot: pot?.id ?? null })
      .then(props.onChanged)
      .catch(setError)
  }
  return (
    <div class="pot-ahead">
      {said && look.ahead && (
        <p>
          {t(tab === null ? 'ahead_said_panel' : 'ahead_said', { pot: said.name, until: momentText(look.ahead.until) })}{' '}
          {tab !== null && (
            <button type="button" class="link" onClick={() => say(null)}>
              {t('ahead_forget')}
            </button>
          )}
        </p>
      )}
      {tab !== null && isBasket && chosen && chosen.id !== said?.id && (
        <button type="button" class="link" onClick={() => say(chosen)}>
          {t('ahead_keep', { pot: chosen.name })}
        </button>
      )}
      <WentWrong error={error} />
    </div>
  )
}

/** A moment within a day or two: "Thursday 15:40", as the browser's language and this machine's clock have it. */
function momentText(at: number): string {
  return new Intl.DateTimeFormat(locale(), { weekday: 'long', hour: 'numeric', minute: '2-digit' }).format(at)
}

import { useState } from 'preact/hooks'
import type { CheckoutLook, HouseholdView } from '../../background/protocol.ts'
import { ask } from '../ask.ts'
import { askForOrigin } from '../browser.ts'
import { OutcomeMark } from '../mark.tsx'
import { Notice } from '../notice.tsx'
import { stopWatching } from '../stop-watching.ts'
import { t } from '../text.ts'
import { WentWrong } from '../went-wrong.tsx'

/** Lets the guard watch this shop, or shows that it does and how to end it. */
export function WatchShop(props: {
  readonly look: CheckoutLook
  readonly view: HouseholdView
  readonly onChanged: () => Promise<void>
}) {
  const { look } = props
  const [error, setError] = useState<unknown>(null)
  const [wasRefused, setRefused] = useState(false)
  const { origin, shop } = look
  if (!origin || !shop) return null

  const watch = (): void => {
    setError(null)
    // Asked before anything is awaited: the browser shows its question only as the direct outcome of this click.
    const answer = askForOrigin(origin)
    answer
      .then(async (isGiven) => {
        setRefused(!isGiven)
        if (!isGiven) return
        await ask('shop.watch', { origin })
        await props.onChanged()
      })
      .catch(setError)
  }
  const unwatch = (): void => {
    setError(null)
    stopWatching(shop).then(props.onChanged).catch(setError)
  }
  return (
    <section class="watch">
      {look.watched ? (
        <>
          <p>
            <OutcomeMark outcome="allow" />
            {t('watched_here', { shop })}
          </p>
          <button type="button" class="link" onClick={unwatch}>
            {t('unwatch')}
          </button>
        </>
      ) : (
        <>
          <button type="button" onClick={watch}>
            {t('watch')}
          </button>
          <p class="field-hint">{t('watch_hint', { shop })}</p>
        </>
      )}
      {wasRefused && <Notice outcome="warn">{t('watch_refused')}</Notice>}
      <WentWrong error={error} />
    </section>
  )
}

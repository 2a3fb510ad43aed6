import { useLayoutEffect, useRef } from 'preact/hooks'
import type { HouseholdView, PotChoice } from '../../background/protocol.ts'
import type { Pot } from '../../book/household.ts'
import type { PotId } from '../../book/ids.ts'
import { typeAhead } from '../pot-match.ts'
import { t } from '../text.ts'
import { PotRow } from './pot-row.tsx'

const TYPING_PAUSE_MS = 1000

/**
 * The pots to choose from, best guess first. Arrow keys, Home and End move; a digit takes the pot of that number;
 * letters lead to a name; Enter goes on.
 */
export function PotChooser(props: {
  readonly view: HouseholdView
  readonly pots: readonly Pot[]
  readonly choices: readonly PotChoice[] | null
  readonly chosen: PotId | null
  readonly onChoose: (pot: PotId) => void
  readonly onGo: () => void
}) {
  const { pots, chosen, view } = props
  const list = useRef<HTMLDivElement>(null)
  const typed = useRef({ letters: '', at: 0 })
  const place = pots.findIndex((p) => p.id === chosen)

  // A list that opens takes the keyboard, so that the first arrow or digit already counts. It stays where it is: what
  // stands above is read first. When the pots come into their order for this shop, the keyboard goes along.
  const first = pots[0]?.id
  useLayoutEffect(() => {
    const isHere = list.current?.contains(document.activeElement) || document.activeElement === document.body
    if (isHere) focusOn(list.current, Math.max(0, place), true)
  }, [first])

  const goTo = (index: number): void => {
    const pot = pots[Math.min(Math.max(index, 0), pots.length - 1)]
    if (!pot) return
    props.onChoose(pot.id)
    focusOn(list.current, pots.indexOf(pot))
  }
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return
    const { key } = event
    if (key === 'Enter') {
      event.preventDefault()
      if (!event.repeat) props.onGo()
    } else if (key === 'ArrowDown' || key === 'ArrowUp' || key === 'Home' || key === 'End') {
      event.preventDefault()
      const to = { ArrowDown: place + 1, ArrowUp: place - 1, Home: 0, End: pots.length - 1 }[key]
      goTo(place < 0 && key === 'ArrowUp' ? pots.length - 1 : to)
    } else if (/^[1-9]$/.test(key) && Number(key) <= pots.length) {
      event.preventDefault()
      goTo(Number(key) - 1)
    } else if (/^\p{L}$/u.test(key)) {
      event.preventDefault()
      const isGoingOn = event.timeStamp - typed.current.at < TYPING_PAUSE_MS
      typed.current = { letters: (isGoingOn ? typed.current.letters : '') + key, at: event.timeStamp }
      const names = pots.map((p) => p.name)
      const found = typeAhead(names, typed.current.letters, place)
      if (found >= 0) goTo(found)
    }
  }

  return (
    <fieldset class="chooser" onKeyDown={onKeyDown}>
      <legend>{t('which_pot')}</legend>
      <p class="chooser-hint">{t('choose_keys')}</p>
      <div class="chooser-list" ref={list}>
        {pots.map((pot, index) => {
          const balance = view.balances[pot.id]
          if (!balance) return null
          return (
            <PotRow
              key={pot.id}
              pot={pot}
              balance={balance}
              choice={props.choices?.find((c) => c.pot === pot.id) ?? null}
              number={index + 1}
              isChosen={pot.id === chosen}
              isFirstStop={index === Math.max(0, place)}
              onChoose={() => props.onChoose(pot.id)}
            />
          )
        })}
      </div>
    </fieldset>
  )
}

function focusOn(list: HTMLElement | null, index: number, preventScroll = false): void {
  list?.querySelectorAll('input').item(index)?.focus({ preventScroll })
}

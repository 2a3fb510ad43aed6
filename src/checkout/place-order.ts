import type { Control } from './controls.ts'
import { attribute, isInput, nameOf } from './dom.ts'
import { isPageFurniture } from './page-place.ts'
import type { PageText } from './page-text.ts'
import { saysPayment } from './payment-frame.ts'
import type { Evidence, Stage } from './reading.ts'
import type { Sight } from './sight.ts'
import type { StageSigns } from './stage-signs.ts'

export interface PlaceOrderContext {
  readonly page: PageText
  readonly controls: readonly Control[]
  readonly signs: StageSigns
  readonly stage: Stage
  readonly hasTotal: boolean
  readonly sight: Sight
}

/**
 * The controls that place the order: only at the checkout, and only by their own words. Words that say less than "pay" or
 * "buy" need more around them; words that say next to nothing count only where no other control says more.
 */
export function placeOrderControls(context: PlaceOrderContext): { elements: Element[]; evidence: Evidence[] } {
  const { controls, stage } = context
  const candidates = controls.filter((control) => ['pays', 'buys', 'completes', 'vague'].includes(control.kind))
  const firm = candidates.filter((control) => control.kind !== 'vague' && isAccepted(context, control))
  const taken =
    stage !== 'checkout' ? [] : firm.length > 0 ? firm : candidates.filter((control) => isVagueOrder(context, control))
  const evidence = candidates.map((control) => evidenceFor(control, taken.includes(control), stage))
  return { elements: taken.map((control) => control.element), evidence: [...evidence, ...framesIn(context)] }
}

function isAccepted({ signs, hasTotal }: PlaceOrderContext, control: Control): boolean {
  // A menu's "Order" or "Buy" leads somewhere; it orders nothing.
  if (isPageFurniture(control.box)) return false
  if (control.kind !== 'completes') return true
  return hasTotal || signs.payment || signs.terms
}

function isVagueOrder({ signs, hasTotal }: PlaceOrderContext, control: Control): boolean {
  const submits = nameOf(control.element) === 'button' || isInput(control.element)
  return control.kind === 'vague' && submits && hasTotal && (signs.payment || signs.terms)
}

function evidenceFor(control: Control, used: boolean, stage: Stage): Evidence {
  const says = `its own words say it ${control.kind === 'vague' ? 'goes on' : control.kind}`
  const disabled = control.calledDisabled ? '; it calls itself disabled (aria-disabled)' : ''
  const why = used
    ? `${says}, at the checkout${disabled}`
    : `${says}, but not enough around it says it orders (${stage})`
  return {
    figure: 'place-order',
    source: 'text',
    label: control.words,
    text: control.words,
    used,
    why,
    element: control.element,
  }
}

/** Wallets and card fields in frames of other origins cannot be read; they are named, so that a person knows. */
function framesIn({ page, sight, stage }: PlaceOrderContext): Evidence[] {
  if (stage !== 'checkout') return []
  return page.frames.flatMap(({ element: frame }) => {
    const named =
      [attribute(frame, 'title'), attribute(frame, 'aria-label'), attribute(frame, 'name')].find((each) => each) ?? ''
    if (!saysPayment(named) || sight.seen(frame) === 'gone') return []
    const why = 'a payment frame: what is pressed inside it cannot be read here'
    return [{ figure: 'place-order', source: 'text', label: named, text: named, used: false, why, element: frame }]
  })
}

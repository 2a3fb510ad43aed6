import type { PotBalance } from '../book/balances.ts'
import { drawSill, ruleOfSill, type SillSpan } from './sill.ts'
import './sill.css'

/**
 * The patterns all bars of a page are filled with; draw it once per page. Notes have a fine line work like the one on
 * banknotes; what orders hold is hatched the other way, so that the parts differ without colour too.
 */
export function SillPatterns() {
  return (
    <svg class="sill-patterns" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        <pattern id="sill-notes" width="12" height="8" patternUnits="userSpaceOnUse">
          <rect class="notes-ground" width="12" height="8" />
          <path
            class="notes-line"
            d="M0 2q3-3.2 6 0t6 0M0 6q3-3.2 6 0t6 0M0 4q3 3.2 6 0t6 0M0 8q3 3.2 6 0t6 0M0 0q3 3.2 6 0t6 0"
          />
        </pattern>
        <pattern id="sill-held" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect class="held-ground" width="6" height="6" />
          <rect class="held-line" width="1.6" height="6" />
        </pattern>
        <pattern id="sill-new" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
          <rect class="new-line" width="3" height="7" />
        </pattern>
        <pattern id="sill-spoken" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect class="spoken-line" width="2.2" height="7" />
        </pattern>
      </defs>
    </svg>
  )
}

/**
 * A pot as a bar. It only repeats figures that stand beside it as text, so it is hidden from assistive technology.
 *
 * @param scale minor units that fill one half
 * @param before figures without the order that is looked at; what the order adds is then marked
 * @param notches what each pay puts in, by side, in minor units: small marks on the bar
 */
export function SillBar(props: {
  readonly balance: PotBalance
  readonly scale: number
  readonly before?: PotBalance
  readonly notches?: { readonly cash: number; readonly card: number }
}) {
  const { balance, scale, before = balance, notches } = props
  const at = (x: number): string => `${(50 + x * 50).toFixed(3)}%`
  const rule = ruleOfSill(balance, scale)
  return (
    <svg class="sill" aria-hidden="true" focusable="false">
      <rect class="sill-bar sill-trough" x="0" y="2" width="100%" rx="2" />
      {drawSill(balance, scale, before).map((span) => (
        <rect
          key={`${span.part}${span.isNew}`}
          class={`sill-bar sill-${span.part}`}
          fill={fillOf(span)}
          x={at(span.from)}
          y="2"
          width={`${((span.to - span.from) * 50).toFixed(3)}%`}
        />
      ))}
      {notches !== undefined && notches.cash > 0 && <Notch at={at(-notches.cash / scale)} />}
      {notches !== undefined && notches.card > 0 && <Notch at={at(notches.card / scale)} />}
      {rule && <line class="sill-rule" x1={at(rule.from)} x2={at(rule.to)} y1="100%" y2="100%" />}
      <line class="sill-centre" x1="50%" x2="50%" y1="0" y2="100%" />
    </svg>
  )
}

function Notch({ at }: { at: string }) {
  return <line class="sill-notch" x1={at} x2={at} y1="0" y2="5" />
}

function fillOf({ part, isNew }: SillSpan): string {
  if (part === 'notes') return 'url(#sill-notes)'
  if (part === 'held') return isNew ? 'url(#sill-new)' : 'url(#sill-held)'
  if (part === 'spoken') return isNew ? 'url(#sill-new)' : 'url(#sill-spoken)'
  return 'currentColor'
}

import type { PotBalance } from '../book/balances.ts'
import type { CurrencyCode } from '../money/currency.ts'
import { ofMinor } from '../money/money.ts'
import { isSeen, noteSeen } from './seen.ts'
import { SillBar } from './sill-bar.tsx'
import { t } from './text.ts'
import './sill-legend.css'

const HINT = 'sill'

/** How to read a pot's bar: open until it has been put away once, then a line that opens it again. */
export function SillLegend({ currency }: { currency: CurrencyCode }) {
  return (
    <details class="sill-legend" open={!isSeen(HINT)} onToggle={(event) => noteSeen(HINT, !event.currentTarget.open)}>
      <summary>{t('legend_title')}</summary>
      <p class="legend-sides">
        <span class="side-cash">{t('legend_notes')}</span>
        <span class="side-card">{t('legend_card')}</span>
      </p>
      <SillBar balance={sample(currency)} scale={SAMPLE.cash} />
      <ul>
        <li>
          <Swatch fills={['sill-held']} />
          <span>{t('legend_held')}</span>
        </li>
        <li>
          <Swatch fills={['sill-notes', 'sill-spoken']} />
          <span>{t('legend_spoken')}</span>
        </li>
        <li>
          <span class="legend-rule" />
          <span>{t('legend_left')}</span>
        </li>
      </ul>
    </details>
  )
}

/** A pot whose bar shows every part there is. */
const SAMPLE = { cash: 60, card: 40, held: 55, left: 45, spokenFor: 15, freeCash: 45 }

function sample(currency: CurrencyCode): PotBalance {
  const { cash, card, held, left, spokenFor, freeCash } = SAMPLE
  const of = (minor: number) => ofMinor(currency, minor)
  return {
    cash: of(cash),
    card: of(card),
    held: of(held),
    left: of(left),
    spokenFor: of(spokenFor),
    freeCash: of(freeCash),
  }
}

/** A piece of a pattern of the bars. */
function Swatch({ fills }: { fills: readonly string[] }) {
  return (
    <svg class="legend-swatch" width="24" height="14" aria-hidden="true" focusable="false">
      {fills.map((fill) => (
        <rect key={fill} width="24" height="14" fill={`url(#${fill})`} />
      ))}
    </svg>
  )
}

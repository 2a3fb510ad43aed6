import type { VerdictLine } from '../../book/assess.ts'
import type { PotBalance } from '../../book/balances.ts'
import { amountText } from '../money-text.ts'
import { type TextKey, t } from '../text.ts'

/** With more signs in all, five amounts do not fit beside each other in a window of 320; the table is then turned. */
const SIGNS_IN_A_ROW = 29
/** Still longer ones leave no room for a label beside them in a window of 320. */
const LONGEST_BESIDE_LABEL = 11

/** A pot's figures before this order and after it. What changes is set in strong type. */
export function Figures({ line }: { line: VerdictLine }) {
  const figures = FIGURES.map(([label, figure]) => ({
    label: t(label),
    now: amountText(line.before[figure]),
    after: amountText(line.after[figure]),
  }))
  const lengths = figures.map((f) => Math.max(f.now.length, f.after.length))
  const fitsAcross = lengths.reduce((all, length) => all + length, 0) <= SIGNS_IN_A_ROW
  const fitsUpright = Math.max(...lengths) <= LONGEST_BESIDE_LABEL
  const Table = fitsAcross ? Across : fitsUpright ? Upright : Stacked
  return (
    <div class="figures">
      <Table figures={figures} />
    </div>
  )
}

const FIGURES: readonly (readonly [TextKey, keyof PotBalance])[] = [
  ['figure_cash', 'cash'],
  ['figure_card', 'card'],
  ['figure_held', 'held'],
  ['figure_spoken', 'spokenFor'],
  ['figure_left', 'left'],
]

interface Figure {
  readonly label: string
  readonly now: string
  readonly after: string
}

function Across({ figures }: { figures: readonly Figure[] }) {
  return (
    <table class="figures-across">
      <thead>
        <tr>
          <td />
          {figures.map((f) => (
            <th key={f.label} scope="col">
              {f.label}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">{t('figure_now')}</th>
          {figures.map((f) => (
            <td key={f.label}>{f.now}</td>
          ))}
        </tr>
        <tr>
          <th scope="row">{t('figure_after')}</th>
          {figures.map((f) => (
            <td key={f.label} class={changeOf(f)}>
              {f.after}
            </td>
          ))}
        </tr>
      </tbody>
    </table>
  )
}

function Upright({ figures }: { figures: readonly Figure[] }) {
  return (
    <table class="figures-upright">
      <thead>
        <tr>
          <td />
          <th scope="col">{t('figure_now')}</th>
          <th scope="col">{t('figure_after')}</th>
        </tr>
      </thead>
      <tbody>
        {figures.map((f) => (
          <tr key={f.label}>
            <th scope="row">{f.label}</th>
            <td>{f.now}</td>
            <td class={changeOf(f)}>{f.after}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Each label over its two amounts. */
function Stacked({ figures }: { figures: readonly Figure[] }) {
  return (
    <table class="figures-stacked">
      <thead>
        <tr>
          <th scope="col">{t('figure_now')}</th>
          <th scope="col">{t('figure_after')}</th>
        </tr>
      </thead>
      {figures.map((f) => (
        <tbody key={f.label}>
          <tr>
            <th scope="rowgroup" colSpan={2}>
              {f.label}
            </th>
          </tr>
          <tr>
            <td>{f.now}</td>
            <td class={changeOf(f)}>{f.after}</td>
          </tr>
        </tbody>
      ))}
    </table>
  )
}

function changeOf({ now, after }: Figure): 'same' | 'changed' {
  return now === after ? 'same' : 'changed'
}

import type { CurrencyCode } from '../../src/money/currency.ts'
import { ofMinor } from '../../src/money/money.ts'
import { readAmount } from '../../src/ui/amount-text.ts'
import { locale } from '../../src/ui/browser.ts'
import { amountText } from '../../src/ui/money-text.ts'
import { AMOUNT_FIELDS, type PotDraft, takesAmount } from '../../src/ui/pot-draft.ts'
import { t } from '../../src/ui/text.ts'

/** What all rows together say so far: notes, card sides, and what each pay puts in. */
export function RunningSum({ pots, currency }: { pots: readonly PotDraft[]; currency: CurrencyCode }) {
  const sums = { openCash: 0, openCard: 0, fillCash: 0, fillCard: 0, floor: 0 }
  for (const pot of pots) {
    for (const field of AMOUNT_FIELDS) {
      const read = takesAmount(pot, field) ? readAmount(pot[field], currency, locale()) : null
      if (read?.ok) sums[field] += read.money.minor
    }
  }
  const text = (minor: number): string => (Number.isSafeInteger(minor) ? amountText(ofMinor(currency, minor)) : '∞')
  return (
    <dl class="running-sum">
      <div>
        <dt>{t('sum_cash')}</dt>
        <dd>{text(sums.openCash)}</dd>
      </div>
      <div>
        <dt>{t('sum_card')}</dt>
        <dd>{text(sums.openCard)}</dd>
      </div>
      <div>
        <dt>{t('sum_fill')}</dt>
        <dd>{text(sums.fillCash + sums.fillCard)}</dd>
      </div>
    </dl>
  )
}

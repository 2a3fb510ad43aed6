import type { NewPot } from '../../background/protocol.ts'
import type { Pot } from '../../book/household.ts'
import type { CurrencyCode } from '../../money/currency.ts'
import { ofMinor, toDecimal } from '../../money/money.ts'
import { ask } from '../../ui/ask.ts'
import { PotForm } from '../../ui/glance/pot-form.tsx'
import { newEntryId } from '../../ui/new-id.ts'
import { t } from '../../ui/text.ts'
import { useHousehold } from '../household.ts'

/** A pot's name, sides, fill, rule, kind and floor, to be changed; what stood before can be had again. */
export function PotSettings({ pot, onDone }: { pot: Pot; onDone: () => void }) {
  const { book, view, wrote } = useHousehold()
  const { currency } = book.household
  const saved = async (): Promise<void> => {
    onDone()
    await wrote(book.length, {
      said: t('pot_saved', { pot: pot.name }),
      back: () => ask('pot.save', { id: newEntryId(), pot: asSaved(pot, currency), archived: pot.archived }),
    })
  }
  return <PotForm view={view} pot={pot} onLook={() => void saved()} onCancel={onDone} />
}

function asSaved(pot: Pot, currency: CurrencyCode): NewPot {
  const text = (minor: number): string => toDecimal(ofMinor(currency, minor))
  const { id, name, kind, rule, sides } = pot
  return {
    id,
    name,
    kind,
    rule,
    sides,
    floor: text(pot.floor),
    fillCash: text(pot.fill.cash),
    fillCard: text(pot.fill.card),
    openCash: '0',
    openCard: '0',
  }
}

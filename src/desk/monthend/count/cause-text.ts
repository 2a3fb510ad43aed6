import { findEntry } from '../../../book/book.ts'
import type { EntryId } from '../../../book/ids.ts'
import type { CountCause } from '../../../monthend/count-causes.ts'
import { amountText } from '../../../ui/money-text.ts'
import { sayEntry } from '../../../ui/say-entry.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { t, tn } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'

/** Says a likely cause of a difference in words, with the entry it is about. */
export function useCauseText(): (cause: CountCause) => string {
  const { book } = useHousehold()
  const said = (id: EntryId): string => {
    const entry = findEntry(book, id)
    return entry ? `${shortDate(entry.date)}: ${sayEntry(book.household, entry)}` : ''
  }
  return (cause) => {
    switch (cause.code) {
      case 'other-pot': {
        const pot = book.household.pots.find((p) => p.id === cause.pot)?.name ?? cause.pot
        return t('cause_other_pot', { pot, amount: amountText(cause.amount) })
      }
      case 'entered-twice':
        return t('cause_entered_twice', { entry: said(cause.entries[1]) })
      case 'swapped-digits':
      case 'slipped-point':
        return t(cause.code === 'swapped-digits' ? 'cause_swapped_digits' : 'cause_slipped_point', {
          entry: said(cause.entry),
          wrote: amountText(cause.wrote),
          meant: amountText(cause.meant),
        })
      case 'other-side':
        return t('cause_other_side', { entry: said(cause.entry) })
      case 'fill-not-put-in':
        return t('cause_fill_not_put_in', { entry: said(cause.entry) })
      case 'forgotten-spend':
        return tn('cause_forgotten_spend', cause.times, {
          purpose: cause.purpose || t('cause_no_purpose'),
          amount: amountText(cause.amount),
        })
      case 'one-piece':
        return t('cause_one_piece', { piece: amountText(cause.denomination) })
      case 'divisible-by-nine':
        return t('cause_divisible_by_nine')
    }
  }
}

import type { Book } from '../../../book/book.ts'
import { entriesOf } from '../../../book/book.ts'
import type { Entry } from '../../../book/entry.ts'
import type { OrderId } from '../../../book/ids.ts'
import { t } from '../../../ui/text.ts'

/** What a line of a sheet was for, in a word or two: what was bought, the shop, or what was done. */
export function sheetPurpose(book: Book, entry: Entry): string {
  switch (entry.kind) {
    case 'spend':
      return entry.purpose || t('sheet_spent')
    case 'order':
      return t('sheet_ordered', { shop: entry.shop })
    case 'adjust':
      return t('sheet_adjusted', { shop: shopOf(book, entry.order) })
    case 'charge':
      return t('sheet_charged', { shop: shopOf(book, entry.order) })
    case 'release':
      return t('sheet_released', { shop: shopOf(book, entry.order) })
    case 'refund':
      return t('sheet_refunded', { shop: shopOf(book, entry.order) })
    case 'opening':
      return t('sheet_opening')
    case 'fill':
      return entry.note ?? t('sheet_filled')
    case 'count':
      return t('sheet_counted')
    case 'settle':
      return t('sheet_settled')
    case 'sweep':
      return t('sheet_swept')
    case 'reversal':
      return t('sheet_taken_back')
    default:
      return entry.note ?? t('sheet_other')
  }
}

function shopOf(book: Book, order: OrderId): string {
  for (const entry of entriesOf(book)) if (entry.kind === 'order' && entry.order === order) return entry.shop
  return ''
}

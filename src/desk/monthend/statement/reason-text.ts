import { formatMoney } from '../../../money/format.ts'
import { negate } from '../../../money/money.ts'
import type { MatchReason } from '../../../monthend/match-types.ts'
import { locale } from '../../../ui/browser.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t, tn } from '../../../ui/text.ts'

/** One reason of a match in words: "2 days after the order". */
export function reasonText(reason: MatchReason): string {
  switch (reason.code) {
    case 'same-amount':
      return t('match_same_amount')
    case 'other-amount':
      return reason.by.minor < 0
        ? t('match_more', { by: amountText(negate(reason.by)) })
        : t('match_less', { by: amountText(reason.by) })
    case 'within-margin':
      return t('match_within_margin', { by: amountText(reason.by) })
    case 'foreign-amount':
      return t('match_foreign', { amount: formatMoney(reason.amount, locale()) })
    case 'within-rate':
      return t('match_within_rate', { by: amountText(reason.by) })
    case 'part-of':
      return t('match_part_of', { of: amountText(reason.of) })
    case 'expected-refund':
      return t('match_expected_refund')
    case 'sum-of-lines':
      return tn('match_sum_of_lines', reason.count)
    case 'sum-of-orders':
      return tn('match_sum_of_orders', reason.count)
    case 'sum-of-entries':
      return tn('match_sum_of_entries', reason.count)
    case 'days':
      if (reason.days === 0) return t('match_same_day')
      return reason.days > 0 ? tn('match_days_after', reason.days) : tn('match_days_before', -reason.days)
    case 'name':
      if (reason.likeness >= 95) return t('match_name')
      return reason.likeness >= 45 ? t('match_name_shortened') : t('match_name_other')
    case 'order-number':
      return t('match_order_number', { number: reason.number })
    case 'bank-says':
      return t('match_bank_says')
    case 'opposite-line':
      return t('match_opposite_line')
    case 'several-ways':
      return t('match_several_ways')
    case 'could-be-other':
      return t('match_could_be_other')
    case 'was-cancelled':
      return t('match_was_cancelled')
    case 'replaces-line':
      return t('match_replaces_line')
  }
}

import { formatAmount, formatMoney } from '../money/format.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { calendarDate, isCalendarDate, sayDate } from './calendar-date.ts'
import { findPot, type Household } from './household.ts'
import type { StoryCode, StoryLine } from './order-story.ts'
import { englishSpeech, fillIn, type SentenceKey, type Speech } from './say.ts'
import { sayList } from './set-apart.ts'

const SENTENCE: Record<StoryCode, SentenceKey> = {
  tagged: 'story_tagged',
  adjusted: 'story_adjusted',
  'split-item': 'story_split_item',
  'split-amount': 'story_split_amount',
  'split-share': 'story_split_share',
  abroad: 'story_abroad',
  estimate: 'story_estimate',
  'gift-card': 'story_gift_card',
  'instalments-whole': 'story_instalments_whole',
  'instalments-by-part': 'story_instalments_by_part',
  renewal: 'story_renewal',
  'went-on': 'story_went_on',
  confirmed: 'story_confirmed',
  'confirmed-page': 'story_confirmed_page',
  'confirmed-number': 'story_confirmed_number',
  'confirmed-total': 'story_confirmed_total',
  'part-held': 'story_part_held',
  charged: 'story_charged',
  'charged-above': 'story_charged_above',
  'charged-abroad': 'story_charged_abroad_same',
  completed: 'story_completed',
  lapsed: 'story_lapsed',
  'not-placed': 'story_not_placed',
  cancelled: 'story_cancelled',
  released: 'story_released',
  'refund-expected': 'story_refund_expected',
  refunded: 'story_refunded',
  'taken-back': 'story_taken_back',
}

/**
 * A line of an order's story as one or two plain sentences; its day is told beside it, not in it. A step that happened in
 * a closed month says so.
 *
 * @example "The card charged 31.20: Groceries 18.90, Household things 12.30."
 */
export function sayStory(household: Household, line: StoryLine, speech: Speech = englishSpeech): string {
  const said = fillIn(speech.sentence(keyOf(household, line)), {
    amount: amountText(household, line.amount, speech),
    other: line.other ? amountText(household, size(line.other), speech) : '',
    lines: linesText(household, line, speech),
    text: isDays(line) ? daysText(line.text, speech) : line.text,
  })
  if (!line.happened) return said
  const late = fillIn(speech.sentence('story_late'), { date: sayDate(line.happened, speech.locale) })
  return `${said} ${late}`
}

function keyOf(household: Household, line: StoryLine): SentenceKey {
  if (line.code === 'charged-abroad' && line.other && line.other.minor !== 0) {
    return line.other.minor > 0 ? 'story_charged_abroad_more' : 'story_charged_abroad_less'
  }
  if (line.code === 'completed' && line.amount.minor === 0) return 'story_completed_nothing'
  const isOnePot = new Set(line.lines.map((l) => l.pot)).size < 2
  if (line.code === 'tagged' && household.pots.length > 0 && isOnePot) return 'story_tagged_one'
  return SENTENCE[line.code]
}

function isDays(line: StoryLine): boolean {
  return line.code === 'renewal' || line.code.startsWith('instalments-')
}

/** "Groceries 18.90 and Household things 12.30"; of one pot the name alone, for its amount was said. */
function linesText(household: Household, line: StoryLine, speech: Speech): string {
  const used = line.lines.filter((l) => l.amount !== 0)
  const parts = used.map(({ pot, amount }) => {
    const { name } = findPot(household, pot)
    return used.length === 1 ? name : `${name} ${formatAmount(ofMinor(household.currency, amount), speech.locale)}`
  })
  return sayList(parts, speech.locale)
}

function daysText(days: string, speech: Speech): string {
  const said = days
    .split(' ')
    .filter(isCalendarDate)
    .map((day) => sayDate(calendarDate(day), speech.locale))
  return sayList(said, speech.locale)
}

/** The household's own currency goes without its sign, another one is named. */
function amountText(household: Household, m: Money, speech: Speech): string {
  return m.currency === household.currency ? formatAmount(m, speech.locale) : formatMoney(m, speech.locale)
}

function size(m: Money): Money {
  return ofMinor(m.currency, Math.abs(m.minor))
}

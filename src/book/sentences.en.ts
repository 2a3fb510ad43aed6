/**
 * The sentences a verdict is told in, in English. `{names}` are filled in by `sayReason`; the extension's build puts these
 * texts among its messages, where translators find them.
 */
export const englishSentences = {
  reason_state: '{pot} has {left} left: {cash} cash, {card} card, {held} held.',
  reason_fits: 'This order of {amount} leaves {after}.',
  reason_uses_notes:
    'This order of {amount} fits by using notes: {notes} in the envelope become spoken for. It leaves {after}.',
  reason_below_floor: 'This order of {amount} leaves {after}, which is {short} under the floor of {floor}.',
  reason_below_zero: 'This order of {amount} is {short} too much.',
  reason_cash_only: '{pot} is kept in notes only, so it cannot pay for an online order.',
  reason_next_fill: 'Next fill: {date}, {amount}.',
} as const

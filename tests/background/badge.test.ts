import { describe, expect, it, vi } from 'vitest'
import { money } from '../../src/index.ts'

vi.mock('webextension-polyfill', () => ({ default: {} }))
const { badgeText } = await import('../../src/background/badge.ts')

describe('the badge', () => {
  it.each([
    ['41.20', '41'],
    ['0.99', '0'],
    ['-0.01', '-1'],
    ['-120.00', '-120'],
    ['999.99', '999'],
    ['1234.00', '1.2k'],
    ['9999.99', '9.9k'],
    ['-4321.00', '-5k'],
    ['15000.00', '15k'],
    ['250000.00', '99k+'],
  ])('shows %s left as %s, never more than there is, in at most four characters', (left, text) => {
    expect(badgeText(money('CAD', left))).toBe(text)
    expect(text.length).toBeLessThanOrEqual(4)
  })

  it('knows currencies without a minor unit', () => expect(badgeText(money('JPY', '980'))).toBe('980'))
})

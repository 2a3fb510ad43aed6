import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const css = readFileSync(new URL('../../src/ui/tokens.css', import.meta.url), 'utf8')
const [light = '', dark = ''] = css.split('@media (prefers-color-scheme: dark)')

function colours(part: string): Map<string, string> {
  return new Map([...part.matchAll(/--([\w-]+): (#[0-9a-f]{6})/g)].map(([, name = '', value = '']) => [name, value]))
}

// Source: WCAG 2.2, "relative luminance" and "contrast ratio".
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

function contrast(a: string, b: string): number {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (high + 0.05) / (low + 0.05)
}

const GROUNDS = ['paper', 'raised', 'sunk']
const TEXT = [
  ...['ink', 'ink-soft', 'notes-ink', 'card-ink', 'stop', 'warn'].flatMap((ink) => GROUNDS.map((g) => [ink, g])),
  ...['stop', 'warn', 'fits'].flatMap((kind) => [
    [kind, `${kind}-ground`],
    ['ink', `${kind}-ground`],
  ]),
  ['on-press', 'press'],
  ['on-press', 'press-over'],
  ['paper', 'ink'],
]
/** Borders of fields, the ring around what has the keyboard, and the two sides of a bar. */
const SHAPES = [
  ...GROUNDS.flatMap((g) => [
    ['line-strong', g],
    ['focus', g],
  ]),
  ['card', 'sunk'],
  ['notes-line', 'notes'],
]

describe.each([
  ['light', colours(light)],
  ['dark', new Map([...colours(light), ...colours(dark)])],
])('the %s colours', (_, tokens) => {
  const ratio = (a = '', b = ''): number => {
    const [first, second] = [tokens.get(a), tokens.get(b)]
    if (!first || !second) throw new Error(`No colour for ${a} or ${b}.`)
    return contrast(first, second)
  }

  it('text is read on its ground (WCAG 1.4.3: 4.5 to 1)', () => {
    const weak = TEXT.filter(([a, b]) => ratio(a, b) < 4.5).map(([a, b]) => `${a} on ${b}: ${ratio(a, b).toFixed(2)}`)
    expect(weak).toEqual([])
  })

  it('shapes that carry meaning stand out (WCAG 1.4.11: 3 to 1), the line work of notes a little less', () => {
    const weak = SHAPES.filter(([a, b]) => ratio(a, b) < (a === 'notes-line' ? 1.8 : 3))
    expect(weak.map(([a, b]) => `${a} on ${b}: ${ratio(a, b).toFixed(2)}`)).toEqual([])
  })
})

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const css = readFileSync(new URL('../../src/ui/tokens.css', import.meta.url), 'utf8')

/** The colours that one block of `tokens.css` sets, by name. */
function colours(condition: string): [string, string][] {
  const start = css.indexOf(condition)
  const block = css.slice(start, css.indexOf('@media', start + condition.length))
  if (start < 0 || !block.includes('--')) throw new Error(`tokens.css has no block for ${condition}`)
  return [...block.matchAll(/--([\w-]+): (#[0-9a-f]{6})\b/g)].map(([, name = '', value = '']) => [name, value])
}

const LIGHT = colours('color-scheme: light dark')
const DARK = [...LIGHT, ...colours('@media (prefers-color-scheme: dark)')]
const MORE = '@media (prefers-contrast: more) {'
const MORE_DARK = '@media (prefers-contrast: more) and (prefers-color-scheme: dark)'
const SCHEMES: readonly [string, ReadonlyMap<string, string>, { text: number }][] = [
  ['light', new Map(LIGHT), { text: 4.5 }],
  ['dark', new Map(DARK), { text: 4.5 }],
  ['light, more contrast', new Map([...LIGHT, ...colours(MORE)]), { text: 7 }],
  ['dark, more contrast', new Map([...DARK, ...colours(MORE), ...colours(MORE_DARK)]), { text: 7 }],
]

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
const INKS = ['ink', 'ink-soft', 'notes-ink', 'card-ink', 'stop', 'warn', 'fits']
/** Everything that is written, on everything it is written on. */
const TEXT: readonly (readonly [string, string])[] = [
  ...INKS.flatMap((ink) => GROUNDS.map((ground) => [ink, ground] as const)),
  ...['stop', 'warn', 'fits'].flatMap((kind) =>
    [kind, 'ink', 'ink-soft'].map((ink) => [ink, `${kind}-ground`] as const),
  ),
  ['on-press', 'press'],
  ['on-press', 'press-over'],
  ['paper', 'ink'],
]
/** The edges of fields, the ring around what has the keyboard, and what the parts of a bar are told apart by. */
const SHAPES: readonly (readonly [string, string])[] = [
  ...GROUNDS.flatMap((ground) =>
    ['line-strong', 'focus', 'card', 'notes-line', 'card-line', 'held-line', 'left', 'stop', 'warn'].map(
      (shape) => [shape, ground] as const,
    ),
  ),
  ['notes-line', 'notes'],
  ['held-line', 'held-ground'],
  ['spoken-line', 'notes'],
  ['stop', 'stop-ground'],
  ['press', 'paper'],
]
/** Not written with, not drawn with where it matters: they are only ever grounds or quiet lines. */
const NEVER_ALONE = ['line', ...GROUNDS, 'notes', 'held-ground', 'stop-ground', 'warn-ground', 'fits-ground']

describe.each(SCHEMES)('the colours, %s', (_, tokens, least) => {
  const weakerThan = (pairs: readonly (readonly [string, string])[], ratio: number): string[] =>
    pairs.flatMap(([a, b]) => {
      const [first, second] = [tokens.get(a), tokens.get(b)]
      if (!first || !second) throw new Error(`No colour for ${a} or ${b}.`)
      const found = contrast(first, second)
      return found < ratio ? [`${a} on ${b}: ${found.toFixed(2)}`] : []
    })

  it('text is read on its ground (WCAG 2.2: 1.4.3 asks 4.5 to 1, 1.4.6 asks 7 to 1)', () => {
    expect(weakerThan(TEXT, least.text)).toEqual([])
  })

  it('shapes that carry meaning stand out (WCAG 2.2, 1.4.11: 3 to 1)', () => {
    expect(weakerThan(SHAPES, 3)).toEqual([])
  })

  it('no colour is left unmeasured', () => {
    const measured = new Set([...[...TEXT, ...SHAPES].flat(), ...NEVER_ALONE])
    expect([...tokens.keys()].filter((name) => !measured.has(name))).toEqual([])
  })
})

describe('the system’s own colours', () => {
  it('stand for every colour there is, so that nothing drawn vanishes', () => {
    const start = css.indexOf('@media (forced-colors: active)')
    const block = css.slice(start, css.indexOf('@media', start + 1))
    const forced = [...block.matchAll(/--([\w-]+): [A-Z]\w+;/g)].map((m) => m[1])
    expect(LIGHT.map(([name]) => name).filter((name) => !forced.includes(name))).toEqual([])
  })
})

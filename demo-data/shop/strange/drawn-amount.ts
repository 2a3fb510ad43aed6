import { type Html, markup } from '../html.ts'

// The strokes of one figure on a 20 by 36 ground, as on an old till: top, upper sides, middle, lower sides, bottom.
const STROKES: Readonly<Record<string, string>> = {
  '0': 'M3 3h14v30H3z',
  '1': 'M10 3v30',
  '2': 'M3 3h14v15H3v15h14',
  '3': 'M3 3h14v30H3M6 18h11',
  '4': 'M3 3v15h14M17 3v30',
  '5': 'M17 3H3v15h14v15H3',
  '6': 'M17 3H3v30h14V18H3',
  '7': 'M3 3h14v30',
  '8': 'M3 3h14v30H3zM3 18h14',
  '9': 'M17 18H3V3h14v30H3',
  '.': 'M3 32v1.500',
  $: 'M17 7H3v11h14v11H3M10 1v34',
}

/** An amount drawn as strokes: people can read it, a program that reads text cannot. */
export function drawnAmount(amount: string): Html {
  let x = 4
  const figures = [...amount].map((sign) => {
    const figure = `<path d="${STROKES[sign] ?? ''}" transform="translate(${x} 4)"/>`
    x += sign === '.' ? 12 : 28
    return figure
  })
  return markup(
    `<svg class="drawn-total" viewBox="0 0 ${x} 44" fill="none" stroke="#1f3d29" stroke-width="4" stroke-linejoin="round" stroke-linecap="round" aria-hidden="true">${figures.join('')}</svg>`,
  )
}

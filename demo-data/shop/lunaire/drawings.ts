import { type Html, markup } from '../html.ts'

// Our own drawings, each on a 96 by 96 ground: ink lines, one wash of colour.
const SHAPES: readonly (readonly [id: string, shapes: string])[] = [
  [
    'carte',
    '<path d="M22 14h52v68H22z" fill="#fff"/><path d="M28 20h40v44H28z" fill="#1f2547"/><circle cx="48" cy="40" r="13" fill="#d9a35f" stroke="none"/><path d="M28 58c10-8 16 2 24-3s10-4 16-2v11H28z" fill="#3d4678"/><path d="M34 72h28"/>',
  ],
  [
    'carnet',
    '<path d="M26 12h46v72H26z" fill="#5b6496"/><path d="M26 12h9v72h-9z" fill="#3d4678"/><path d="M72 18h4v68H32"/><path d="M44 28h20v14H44z" fill="#f7f3e6"/><path d="M48 35h12"/><path d="M62 84v8l-3-3-3 3v-8" fill="#d9a35f"/>',
  ],
  [
    'papier',
    '<path d="M18 22h48v62H18z" fill="#e7e1cf"/><path d="M26 14h48v62H26z" fill="#fffdf6"/><path d="M34 28h32M34 36h32M34 44h32M34 52h20" stroke="#8d93b8"/><path d="M34 66h12" stroke="#d9a35f" stroke-width="3"/>',
  ],
  [
    'enveloppes',
    '<path d="M16 34h64v44H16z" fill="#fffdf6"/><path d="m16 34 32-22 32 22-32 24z" fill="#3d4678"/><path d="M16 78l26-24M80 78 54 54M16 34l32 26 32-26"/><circle cx="48" cy="58" r="6" fill="#d9a35f"/>',
  ],
  [
    'encre',
    '<path d="M36 22h24v12H36z" fill="#1f2547"/><path d="M38 34h20v8c14 4 18 12 18 22v18H20V64c0-10 4-18 18-22z" fill="#c9d0ea"/><path d="M20 62c14-6 18 6 30 1s16-2 26 0v19H20z" fill="#2c3568"/><path d="M36 66h24v10H36z" fill="#f7f3e6"/>',
  ],
  [
    'cire',
    '<g fill="#e0c58a"><path d="M18 18h10v50H18zM32 14h10v50H32zM46 20h10v50H46z"/></g><circle cx="68" cy="70" r="16" fill="#d9a35f"/><path d="M72 60a11 11 0 1 0 5 15 9 9 0 0 1-5-15z" fill="#f3dfb0"/>',
  ],
  [
    'plume',
    '<path d="M78 12 40 50l8 8 38-38z" fill="#f3ecd8"/><path d="M62 28l8 8" stroke="#d9a35f" stroke-width="4"/><path d="m40 50 8 8-8 10-18 8 8-18z" fill="#d9a35f"/><path d="M22 76l14-14"/><path d="M14 86c14-8 20 6 34-1s20-4 34-1" stroke="#2c3568"/>',
  ],
  [
    'secretaire',
    '<path d="M14 46 30 18h52l-12 28z" fill="#a8713f"/><path d="M14 46h56v34H14z" fill="#8a5a30"/><path d="m70 46 12-28v34L70 80z" fill="#6d4522"/><path d="M14 62h56"/><circle cx="42" cy="54" r="3" fill="#e9d49a"/><circle cx="42" cy="71" r="3" fill="#e9d49a"/><path d="M36 28h34l-5 12H30z" fill="#2f5a52"/>',
  ],
]

/** The drawing of each product, by its id. */
export const drawings: readonly { readonly id: string; readonly svg: Html }[] = SHAPES.map(([id, shapes]) => ({
  id,
  svg: markup(
    `<svg viewBox="0 0 96 96" aria-hidden="true" fill="none" stroke="#1f2547" stroke-width="1.6" stroke-linejoin="round" stroke-linecap="round">${shapes}</svg>`,
  ),
}))

import { type Html, markup } from '../html.ts'

interface Cover {
  readonly ground: string
  readonly ink: string
  readonly lines: readonly string[]
  readonly by: string
  /** The picture, on the upper 120 by 104 of a 120 by 160 sheet. */
  readonly shapes: string
}

const COVERS: Readonly<Record<string, Cover>> = {
  'heron-waltz': {
    ground: '#dfe9e6',
    ink: '#17323a',
    lines: ['Heron', 'Waltz'],
    by: 'Ravndal',
    shapes:
      '<circle cx="82" cy="36" r="20" fill="#e8b931"/><path d="M30 104V66c0-14 16-18 16-34 0-8-8-10-12-4l-16 6M46 40c4 22 20 18 22 38-12 6-26 2-36-4M40 80v24" fill="none" stroke="#17323a" stroke-width="4" stroke-linecap="round" stroke-linejoin="round"/><path d="M4 98h112M4 104h112" stroke="#2a7f78" stroke-width="2"/>',
  },
  'evening-piano': {
    ground: '#1c2a45',
    ink: '#f6efe0',
    lines: ['The Evening', 'Piano Book'],
    by: 'Vance',
    shapes:
      '<circle cx="60" cy="46" r="30" fill="#f0a24b"/><path d="M0 48h120v2H0zM0 56h120v4H0zM0 65h120v5H0zM0 74h120v30H0z" fill="#1c2a45"/><path d="M6 84h108v20H6z" fill="#f6efe0"/><path d="M17 84v20M28 84v20M39 84v20M50 84v20M61 84v20M72 84v20M83 84v20M94 84v20M105 84v20" stroke="#1c2a45"/><path d="M14 84h6v12h-6zM25 84h6v12h-6zM47 84h6v12h-6zM58 84h6v12h-6zM69 84h6v12h-6zM91 84h6v12h-6zM102 84h6v12h-6z" fill="#1c2a45"/>',
  },
  'left-hand': {
    ground: '#c8553d',
    ink: '#fff4e6',
    lines: ['Studies for the', 'Left Hand'],
    by: 'Okonjo',
    shapes:
      '<path d="M44 100V62L30 48c-6-7 3-14 9-8l9 9V20c0-8 11-8 11 0v24-30c0-8 11-8 11 0v30-25c0-8 11-8 11 0v29-18c0-7 10-7 10 0v40c0 12-6 18-10 20v10z" fill="#fff4e6"/><path d="M8 22h14M8 30h14M8 38h14M8 46h14M8 54h14" stroke="#7c2c1c" stroke-width="2"/>',
  },
  'reed-duets': {
    ground: '#eadfc6',
    ink: '#3a2c1c',
    lines: ['Ten Reed', 'Duets'],
    by: 'Orlow',
    shapes:
      '<g stroke-linecap="round"><path d="M38 12v86" stroke="#3a2c1c" stroke-width="11"/><path d="M82 12v86" stroke="#2a7f78" stroke-width="11"/></g><path d="M28 100h20l5 6H23zM72 100h20l5 6H67z" fill="#3a2c1c"/><g fill="#eadfc6"><circle cx="38" cy="40" r="3"/><circle cx="38" cy="52" r="3"/><circle cx="38" cy="64" r="3"/><circle cx="38" cy="76" r="3"/><circle cx="82" cy="34" r="3"/><circle cx="82" cy="46" r="3"/><circle cx="82" cy="58" r="3"/><circle cx="82" cy="82" r="3"/></g>',
  },
  'night-ferry': {
    ground: '#10242b',
    ink: '#d8ecec',
    lines: ['Night Ferry'],
    by: 'Ravndal',
    shapes:
      '<circle cx="92" cy="24" r="9" fill="#d8ecec"/><path d="M24 66h72l-10 16H34z" fill="#c8553d"/><path d="M40 54h40v12H40zM52 44h16v10H52z" fill="#d8ecec"/><g fill="#e8b931"><circle cx="47" cy="60" r="2"/><circle cx="57" cy="60" r="2"/><circle cx="67" cy="60" r="2"/></g><path d="M0 86c10-6 20 6 30 0s20 6 30 0 20 6 30 0 20 6 30 0M0 94c10-6 20 6 30 0s20 6 30 0 20 6 30 0 20 6 30 0M0 102c10-6 20 6 30 0s20 6 30 0 20 6 30 0 20 6 30 0" fill="none" stroke="#2a7f78" stroke-width="2"/>',
  },
  manuscript: {
    ground: '#ffffff',
    ink: '#14171a',
    lines: ['Manuscript', 'Paper'],
    by: 'Twelve staves',
    shapes:
      '<path d="M12 16h96M12 20h96M12 24h96M12 28h96M12 32h96M12 46h96M12 50h96M12 54h96M12 58h96M12 62h96M12 76h96M12 80h96M12 84h96M12 88h96M12 92h96" stroke="#9aa3a8" stroke-width=".8"/>',
  },
  'winter-choir': {
    ground: '#cfd9ea',
    ink: '#22304d',
    lines: ['Winter Choir'],
    by: 'Okonjo',
    shapes:
      '<path d="M18 100V58a14 14 0 0 1 28 0v42zM46 100V42a14 14 0 0 1 28 0v58zM74 100V58a14 14 0 0 1 28 0v42z" fill="#22304d"/><circle cx="32" cy="60" r="9" fill="#f1d3b8"/><path d="M27 58q1.500-2 3 0M34 58q1.500-2 3 0" stroke="#22304d" fill="none" stroke-linecap="round"/><ellipse cx="32" cy="64" rx="2" ry="2.500" fill="#8e3b2b"/><path d="M24 84h16v-9l-8 3-8-3z" fill="#fff"/><circle cx="60" cy="44" r="9" fill="#f1d3b8"/><path d="M55 42q1.500-2 3 0M62 42q1.500-2 3 0" stroke="#22304d" fill="none" stroke-linecap="round"/><ellipse cx="60" cy="48" rx="2" ry="2.500" fill="#8e3b2b"/><path d="M52 68h16v-9l-8 3-8-3z" fill="#fff"/><circle cx="88" cy="60" r="9" fill="#f1d3b8"/><path d="M83 58q1.500-2 3 0M90 58q1.500-2 3 0" stroke="#22304d" fill="none" stroke-linecap="round"/><ellipse cx="88" cy="64" rx="2" ry="2.500" fill="#8e3b2b"/><path d="M80 84h16v-9l-8 3-8-3z" fill="#fff"/><g fill="#fff"><circle cx="16" cy="20" r="2"/><circle cx="36" cy="30" r="2"/><circle cx="86" cy="26" r="2"/><circle cx="104" cy="14" r="2"/><circle cx="58" cy="12" r="2"/></g>',
  },
  'chamber-works': {
    ground: '#e8b931',
    ink: '#14171a',
    lines: ['Complete', 'Chamber Works'],
    by: 'Vance',
    shapes:
      '<g fill="#14171a"><path d="M12 18h6v80h-6zM28 18h6v80h-6zM44 18h6v80h-6zM60 18h6v80h-6zM76 18h6v80h-6zM92 18h6v80h-6z"/></g><g fill="#fff8e0"><path d="M20 18h6v80h-6zM36 18h6v80h-6zM52 18h6v80h-6zM68 18h6v80h-6zM84 18h6v80h-6zM100 18h6v80h-6z"/></g><circle cx="60" cy="58" r="18" fill="#c8553d"/>',
  },
}

/** The cover of a score, drawn by us; nothing for an unknown one. Its words stand beside it too, so it is hidden from readers. */
export function cover(id: string): Html {
  const design = COVERS[id]
  if (design === undefined) return markup('')
  const { ground, ink, lines, by, shapes } = design
  const first = lines.length === 1 ? 130 : 124
  const title = lines.map((line, index) => `<text x="10" y="${first + index * 14}">${line}</text>`).join('')
  return markup(
    `<svg class="cover" viewBox="0 0 120 160" aria-hidden="true"><path d="M0 0h120v160H0z" fill="${ground}"/>${shapes}<g fill="${ink}" font-family="Helvetica Neue, Arial, Liberation Sans, sans-serif" font-size="13" font-weight="700">${title}</g><text x="10" y="152" fill="${ink}" font-family="Arial, Liberation Sans, sans-serif" font-size="7.500">${by}</text></svg>`,
  )
}

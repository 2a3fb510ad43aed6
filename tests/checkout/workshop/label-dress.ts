/** What shops hang on a label: signs, counts, capitals, a mark for a footnote or a help button. */
export interface Dress {
  readonly name: string
  readonly dress: (label: string, lang: string) => string
}

const bare = (label: string): string => label.replace(/[\s:：]+$/u, '')

/** Labels are markup here, already escaped. The last one is kept for the unseen half. */
export const dresses: readonly Dress[] = [
  { name: 'as it is', dress: (label) => label },
  { name: 'with a colon', dress: (label) => (/[:：)]$/u.test(label) ? label : `${label}:`) },
  { name: 'a spaced colon', dress: (label) => `${bare(label)} :` },
  // Entities must stay as they are.
  { name: 'in capitals', dress: (label, lang) => (label.includes('&') ? label : label.toLocaleUpperCase(lang)) },
  { name: 'a help button', dress: (label) => `${label} <button type="button" aria-label="?">?</button>` },
  { name: 'a footnote', dress: (label) => `${label}<sup>1</sup>` },
  { name: 'an asterisk', dress: (label) => `${bare(label)}*` },
  { name: 'a picture before', dress: (label) => `<svg width="8"><title>i</title></svg> <span>${label}</span>` },
]

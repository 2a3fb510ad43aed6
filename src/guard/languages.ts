import { pageLanguages } from './page-languages.ts'

/* Brought into a page before the reader, to learn which lexicons the reader needs there. */

declare global {
  var tillsideLanguages: string[] | undefined
}

globalThis.tillsideLanguages = pageLanguages(document)

/** Languages whose words are kept in another one's lexicon. */
export const KEPT_WITH: Readonly<Record<string, string>> = { no: 'nb', nn: 'nb', ms: 'id', sr: 'hr', bs: 'hr' }

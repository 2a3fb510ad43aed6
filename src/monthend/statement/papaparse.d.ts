/** The part of papaparse that is used here. Its own types need Node's, which the engine rooms must not know. */
declare module 'papaparse' {
  interface ParserConfig {
    readonly delimiter: string
    readonly newline: '\n'
    readonly quoteChar: string
    readonly fastMode?: boolean
  }
  interface ParseError {
    readonly code: string
    /** Index of the row within what was parsed. */
    readonly row: number
  }
  class Parser {
    constructor(config: ParserConfig)
    parse(text: string, baseIndex: number, ignoreLastRow: boolean): { data: string[][]; errors: ParseError[] }
  }
  const papa: {
    readonly Parser: typeof Parser
    /** Rows as RFC 4180 text, quoted where they must be. */
    unparse(
      rows: readonly (readonly string[])[],
      config: { readonly newline: string; readonly quotes: readonly boolean[] },
    ): string
  }
  export default papa
}

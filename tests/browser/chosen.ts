import type { BrowserName } from './both.ts'

/**
 * The rows of a table to try in a browser: all in Chromium; in Firefox those named, or all of them with `TILLSIDE_BOTH=all`.
 */
export function chosen<T>(
  browser: BrowserName,
  table: Readonly<Record<string, T>>,
  inFirefox: readonly string[],
): [string, T][] {
  const rows = Object.entries(table)
  if (browser === 'Chromium' || process.env.TILLSIDE_BOTH === 'all') return rows
  return inFirefox.map((name) => {
    const row = rows.find(([each]) => each === name)
    if (!row) throw new Error(`the table has no row "${name}"`)
    return row
  })
}

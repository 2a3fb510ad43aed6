import type { BrowserName } from './both.ts'

/** Which rows of a table `npm test` tries; `npm run both` tries every row in both browsers. */
export interface Choice {
  /** In Chromium all but these: each has a near twin that stays. */
  readonly notInChromium: readonly string[]
  /** In Firefox these: what the engines do each in their own way. */
  readonly inFirefox: readonly string[]
}

/**
 * The rows of a table to try in a browser: those chosen, or with `TILLSIDE_BOTH=all` every one.
 *
 * @throws Error when a row is chosen that the table does not have
 */
export function chosen<T>(browser: BrowserName, table: Readonly<Record<string, T>>, choice: Choice): [string, T][] {
  for (const name of [...choice.notInChromium, ...choice.inFirefox]) {
    if (!Object.hasOwn(table, name)) throw new Error(`the table has no row "${name}"`)
  }
  const rows = Object.entries(table)
  if (process.env.TILLSIDE_BOTH === 'all') return rows
  return rows.filter(([name]) =>
    browser === 'Chromium' ? !choice.notInChromium.includes(name) : choice.inFirefox.includes(name),
  )
}

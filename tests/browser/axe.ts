import axe from 'axe-core'
import type { Page } from 'playwright-core'

const RULES = {
  all: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
  /** What alone can differ between light and dark: 1.4.3 Contrast, 1.4.1 Use of Color. */
  colours: ['color-contrast', 'link-in-text-block'],
} as const

/** What axe-core, the public reference of the machine-checkable part of WCAG 2.2, finds wrong on a page, rule by rule. */
export async function axeFaults(page: Page, which: keyof typeof RULES = 'all'): Promise<string[]> {
  await page.evaluate(`typeof axe === 'undefined' && (() => { ${axe.source} })()`)
  return page.evaluate<string[]>(
    `axe.run(document, { runOnly: ${JSON.stringify(RULES[which])} }).then((found) =>
      found.violations.map((v) => v.id + ': ' + v.nodes.map((n) => n.target.join(' ')).join(', ')))`,
  )
}

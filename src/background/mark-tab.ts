import browser from 'webextension-polyfill'
import type {} from '../guard/mark-global.ts'
import type { FigurePlace, OwnCommands } from './protocol.ts'

/**
 * Brings a tab's page to where a figure was read, and marks the place for a moment; with null takes the mark away. The page
 * itself is told nothing: what is said stays among our own scripts. Not found where the page has changed meanwhile, or may
 * not be read any more.
 */
export async function markInTab(
  tab: number,
  figure: FigurePlace | null,
): Promise<OwnCommands['checkout.mark']['answer']> {
  const target = { tabId: tab }
  try {
    if (figure) await browser.scripting.executeScript({ target, files: ['mark.js'] })
    const [said] = await browser.scripting.executeScript({
      target,
      func: (place: FigurePlace | null) =>
        typeof globalThis.tillsideMark === 'function' && globalThis.tillsideMark(place),
      args: [figure],
    })
    return { isFound: said?.result === true }
  } catch {
    return { isFound: false }
  }
}

import { mkdir } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'

const folder = fileURLToPath(new URL('../../shots', import.meta.url))

/** Leaves a picture of a page in `shots/` (not committed), once its fonts and pictures are there. */
export async function picture(page: Page, name: string): Promise<string> {
  await mkdir(folder, { recursive: true })
  await page.evaluate(() => document.fonts.ready)
  const path = `${folder}/${name}.png`
  await page.screenshot({ path })
  return path
}

// npm run icons: draws the PNG icons from src/ui/icons/sign.svg with the machine's Chromium. Run it after changing the
// drawing.

import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { ensureChromium } from './set-up.mjs'

const SIZES = [16, 32, 48, 128]
const here = (name) => fileURLToPath(new URL(`../src/ui/icons/${name}`, import.meta.url))
const svg = await readFile(here('sign.svg'), 'utf8')

const browser = await chromium.launch({
  executablePath: ensureChromium(),
  args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
})
try {
  for (const size of SIZES) {
    const page = await browser.newPage({ viewport: { width: size, height: size } })
    await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`)
    await page.screenshot({ path: here(`${size}.png`), omitBackground: true })
    await page.close()
  }
} finally {
  await browser.close()
}

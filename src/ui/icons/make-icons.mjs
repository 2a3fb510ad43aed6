// Draws the PNG icons from sign.svg with the machine's Chromium. Run after changing the drawing:
// node src/ui/icons/make-icons.mjs [path of the browser]

import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'

const SIZES = [16, 32, 48, 128]
const here = (name) => fileURLToPath(new URL(name, import.meta.url))
const svg = await readFile(here('sign.svg'), 'utf8')

const browser = await chromium.launch({
  executablePath: process.argv[2] ?? '/usr/bin/chromium',
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

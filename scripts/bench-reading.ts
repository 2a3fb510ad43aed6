import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { type BrowserContext, chromium, type Page } from 'playwright-core'
import { chromiumPath } from '../tests/browser/extension.ts'
import { round, type Spread, spread } from './spread.ts'

const root = fileURLToPath(new URL('..', import.meta.url))
const require = createRequire(import.meta.url)
const ROUNDS = 21

/** What reading one page costs, beside two libraries that read pages for other ends. Milliseconds. */
interface PageCost {
  readonly nodes: number
  /** The very first read, before the engine has compiled anything for speed. */
  readonly first_read: number
  /** After the page was drawn anew with other words and amounts: nothing kept can be used. */
  readonly full_read: Spread
  /** After one amount changed. */
  readonly reread_after_small_change: Spread
  readonly longest_task: number
  readonly yardsticks: { readonly readability: Spread; readonly axe_core: Spread }
}

/** Reads checkouts of two sizes with the built reader in Chromium, the yardsticks interleaved on the same pages. */
export async function readingCosts(): Promise<PageCost[]> {
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: ['--no-sandbox', '--disable-gpu'] })
  const context = await browser.newContext()
  const costs = [await costOf(context, 3000), await costOf(context, 20_000)]
  await browser.close()
  return costs
}

async function costOf(context: BrowserContext, nodes: number): Promise<PageCost> {
  const page = await context.newPage()
  await page.setContent(checkoutOf(nodes))
  for (const file of ['dist/extension/lexicons/en.js', 'dist/extension/reader.js']) {
    await page.evaluate(readFileSync(`${root}${file}`, 'utf8'))
  }
  await page.evaluate(readFileSync(require.resolve('@mozilla/readability/Readability.js'), 'utf8'))
  await page.evaluate(readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8'))
  const first = await timed(page, 'document.body.getBoundingClientRect()', READ)
  const full: number[] = []
  const again: number[] = []
  const readability: number[] = []
  const axe: number[] = []
  for (let n = 0; n < ROUNDS; n++) {
    full.push(await timed(page, CHANGE_ALL, READ))
    again.push(await timed(page, CHANGE_ONE, READ))
    // The slow yardsticks need fewer rounds to be told apart from the reader.
    if (n % 4 === 0) {
      readability.push(await timed(page, 'const copy = document.cloneNode(true)', 'new Readability(copy).parse()'))
      axe.push(await timed(page, '', 'await axe.run({ runOnly: ["color-contrast"] })'))
    }
  }
  const count = await page.evaluate(() => document.querySelectorAll('*').length)
  await page.close()
  return {
    nodes: count,
    first_read: round(first),
    full_read: spread(full),
    reread_after_small_change: spread(again),
    longest_task: spread([first, ...full, ...again]).worst,
    yardsticks: { readability: spread(readability), axe_core: spread(axe) },
  }
}

const READ = 'tillsideReader.seen("CAD")'
const CHANGE_ONE = 'document.querySelector("#total").textContent = "$47." + (10 + Math.floor(performance.now()) % 90)'
/** The page is drawn anew, every text another one than ever before. Its own layout is not the reader's doing. */
const CHANGE_ALL = `const mark = Math.floor(performance.now() * 10).toString(36)
  const body = document.body.innerHTML.replace(/Article \\w+ (\\d+)/g, 'Article ' + mark + ' $1')
  document.body.innerHTML = body.replace(/(\\d)\\.\\d\\d</g, (_, digit) => digit + '.' + (10 + Math.floor(Math.random() * 90)) + '<')
  document.body.getBoundingClientRect()`

/** Runs `before` untimed, then times `code`, all in the page. */
function timed(page: Page, before: string, code: string): Promise<number> {
  return page.evaluate(
    `(async () => { ${before}; const start = performance.now(); ${code}; return performance.now() - start })()`,
  )
}

/** An invented checkout with about so many elements: a long list of things bought, then the sums. */
function checkoutOf(nodes: number): string {
  const rows = Array.from(
    { length: Math.floor(nodes / 12) },
    (_, i) =>
      `<tr><td><a href="/p/${i}"><img alt=""><span class="name">Article number ${i}</span></a></td><td><s>$${i + 3}.00</s> <span>$${i + 1}.99</span></td><td><select><option>1</option></select></td><td>$${i + 1}.99</td></tr>`,
  )
  return `<!doctype html><html lang="en-CA"><body><main><h1>Checkout</h1><table>${rows.join('')}</table>
    <dl><dt>Subtotal</dt><dd>$40.00</dd><dt>Shipping</dt><dd>$5.00</dd><dt>GST</dt><dd>$2.25</dd><dt>Order total</dt><dd id="total">$47.25</dd></dl>
    <form method="post"><label><input type="checkbox"> I accept the terms</label><button>Place order</button></form></main></body></html>`
}

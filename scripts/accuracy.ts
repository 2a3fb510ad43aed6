// npm run accuracy [count]: how often the reader is right, on all pages of the workshop in tests/checkout/pages and on
// generated ones. The generated pages of the second seed are looked at here only: nothing is tuned to them.
import { readdir } from 'node:fs/promises'
import fc from 'fast-check'
import { JSDOM } from 'jsdom'
import { readCheckout } from '../src/checkout/read-checkout.ts'
import { generatedPage } from '../tests/checkout/pages/generated.ts'
import { documentOf, type ShopPage } from '../tests/checkout/pages/page.ts'
import { inShort } from '../tests/checkout/pages/short.ts'

const SEEDS = { 'generated, seed for tuning': 1, 'generated, seed kept apart': 20_261_125 } as const
const count = Number(process.argv[2] ?? 300)

interface Score {
  pages: number
  totalRight: number
  totalWrong: number
  totalMissed: number
  /** A total where the page has none. */
  totalInvented: number
  stageRight: number
  controlsRight: number
}

const scores = new Map<string, Score>()
const worst: string[] = []

for (const [group, pages] of await workshop()) {
  for (const page of pages) {
    const reading = inShort(readCheckout(documentOf(page), hints(page)))
    note(group, page.name, reading, page)
  }
}
for (const [group, seed] of Object.entries(SEEDS)) {
  for (const made of fc.sample(generatedPage, { seed, numRuns: count })) {
    const { document } = new JSDOM(`<html lang="${made.lang}"><body>${made.html}</body></html>`, { url: made.url })
      .window
    const reading = inShort(readCheckout(document, { url: made.url }))
    note(group, made.html.slice(0, 160), reading, {
      stage: 'checkout',
      total: `${made.amount} ${made.currency}`,
      placeOrder: [made.button],
    })
  }
}
print()

/** The lists of pages by file. */
async function workshop(): Promise<[string, readonly ShopPage[]][]> {
  const folder = new URL('../tests/checkout/pages/', import.meta.url)
  const files = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith('.ts')).sort()
  const groups: [string, readonly ShopPage[]][] = []
  for (const file of files) {
    const module: Record<string, unknown> = await import(new URL(file, folder).href)
    for (const list of Object.values(module)) if (isPages(list)) groups.push([file.replace(/\.ts$/, ''), list])
  }
  return groups
}

function isPages(value: unknown): value is readonly ShopPage[] {
  return Array.isArray(value) && value.every((page) => typeof page?.body === 'string' && 'total' in page)
}

function hints(page: ShopPage): { url: string; currency?: string } {
  return page.currency ? { url: page.url, currency: page.currency } : { url: page.url }
}

function note(
  group: string,
  name: string,
  reading: ReturnType<typeof inShort>,
  expected: Pick<ShopPage, 'stage' | 'total' | 'placeOrder'>,
): void {
  const none = {
    pages: 0,
    totalRight: 0,
    totalWrong: 0,
    totalMissed: 0,
    totalInvented: 0,
    stageRight: 0,
    controlsRight: 0,
  }
  const score = scores.get(group) ?? none
  scores.set(group, score)
  score.pages++
  const isRight = reading.total === expected.total
  if (isRight) score.totalRight++
  else if (reading.total === null) score.totalMissed++
  else if (expected.total === null) score.totalInvented++
  else score.totalWrong++
  const plain = (texts: readonly string[]): string =>
    JSON.stringify(texts.map((text) => text.replace(/\s+/g, ' ').trim()))
  const controls = plain(reading.placeOrder) === plain(expected.placeOrder ?? [])
  if (controls) score.controlsRight++
  if (reading.stage === expected.stage) score.stageRight++
  if (!isRight) worst.push(`${group}: ${name}\n    read ${reading.total}, is ${expected.total}`)
  else if (!controls)
    worst.push(`${group}: ${name}\n    controls ${reading.placeOrder}, are ${expected.placeOrder ?? []}`)
}

function print(): void {
  const head = ['pages', 'pages', 'total right', 'wrong', 'missed', 'invented', 'stage right', 'controls right']
  console.log(`| ${head.join(' | ')} |\n|${'---|'.repeat(head.length)}`)
  const sum = [0, 0, 0, 0, 0, 0, 0]
  for (const [group, s] of scores) {
    const row = [s.pages, s.totalRight, s.totalWrong, s.totalMissed, s.totalInvented, s.stageRight, s.controlsRight]
    row.forEach((value, i) => {
      sum[i] = (sum[i] ?? 0) + value
    })
    console.log(`| ${[group, ...row].join(' | ')} |`)
  }
  console.log(`| ${['all', ...sum].join(' | ')} |`)
  if (worst.length > 0) console.log(`\nNot right:\n${worst.slice(0, 40).join('\n')}`)
}

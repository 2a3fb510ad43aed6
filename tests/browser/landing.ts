import type { Frame, Page } from 'puppeteer-core'

/*
 * Whether what a test does reaches the page. A browser drops what is pressed on a page that it has not drawn yet, before any
 * document hears of it (Chromium holds input back until the first paint): such a press is none, and is made again.
 */

const HEARD_WITHIN_MS = 1_000
const ANSWER_WITHIN_MS = 1_000
const MOST_PRESSES = 10

interface Given {
  /** Tells one document from the next. */
  readonly since: number
  readonly presses: number
}

/**
 * Makes a press until a document of the page is given it, by the browser's own count (Event Timing, `eventCounts`), which
 * counts what a listener stopped too.
 */
export async function untilItLands(page: Page, press: () => Promise<void>): Promise<void> {
  const before = await givenTo(page)
  for (let n = 0; n < MOST_PRESSES; n++) {
    await orLeft(page, press())
    for (const until = Date.now() + HEARD_WITHIN_MS; Date.now() < until; ) {
      const now = await givenTo(page)
      // A page that went away by the press was given it.
      if (!before || now?.since !== before.since || now.presses > before.presses) return
    }
  }
  throw new Error(`${MOST_PRESSES} presses, and the browser gave none of them to the page`)
}

/** Whatever the page sent has arrived once the server answers it. A page that is left meanwhile is answered no more. */
export async function untilAllArrived(page: Page): Promise<void> {
  await orLeft(
    page,
    page.evaluate(() => fetch('/slow')).catch(() => undefined),
  )
}

/** Waits for what is asked of a page, at most until the page is left: then the browser may never answer. */
async function orLeft(page: Page, asked: Promise<unknown>): Promise<void> {
  let leave = (): void => undefined
  const left = new Promise<void>((resolve) => {
    leave = resolve
  })
  page.once('framenavigated', leave)
  await Promise.race([asked, left])
  page.off('framenavigated', leave)
}

/** Null where the page does not answer: it is going away. */
async function givenTo(page: Page): Promise<Given | null> {
  const frames = page.frames().filter((frame) => !/^(?:chrome-error|about:neterror)/.test(frame.url()))
  const counts = await Promise.all(frames.map(countIn))
  const main = counts[frames.indexOf(page.mainFrame())]
  return main ? { since: main.since, presses: counts.reduce((sum, each) => sum + (each?.presses ?? 0), 0) } : null
}

async function countIn(frame: Frame): Promise<Given | null> {
  const late = new Promise<null>((resolve) => setTimeout(resolve, ANSWER_WITHIN_MS, null))
  try {
    const counted = frame.evaluate(() => {
      const counts: ReadonlyMap<string, number> = Reflect.get(performance, 'eventCounts')
      return { since: performance.timeOrigin, presses: (counts.get('pointerdown') ?? 0) + (counts.get('keydown') ?? 0) }
    })
    return await Promise.race([counted, late])
  } catch {
    return null
  }
}

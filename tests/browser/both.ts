import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import puppeteer, { type Browser, type Page, TimeoutError } from 'puppeteer-core'
import { v7 } from 'uuid'
import type { CheckoutLook, OwnCommands, Reply } from '../../src/background/protocol.ts'
import { entryId, orderId, potId } from '../../src/index.ts'
import { chromiumPath } from './extension.ts'

/*
 * The built extension in Chromium and in Firefox alike, for the tests of the guard: one page at a time is driven, and what
 * the worker holds is asked through a page of the extension's own.
 */

export type BrowserName = 'Chromium' | 'Firefox'

export interface Driven {
  readonly name: BrowserName
  /** What a page may know of the extension: the id it is published under. */
  readonly id: string
  readonly version: string
  /** Opens a page in a new tab, with the tabs of earlier pages closed. */
  open(url: string): Promise<Page>
  /** Asks the worker as an own page does. @throws the worker's refusal as an Error with its code */
  ask<C extends keyof OwnCommands>(command: C, ask: OwnCommands[C]['ask']): Promise<OwnCommands[C]['answer']>
  /** How many orders the guard holds at this moment. */
  held(): Promise<number>
  /** Whether the panel of a held order has been drawn and has spoken to the worker. */
  hasPanel(): Promise<boolean>
  /** Forgets what is held. */
  clearHeld(): Promise<void>
  /** What the worker knows of the page's checkout; reads nothing anew. */
  seen(page: Page): Promise<CheckoutLook['page']>
  tabOf(page: Page): Promise<number>
  /** Tags the order of the page to a pot with room for it, as the popup would. */
  tag(page: Page, total?: string): Promise<void>
  /** What the toolbar button of a tab says. */
  badge(tab: number): Promise<string>
  /** Ends all tags, so that the next page starts anew. */
  forgetTags(): Promise<void>
  close(): Promise<void>
}

const build = fileURLToPath(new URL('../../dist/demo', import.meta.url))

/** What a browser does not answer by then is said by its name, instead of the whole test running out of time. */
const ANSWER_MS = 30_000

export function firefoxPath(): string {
  return process.env.TILLSIDE_FIREFOX ?? '/usr/bin/firefox-esr'
}

/** Opens a browser with the extension: the demo household, and one shop that is watched. */
export async function openBrowser(name: BrowserName, watched: string): Promise<Driven> {
  const folder = await mkdtemp(join(tmpdir(), 'tillside-both-'))
  const browser = name === 'Chromium' ? await launchChromium() : await launchFirefox(folder)
  const own = await ownPageOf(browser, name)
  let shown: Page | null = null

  async function ask<C extends keyof OwnCommands>(
    command: C,
    payload: OwnCommands[C]['ask'],
  ): Promise<OwnCommands[C]['answer']> {
    const text = JSON.stringify({ command, ask: payload })
    const answer = await own.evaluate(
      async (message) => JSON.stringify(await chrome.runtime.sendMessage(JSON.parse(message))),
      text,
    )
    const reply: Reply<OwnCommands[C]['answer']> = JSON.parse(answer)
    if (!reply.ok) throw Object.assign(new Error(reply.message), { code: reply.code })
    return reply.value
  }

  async function tabOf(page: Page): Promise<number> {
    const tabs = await own.evaluate(async () => (await chrome.tabs.query({})).map(({ id, url }) => ({ id, url })))
    const tab = tabs.findLast(({ url }) => url === page.url())?.id
    if (tab === undefined) throw new Error(`no tab shows ${page.url()}`)
    return tab
  }

  const held = (): Promise<number> =>
    own.evaluate(
      async () => Object.keys(await chrome.storage.session.get(null)).filter((k) => k.startsWith('held:')).length,
    )

  async function begin(): Promise<void> {
    await ask('household.demo', {})
    await ask('shop.watch', { origin: watched })
  }

  await begin()
  return {
    id: await own.evaluate(() => chrome.runtime.id),
    name,
    version: await browser.version(),
    ask,
    tabOf,
    held,
    async open(url) {
      const before = shown
      shown = await browser.newPage()
      await before?.close()
      // A page may stop its own loading; Firefox then never tells that it is done.
      await shown.goto(url, { timeout: 4000 }).catch((error: unknown) => {
        if (!(error instanceof TimeoutError)) throw error
      })
      return shown
    },
    hasPanel: () =>
      own.evaluate(async () => {
        const kept = Object.entries(await chrome.storage.session.get(null))
        return kept.some(([key, order]) => key.startsWith('held:') && Reflect.get(Object(order), 'frame') !== null)
      }),
    clearHeld: () =>
      own.evaluate(async () => {
        const keys = Object.keys(await chrome.storage.session.get(null))
        await chrome.storage.session.remove(keys.filter((k) => k.startsWith('held:')))
      }),
    async seen(page) {
      const key = `seen:${await tabOf(page)}`
      const found = await own.evaluate(
        async (k) => JSON.stringify((await chrome.storage.session.get(k))[k] ?? null),
        key,
      )
      return JSON.parse(found)?.page ?? null
    },
    async tag(page, total = '48.20') {
      await ask('order.tag', {
        id: entryId(v7()),
        order: orderId(v7()),
        at: { tab: await tabOf(page) },
        wish: {
          total,
          currency: 'CAD',
          split: { by: 'pot', pot: potId('household') },
          foreign: null,
          margin: null,
          credit: null,
          instalments: null,
          renewal: null,
        },
        reason: 'tried in a test',
      })
    },
    badge: (tab) => own.evaluate((tabId) => chrome.action.getBadgeText({ tabId }), tab),
    async forgetTags() {
      await ask('household.leave-demo', {})
      await begin()
    },
    async close() {
      await browser.close()
      await rm(folder, { recursive: true, force: true, maxRetries: 5 })
    },
  }
}

function launchChromium(): Promise<Browser> {
  return puppeteer.launch({
    executablePath: chromiumPath(),
    pipe: true,
    headless: true,
    protocolTimeout: ANSWER_MS,
    enableExtensions: [build],
    defaultViewport: { width: 1000, height: 760 },
    args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-sync'],
  })
}

/** Firefox opens no page of an extension from outside, so the extension of the test opens one itself. */
async function launchFirefox(folder: string): Promise<Browser> {
  await cp(build, folder, { recursive: true })
  const manifest = JSON.parse(await readFile(join(folder, 'manifest.json'), 'utf8'))
  manifest.background = { scripts: ['worker.js', 'open-own-page.js'], type: 'module' }
  await writeFile(join(folder, 'manifest.json'), JSON.stringify(manifest))
  const code = "browser.tabs.create({ url: browser.runtime.getURL('popup/popup.html?tab=0') })"
  await writeFile(join(folder, 'open-own-page.js'), code)
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: firefoxPath(),
    headless: true,
    protocolTimeout: ANSWER_MS,
    defaultViewport: { width: 1000, height: 760 },
  })
  await browser.installExtension(folder)
  return browser
}

async function ownPageOf(browser: Browser, name: BrowserName): Promise<Page> {
  const isOwn = (url: string): boolean => /^(?:chrome|moz)-extension:/.test(url)
  if (name === 'Chromium') {
    const worker = await browser.waitForTarget((target) => target.type() === 'service_worker' && isOwn(target.url()))
    const page = await browser.newPage()
    await page.goto(new URL('/popup/popup.html?tab=0', worker.url()).href)
    return page
  }
  for (const until = Date.now() + 20_000; Date.now() < until; ) {
    for (const page of await browser.pages()) {
      // The driver learns no address of such a page, so it is asked.
      if (isOwn(await page.evaluate(() => location.href).catch(() => ''))) return page
    }
  }
  throw new Error('the extension opened no page of its own')
}

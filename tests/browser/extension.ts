import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type BrowserContext, chromium, type Page } from 'playwright-core'
import type { HouseholdView, Look, OwnCommands, Reply } from '../../src/background/protocol.ts'

/*
 * The built extension (dist/demo: the release with permission for *.localhost) in a real Chromium, for tests, the tour
 * and the bench. Nothing here knows a screen; it opens pages, asks the worker as an own page does, and stops things.
 */

const root = fileURLToPath(new URL('../..', import.meta.url))

export interface ExtensionOptions {
  readonly headed?: boolean
  /** Keep this profile between launches; else a new one that is thrown away. */
  readonly profile?: string
  readonly colorScheme?: 'light' | 'dark'
  /** Where Chromium writes its network log. */
  readonly netLog?: string
  readonly extension?: string
}

export interface Extension {
  readonly context: BrowserContext
  readonly id: string
  readonly url: (path: string) => string
  /** Asks the worker from one of our own pages. @throws the worker's refusal as an Error with its code */
  ask<C extends keyof OwnCommands>(command: C, ask: OwnCommands[C]['ask']): Promise<OwnCommands[C]['answer']>
  /** The household as the book has it. */
  book(): Promise<HouseholdView>
  /** The popup as a tab, looking at a shop's tab (or at nothing). */
  popup(shop?: Page): Promise<Page>
  tabId(page: Page): Promise<number>
  /** The demo household as on its first day, and no page open: as a new browser would have it, sooner. */
  startOver(): Promise<void>
  /** Stops the worker; the next message starts it again. Resolves once it is gone. */
  stopWorker(): Promise<void>
  close(): Promise<void>
}

export function chromiumPath(): string {
  return process.env.TILLSIDE_CHROMIUM ?? '/usr/bin/chromium'
}

export async function openExtension(options: ExtensionOptions = {}): Promise<Extension> {
  const folder = options.extension ?? join(root, 'dist/demo')
  const profile = options.profile ?? (await mkdtemp(join(tmpdir(), 'tillside-')))
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath(),
    headless: false,
    colorScheme: options.colorScheme ?? 'light',
    viewport: options.headed ? null : { width: 1200, height: 860 },
    args: [
      ...(options.headed ? [] : ['--headless=new']),
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      ...(options.netLog ? [`--log-net-log=${options.netLog}`] : []),
      `--disable-extensions-except=${folder}`,
      `--load-extension=${folder}`,
    ],
  })
  const worker = context.serviceWorkers()[0] ?? (await context.waitForEvent('serviceworker'))
  const id = new URL(worker.url()).host
  const url = (path: string): string => `chrome-extension://${id}/${path}`
  let own: Page | null = null

  async function ownPage(): Promise<Page> {
    if (own && !own.isClosed()) return own
    own = await context.newPage()
    await own.goto(url('popup/popup.html?tab=0'))
    return own
  }

  async function ask<C extends keyof OwnCommands>(
    command: C,
    payload: OwnCommands[C]['ask'],
  ): Promise<OwnCommands[C]['answer']> {
    const page = await ownPage()
    const message = { command, ask: payload }
    const reply = await page.evaluate<Reply<OwnCommands[C]['answer']>, typeof message>(
      (m) => chrome.runtime.sendMessage(m),
      message,
    )
    if (!reply.ok) throw Object.assign(new Error(reply.message), { code: reply.code })
    return reply.value
  }

  async function tabId(page: Page): Promise<number> {
    const asking = await ownPage()
    const tabs = await asking.evaluate(() => chrome.tabs.query({}))
    const found = tabs.filter((tab) => tab.url === page.url() || tab.pendingUrl === page.url())
    const tab = found[found.length - 1]?.id
    if (tab === undefined) throw new Error(`no tab shows ${page.url()}`)
    return tab
  }

  return {
    context,
    id,
    url,
    ask,
    tabId,
    async book() {
      const look: Look = await ask('book.look', {})
      if (look.status !== 'ready') throw new Error(`the household is ${look.status}`)
      return look.view
    },
    async popup(shop) {
      const tab = shop ? await tabId(shop) : 0
      const page = await context.newPage()
      await page.setViewportSize({ width: 400, height: 600 })
      await page.goto(url(`popup/popup.html?tab=${tab}`))
      return page
    },
    async startOver() {
      const asking = await ownPage()
      for (const page of context.pages()) if (page !== asking) await page.close()
      const look: Look = await ask('book.look', {})
      if (look.status === 'ready') await ask('household.leave-demo', {})
      await asking.evaluate(() => chrome.storage.session.clear())
      await ask('household.demo', {})
    },
    async stopWorker() {
      const page = await ownPage()
      const session = await context.newCDPSession(page)
      const gone = new Promise<void>((resolve) => {
        session.on('ServiceWorker.workerVersionUpdated', ({ versions }) => {
          if (versions.some((v) => v.scriptURL.startsWith(url('')) && v.runningStatus === 'stopped')) resolve()
        })
      })
      await session.send('ServiceWorker.enable')
      await session.send('ServiceWorker.stopAllWorkers')
      await gone
      await session.detach()
    },
    async close() {
      await context.close()
      if (!options.profile) await rm(profile, { recursive: true, force: true, maxRetries: 5 })
    },
  }
}

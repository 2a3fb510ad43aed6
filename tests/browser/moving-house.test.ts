import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Extension, openExtension } from './extension.ts'
import { picture } from './pictures.ts'
import { words } from './words.ts'

let folder: string
let here: Extension
let page: Page

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tillside-files-'))
  here = await openExtension()
  await here.ask('household.demo', {})
  page = await safePage(here)
})

afterAll(async () => {
  await here.close()
  await rm(folder, { recursive: true, force: true })
})

async function safePage(extension: Extension): Promise<Page> {
  const opened = await extension.context.newPage()
  await opened.goto(extension.url('src/desk/desk.html#/safe'))
  await opened.getByRole('heading', { name: words('desk_page_safe') }).waitFor()
  return opened
}

/** Presses a button that saves, and gives the file it makes. */
async function saved(press: () => Promise<void>): Promise<{ path: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()])
  const path = join(folder, download.suggestedFilename())
  await download.saveAs(path)
  return { path, text: await readFile(path, 'utf8') }
}

const button = (key: Parameters<typeof words>[0], on = page) =>
  on.getByRole('button', { name: words(key), exact: true })

async function figures(extension: Extension): Promise<unknown> {
  const { balances } = await extension.book()
  return Object.fromEntries(
    Object.entries(balances).map(([pot, b]) => [pot, [b.cash.minor, b.card.minor, b.held.minor]]),
  )
}

describe('moving house', () => {
  const passphrase = 'seven geese cross the weir'
  let open: { path: string; text: string }
  let locked: { path: string; text: string }

  it('saves the book open, as sheets, and locked', async () => {
    open = await saved(() => button('safe_save_open').click())
    expect(JSON.parse(open.text).format).toBe('tillside-book')
    const sheets = await saved(() => button('safe_save_csv').click())
    expect(sheets.text.split('\r\n').length).toBeGreaterThan(100)

    await page.getByLabel(words('safe_passphrase'), { exact: true }).first().fill('short')
    await button('safe_save_locked').click()
    await page.getByText(words('safe_passphrase_short')).waitFor()
    await page.getByLabel(words('safe_passphrase'), { exact: true }).first().fill(passphrase)
    await page.getByLabel(words('safe_passphrase_again')).fill(passphrase)
    locked = await saved(() => button('safe_save_locked').click())
    expect(JSON.parse(locked.text).format).toBe('tillside-locked')
    expect(locked.text).not.toContain('Groceries')
  })

  it('a browser that has nothing takes the locked book, and saves the same bytes again', async () => {
    const there = await openExtension()
    try {
      const desk = await there.context.newPage()
      await desk.goto(there.url('src/desk/desk.html'))
      await desk.getByLabel(words('safe_restore_choose')).setInputFiles(locked.path)
      await desk.getByLabel(words('safe_passphrase'), { exact: true }).fill('seven geese cross the pond')
      await button('safe_unlock', desk).click()
      await desk.getByRole('alert').waitFor()
      await desk.getByLabel(words('safe_passphrase'), { exact: true }).fill(passphrase)
      await button('safe_unlock', desk).click()
      await picture(desk, 'restore-preview')
      await button('safe_take_replace', desk).click()
      await desk.getByRole('link', { name: words('desk_page_safe') }).click()
      expect(await figures(there)).toEqual(await figures(here))

      const [download] = await Promise.all([desk.waitForEvent('download'), button('safe_save_open', desk).click()])
      const path = join(folder, 'again.json')
      await download.saveAs(path)
      expect(await readFile(path, 'utf8')).toBe(open.text)

      await there.stopWorker()
      expect(await figures(there)).toEqual(await figures(here))
    } finally {
      await there.close()
    }
  })

  it('shows what a restore would change, joins two books, and takes a file back', async () => {
    const date = (await here.book()).today
    const spend = { pot: 'groceries', side: 'cash', amount: '5.00', purpose: 'rye', date } as const
    const before = await figures(here)
    const id = '0199b000-0000-7000-8000-000000000001'
    await here.ask('spend.add', { id, ...spend } as Parameters<typeof here.ask<'spend.add'>>[1])
    const spent = await figures(here)
    expect(spent).not.toEqual(before)

    await page.getByLabel(words('safe_restore_choose')).setInputFiles(open.path)
    await page.getByText(words('safe_only_here_gone_one').replace('{count}', '1')).waitFor()
    await page.getByRole('radio', { name: words('safe_how_join') }).check()
    await button('safe_take_join').click()
    await page.getByText(/^Restored\./).waitFor()
    expect(await figures(here)).toEqual(spent)

    await button('safe_restore_another').click()
    await page.getByLabel(words('safe_restore_choose')).setInputFiles(open.path)
    await button('safe_take_replace').click()
    await page.getByText(/^Restored\./).waitFor()
    expect(await figures(here)).toEqual(before)
  })

  it('says what is wrong with a file that cannot be restored, and changes nothing', async () => {
    const before = await figures(here)
    await button('safe_restore_another').click()
    for (const [name, text, said] of [
      ['cut.json', open.text.slice(0, 5000), /cut short/],
      ['other.json', '{"a":1}', /no book of Tillside/],
      ['newer.json', open.text.replace('"version":1,"watched"', '"version":7,"watched"'), /newer Tillside/],
    ] as const) {
      const path = join(folder, name)
      await writeFile(path, text)
      await page.getByLabel(words('safe_restore_choose')).setInputFiles(path)
      await page.getByRole('alert').filter({ hasText: said }).waitFor()
    }
    expect(await figures(here)).toEqual(before)
  })
})

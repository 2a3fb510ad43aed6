import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { balances, openBook, potId, toDecimal } from '../../src/index.ts'
import { type Extension, openExtension } from './extension.ts'
import { pdfFaces } from './pdf-faces.ts'

const SHOTS = fileURLToPath(new URL('../../shots', import.meta.url))

let extension: Extension
let page: Page

beforeAll(async () => {
  mkdirSync(SHOTS, { recursive: true })
  extension = await openExtension()
  await extension.ask('household.demo', {})
  page = await extension.context.newPage()
})

afterAll(async () => {
  await extension.close()
})

const desk = async (place: string): Promise<void> => {
  await page.goto(extension.url(`src/desk/desk.html#/${place}`))
}
const left = async (pot: string): Promise<string> => {
  const balance = (await extension.book()).balances[potId(pot)]
  return balance ? toDecimal(balance.left) : 'no such pot'
}

describe('a payday walked in the desk', () => {
  it('from pay to a plan whose every figure is explained', async () => {
    await desk('payday')
    await page.getByLabel('Pay that arrived').fill('724')
    await page.getByRole('button', { name: 'Plan 724.00' }).click()
    const tyres = page.locator('.payday-lines > li', { hasText: 'Winter tyres' })
    await tyres.getByText(/600\.00 by .*, \d+ pays left with this one, 420\.00 in\./).waitFor()
    await page.getByText(/% in notes, as it was spent in the last three months\./).waitFor()
    // Every pot says why.
    const lines = page.locator('.payday-lines > li')
    expect(await lines.count()).toBe((await extension.book()).household.pots.length)
    for (const why of await lines.locator('.payday-why:first-of-type').allTextContents()) expect(why).toMatch(/\w.*\./)
  })

  it('changed by hand the sum is kept: what is taken from a pot has no pot, and more than there is is refused', async () => {
    const rest = page.locator('.payday-sum strong')
    const before = await rest.textContent()
    const books = page.locator('.payday-lines > li', { hasText: 'Garden' }).getByLabel('Card')
    await books.fill('1000')
    await page.getByText(/more than there is/).waitFor()
    expect(await page.getByRole('button', { name: 'Make the slip' }).isDisabled()).toBe(true)
    await page.getByRole('button', { name: 'As planned again' }).click()
    await expect.poll(() => rest.textContent()).toBe(before)
    await page.getByRole('button', { name: 'Make the slip' }).click()
  })

  it('to a printed slip: one page for the bank, and a strip for every envelope', async () => {
    const title = page.getByRole('heading', { name: /^Ask the bank for / })
    const asked = /for ([\d.,]+)$/.exec((await title.textContent()) ?? '')?.[1] ?? ''
    const pieces = await page.locator('.slip-asked .pieces li').allTextContents()
    const worth = pieces.map((text) => text.split('×').map((part) => Number(part.trim())))
    expect(worth.reduce((sum, [count = 0, value = 0]) => sum + count * value, 0).toFixed(2)).toBe(asked)

    const pdf = await page.pdf({ path: join(SHOTS, 'payday-slip.pdf'), preferCSSPageSize: true })
    const faces = await pdfFaces(pdf)
    expect(faces.length).toBe(2)
    const [bank = '', strips = ''] = faces.map((face) => face.text)
    expect(bank).toContain('For the bank')
    expect(bank).toContain(asked)
    expect(bank).not.toContain('Groceries')
    for (const name of ['Groceries', 'Saturday market', 'Piano lessons']) expect(strips).toContain(name)
    // A pot that gets no notes has no envelope to fill.
    expect(strips).not.toContain('Winter tyres')
    expect(strips).not.toContain('Counter')
  })

  it('to full envelopes and the book, and back again as one', async () => {
    await page.getByRole('button', { name: 'Fill the envelopes' }).click()
    const market = page.getByLabel(/Saturday market/)
    await market.check()
    // What is ticked is kept when the desk is closed and opened again.
    await desk('pots')
    await desk('payday/fill')
    expect(await market.isChecked()).toBe(true)
    const [garden, market0] = [await left('garden'), await left('market')]
    await page.getByRole('button', { name: 'Enter this payday in the book' }).click()
    await page.getByText(/^Entered: payday of/).waitFor()
    expect(Number(await left('garden')) - Number(garden)).toBeCloseTo(35, 9)
    expect(Number(await left('market')) - Number(market0)).toBeCloseTo(55, 9)
    await page.getByRole('button', { name: 'Take this payday back' }).click()
    await page.getByText(/^Entered: payday of/).waitFor({ state: 'detached' })
    expect([await left('garden'), await left('market')]).toEqual([garden, market0])
  })
})

describe('the demo household', () => {
  it('has its year planned: months to come, and every cost met', async () => {
    const next = Number((await extension.book()).today.slice(0, 4)) + 1
    await desk(`year/${next}`)
    await page.getByRole('heading', { name: `Pots in ${next}` }).waitFor()
    await page.getByText(/Winter tyres, 600\.00\. It is all in by then\./).waitFor()
    expect(await page.locator('.year-grid .year-planned').count()).toBeGreaterThan(100)
    const faces = await pdfFaces(await page.pdf({ path: join(SHOTS, 'year.pdf'), preferCSSPageSize: true }))
    // A year on one page, wider than high.
    expect(faces.length).toBe(1)
    const [first] = faces
    expect(first && first.width > first.height).toBe(true)
    expect(first?.text).toContain('Reserve')
    expect(first?.text).toContain('Groceries')
  })

  it('says of every goal what a pay must bring', async () => {
    await desk('goals')
    await page.getByText(/a fortnight: 600\.00 by .*420\.00 in\./).waitFor()
    await page.getByRole('button', { name: 'Change Winter tyres' }).click()
    await page.getByLabel('Target').fill('900')
    await page.getByRole('button', { name: 'Keep' }).click()
    await page.getByText(/a fortnight: 900\.00 by .*420\.00 in\./).waitFor()
  })

  it.each([
    ['a6', 105, 148],
    ['envelope', 88.9, 165.1],
  ])('prints a sheet on %s, both sides', async (paper, width, height) => {
    await desk('sheets/groceries')
    await page.getByLabel('Paper').selectOption(paper)
    const pdf = await page.pdf({ path: join(SHOTS, `sheet-${paper}.pdf`), preferCSSPageSize: true })
    const faces = await pdfFaces(pdf)
    expect(faces.length % 2).toBe(0)
    const mm = (points: number): number => (points / 72) * 25.4
    for (const face of faces) {
      expect(mm(face.width)).toBeCloseTo(width, 0)
      expect(mm(face.height)).toBeCloseTo(height, 0)
    }
    expect(faces[0]?.text).toContain('Carried in')
    expect(faces[1]?.text).toContain('Brought over')
  })

  it('types lines of paper back in: Enter goes on, and all go in together', async () => {
    await desk('sheets/market')
    const before = Number(await left('market'))
    const lines = page.locator('.paper-lines li')
    await lines.nth(0).getByLabel('Purpose').fill('pears')
    await lines.nth(0).getByLabel('Amount').fill('3.20')
    await lines.nth(0).getByLabel('Amount').press('Enter')
    await lines.nth(1).getByLabel('Purpose').fill('bread')
    await lines.nth(1).getByLabel('Amount').fill('4.30')
    await page.getByRole('button', { name: 'Enter these lines' }).click()
    await page.getByText('2 lines are in the book.').waitFor()
    expect(Number(await left('market'))).toBeCloseTo(before - 7.5, 9)
    await page.getByRole('rowheader', { name: 'pears' }).waitFor()
  })
})

describe('taking envelopes along', () => {
  it('carries the purposes chosen and says what is free; back home what is left tells what was spent', async () => {
    await desk('along')
    const before = Number(await left('market'))
    await page.getByLabel('Saturday market').check()
    const free = Number(await page.locator('.along-free').textContent())
    expect(await page.locator('.along-carry li').count()).toBe(1)
    await page.getByRole('radio', { name: 'Left in it' }).check()
    await page
      .locator('.along-fields')
      .getByLabel('Amount')
      .fill((free - 6.45).toFixed(2))
    await page.getByText('Saturday market: 6.45 spent.').waitFor()
    await page.getByRole('button', { name: 'Enter what was spent' }).click()
    await page.getByText('Back home').waitFor({ state: 'detached' })
    expect(Number(await left('market'))).toBeCloseTo(before - 6.45, 9)
  })
})

it('the book of the walk holds', async () => {
  const view = await extension.book()
  const { entries } = await extension.ask('book.entries', { from: 0 })
  const book = openBook(view.household, entries)
  for (const [pot, balance] of balances(book)) expect([pot, balance.left]).toEqual([pot, view.balances[pot]?.left])
})

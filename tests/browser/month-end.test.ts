import { mkdir } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { v7 } from 'uuid'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { demoMonth, type StatementFile, statementFiles } from '../../demo-data/statements/demo-month.ts'
import { type BankLine, type BankMonth, bankLine } from '../../demo-data/statements/model.ts'
import type { HouseholdView } from '../../src/background/protocol.ts'
import {
  addDays,
  type Book,
  balances,
  breakdown,
  type CalendarDate,
  type ChargeEntry,
  closedMonths,
  dayNumber,
  type Entry,
  entriesOf,
  entryId,
  explainBalances,
  fillIn,
  findOrder,
  formatAmount,
  isReversed,
  monthAfter,
  monthNamed,
  monthOf,
  type OrderId,
  ofMinor,
  openBook,
  orderSums,
  potBalance,
  potId,
  review,
  settle,
  settleStart,
  settleTargets,
} from '../../src/index.ts'
import texts from '../../src/locales/en/monthend.json' with { type: 'json' }
import { piecesOf } from '../../src/money/denominations.ts'
import { type Extension, openExtension } from './extension.ts'

/*
 * A whole month-end of the demo household in the built extension: its bank's months as three files of three formats, in
 * which one charge is missing, one was never tagged, one order is charged in two parts, one refund comes, and one
 * envelope is 5.00 short. Every figure must end agreed to the cent.
 */

const SHOTS = new URL('../../shots/month-end/', import.meta.url)
const t = (key: keyof typeof texts, values: Readonly<Record<string, string>> = {}): string =>
  fillIn(texts[key].message, values)
const text = (minor: number): string => formatAmount(ofMinor('CAD', minor), 'en-US')

let extension: Extension
let page: Page

beforeAll(async () => {
  await mkdir(SHOTS, { recursive: true })
  extension = await openExtension()
  await extension.ask('household.demo', {})
  page = await extension.context.newPage()
})
afterAll(() => extension.close())

async function view(): Promise<HouseholdView> {
  return extension.book()
}

/** The whole book as the desk has it. */
async function bookNow(): Promise<Book> {
  const entries: Entry[] = []
  let from = 0
  for (;;) {
    const part = await extension.ask('book.entries', { from })
    entries.push(...part.entries)
    if (part.next >= part.end) break
    from = part.next
  }
  return openBook((await view()).household, entries)
}

const go = async (place: string): Promise<void> => {
  await page.goto(extension.url(`src/desk/desk.html#/${place}`))
}
const shot = (name: string) => page.screenshot({ path: new URL(`${name}.png`, SHOTS).pathname, fullPage: true })

interface Scene {
  readonly files: readonly StatementFile[]
  /** Charged by the bank, not by the book: in one line, and in two. */
  readonly plain: ChargeEntry
  readonly inParts: ChargeEntry
  /** Held in the book; the bank never charged it. */
  readonly missing: ChargeEntry
  readonly refunded: ChargeEntry
}

/** Takes three charges out of the book, and lets the bank tell its own story. */
async function setTheScene(): Promise<Scene> {
  const book = await bookNow()
  const all = [...entriesOf(book)]
  const { today } = await view()
  const charges = all.filter((e): e is ChargeEntry => {
    if (e.kind !== 'charge' || isReversed(book, e.id) || e.lines.length !== 1) return false
    const steps = all.filter((x) => 'order' in x && x.order === e.order)
    return steps.at(-1)?.id === e.id && steps.length === 2
  })
  const [plain, inParts, missing, refunded] = [-2, -4, -6, -8].map((n) => charges.at(n))
  if (!plain || !inParts || !missing || !refunded) throw new Error('The demo has too few charges.')
  for (const charge of [plain, inParts, missing]) {
    await extension.ask('entry.undo', { id: entryId(v7()), target: charge.id })
  }
  const first = all.map((e) => e.date).sort()[0] ?? today
  const month = demoMonth(book.household, all, addDays(first, 1), today)
  const lineOf = (charge: ChargeEntry): BankLine => {
    const amount = -charge.lines.reduce((sum, l) => sum + l.amount, 0)
    const found = month.lines.find((l) => l.amount === amount && l.date === charge.date && l.kind === 'card')
    if (!found) throw new Error('The bank does not know this charge.')
    return found
  }
  const [whole, gone, back] = [lineOf(inParts), lineOf(missing), lineOf(refunded)]
  const half = Math.round(whole.amount * 0.6)
  const lines = [
    ...month.lines.filter((l) => l !== whole && l !== gone),
    bankLine({ ...whole, reference: 'PART1', amount: half }, 0),
    bankLine({ ...whole, reference: 'PART2', amount: whole.amount - half, date: later(whole.date, today) }, 0),
    bankLine({ reference: 'OWL', date: plain.date, amount: -2345, name: 'OWL PARKING TORONTO ON', kind: 'card' }, 0),
    bankLine(
      { reference: 'BACK', date: later(back.date, today), amount: 1000, name: back.name, text: 'Refund', kind: 'card' },
      0,
    ),
  ].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  return { files: inThreeParts({ ...month, lines }), plain, inParts, missing, refunded }
}

function later(date: CalendarDate, today: CalendarDate): CalendarDate {
  return addDays(date, 1) <= today ? addDays(date, 1) : date
}

/** The months as an OFX, a camt and a CSV file, one after the other, each opening where the one before closed. */
function inThreeParts(month: BankMonth): StatementFile[] {
  const days = dayNumber(month.to) - dayNumber(month.from)
  const ends = [addDays(month.from, Math.floor(days / 3)), addDays(month.from, Math.floor((2 * days) / 3)), month.to]
  let { from, opening } = month
  return ends.map((to, n) => {
    const lines = month.lines.filter((l) => l.date >= from && l.date <= to)
    const file = statementFiles({ ...month, from, to, opening, lines })[n]
    opening += lines.reduce((sum, l) => sum + l.amount, 0)
    from = addDays(to, 1)
    if (!file) throw new Error('A format is missing.')
    return file
  })
}

describe('a month-end', () => {
  let scene: Scene

  it('reads three formats, matches, and agrees to the cent', async () => {
    scene = await setTheScene()
    await go('statement')
    const files = scene.files.map(({ name, bytes }) => ({
      name,
      mimeType: 'application/octet-stream',
      buffer: Buffer.from(bytes),
    }))
    await page.getByLabel(t('statement_open')).setInputFiles(files)
    const use = page.getByRole('button', { name: t('statement_use') })
    await expect.poll(() => use.count()).toBe(3)
    await shot('statement-found')
    for (let n = 3; n > 0; n--) {
      await use.first().click()
      await expect.poll(() => use.count()).toBe(n - 1)
    }
    const sure = page.locator('section[aria-labelledby="sure-title"] .primary')
    await sure.waitFor()
    await page.getByText(t('match_look')).click()
    await shot('statement-matched')
    await sure.click()
    const alerts = page.locator('[role="alert"]')
    await expect.poll(async () => [await sure.count(), await alerts.allTextContents()]).toEqual([0, []])
    await shot('statement-questions')

    // The order charged in parts and the plain one were sure: exact sums under the shop's own name.
    const posted = await bookNow()
    const charged = (order: OrderId) => {
      const state = findOrder(posted, order)
      return state && orderSums(state)
    }
    const amount = (charge: ChargeEntry) => charge.lines.reduce((sum, l) => sum + l.amount, 0)
    expect(charged(scene.plain.order)).toMatchObject({ held: 0, charged: amount(scene.plain) })
    expect(charged(scene.inParts.order)).toMatchObject({ held: 0, charged: amount(scene.inParts) })
    expect(charged(scene.missing.order)).toMatchObject({ held: amount(scene.missing), charged: 0 })

    // The refund of a part is asked about.
    const questions = page.locator('.question')
    const asked = await questions.allInnerTexts()
    expect(asked.some((q) => q.includes('10.00'))).toBe(true)
    // Another order of that shop could be meant: it can be said.
    expect(await questions.getByRole('button', { name: /^It is the order at tallow-and-twine/ }).count()).toBe(1)
    const before = await questions.count()
    await questions
      .filter({ hasText: t('match_part_of', { of: text(amount(scene.refunded)) }) })
      .getByRole('button', { name: t('match_yes') })
      .click()
    await expect.poll(() => questions.count()).toBe(before - 1)
    expect(before).toBe(1)

    // The charge no one tagged gets its pot.
    const untagged = page.locator('.untagged')
    await expect.poll(() => untagged.count()).toBe(1)
    expect(await untagged.textContent()).toContain('OWL PARKING')
    await untagged.locator('select').selectOption('pot household')
    await untagged.getByRole('button', { name: t('untagged_post') }).click()
    await expect.poll(() => untagged.count()).toBe(0)

    // The order the card never charged is named.
    const missing = findOrder(await bookNow(), scene.missing.order)
    const uncharged = page.locator('section[aria-labelledby="uncharged-title"]')
    expect(await uncharged.textContent()).toContain(`${missing?.shop}: ${text(amount(scene.missing))}`)

    // The closing balance, explained down to zero.
    await page.getByText(t('balance_agrees')).waitFor()
    expect(await page.locator('.balance-difference').textContent()).toBe('0.00')
    expect(await page.getByText(t('match_all_done')).count()).toBe(1)
    await shot('statement-agreed')
    await page.getByRole('button', { name: t('balance_note') }).click()
    await page.getByText(t('balance_noted')).waitFor()
    const book = await bookNow()
    const agreed = [...entriesOf(book)].find((e) => e.kind === 'agree')
    const account = book.household.accounts[0]
    expect(agreed?.kind === 'agree' && agreed.balance).toBe(
      [...entriesOf(book)]
        .flatMap((e) => e.places)
        .reduce((sum, p) => sum + (p.account === `bank:${account?.id}` ? p.amount : 0), 0),
    )
  }, 180_000)

  it('reads the same files again and posts nothing', async () => {
    const before = (await bookNow()).length
    await page.reload()
    const files = scene.files.map(({ name, bytes }) => ({
      name,
      mimeType: 'application/octet-stream',
      buffer: Buffer.from(bytes),
    }))
    await page.getByLabel(t('statement_open')).setInputFiles(files)
    const use = page.getByRole('button', { name: t('statement_use') })
    await expect.poll(() => use.count()).toBe(3)
    for (let n = 3; n > 0; n--) {
      await use.first().click()
      await expect.poll(() => use.count()).toBe(n - 1)
    }
    await page.getByText(t('match_all_done')).waitFor()
    await page.getByText(t('balance_agrees')).waitFor()
    expect((await bookNow()).length).toBe(before)
  }, 120_000)

  it('counts the envelopes by keyboard, one of them 5.00 short', async () => {
    await go('count')
    const book = await bookNow()
    const pieces = piecesOf('CAD')
    const denominations = [...(pieces?.notes ?? []), ...(pieces?.coins ?? [])].sort((a, b) => b - a)
    const pots = book.household.pots.filter((p) => !p.archived && p.sides !== 'card')
    await page.locator('.piece input').first().focus()
    for (const pot of pots) {
      const cash = potBalance(book, pot.id).cash.minor - (pot.id === 'groceries' ? 500 : 0)
      const laid = breakdown(ofMinor('CAD', cash))
      if (!laid) throw new Error(`${pot.name} cannot be laid in notes and coins.`)
      for (const denomination of denominations) {
        const count = laid.find((p) => p.denomination === denomination)?.count ?? 0
        await page.keyboard.type(String(count))
        await page.keyboard.press('Enter')
      }
    }
    await page.locator('.finding').waitFor()
    expect(await page.locator('.finding h3').allInnerTexts()).toEqual([
      `Groceries: ${t('count_short', { amount: '5.00' })}`,
    ])
    await page.getByLabel(t('count_post_short')).check()
    await shot('count')
    await page.locator('.envelopes button[type="submit"]').click()
    await page.getByText(t('count_to_settle')).waitFor()
    const counted = await bookNow()
    expect(potBalance(counted, potId('groceries')).cash.minor).toBe(
      potBalance(book, potId('groceries')).cash.minor - 500,
    )
  }, 120_000)

  it('settles the notes, stopped in the middle, and prints the list', async () => {
    const before = await bookNow()
    const pots = before.household.pots
      .filter((p) => (!p.archived && p.sides !== 'card') || potBalance(before, p.id).cash.minor !== 0)
      .map((p) => p.id)
    const { counts } = settleStart(before, pots)
    const targets = settleTargets(before).filter((target) => counts.some((c) => c.pot === target.pot))
    const expected = settle(counts, targets, { bank: 'trip' })
    expect(expected.moves.length).toBeGreaterThan(0)
    const name = (place: (typeof expected.moves)[number]['from']): string =>
      place === 'bank' ? t('said_the_bank') : (before.household.pots.find((p) => p.id === place.pot)?.name ?? '')
    const lines = expected.moves.map((move) =>
      t('settle_move', {
        count: String(move.count),
        piece: text(move.denomination),
        from: name(move.from),
        to: name(move.to),
        amount: text(move.amount.minor),
      }),
    )
    await go('settle')
    const list = page.locator('.moves li')
    await expect.poll(() => list.count()).toBe(lines.length)
    expect((await list.allInnerTexts()).map((line) => line.trim())).toEqual(lines)
    await shot('settle')
    await page.emulateMedia({ media: 'print' })
    expect((await list.allInnerTexts()).map((line) => line.trim())).toEqual(lines)
    expect(await page.locator('.desk-nav').isVisible()).toBe(false)
    await shot('settle-printed')
    await page.emulateMedia({ media: 'screen' })

    const boxes = page.locator('.moves input')
    const half = Math.ceil(lines.length / 2)
    const tick = async (at: number): Promise<void> => {
      await boxes.nth(at).click()
      await expect.poll(() => page.locator('.moves .is-ticked').count()).toBe(at + 1)
    }
    for (let at = 0; at < half; at++) await tick(at)
    await page.reload()
    await expect.poll(() => page.locator('.moves .is-ticked').count()).toBe(half)
    expect((await list.allInnerTexts()).map((line) => line.trim())).toEqual(lines)
    for (let at = half; at < lines.length; at++) await tick(at)
    await page.getByText(t('settle_done')).waitFor()
    const after = await bookNow()
    for (const [id, { left }] of balances(before)) expect(balances(after).get(id)?.left).toEqual(left)
    for (const envelope of expected.envelopes) expect(potBalance(after, envelope.pot).cash).toEqual(envelope.cash)
  }, 180_000)

  it('looks back on the month and closes it', async () => {
    const book = await bookNow()
    const month = monthAfter(monthOf((await view()).today, 1), -1)
    const found = review(book, month)
    await go(`review/${month}`)
    const foot = page.locator('.review-table tfoot .figure')
    await foot.first().waitFor()
    const { all } = found
    expect(await foot.allInnerTexts()).toEqual([
      text(all.budgeted.both.minor),
      text(all.actual.cash.minor),
      text(all.actual.card.minor),
      text(all.under.both.minor),
      all.counted.minor === 0 ? '–' : text(all.counted.minor),
      all.swept.minor === 0 ? '–' : text(all.swept.minor),
      text(all.left.minor),
    ])
    await shot('review')

    await go('close')
    const row = page.locator('.leftover').first()
    await row.waitFor()
    await row.locator('select').selectOption({ index: 1 })
    await shot('close')
    await page.locator('main > .primary').click()
    await page.getByText(t('summary_agrees')).waitFor()
    await shot('closed')
    const closed = await bookNow()
    const [signed] = closedMonths(closed)
    expect(signed).toMatchObject({ agrees: true, entry: { month, through: monthNamed(closed.household, month).to } })
    expect(await page.locator('.digest code').textContent()).toBe(signed?.entry.digest)
    expect([...entriesOf(closed)].filter((e) => e.kind === 'sweep')).toHaveLength(1)

    // All in all: what the bank says is what the pots have.
    const account = closed.household.accounts[0]
    if (!account) throw new Error('The demo has no account.')
    const agreed = [...entriesOf(closed)].find((e) => e.kind === 'agree')
    if (agreed?.kind !== 'agree') throw new Error('Nothing was agreed.')
    const cards = [...balances(closed).values()].reduce((sum, b) => sum + b.card.minor, 0)
    const trips = [...entriesOf(closed)]
      .filter((e) => e.kind === 'settle' || e.kind === 'sweep')
      .flatMap((e) => e.places)
      .reduce((sum, p) => sum + (p.account === `bank:${account.id}` ? p.amount : 0), 0)
    const whole = explainBalances(closed, [])
    expect(cards + whole.unplaced.minor).toBe(agreed.balance + trips)
  }, 120_000)
})

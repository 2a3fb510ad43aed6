import { describe, expect, it } from 'vitest'
import { canonical } from '../../src/background/canonical.ts'
import { sha256 } from '../../src/background/digest.ts'
import { newSettings } from '../../src/background/settings.ts'
import { type BookFile, readBookFile, writeBookFile } from '../../src/desk/safe/book-file.ts'
import { previewOf } from '../../src/desk/safe/join-books.ts'
import { deviceId, type Entry, holdOrder, openBook, openPot, potId, spendFrom, sumsOf } from '../../src/index.ts'
import { cad, household, one, order, pot, stamp, today } from '../book/sample.ts'

const a = potId('a')
const h = household([pot('a')])
const settings: BookFile['settings'] = {
  ...newSettings('CAD', 'America/Toronto', null, []),
  pots: [{ ...pot('a'), fill: { cash: 0, card: 0 } }],
}
const opening = openPot(h, stamp(1), a, { cash: cad('10.00') })
const spends = (from: number, count: number): Entry[] =>
  Array.from({ length: count }, (_, i) => spendFrom(h, stamp(from + i), a, 'cash', cad('0.10'), `roll ${i} “à l’œuf”`))
const fileOf = (entries: readonly Entry[], changes: Partial<BookFile> = {}): BookFile => ({
  device: deviceId('laptop'),
  settings,
  watched: ['https://corvid.example'],
  entries,
  ...changes,
})
const book = fileOf([opening, ...spends(2, 20)])

describe('a book file', () => {
  it('read and written again is the same to the byte', async () => {
    const text = await writeBookFile(book)
    const { file, isAltered } = await readBookFile(text)
    expect(isAltered).toBe(false)
    expect(await writeBookFile(file)).toBe(text)
    expect(sumsOf(openBook(h, file.entries))).toEqual(sumsOf(openBook(h, book.entries)))
  })

  it('is canonical JSON whose digest anyone can check', async () => {
    const text = await writeBookFile(book)
    const { sha256: digest, ...rest } = JSON.parse(text)
    expect(digest).toBe(await sha256(canonical(rest)))
    expect(text).toBe(`${canonical({ ...rest, sha256: digest })}\n`)
  })

  it('read by a device that gives keys in another order and a mark of byte order, is whole', async () => {
    const value = JSON.parse(await writeBookFile(book))
    const reversed = Object.fromEntries(Object.entries(value).reverse())
    expect((await readBookFile(`\ufeff${JSON.stringify(reversed, null, 2)}`)).isAltered).toBe(false)
  })

  it('changed by hand is read, and says so', async () => {
    const text = await writeBookFile(book)
    const { file, isAltered } = await readBookFile(text.replace('roll 3', 'cake 3'))
    expect(isAltered).toBe(true)
    expect(JSON.stringify(file.entries)).toContain('cake 3')
  })

  it.each([
    ['cut short', (text: string) => text.slice(0, -40), 'file-broken'],
    ['empty', () => '', 'file-broken'],
    ['another JSON', () => '{"format":"something"}', 'file-not-ours'],
    ['a list', () => '[]', 'file-not-ours'],
    [
      'of a newer Tillside',
      (text: string) => text.replace('"version":1}', '"version":9}').replace(/"version":1,/, '"version":9,'),
      'file-newer',
    ],
    ['with an entry that has no id', (text: string) => text.replace(/"id":"0193b000[^"]*",/, ''), 'file-no-book'],
    [
      'with an amount in another currency',
      (text: string) => text.replace('"currency":"CAD"', '"currency":"dollars"'),
      'file-no-book',
    ],
    ['with half a cent', (text: string) => text.replace('"amount":1000', '"amount":1000.5'), 'file-no-book'],
    ['with a word too many', (text: string) => text.replace('"watched"', '"spare":1,"watched"'), 'file-no-book'],
  ])('%s is refused with a sentence', async (_, change, code) => {
    const text = change(await writeBookFile(book))
    await expect(readBookFile(text)).rejects.toMatchObject({ code, message: expect.stringMatching(/\w.+\.$/) })
  })
})

describe('what a restore would do', () => {
  const here = { book: openBook(h, [opening, ...spends(2, 5)]), settings }

  it('in place of the book: counts, and every pot before and after', () => {
    const preview = previewOf(book, here, 'replace', today)
    expect(preview).toMatchObject({ onlyHere: 0, onlyThere: 15, inBoth: 6, ahead: 0, lastDay: today })
    expect(preview.pots).toEqual([{ id: a, name: 'a', before: 950, after: 800 }])
  })

  it('joined: the union, the same whichever way round, and nothing doubled', () => {
    const other = fileOf([opening, ...spends(100, 7)])
    const one = previewOf(other, here, 'join', today).book
    const back = previewOf(
      fileOf([opening, ...spends(2, 5)]),
      { book: openBook(h, other.entries), settings },
      'join',
      today,
    )
    expect(one.length).toBe(13)
    expect(sumsOf(one)).toEqual(sumsOf(back.book))
    const again = previewOf(other, { book: one, settings }, 'join', today)
    expect([again.book.length, again.onlyThere]).toEqual([13, 0])
  })

  it('joined: entries of two devices that go by the same id, as a copied browser profile makes them, are all there', () => {
    const mine = spends(2, 5)
    const theirs = spends(100, 3).map((entry) => ({ ...entry, device: mine[0]?.device ?? entry.device }))
    const { book: joined } = previewOf(fileOf([opening, ...theirs]), here, 'join', today)
    expect(joined.length).toBe(1 + mine.length + theirs.length)
    expect(sumsOf(joined)['cash:a']).toBe(1000 - 10 * (mine.length + theirs.length))
  })

  it('joined: an order both devices tagged under one id is a conflict, not counted twice', () => {
    const tagged = (n: number) => holdOrder(openBook(h, [opening]), stamp(n), order(1), one('a', '2.00'))
    const mine = { book: openBook(h, [opening, tagged(2)]), settings }
    expect(() => previewOf(fileOf([opening, tagged(3)]), mine, 'join', today)).toThrowError(
      expect.objectContaining({ code: 'file-conflict' }),
    )
  })

  it('joined: pots only the file has come along, settings of shared ones stay as they are here', () => {
    const theirs = {
      ...settings,
      pots: [
        { ...pot('a'), name: 'Other name', fill: { cash: 1, card: 0 } },
        { ...pot('b'), fill: { cash: 0, card: 0 } },
      ],
    }
    const preview = previewOf(fileOf([opening], { settings: theirs }), here, 'join', today)
    expect(preview.settings.pots.map((p) => p.name)).toEqual(['a', 'b'])
    expect(preview.pots.map((p) => [p.id, p.before, p.after])).toEqual([
      ['a', 950, 950],
      ['b', null, 0],
    ])
  })

  it('entries repeated or in another order are the same book', () => {
    const shuffled = [...book.entries].reverse().concat(book.entries.slice(3, 9))
    expect(sumsOf(previewOf(fileOf(shuffled), null, 'replace', today).book)).toEqual(sumsOf(openBook(h, book.entries)))
  })

  it('the same entry saying two things is a conflict, and so is an order tagged twice', () => {
    const other = fileOf([opening, { ...spends(2, 1)[0], note: 'changed' } as Entry])
    expect(() => previewOf(other, here, 'join', today)).toThrowError(expect.objectContaining({ code: 'file-conflict' }))
    const broken = fileOf([{ ...opening, postings: [] }])
    expect(() => previewOf(broken, null, 'replace', today)).toThrowError(
      expect.objectContaining({ code: 'file-conflict' }),
    )
  })

  it('another currency cannot be joined', () => {
    const euro = fileOf([], { settings: { ...settings, currency: 'EUR' } })
    expect(() => previewOf(euro, here, 'join', today)).toThrowError(
      expect.objectContaining({ code: 'file-other-currency', message: expect.stringContaining('EUR') }),
    )
  })

  it('counts entries dated after today', () => {
    const ahead = spendFrom(h, { ...stamp(500), date: '2031-01-01' as typeof today }, a, 'cash', cad('0.10'), 'x')
    expect(previewOf(fileOf([opening, ahead]), here, 'replace', today).ahead).toBe(1)
  })
})

import { describe, expect, it } from 'vitest'
import { likeness, merchantText, shopText } from '../../src/monthend/match-text.ts'

const like = (text: string, host: string): number => likeness(merchantText(text), shopText(host))

describe('a bank text and a shop', () => {
  it.each([
    ['CORVID BOOKS 0042 TORONTO ON', 'corvid-books.example', 100],
    ['CORVIDBOOKS.EXAMPLE', 'corvid-books.example', 100],
    ['SQ *CORVID BOOKS', 'corvidbooks.example', 100],
    ['www.corvid-books.example/help', 'corvid-books.example', 100],
    ['Corvíd Böoks', 'corvid-books.example', 100],
  ])('%s is %s', (text, host, at) => expect(like(text, host)).toBe(at))

  it.each([
    ['CORVIDBOO*A12-99817', 'corvid-books.example'],
    ['CORV BOOK 221 MONTREAL', 'corvid-books.example'],
    ['CRVD BKS 4471', 'corvid-books.example'],
    ['CORVIT BOOKS', 'corvid-books.example'],
    ['POS PURCHASE FINCH GARD', 'finch-garden.example'],
  ])('%s could well be %s', (text, host) => expect(like(text, host)).toBeGreaterThanOrEqual(60))

  it.each([
    ['HERON HARDWARE', 'corvid-books.example'],
    ['CARD PAYMENT 00417', 'corvid-books.example'],
    ['CORNER CAFE', 'corvid-books.example'],
    ['FINCH PARKING', 'corvid-garden.example'],
    ['', 'corvid-books.example'],
  ])('%s is not %s', (text, host) => expect(like(text, host)).toBeLessThan(45))

  it('keeps what could be an order number', () => {
    expect(merchantText('CORVID*A12-99817 REF 000123').codes).toEqual(['a12-99817', '000123'])
    expect(shopText('www.shop.corvid.co.uk').joined).toBe('corvid')
  })
})

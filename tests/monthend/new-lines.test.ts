import { describe, expect, it } from 'vitest'
import { newLines, readStatement, type StatementLine } from '../../src/index.ts'

const csv = (...rows: string[]): StatementLine[] =>
  readStatement(`Date,Shop,Amount,Status\n${rows.join('\n')}\n`, { currency: 'CAD', account: 'main' })
const ofx = (...transactions: string[]): StatementLine[] =>
  readStatement(
    `OFXHEADER:100\n\n<OFX><STMTRS><CURDEF>CAD<BANKACCTFROM><BANKID>1<ACCTID>2</BANKACCTFROM><BANKTRANLIST>${transactions.map((t) => `<STMTTRN>${t}</STMTTRN>`).join('')}</BANKTRANLIST></STMTRS></OFX>`,
  )
const counts = (known: StatementLine[], read: StatementLine[]) => {
  const sorted = newLines(known, read)
  return [sorted.fresh.length, sorted.known.length, sorted.changed.length, sorted.doubtful.length]
}
const bread = '2026-03-02,Bakery,-3.50,Booked'

describe('lines known already', () => {
  it('the same file twice gives nothing new', () => {
    const lines = csv('2026-03-01,Shop,-5.00,Booked', bread, bread)
    expect(counts(lines, lines)).toEqual([0, 3, 0, 0])
  })
  it('two equal purchases of a day are two lines, also where the next file overlaps and adds a third', () => {
    const first = csv('2026-03-01,Shop,-5.00,Booked', bread, bread)
    expect(new Set(first.map((line) => line.id)).size).toBe(3)
    const next = csv(bread, bread, bread, '2026-03-03,Shop,-6.00,Booked')
    expect(counts(first, next)).toEqual([2, 2, 0, 0])
  })
  it('the order of the file, case and spaces do not matter', () => {
    const lines = csv('2026-03-01,Shop  One,-5.00,Booked', bread)
    expect(counts(lines, csv(bread, '2026-03-01,SHOP ONE,-5.00,Booked'))).toEqual([0, 2, 0, 0])
  })
  it('a pending line that is booked now is a change; an older file does not take the booking back', () => {
    const pending = csv('2026-03-02,Bakery,-3.50,Pending', '2026-03-02,Shop,-1.00,Booked')
    const booked = csv(bread, '2026-03-02,Shop,-1.00,Booked')
    expect(counts(pending, booked)).toEqual([0, 1, 1, 0])
    expect(counts(booked, pending)).toEqual([0, 2, 0, 0])
  })
  it('a line the bank corrects is a change of the earlier one', () => {
    const before = ofx('<DTPOSTED>20260301<TRNAMT>-10.00<FITID>X3')
    const after = ofx('<DTPOSTED>20260302<TRNAMT>-11.00<FITID>X4<CORRECTFITID>X3<CORRECTACTION>REPLACE')
    const { changed } = newLines(before, after)
    expect(changed.map(({ before: b, now }) => [b.amount.minor, now.amount.minor])).toEqual([[-1000, -1100]])
  })
  it('the same month in another format is doubtful line by line, and never doubled in silence', () => {
    const known = csv('2026-03-01,Shop,-5.00,Booked', bread, bread)
    const read = ofx(
      '<DTPOSTED>20260301<TRNAMT>-5.00<FITID>A<NAME>SHOP 12',
      '<DTPOSTED>20260302<TRNAMT>-3.50<FITID>B',
      '<DTPOSTED>20260302<TRNAMT>-3.50<FITID>C',
      '<DTPOSTED>20260302<TRNAMT>-3.50<FITID>D',
    )
    expect(counts(known, read)).toEqual([1, 0, 0, 3])
  })
  it('a reference the bank gives to different lines names none of them; to equal ones, they are counted', () => {
    const lines = ofx(
      '<DTPOSTED>20260301<TRNAMT>-5.00<FITID>SAME<NAME>A',
      '<DTPOSTED>20260302<TRNAMT>-6.00<FITID>SAME<NAME>B',
      '<DTPOSTED>20260303<TRNAMT>-7.00<FITID>T<NAME>C',
      '<DTPOSTED>20260303<TRNAMT>-7.00<FITID>T<NAME>C',
      '<DTPOSTED>20260304<TRNAMT>-7.00<FITID>0<NAME>C',
    )
    expect(lines.map((line) => line.idFrom)).toEqual(['content', 'content', 'bank', 'bank', 'content'])
    expect(new Set(lines.map((line) => line.id)).size).toBe(5)
  })
})

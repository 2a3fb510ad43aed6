import { describe, expect, it } from 'vitest'
import { openStatement, openStatementInSteps, readStatement } from '../../src/index.ts'

const bytes = (text: string): Uint8Array => Uint8Array.from([...text].map((char) => char.charCodeAt(0) & 0xff))
const refused = (file: Uint8Array | string, code: string, words: RegExp): void => {
  expect(() => openStatement(file, { currency: 'CAD' })).toThrow(expect.objectContaining({ code }))
  expect(() => openStatement(file, { currency: 'CAD' })).toThrow(words)
}
const lineOf = (date: string, amount: string): string => `${date},Shop,${amount}\n`
const HEAD = 'Date,Description,Amount\n'

describe('files that are no statement', () => {
  it.each([
    ['%PDF-1.7\n%...', 'a PDF document'],
    ['PK\u0003\u0004\u0014\u0000', 'a zip archive or a spreadsheet'],
    ['\u00D0\u00CF\u0011\u00E0\u00A1\u00B1\u001A\u00E1', 'an old spreadsheet'],
    ['\u001F\u008B\u0008', 'compressed'],
  ])('%j is said to be %s', (start, what) => {
    refused(bytes(`${start}${'x'.repeat(50)}`), 'not-a-statement', new RegExp(what))
  })
  it('a web page saved as CSV is said to be one', () => {
    refused('<!DOCTYPE html>\n<html><body>Sign in</body></html>', 'not-a-statement', /web page/)
    refused(bytes('  <html><table><tr><td>2026-03-01'), 'not-a-statement', /web page/)
  })
  it('an empty file, and one of blanks', () => {
    refused(new Uint8Array(), 'empty-file', /empty/)
    refused('', 'empty-file', /empty/)
    refused(' \r\n\t\n', 'empty-file', /blanks/)
  })
  it('XML of another kind, and a table without dates', () => {
    refused('<?xml version="1.0"?><Document><CstmrCdtTrfInitn/></Document>', 'not-a-statement', /CstmrCdtTrfInitn/)
    refused('Name,Colour\nAnna,red\n', 'unknown-columns', /date and an amount/)
  })
  it('an OFX file with no statement tells what the bank said', () => {
    const text =
      'OFXHEADER:100\n\n<OFX><STMTTRNRS><STATUS><CODE>2000<SEVERITY>ERROR<MESSAGE>Try later</STATUS></STMTTRNRS></OFX>'
    refused(text, 'not-a-statement', /Try later/)
  })
  it('a format that was asked for and is another', () => {
    expect(() => openStatement(HEAD + lineOf('2026-03-01', '-1.00'), { format: 'ofx' })).toThrow(
      expect.objectContaining({ code: 'wrong-format' }),
    )
  })
})

describe('files that are damaged', () => {
  const ofx = `OFXHEADER:100\n\n<OFX><STMTRS><CURDEF>CAD<BANKTRANLIST>\n<STMTTRN><DTPOSTED>20260301<TRNAMT>-1.00<FITID>1</STMTTRN>\n</BANKTRANLIST></STMTRS></OFX>`
  it('OFX cut off anywhere behind its root is refused', () => {
    expect(readStatement(ofx)).toHaveLength(1)
    for (let cut = ofx.indexOf('<STMTRS>'); cut < ofx.length - 5; cut += 7) {
      expect(() => openStatement(ofx.slice(0, cut)), `cut at ${cut}`).toThrow(
        expect.objectContaining({ code: expect.stringMatching(/broken-file|not-a-statement/) }),
      )
    }
  })
  it('XML cut off is refused with the line', () => {
    refused('<Document>\n<BkToCstmrStmt>\n<Stmt>\n<Id>1</Id>', 'broken-file', /line 4/)
  })
  it('a CSV cut off within quotes is refused with the line', () => {
    refused(`${HEAD}2026-03-01,"Shop","-1.00"\n2026-03-02,"Sho`, 'broken-file', /line 3/)
  })
  it('quotes that are plain characters are read so, and said', () => {
    const opened = openStatement(`${HEAD}2026-03-01,"7 inch" shelf,-1.00\n2026-03-02,Shop,-2.00\n`, { currency: 'CAD' })
    expect(opened.lines.map((line) => line.name)).toEqual(['"7 inch" shelf', 'Shop'])
    expect(opened.remarks.map((remark) => remark.code)).toEqual(['quotes-are-plain'])
  })
  it('zero bytes are left out, and said', () => {
    const opened = openStatement(`${HEAD}2026-03-01,Sh\0op,-1.00\n`, { currency: 'CAD' })
    expect([opened.lines[0]?.name, opened.remarks[0]?.code]).toEqual(['Shop', 'nul-removed'])
  })
})

describe('lines that cannot be read', () => {
  const text = HEAD + lineOf('31/01/2026', '-1.00') + lineOf('31/02/2026', '-2.00') + lineOf('01/02/2026', '-3.00')

  it('31/02 is refused with its line, and the other lines are read', () => {
    const opened = openStatement(text, { currency: 'CAD' })
    expect(opened.lines.map((line) => line.date)).toEqual(['2026-01-31', '2026-02-01'])
    expect(opened.problems.map((problem) => [problem.code, problem.row])).toEqual([['bad-date', 3]])
    expect(opened.problems[0]?.message).toMatch(/Line 3 has "31\/02\/2026", which is no day/)
    expect(() => readStatement(text, { currency: 'CAD' })).toThrow(/31\/02\/2026/)
  })
  it('an amount of another kind, a missing date among the lines, and a cell too many', () => {
    const codes = (row: string): string[] => {
      const whole = HEAD + lineOf('2026-03-01', '-1.00').repeat(30) + row + lineOf('2026-03-02', '-2.00')
      return openStatement(whole, { currency: 'CAD' }).problems.map((problem) => problem.code)
    }
    expect(codes(lineOf('2026-03-01', 'n/a'))).toEqual(['bad-amount'])
    expect(codes(lineOf('2026-03-01', '-1.005'))).toEqual(['bad-amount'])
    expect(codes(lineOf('', '-9.00'))).toEqual(['bad-date'])
    expect(codes('2026-03-01,Bread, butter,-4.00\n')).toEqual(['bad-line'])
    expect(codes(lineOf('March the 4th 26', '-4.00'))).toEqual(['bad-date'])
    expect(codes(lineOf('Subtotal', '-4.00'))).toEqual([])
  })
  it('several are counted in one error', () => {
    const two = HEAD + lineOf('31/01/2026', '-1.00') + lineOf('31/02/2026', '-2.00') + lineOf('30/02/2026', '-3.00')
    expect(() => readStatement(two, { currency: 'CAD' })).toThrow(/1 more line/)
  })
})

describe('currencies', () => {
  it('a statement of another currency is refused, naming both', () => {
    refused(`Date,Shop,Amount,Currency\n2026-03-01,A,-1.00,EUR\n`, 'other-currency', /EUR.*CAD/)
    const camt =
      '<Document><BkToCstmrStmt><Stmt><Acct><Id><IBAN>X</IBAN></Id><Ccy>SEK</Ccy></Acct></Stmt></BkToCstmrStmt></Document>'
    refused(camt, 'other-currency', /SEK.*CAD/)
  })
  it('one line in another currency is refused with its line', () => {
    const text = 'Date,Shop,Amount,Currency\n2026-03-01,A,-1.00,CAD\n2026-03-02,A,-1.00,CAD\n2026-03-03,B,-2.00,USD\n'
    refused(text, 'other-currency', /Line 4 is in USD/)
  })
  it('a CSV that names none asks for it', () => {
    expect(() => openStatement(HEAD + lineOf('2026-03-01', '-1.00'))).toThrow(
      expect.objectContaining({ code: 'no-currency' }),
    )
    expect(readStatement('Date,Shop,Amount (CAD)\n2026-03-01,A,-1.00\n')[0]?.amount.currency).toBe('CAD')
  })
})

describe('statements without lines', () => {
  it.each([
    ['CSV', HEAD],
    ['OFX', 'OFXHEADER:100\n\n<OFX><STMTRS><CURDEF>CAD<BANKTRANLIST></BANKTRANLIST></STMTRS></OFX>'],
    ['camt', '<Document><BkToCstmrStmt><Stmt><Acct><Ccy>CAD</Ccy></Acct></Stmt></BkToCstmrStmt></Document>'],
  ])('%s is sound and empty, and said to be', (_, text) => {
    const opened = openStatement(text, { currency: 'CAD' })
    expect([opened.lines, opened.problems, opened.remarks.map((remark) => remark.code)]).toEqual([[], [], ['no-lines']])
  })
})

describe('OFX as banks bend it', () => {
  const wrap = (inner: string): string => `OFXHEADER:100\n\n<OFX><STMTRS><CURDEF>CAD${inner}</STMTRS></OFX>`
  const line = '<STMTTRN><DTPOSTED>20260301<TRNAMT>-1.00<FITID>1<NAME>A & B <3</STMTTRN>'

  it('transactions without a list around them, or in a list that is never closed, are read', () => {
    expect(readStatement(wrap(line)).map((one) => one.name)).toEqual(['A & B <3'])
    expect(readStatement(wrap(`<BANKTRANLIST>${line}`))).toHaveLength(1)
  })
  it('an empty element without an end tag does not swallow what follows', () => {
    const [read] = readStatement(wrap(line.replace('<FITID>', '<CHECKNUM><MEMO><FITID>')))
    expect(read).toMatchObject({ text: '', references: [], id: ':1' })
  })
  it('a pending list, a hold and a character reference', () => {
    const text = wrap(
      '<BANKTRANLISTP><STMTTRNP><DTTRAN>20260302<TRNAMT>-2.00<NAME>Caf&#233;</STMTTRNP></BANKTRANLISTP>' +
        '<STMTTRN><TRNTYPE>HOLD<DTPOSTED>20260301<TRNAMT>-1.00<FITID>1<NAME><![CDATA[<b>]]></STMTTRN>',
    )
    expect(readStatement(text).map((one) => [one.name, one.status])).toEqual([
      ['<b>', 'pending'],
      ['Café', 'pending'],
    ])
  })
  it('two files read in turns do not disturb each other', () => {
    const steps = [1, 2].map((n) => openStatementInSteps(wrap(line.repeat(n * 2000))))
    const counts = steps.map(() => 0)
    for (let left = 2; left > 0; ) {
      for (const [i, one] of steps.entries()) {
        const step = one.next()
        if (!step.done || counts[i] !== 0) continue
        counts[i] = step.value.lines.length
        left -= 1
      }
    }
    expect(counts).toEqual([2000, 4000])
  })
  it('a file of one line with many transactions is read in a time that grows with its size', () => {
    // Looking for the next line end at each element once made this take minutes.
    expect(readStatement(wrap(line.repeat(20_000)))).toHaveLength(20_000)
  })
})

describe('large files', () => {
  const file = (rows: number): string => {
    const all = Array.from(
      { length: rows },
      (_, i) => `2026-03-${String((i % 28) + 1).padStart(2, '0')},"Shop, ${i}",-${i % 90}.25`,
    )
    return `${HEAD}${all.join('\n')}\n`
  }
  it('are read in small steps that tell how far they have come', () => {
    const steps = openStatementInSteps(new TextEncoder().encode(file(20_000)), { currency: 'CAD' })
    const seen: number[] = []
    let step = steps.next()
    while (!step.done) {
      if (step.value.stage === 'reading') seen.push(step.value.done / step.value.of)
      step = steps.next()
    }
    expect(step.value.lines).toHaveLength(20_000)
    expect(seen.length).toBeGreaterThan(10)
    expect(seen.every((share) => share >= 0 && share <= 1)).toBe(true)
  })
  it('a file of one endless cell is no trouble', () => {
    expect(() => openStatement(`a,"${'x'.repeat(2_000_000)}`, { currency: 'CAD' })).toThrow(
      expect.objectContaining({ code: 'broken-file' }),
    )
  })
})

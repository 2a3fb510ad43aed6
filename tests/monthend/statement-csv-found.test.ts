import { describe, expect, it } from 'vitest'
import { type CsvAmount, MonthendError, money, openStatement, readStatement } from '../../src/index.ts'

/* How the columns of a bank's CSV are found. The files are invented, in the manner of many banks. */

const csv = (...rows: string[]): string => `${rows.join('\r\n')}\r\n`
const found = (text: string, currency: 'CAD' | 'EUR' = 'CAD') => openStatement(text, { currency })
const cents = (text: string): number[] => found(text).lines.map((line) => line.amount.minor)

describe('amounts', () => {
  const cases: [string, string, CsvAmount, number[]][] = [
    [
      'one signed column',
      csv('Date,Description,Amount', '2026-03-01,Shop A,-12.50', '2026-03-02,Shop B,5.00'),
      { kind: 'signed', column: 2, turned: false },
      [-1250, 500],
    ],
    [
      'debit and credit columns',
      csv('Date,Debit,Credit', '2026-03-01,5.00,', '2026-03-02,,7.00'),
      { kind: 'two-columns', out: 1, in: 2, outNegative: false },
      [-500, 700],
    ],
    [
      'credit before debit, the debit with a minus and zeros instead of blanks',
      csv('Date,Credit,Debit', '2026-03-01,0.00,-5.00', '2026-03-02,7.00,0.00'),
      { kind: 'two-columns', out: 2, in: 1, outNegative: true },
      [-500, 700],
    ],
    [
      'a refund written as a minus in the debit column',
      csv('Date,Debit,Credit', '2026-03-01,5.00,', '2026-03-02,-3.00,', '2026-03-03,,7.00', '2026-03-04,6.00,'),
      { kind: 'two-columns', out: 1, in: 2, outNegative: false },
      [-500, 300, 700, -600],
    ],
    [
      'a direction column',
      csv('Datum;Betrag;S/H', '01.03.2026;5,00;S', '02.03.2026;7,00;H'),
      { kind: 'direction', column: 1, direction: 2, out: ['s'], in: ['h'] },
      [-500, 700],
    ],
    [
      'a direction in Dutch words and a solid date',
      csv(
        '"Datum","Naam","Af Bij","Bedrag (EUR)"',
        '"20260301","Winkel","Af","12,50"',
        '"20260302","Baas","Bij","1500,00"',
      ).replace('EUR', 'CAD'),
      { kind: 'direction', column: 3, direction: 2, out: ['af'], in: ['bij'] },
      [-1250, 150000],
    ],
    [
      'purchases written positive, told by the balance alone',
      csv(
        'Date,What,A,B',
        '2026-03-01,Shop,12.50,-12.50',
        '2026-03-02,Shop,5.00,-17.50',
        '2026-03-05,Shop,7.00,-24.50',
      ),
      { kind: 'signed', column: 2, turned: true },
      [-1250, -500, -700],
    ],
    [
      'no header, the balance behind the amount',
      csv('2026-03-01;Shop A;-12,50;100,00', '2026-03-02;Shop B;-5,00;95,00', '2026-03-03;Shop C;-5,00;90,00'),
      { kind: 'signed', column: 2, turned: false },
      [-1250, -500, -500],
    ],
    [
      'no header, the balance before the amount, newest first',
      csv('2026-03-03;Shop C;90,00;-5,00', '2026-03-02;Shop B;95,00;-5,00', '2026-03-01;Shop A;100,00;-12,50'),
      { kind: 'signed', column: 3, turned: false },
      [-500, -500, -1250],
    ],
  ]
  it.each(cases)('%s', (_, text, amount, minor) => {
    const opened = found(text)
    expect(opened.csv?.mapping.amount).toEqual(amount)
    expect(opened.lines.map((line) => line.amount.minor)).toEqual(minor)
  })

  it.each([
    ["1'234.50", 123450],
    ['1,234.50', 123450],
    ['12,34,567.89', 123456789],
    ['(1,234.50)', -123450],
    ['12.00-', -1200],
    ['\u221212.00', -1200],
    ['$12.50', 1250],
    ['-$12.50', -1250],
    ['12.50 CAD', 1250],
    ['1\u202F234.50', 123450],
    ['1\u00A0234.50', 123450],
    ['12.50 DR', -1250],
    ['12.50 CR', 1250],
    ['.50', 50],
    ['7', 700],
  ])('%s is %i cents', (text, minor) => {
    expect(cents(csv('Date,Shop,Amount', `2026-03-01,A,"${text}"`, '2026-03-02,B,-1.25'))).toEqual([minor, -125])
  })

  it('the decimal comma is told from all amounts; three digits behind the only mark are thousands', () => {
    expect(cents(csv('Datum;Laden;Betrag', '01.03.2026;A;-1.234', '02.03.2026;B;-5,50'))).toEqual([-123400, -550])
    expect(cents(csv('Date;Shop;Amount', '2026-03-01;Rent;"-1,200"', '2026-03-02;Shop;"-1,500"'))).toEqual([
      -120000, -150000,
    ])
    const dinars = openStatement(csv('Date;Shop;Amount', '2026-03-01;A;-1.234', '2026-03-02;B;-5.250'), {
      currency: 'KWD',
    })
    expect(dinars.lines.map((line) => line.amount.minor)).toEqual([-1234, -5250])
  })

  it('a column without any minus and without a balance is read as written, and the sign is said to be unsure', () => {
    const opened = found(csv('Date,Description,Amount', '2026-03-01,Shop A,12.50', '2026-03-02,Shop B,5.00'))
    expect(opened.csv?.unsure).toEqual(['sign'])
    expect(opened.remarks.map((remark) => remark.code)).toContain('sign-unsure')
    const [turned] = opened.csv?.alternatives ?? []
    const again = openStatement(csv('Date,Description,Amount', '2026-03-01,Shop A,12.50'), {
      ...(turned ? { mapping: turned.mapping } : {}),
    })
    expect(again.lines[0]?.amount).toEqual(money('CAD', '-12.50'))
  })
})

describe('dates', () => {
  const order = (...days: string[]) => {
    const reading = found(csv('Date,Shop,Amount', ...days.map((day, i) => `"${day}",S,-${i + 1}.00`))).csv
    return [reading?.mapping.dateOrder, reading?.unsure.includes('dates')]
  }
  it('one day above 12 tells the order of all', () => {
    expect(order('01/02/2026', '13/02/2026')).toEqual(['dmy', false])
    expect(order('01/02/2026', '02/13/2026')).toEqual(['mdy', false])
  })
  it('lines that run by day in one order only tell it', () => {
    expect(order('01/03/2026', '02/03/2026', '01/04/2026')).toEqual(['dmy', false])
    expect(order('03/01/2026', '03/02/2026', '04/01/2026')).toEqual(['mdy', false])
  })
  it('dots mean day first; a month in letters needs no order', () => {
    expect(order('01.02.2026', '03.04.2026')).toEqual(['dmy', false])
    const named = found(csv('Date,Shop,Amount', '3 Mar 2026,A,-1.00', '"March 4, 2026",B,-1.00', '05-mars-26,C,-1.00'))
    expect(named.lines.map((line) => line.date)).toEqual(['2026-03-03', '2026-03-04', '2026-03-05'])
  })
  it('two orders that both fit are said, and readStatement asks which', () => {
    const text = csv('Date,Shop,Amount', '03/04/2026,A,-1.00', '05/06/2026,B,-2.00')
    expect(order('03/04/2026', '05/06/2026')[1]).toBe(true)
    expect(() => readStatement(text, { currency: 'CAD' })).toThrow(expect.objectContaining({ code: 'unsure-dates' }))
    const days = (dateOrder: 'dmy' | 'mdy') =>
      readStatement(text, { currency: 'CAD', dateOrder }).map((line) => line.date)
    expect(days('dmy')).toEqual(['2026-04-03', '2026-06-05'])
    expect(days('mdy')).toEqual(['2026-03-04', '2026-05-06'])
  })
  it('the days alone do not decide where both orders give the same', () => {
    expect(order('03/03/2026', '05/05/2026')[1]).toBe(false)
  })
  it('booking, value and purchase days are told apart', () => {
    const text = csv(
      'Transaction Date,Posted Date,Value Date,Merchant,Amount',
      '2026-03-01,2026-03-03,2026-03-04,A,-1.00',
    )
    expect(found(text).lines[0]).toMatchObject({ date: '2026-03-03', valueDate: '2026-03-04', paidOn: '2026-03-01' })
  })
})

describe('what stands around the lines', () => {
  const text = csv(
    'sep=;',
    'Konto;DE02 1203 0000 0000 2020 51',
    'Zeitraum;März 2026',
    '',
    'Buchungstag;Wertstellung;Empfänger;Verwendungszweck;Betrag;Saldo;Währung',
    '02.03.2026;02.03.2026;Laden B;Rückzahlung;+5,00;8.770,44;EUR',
    '01.03.2026;01.03.2026;Laden A;"Einkauf; ""frisch""";-1.234,56;8.765,44;EUR',
    '',
    'Summe;;;;-1.229,56;;',
  )
  const opened = found(text, 'EUR')

  it('rows above the header and totals below are passed over, and shown', () => {
    expect(opened.csv?.passedOver.map((row) => row.row)).toEqual([2, 3, 9])
    expect(opened.remarks.map((remark) => remark.code)).toEqual(['rows-passed-over'])
    expect(opened.lines.map((line) => line.place.row)).toEqual([6, 7])
  })
  it('the account is taken from above the table, balances from its column, newest first', () => {
    expect(opened.accounts[0]).toMatchObject({
      account: 'DE02120300000000202051',
      opening: { amount: money('EUR', '10000.00'), from: 'worked-out' },
      closing: { amount: money('EUR', '8770.44'), date: '2026-03-02', from: 'statement' },
      check: { outcome: 'agrees' },
    })
  })
  it('name, text and value day come from their columns', () => {
    expect(opened.lines[1]).toMatchObject({ name: 'Laden A', text: 'Einkauf; "frisch"', valueDate: '2026-03-01' })
  })
  it('a balance that does not run on is told, with the difference', () => {
    const wrong = found(text.replace('8.770,44', '8.770,45'), 'EUR')
    expect(wrong.accounts[0]?.check).toEqual({ outcome: 'differs', by: money('EUR', '0.01') })
    expect(wrong.remarks.map((remark) => remark.code)).toContain('balance-differs')
  })
  it('pending lines, fees, foreign amounts, references and kinds', () => {
    const [line] = found(
      csv(
        'Booking date;Merchant;Amount;Currency;Original amount;Original currency;Exchange rate;Fee;Status;Reference;Type',
        '2026-03-01;US SHOP;-93.80;EUR;-100.00;USD;0.923;1.50;Pending;R-17;Card purchase',
        '2026-03-02;Shop;-1.00;EUR;;;;;Booked;R-18;Bank fee',
      ),
      'EUR',
    ).lines
    expect(line).toMatchObject({
      status: 'pending',
      kind: 'card',
      fee: money('EUR', '1.50'),
      original: { amount: money('USD', '-100.00'), rate: '0.923' },
      references: ['R-17'],
    })
  })
  it('two accounts in one file are two statements', () => {
    const two = found(
      csv('Date,Account,Payee,Amount', '2026-03-01,111,A,-1.00', '2026-03-02,222,B,-2.00', '2026-03-03,111,C,-4.00'),
    )
    expect(two.accounts.map((account) => [account.account, account.lines.length])).toEqual([
      ['111', 2],
      ['222', 1],
    ])
  })
})

describe('mappings', () => {
  const march = csv('Date,Who,A,B', '2026-03-01,Shop,12.50,-12.50', '2026-03-02,Shop,5.00,-17.50')
  const april = csv('Period: April', 'date , who,A,B', '2026-04-01,Shop,3.00,-20.50')

  it('a remembered mapping is used where the header is the same, whatever its spaces and case', () => {
    const mapping = found(march).csv?.mapping
    const remembered = mapping ? [mapping] : []
    const opened = openStatement(april, { currency: 'CAD', remembered })
    expect([opened.csv?.from, opened.lines[0]?.amount.minor]).toEqual(['remembered', -300])
    expect(openStatement(april.replace('who', 'whom'), { currency: 'CAD', remembered }).csv?.from).toBe('found')
  })
  it('a mapping can be changed by hand', () => {
    const mapping = found(march).csv?.mapping
    if (!mapping) throw new Error('a mapping is found')
    const changed = { ...mapping, amount: { kind: 'signed', column: 2, turned: false } as const }
    expect(openStatement(march, { mapping: changed }).lines.map((line) => line.amount.minor)).toEqual([1250, 500])
  })
  it('is plain data: what JSON gives back does the same', () => {
    const mapping = found(march).csv?.mapping
    expect(JSON.parse(JSON.stringify(mapping))).toEqual(mapping)
  })
  it.each([
    ['a column that is not there', { columns: { date: 9 } }],
    ['a header that is not there', { header: ['x', 'y', 'z', 'w'] }],
  ])('%s is refused', (_, change) => {
    const mapping = found(march).csv?.mapping
    if (!mapping) throw new Error('a mapping is found')
    const wrong = {
      ...mapping,
      ...change,
      columns: { ...mapping.columns, ...('columns' in change ? change.columns : {}) },
    }
    expect(() => openStatement(march, { mapping: wrong })).toThrow(MonthendError)
    expect(() => openStatement(march, { mapping: wrong })).toThrow(expect.objectContaining({ code: 'bad-mapping' }))
  })
  it('says in sentences what each thing was told by', () => {
    const evidence = found(march).csv?.evidence.join(' ')
    expect(evidence).toContain('The balance runs on by these amounts in 1 of 1 steps.')
    expect(evidence).toContain('cells of their own')
  })
})

import { readFileSync } from 'node:fs'
import { XMLParser } from 'fast-xml-parser'
import { describe, expect, it } from 'vitest'
import { money, openStatement, type StatementLine, toDecimal } from '../../src/index.ts'

/*
 * tests/published/camt: four files of genkgo/camt (MIT, licence beside them) and one of our own, with the figures an
 * independent script (Python ElementTree) read from them. The rules, reversal among them, stand in expected.json.
 */
const textOf = (name: string): string => readFileSync(new URL(`./camt/${name}`, import.meta.url), 'utf8')

interface Amount {
  readonly ccy: string
  readonly amount: string
}
interface Entry {
  readonly ccy: string
  readonly signed: string
  readonly reversal: boolean
  readonly status: string
  readonly booking: string | null
  readonly value: string | null
  readonly servicer_ref: string | null
  readonly tx: readonly {
    readonly end_to_end?: string
    readonly tx_amount?: Amount
    readonly instructed?: Amount
    readonly rate?: readonly string[]
    readonly unstructured?: readonly string[]
    readonly names?: readonly string[]
  }[]
}
interface File {
  readonly namespace: string
  readonly statements: readonly {
    readonly account: string
    readonly balances: readonly {
      readonly code: string
      readonly ccy: string
      readonly signed: string
      readonly date: string
    }[]
    readonly entries: readonly Entry[]
    readonly balance_check?: { readonly opening: string; readonly closing: string; readonly balanced: boolean }
  }[]
}
const files: Record<string, File> = JSON.parse(textOf('expected.json')).files

/** What is booked: the entry, or its parts where they are all told in its currency and add up. */
function wantedAmounts(entry: Entry): string[] {
  const parts = entry.tx.flatMap((tx) => (tx.tx_amount?.ccy === entry.ccy ? [tx.tx_amount.amount] : []))
  const cents = (text: string): number => Math.round(Number(text) * 100)
  const whole = parts.reduce((sum, part) => sum + cents(part), 0) === Math.abs(cents(entry.signed))
  if (entry.tx.length < 2 || parts.length < entry.tx.length || !whole) return [entry.signed]
  return parts.map((part) => (entry.signed.startsWith('-') ? `-${part}` : part))
}

describe('camt files against their expected entries', () => {
  it.each(Object.entries(files))('%s', (name, file) => {
    const opened = openStatement(textOf(name))
    expect(opened.problems).toEqual([])
    expect(opened.version).toBe(file.namespace.split(':').at(-1))
    expect(opened.accounts).toHaveLength(file.statements.length)
    for (const [i, statement] of file.statements.entries()) {
      const account = opened.accounts[i]
      expect(account?.number).toBe(statement.account)
      const lines = account?.lines ?? []
      const wanted = statement.entries.flatMap((entry) => wantedAmounts(entry).map((amount) => ({ entry, amount })))
      expect(lines.map((line) => [line.amount.currency, Number(toDecimal(line.amount))])).toEqual(
        wanted.map(({ entry, amount }) => [entry.ccy, Number(amount)]),
      )
      for (const [n, line] of lines.entries()) checkEntry(line, wanted[n]?.entry)
      checkBalances(account, statement)
    }
  })

  function checkEntry(line: StatementLine, entry: Entry | undefined): void {
    expect(line.reversal).toBe(entry?.reversal)
    expect(line.status).toBe(entry?.status === 'BOOK' ? 'booked' : 'pending')
    expect(line.date).toBe(entry?.booking?.slice(0, 10))
    expect(line.valueDate).toBe(entry?.value ?? null)
    if (entry?.servicer_ref) expect(line.id).toContain(`:${entry.servicer_ref}`)
    expect(line.idFrom).toBe(entry?.servicer_ref ? 'bank' : 'content')
  }

  function checkBalances(
    account: ReturnType<typeof openStatement>['accounts'][number] | undefined,
    statement: File['statements'][number],
  ): void {
    const stated = (code: string) => statement.balances.find((balance) => balance.code === code)
    const opening = stated('OPBD')
    if (opening) {
      expect(account?.opening?.amount.currency).toBe(opening.ccy)
      expect(account?.opening && Number(toDecimal(account.opening.amount))).toBe(Number(opening.signed))
      expect(account?.opening?.date).toBe(opening.date)
    }
    const closing = stated('CLBD') ?? stated('ITBD')
    if (closing) expect(account?.closing && Number(toDecimal(account.closing.amount))).toBe(Number(closing.signed))
    const check = statement.balance_check
    if (check) expect(account?.check.outcome).toBe(check.balanced ? 'agrees' : 'unknown')
  }

  it('covers five files with ten entries', () => {
    const entries = Object.values(files).flatMap((file) => file.statements.flatMap((statement) => statement.entries))
    expect([Object.keys(files).length, entries.length]).toEqual([5, 10])
  })
})

describe('what camt says beside the amounts', () => {
  const own = openStatement(textOf('own-batch-charges.camt053.v2.xml')).lines

  it('a batch is its parts, each with its own shop, text and reference', () => {
    expect(own.slice(0, 3).map((line) => [line.name, line.text, line.references, line.batch])).toEqual([
      ['Shop A', 'Order 1001', ['E1'], 'B1'],
      ['Shop B', 'Order 1002', ['E2'], 'B1'],
      ['Shop C', 'Order 1003 part 2', [], 'B1'],
    ])
  })

  it('92.30 + 1.50 charges = 93.80 booked; 100.00 USD at 0.923', () => {
    expect(own[3]).toMatchObject({
      name: 'US Shop',
      amount: money('EUR', '-93.80'),
      fee: money('EUR', '1.50'),
      original: { amount: money('USD', '-100.00'), rate: '0.923' },
    })
  })

  it('a reversal with CRDT adds money: its sign is not turned again', () => {
    expect(own[4]).toMatchObject({ reversal: true, amount: money('EUR', '12.00') })
  })

  it('23:30+02:00 on 31 March is booked on 31 March', () => {
    expect(own[5]?.date).toBe('2026-03-31')
  })

  it('a batch whose parts are in another currency is kept whole, and said to be', () => {
    const opened = openStatement(textOf('genkgo-camt054.v4.xml'))
    expect(opened.lines).toHaveLength(1)
    expect(opened.remarks.map((remark) => remark.code)).toContain('batch-kept-whole')
  })

  it('the other party is told from the account holder, in version 6 and in version 8', () => {
    expect(openStatement(textOf('genkgo-camt052.v6.xml')).lines[0]?.name).toBe('Example Creditor 6 - V1')
    expect(openStatement(textOf('genkgo-camt053.v8.xml')).lines[0]?.name).toBe('NAME NAME')
  })

  it('a balance in another currency than the account is no closing balance to check against', () => {
    const [account] = openStatement(textOf('genkgo-camt053.v8.xml')).accounts
    expect([account?.currency, account?.closing?.amount.currency, account?.check.outcome]).toEqual([
      'EUR',
      'SEK',
      'unknown',
    ])
  })

  it('five.decimals of genkgo: opening 18.150, entry 8.850, closing 27.050 does not agree (facts of sources.md, section 9)', () => {
    const text = textOf('genkgo-camt053.v2.multi.statement.xml')
      .replace('>18.15<', '>18.150<')
      .replace('>8.85<', '>8.850<')
      .replace('>27.00<', '>27.050<')
    const [account] = openStatement(text).accounts
    expect(account?.check).toEqual({ outcome: 'differs', by: money('EUR', '0.05') })
    expect(openStatement(text).remarks.map((remark) => remark.code)).toContain('balance-differs')
  })
})

describe('fast-xml-parser 5 (MIT) as a second reader of the XML', () => {
  it.each(Object.keys(files))('%s: the same sums of booked entries', (name) => {
    const parser = new XMLParser({ ignoreAttributes: false, parseTagValue: false, removeNSPrefix: true })
    const entries: { Amt: { '#text': string; '@_Ccy': string }; CdtDbtInd: string; Sts: unknown }[] = []
    collect(parser.parse(textOf(name)))
    const theirs = entries
      .filter((entry) => JSON.stringify(entry.Sts).includes('BOOK'))
      .map((entry) => Number(entry.Amt['#text']) * (entry.CdtDbtInd === 'DBIT' ? -1 : 1))
    const ours = openStatement(textOf(name)).lines.filter((line) => line.status === 'booked')
    const sum = (all: readonly number[]): number => Math.round(all.reduce((a, b) => a + b, 0) * 100) / 100
    expect(sum(ours.map((line) => Number(toDecimal(line.amount))))).toBe(sum(theirs))
    expect(entries.length).toBeGreaterThan(0)

    function collect(value: unknown): void {
      if (Array.isArray(value)) for (const one of value) collect(one)
      else if (typeof value === 'object' && value !== null) {
        for (const [key, inner] of Object.entries(value)) {
          if (key === 'Ntry') entries.push(...[inner].flat())
          else collect(inner)
        }
      }
    }
  })
})

import { readFileSync } from 'node:fs'
import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { readMicrodata } from '../../src/checkout/microdata.ts'
import { readStructured } from '../../src/checkout/structured-money.ts'

// Source: the examples of schema.org (schemaorg/schemaorg, commit cc71c8e0, data/**/*example*.txt): the money in each, as
// [path, value] for JSON-LD and [property, content, text] for microdata: schemaorg-money.json.
interface Example {
  readonly id: string
  readonly jsonld: readonly (readonly [path: string, value: string | number])[]
  readonly microdata: readonly (readonly [property: string, content: string | null, text: string])[]
}

const { cases }: { cases: readonly Example[] } = JSON.parse(
  readFileSync(new URL('schemaorg-money.json', import.meta.url), 'utf8'),
)
const AMOUNT = /\/(?:price|lowPrice|highPrice|minPrice|maxPrice|totalPrice)$/

/** The object that has these values at these paths: `/offers[0]/price`. */
function rebuild(values: Example['jsonld']): unknown {
  const root: Record<string, unknown> = {}
  for (const [path, value] of values) {
    const steps = [...path.matchAll(/\/([^/[]+)|\[(\d+)\]/g)].map(([, name, index]) => name ?? Number(index))
    let at: Record<string | number, unknown> = root
    for (const [place, step] of steps.entries()) {
      const key = place === 0 && typeof step === 'number' ? '@graph' : step
      if (place === steps.length - 1) at[key] = value
      else at = child(at, key, typeof steps[place + 1] === 'number' || (place === 0 && typeof step === 'number'))
      if (place === 0 && typeof step === 'number') at = child(at, step, false)
    }
  }
  return root
}

function child(
  parent: Record<string | number, unknown>,
  key: string | number,
  list: boolean,
): Record<string | number, unknown> {
  const known = parent[key]
  if (isObject(known)) return known
  const made: unknown = list ? [] : {}
  parent[key] = made
  return isObject(made) ? made : {}
}

function isObject(value: unknown): value is Record<string | number, unknown> {
  return typeof value === 'object' && value !== null
}

/** `amount currency` for each published amount: the currency is the one beside it, or the next one up its path. */
function expected(example: Example): string[] {
  return example.jsonld
    .filter(([path]) => AMOUNT.test(path))
    .map(([path, value]) => {
      const parent = path.replace(/\/[^/]+$/, '')
      const code = example.jsonld.find(([other]) => other === `${parent}/priceCurrency`)?.[1] ?? null
      return `${String(value).replace('$', '')} ${code}`
    })
}

describe('money in JSON-LD (schema.org examples)', () => {
  const withAmounts = cases.filter((example) => expected(example).length > 0)

  it('has enough examples to mean something', () => {
    expect(withAmounts.length).toBeGreaterThanOrEqual(45)
  })

  it.each(withAmounts.map((example) => [example.id, example] as const))('%s', (_, example) => {
    const money = readStructured(rebuild(example.jsonld)).money.filter(({ property }) => AMOUNT.test(`/${property}`))
    expect(money.map(({ amount, currency }) => `${amount} ${currency}`).sort()).toEqual(expected(example).sort())
  })

  it('reads the two amounts of the invoice example apart: the minimum is not the total (#eg-0374)', () => {
    const invoice = cases.find(({ id }) => id === '#eg-0374')
    const money = readStructured(rebuild(invoice?.jsonld ?? [])).money
    expect(money.map(({ path, amount }) => `${path} ${amount}`)).toEqual([
      '/minimumPaymentDue/price 15',
      '/totalPaymentDue/price 200',
    ])
  })
})

describe('money in microdata (schema.org examples)', () => {
  const single = cases.filter(
    ({ microdata }) =>
      microdata.filter(([property]) => AMOUNT.test(`/${property}`)).length === 1 &&
      microdata.filter(([property]) => property === 'priceCurrency').length === 1,
  )

  it('has enough examples to mean something', () => {
    expect(single.length).toBeGreaterThanOrEqual(15)
  })

  it.each(single.map((example) => [example.id, example.microdata] as const))('%s', (_, microdata) => {
    const markup = microdata.map(([property, content, text]) =>
      content === null
        ? `<span itemprop="${property}">${text}</span>`
        : `<span itemprop="${property}" content="${content}">${text}</span>`,
    )
    const { document } = new JSDOM(`<div itemscope itemtype="https://schema.org/Offer">${markup.join('')}</div>`).window
    const amount = microdata.find(([property]) => AMOUNT.test(`/${property}`))
    const code = microdata.find(([property]) => property === 'priceCurrency')
    const [found] = readMicrodata(document, new Set(), [])
    // "formats of one example disagree" (#eg-0010): the machine value in `content` is the one that counts.
    expect(found?.amount).toBe(amount?.[1] ?? amount?.[2])
    expect(found?.currency).toBe(code?.[1] ?? code?.[2])
    expect(found?.type).toBe('Offer')
  })
})

// Source: schema.org's own definitions (schemaorg/schemaorg, commit cc71c8e0, data/*.ttl): schema-order-money.json.
describe('the money properties of schema.org', () => {
  const definitions: { money_properties: readonly { property: string; range: readonly string[] }[] } = JSON.parse(
    readFileSync(new URL('schema-order-money.json', import.meta.url), 'utf8'),
  )
  const nested = definitions.money_properties.filter(
    ({ range }) => range.includes('MonetaryAmount') || range.includes('PriceSpecification'),
  )

  it('has enough of them to mean something', () => {
    expect(nested.length).toBeGreaterThanOrEqual(25)
  })

  it.each(nested.map(({ property, range }) => [property, range] as const))(
    '%s holds an amount with its currency',
    (property, range) => {
      const amount = range.includes('MonetaryAmount')
        ? { value: '4.95', currency: 'USD' }
        : { price: '4.95', priceCurrency: 'USD' }
      const [found] = readStructured({ '@type': 'Thing', [property]: amount }).money
      expect(found).toMatchObject({ amount: '4.95', currency: 'USD' })
      expect(found?.path.startsWith(`/${property}/`)).toBe(true)
    },
  )
})

import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { englishMessages } from './english-messages.ts'

const folder = fileURLToPath(new URL('../src/release', import.meta.url))
const guide = readFileSync(`${folder}/household.md`, 'utf8')
const texts = new Set(Object.values(englishMessages).map(({ message }) => message))

/** What the guide says in bold that is no label: cautions. */
const CAUTIONS = [
  'no financial advice',
  'the bank’s records rule',
  'uninsured',
  'It cannot stop purchases made elsewhere',
].map((text) => text.replace('’', "'"))
/** Steps of the month that the guide names in its own order. */
const STEPS = ['Statement.', 'Count.', 'Settle.', 'Review and close.']

describe('the household’s guide', () => {
  const bold = [...guide.matchAll(/\*\*([^*]+)\*\*/g)].map(([, text]) => (text ?? '').replace(/\s+/g, ' '))
  const labels = bold.filter((text) => !CAUTIONS.includes(text) && !STEPS.includes(text))

  it('says the cautions', () => {
    expect(CAUTIONS.filter((text) => !bold.includes(text))).toEqual([])
  })

  it('names many things that are pressed', () => {
    expect(new Set(labels).size).toBeGreaterThan(12)
  })

  it.each([...new Set(labels)])('“%s” is on a screen of Tillside in these words', (label) => {
    expect(texts).toContain(label)
  })

  it('shows only pictures that there are', () => {
    const pictures = [...guide.matchAll(/!\[[^\]]+\]\(([^)]+)\)/g)].map(([, path]) => path ?? '')
    expect(pictures.length).toBeGreaterThan(6)
    expect(pictures.filter((path) => !existsSync(`${folder}/${path}`))).toEqual([])
  })

  it('has every picture described', () => {
    expect(guide).not.toMatch(/!\[\]/)
  })
})

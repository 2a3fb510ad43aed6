import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { attacks } from '../../demo-data/shop/hostile/attacks.ts'
import { waysTable } from '../browser/ways-table.ts'

const guide = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8')

it('the contributor’s guide names every way to order and every attack that is tried', () => {
  const named = new Set(guide.split(/\s*[|;]\s*/))
  const missing = [...Object.keys(waysTable), ...Object.keys(attacks)].filter((name) => !named.has(name))
  expect(missing).toEqual([])
})

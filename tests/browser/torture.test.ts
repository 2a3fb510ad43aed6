import { expect, it } from 'vitest'
import { runTorture } from './torture.ts'

// A short run; `npm run torture` does three hundred kills.
it('no acknowledged entry is lost, and none is half there, whenever browser or worker is killed', {
  timeout: 180_000,
}, async () => {
  const outcome = await runTorture({ kills: 12, seed: 20_261_125 })
  expect(outcome).toMatchObject({ killedBrowsers: 4, stoppedWorkers: 8, lost: 0, strange: 0, wrongBalances: 0 })
  expect(outcome.acknowledged).toBeGreaterThan(12)
  expect(Object.keys(outcome.kinds)).toEqual(expect.arrayContaining(['order', 'charge', 'fill', 'settle']))
})

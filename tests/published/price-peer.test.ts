import { expect, it } from 'vitest'
import { comparePeers } from './price-peer.ts'

// The strings and what they mean: price-strings.json (its `meta` names the sources). The peer: npm parse-price 1.1.8 (MIT).
it('reads at least as many published price texts as npm parse-price, and fewer of them wrongly', () => {
  const { ours, peer } = comparePeers()
  expect(ours.rows).toBeGreaterThan(600)
  // The peer must have been asked in earnest: a peer that reads nothing proves nothing.
  expect(peer.right).toBeGreaterThan(500)
  expect(ours.right).toBeGreaterThanOrEqual(peer.right)
  expect(ours.wrong).toBeLessThan(peer.wrong)
})

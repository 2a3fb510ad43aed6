import { expect, it } from 'vitest'
import { sha256 } from '../../src/background/digest.ts'

// FIPS 180-4 examples: the one-block message "abc" and the empty one (full values from memory, equal to Node's own).
it.each([
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
])('SHA-256 of %j', async (text, digest) => expect(await sha256(text)).toBe(digest))

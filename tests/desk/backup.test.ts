import { describe, expect, it } from 'vitest'
import { isLocked, lock, unlock } from '../../src/desk/safe/backup.ts'

const random = (count: number): Uint8Array<ArrayBuffer> =>
  Uint8Array.from({ length: count }, (_, i) => (i * 37 + 11) % 256)
const text = `{"format":"tillside-book","note":"straw für Stroh – ${'ж'.repeat(500)}"}\n`

/*
 * The primitives are the platform's. That they are the ones named in the file is checked against published vectors:
 * PBKDF2-HMAC-SHA-256 of RFC 7914, section 11, and AES-GCM of McGrew and Viega (values from the project's sources, 12).
 */
describe('the primitives', () => {
  const hex = (bytes: ArrayBuffer): string => Buffer.from(bytes).toString('hex')
  it('PBKDF2-HMAC-SHA-256, one round', async () => {
    const key = await crypto.subtle.importKey('raw', new TextEncoder().encode('passwd'), 'PBKDF2', false, [
      'deriveBits',
    ])
    const kdf = { name: 'PBKDF2', hash: 'SHA-256', salt: new TextEncoder().encode('salt'), iterations: 1 }
    const bits = hex(await crypto.subtle.deriveBits(kdf, key, 512))
    expect([bits.slice(0, 8), bits.slice(-4)]).toEqual(['55ac046e', '9783'])
  })
  it('AES-GCM, test case 14 (256 bits, all zero)', async () => {
    const key = await crypto.subtle.importKey('raw', new Uint8Array(32), 'AES-GCM', false, ['encrypt'])
    const sealed = hex(
      await crypto.subtle.encrypt({ name: 'AES-GCM', iv: new Uint8Array(12) }, key, new Uint8Array(16)),
    )
    expect(sealed).toBe('cea7403d4d606b6e074ec5d3baf39d18d0d1c8a799996bf0265b98b5d48ab919')
  })
})

describe('a locked file', () => {
  it('opens with its passphrase only', async () => {
    const locked = await lock(text, 'seven geese cross the weir', random)
    expect(isLocked(locked)).toBe(true)
    expect(isLocked(text)).toBe(false)
    expect(locked).not.toContain('straw')
    expect(await unlock(locked, 'seven geese cross the weir')).toBe(text)
    for (const wrong of ['seven geese cross the Weir', 'seven geese cross the weir ', '']) {
      await expect(unlock(locked, wrong)).rejects.toMatchObject({ code: 'file-wrong-passphrase' })
    }
  })

  it('names parameters that OWASP and NIST recommend', async () => {
    const { kdf, cipher, data } = JSON.parse(await lock(text, 'x', random))
    expect(kdf).toMatchObject({ name: 'PBKDF2', hash: 'SHA-256', iterations: 600_000 })
    expect([atob(kdf.salt).length, cipher.name, atob(cipher.iv).length]).toEqual([16, 'AES-GCM', 12])
    expect(atob(data).length).toBe(new TextEncoder().encode(text).length + 16)
  })

  it('takes a passphrase typed with composed or combining letters as the same', async () => {
    const locked = await lock(text, 'gänse über das wehr', random)
    expect(await unlock(locked, 'gänse über das wehr'.normalize('NFD'))).toBe(text)
  })

  it('with any of its parts changed does not open', async () => {
    const locked = await lock(text, 'seven geese', random)
    const file = JSON.parse(locked)
    const flip = (value: string): string => (value.startsWith('A') ? 'B' : 'A') + value.slice(1)
    const changed = [
      { ...file, data: flip(file.data) },
      { ...file, kdf: { ...file.kdf, iterations: 600_001 } },
      { ...file, kdf: { ...file.kdf, salt: flip(file.kdf.salt) } },
      { ...file, cipher: { ...file.cipher, iv: flip(file.cipher.iv) } },
    ]
    for (const bad of changed) {
      await expect(unlock(JSON.stringify(bad), 'seven geese')).rejects.toMatchObject({ code: 'file-wrong-passphrase' })
    }
    for (const bad of [locked.slice(0, 100), JSON.stringify({ ...file, kdf: { ...file.kdf, iterations: 1 } })]) {
      await expect(unlock(bad, 'seven geese')).rejects.toMatchObject({ code: 'file-broken' })
    }
  })
})

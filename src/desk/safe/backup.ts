import * as z from 'zod/mini'
import { canonical } from '../../background/canonical.ts'
import { FileError } from './file-error.ts'

/*
 * A file locked with a passphrase. PBKDF2-HMAC-SHA-256 with 600,000 rounds (OWASP Password Storage Cheat Sheet), a salt
 * of 16 bytes, AES-256-GCM with a random 96-bit IV (NIST SP 800-38D): one key and one IV per file, never used again. The
 * head is authenticated with the text, so that weaker parameters cannot be slipped in.
 */

const ROUNDS = 600_000
/** More would let a strange file keep the browser busy for minutes. */
const ROUNDS_MOST = 10_000_000

const base64 = z.string().check(z.regex(/^[A-Za-z0-9+/]*={0,2}$/))
const head = {
  format: z.literal('tillside-locked'),
  version: z.literal(1),
  kdf: z.strictObject({
    name: z.literal('PBKDF2'),
    hash: z.literal('SHA-256'),
    iterations: z.int().check(z.gte(100_000), z.lte(ROUNDS_MOST)),
    salt: base64,
  }),
  cipher: z.strictObject({ name: z.literal('AES-GCM'), iv: base64 }),
}
const lockedFile = z.strictObject({ ...head, data: base64 })

/** Random bytes; the browser's `crypto.getRandomValues` in the desk, fixed ones in tests. */
export type RandomBytes = (count: number) => Uint8Array<ArrayBuffer>

/** Whether a text is a locked file, by its first member. */
export function isLocked(text: string): boolean {
  return /^\s*\{\s*"(?:cipher|format)"/.test(text) && text.includes('"tillside-locked"')
}

/** Locks a text with a passphrase. */
export async function lock(text: string, passphrase: string, random: RandomBytes): Promise<string> {
  const salt = random(16)
  const iv = random(12)
  const open = {
    format: 'tillside-locked',
    version: 1,
    kdf: { name: 'PBKDF2', hash: 'SHA-256', iterations: ROUNDS, salt: toBase64(salt) },
    cipher: { name: 'AES-GCM', iv: toBase64(iv) },
  }
  const key = await keyOf(passphrase, salt, ROUNDS)
  const algorithm = { name: 'AES-GCM', iv, additionalData: bytesOf(canonical(open)) }
  const sealed = await crypto.subtle.encrypt(algorithm, key, bytesOf(text))
  return `${canonical({ ...open, data: toBase64(new Uint8Array(sealed)) })}\n`
}

/** Opens a locked text. @throws FileError `file-broken`, `file-wrong-passphrase` (or a byte of it was changed) */
export async function unlock(text: string, passphrase: string): Promise<string> {
  const file = parsed(text)
  const { data, ...open } = file
  const key = await keyOf(passphrase, fromBase64(file.kdf.salt), file.kdf.iterations)
  const algorithm = { name: 'AES-GCM', iv: fromBase64(file.cipher.iv), additionalData: bytesOf(canonical(open)) }
  try {
    return new TextDecoder().decode(await crypto.subtle.decrypt(algorithm, key, fromBase64(data)))
  } catch {
    throw new FileError(
      'file-wrong-passphrase',
      'This passphrase does not open the file. Mind capitals and spaces; if it is right, the file was damaged.',
    )
  }
}

function parsed(text: string): z.infer<typeof lockedFile> {
  try {
    return lockedFile.parse(JSON.parse(text))
  } catch {
    throw new FileError('file-broken', 'This locked file is cut short or was changed. Take another copy of it.')
  }
}

/** Passphrases typed on different machines are brought to one form (NFKC) first. */
async function keyOf(passphrase: string, salt: Uint8Array<ArrayBuffer>, iterations: number): Promise<CryptoKey> {
  const raw = await crypto.subtle.importKey('raw', bytesOf(passphrase.normalize('NFKC')), 'PBKDF2', false, [
    'deriveKey',
  ])
  const kdf = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations }
  return crypto.subtle.deriveKey(kdf, raw, { name: 'AES-GCM', length: 256 }, false, ['encrypt', 'decrypt'])
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(text)
}

/** In slices: a whole book in one call would be more arguments than a function takes. */
function toBase64(bytes: Uint8Array): string {
  let text = ''
  for (let i = 0; i < bytes.length; i += 0x8000) text += String.fromCharCode(...bytes.subarray(i, i + 0x8000))
  return btoa(text)
}

function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (c) => c.charCodeAt(0))
}

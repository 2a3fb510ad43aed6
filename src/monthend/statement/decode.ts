import { MonthendError } from '../monthend-error.ts'
import { type CodePage, codePages } from './code-pages.ts'
import { guessCodePage } from './guess-code-page.ts'
import { type Progress, singleByte, utf8, utf16 } from './utf.ts'

/** An encoding statements are read in. */
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | CodePage

/** A file's text, and how it was made out of bytes. */
export interface DecodedText {
  readonly text: string
  /** Null when the caller handed over text. */
  readonly encoding: Encoding | null
  /** What the encoding was told by, a sentence. */
  readonly evidence: string
  /** False when another encoding fits as well, or some characters could not be read. */
  readonly sure: boolean
}

/** What is said of an encoding, by any usual name (`ISO-8859-1` is read as windows-1252, as browsers do). */
interface SaidEncoding {
  /** By the caller: obeyed. */
  readonly asked: string | undefined
  /** By the file itself, which is often wrong: believed unless the bytes say otherwise. */
  readonly declared: string | undefined
}

/**
 * Turns bytes into text. A byte order mark wins; then what the caller asks for; then evidence: zero bytes at every second
 * place are UTF-16, upper bytes that are sound UTF-8 are UTF-8; then what the file declares; then the single-byte encoding
 * in which the words look like words.
 *
 * @throws MonthendError `unknown-encoding` for a name that is not known or bytes that are not in the encoding said,
 *   `broken-file` when the last character is cut in half
 */
export function* decode(bytes: Uint8Array, said: SaidEncoding): Generator<Progress, DecodedText> {
  const mark = byteOrderMark(bytes)
  if (mark) return yield* decodeAs(bytes, mark.encoding, 'The file starts with a byte order mark.', mark.length)
  if (said.asked !== undefined) {
    return yield* decodeAs(bytes, encodingNamed(said.asked), 'This encoding was asked for.', 0)
  }
  const halves = zeroHalves(bytes)
  if (halves) return yield* decodeAs(bytes, halves, 'Every second byte is zero, as in UTF-16.', 0)
  const read = yield* utf8(bytes, 0)
  if (read.bad === 0) {
    const evidence = read.good === 0 ? 'The file holds ASCII only.' : 'Every byte is sound UTF-8.'
    return { text: read.text, encoding: 'utf-8', evidence, sure: true }
  }
  if (read.good > 4 * read.bad) {
    const evidence = `Nearly all is sound UTF-8; ${read.bad} bytes are not, and stand as "\uFFFD".`
    return { text: read.text, encoding: 'utf-8', evidence, sure: false }
  }
  const declared = said.declared === undefined ? null : knownEncoding(said.declared)
  if (declared !== null && declared !== 'utf-8') {
    return yield* decodeAs(bytes, declared, `The file declares itself ${said.declared}.`, 0)
  }
  const { page, sure } = guessCodePage(bytes)
  const text = yield* singleByte(bytes, codePages[page])
  return { text, encoding: page, evidence: `The file is not UTF-8, and its words read best as ${page}.`, sure }
}

function* decodeAs(
  bytes: Uint8Array,
  encoding: Encoding,
  evidence: string,
  from: number,
): Generator<Progress, DecodedText> {
  if (encoding === 'utf-8') {
    const { text, bad } = yield* utf8(bytes, from)
    return { text, encoding, evidence, sure: bad === 0 }
  }
  if (encoding === 'utf-16le' || encoding === 'utf-16be') {
    const text = yield* utf16(bytes, from, encoding === 'utf-16be')
    if (text === null) {
      throw new MonthendError(
        'broken-file',
        'The file ends in the middle of a character. Fetch it from the bank again.',
      )
    }
    return { text, encoding, evidence, sure: true }
  }
  const text = yield* singleByte(bytes, codePages[encoding])
  return { text, encoding, evidence, sure: !text.includes('\uFFFD') }
}

function byteOrderMark(bytes: Uint8Array): { encoding: Encoding; length: number } | null {
  const [a, b, c] = bytes
  if (a === 0xef && b === 0xbb && c === 0xbf) return { encoding: 'utf-8', length: 3 }
  if (a === 0xff && b === 0xfe) return { encoding: 'utf-16le', length: 2 }
  if (a === 0xfe && b === 0xff) return { encoding: 'utf-16be', length: 2 }
  return null
}

/** UTF-16 without a mark: text of a statement is mostly ASCII, so one half of its first characters is zero. */
function zeroHalves(bytes: Uint8Array): Encoding | null {
  const end = Math.min(bytes.length - (bytes.length % 2), 4096)
  if (end < 4 || bytes.length % 2 !== 0) return null
  let [even, odd] = [0, 0]
  for (let i = 0; i < end; i += 2) {
    if (bytes[i] === 0) even += 1
    if (bytes[i + 1] === 0) odd += 1
  }
  const most = end / 2
  if (odd > most * 0.6 && even < most * 0.1) return 'utf-16le'
  if (even > most * 0.6 && odd < most * 0.1) return 'utf-16be'
  return null
}

/** Other names for the encodings, as files declare them. ISO-8859-1 and ASCII are windows-1252 to every browser. */
const NAMES: Readonly<Record<string, Encoding>> = {
  utf8: 'utf-8',
  unicode: 'utf-8',
  utf16: 'utf-16le',
  utf16le: 'utf-16le',
  utf16be: 'utf-16be',
  ascii: 'windows-1252',
  usascii: 'windows-1252',
  latin1: 'windows-1252',
  iso88591: 'windows-1252',
  '88591': 'windows-1252',
  ansi: 'windows-1252',
  latin2: 'iso-8859-2',
  latin9: 'iso-8859-15',
  ibm850: 'cp850',
  ibm852: 'cp852',
  ibm437: 'cp437',
  macroman: 'macintosh',
}

/** The encoding a name means, whatever its case and marks: `ISO-8859-15`, `cp1252`, `UTF8`. Null when none is known. */
function knownEncoding(name: string): Encoding | null {
  const key = name.toLowerCase().replace(/[^a-z0-9]/g, '')
  const page = Object.keys(codePages)
    .filter(isCodePage)
    .find((known) => [bare(known), known.replace('windows-', 'cp'), known.replace('windows-', '')].includes(key))
  return NAMES[key] ?? page ?? null
}

const bare = (name: string): string => name.replace(/[^a-z0-9]/g, '')

function encodingNamed(name: string): Encoding {
  const encoding = knownEncoding(name)
  if (encoding !== null) return encoding
  const known = ['utf-8', 'utf-16le', 'utf-16be', ...Object.keys(codePages)].join(', ')
  throw new MonthendError('unknown-encoding', `"${name}" is not an encoding known here. Choose one of: ${known}.`)
}

function isCodePage(text: string): text is CodePage {
  return Object.hasOwn(codePages, text)
}

/** How many bytes are decoded between two looks at what else is to be done. */
const STEP = 1 << 20
/** Characters handed to `String.fromCharCode` at once: more would overflow the stack. */
const RUN = 8192

/** Tells how far a long piece of work has come: `done` of `of`, in whatever unit the work has. */
export interface Progress {
  readonly stage: 'decoding' | 'looking' | 'reading'
  readonly done: number
  readonly of: number
}

/** A text read as UTF-8: how many characters took more than one byte, and how many bytes were no UTF-8. */
export interface Utf8Reading {
  readonly text: string
  readonly good: number
  readonly bad: number
}

/**
 * UTF-8 by RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF. A byte that is none of it becomes U+FFFD and
 * is counted. Written here since the engine rooms know no TextDecoder.
 */
export function* utf8(bytes: Uint8Array, from: number): Generator<Progress, Utf8Reading> {
  const units = new Uint16Array(RUN + 2)
  let text = ''
  let filled = 0
  let good = 0
  let bad = 0
  let next = from + STEP
  for (let i = from; i < bytes.length; ) {
    const lead = bytes[i] ?? 0
    if (lead < 0x80) {
      units[filled++] = lead
      i += 1
    } else {
      const point = multibyte(bytes, i, lead)
      if (point < 0) {
        bad += 1
        i += 1
        units[filled++] = 0xfffd
      } else {
        good += 1
        i += point < 0x800 ? 2 : point < 0x10000 ? 3 : 4
        if (point < 0x10000) units[filled++] = point
        else {
          units[filled++] = 0xd7c0 + (point >> 10)
          units[filled++] = 0xdc00 + (point & 0x3ff)
        }
      }
    }
    if (filled >= RUN) {
      text += characters(units.subarray(0, filled))
      filled = 0
      if (i >= next) {
        next += STEP
        yield { stage: 'decoding', done: i, of: bytes.length }
      }
    }
  }
  return { text: text + characters(units.subarray(0, filled)), good, bad }
}

/** The code point that starts at `i`, or -1. */
function multibyte(bytes: Uint8Array, i: number, lead: number): number {
  const tail = (n: number): number => {
    const byte = bytes[i + n]
    return byte !== undefined && (byte & 0xc0) === 0x80 ? byte & 0x3f : -1
  }
  const [a, b, c] = [tail(1), lead >= 0xe0 ? tail(2) : 0, lead >= 0xf0 ? tail(3) : 0]
  if (a < 0 || b < 0 || c < 0) return -1
  if (lead >= 0xc2 && lead < 0xe0) return ((lead & 0x1f) << 6) | a
  if (lead >= 0xe0 && lead < 0xf0) {
    const point = ((lead & 0x0f) << 12) | (a << 6) | b
    return point < 0x800 || (point >= 0xd800 && point < 0xe000) ? -1 : point
  }
  if (lead >= 0xf0 && lead < 0xf5) {
    const point = ((lead & 0x07) << 18) | (a << 12) | (b << 6) | c
    return point < 0x10000 || point > 0x10ffff ? -1 : point
  }
  return -1
}

/** UTF-16 of either byte order; null when the bytes cannot be halves of characters. */
export function* utf16(bytes: Uint8Array, from: number, bigEndian: boolean): Generator<Progress, string | null> {
  if ((bytes.length - from) % 2 !== 0) return null
  let text = ''
  for (let at = from; at < bytes.length; at += RUN * 2) {
    const end = Math.min(at + RUN * 2, bytes.length)
    const units = new Uint16Array((end - at) / 2)
    for (let i = at; i < end; i += 2) {
      const [one, two] = [bytes[i] ?? 0, bytes[i + 1] ?? 0]
      units[(i - at) / 2] = bigEndian ? (one << 8) | two : (two << 8) | one
    }
    text += characters(units)
    if (at % STEP < RUN * 2) yield { stage: 'decoding', done: at, of: bytes.length }
  }
  return text
}

/** One byte, one character: the lower half is ASCII, the upper half is the given 128 characters. */
export function* singleByte(bytes: Uint8Array, upper: string): Generator<Progress, string> {
  const table = Uint16Array.from({ length: 256 }, (_, b) => (b < 0x80 ? b : upper.charCodeAt(b - 0x80)))
  const units = new Uint16Array(RUN)
  let text = ''
  for (let at = 0; at < bytes.length; at += RUN) {
    const end = Math.min(at + RUN, bytes.length)
    for (let i = at; i < end; i++) units[i - at] = table[bytes[i] ?? 0] ?? 0xfffd
    text += characters(units.subarray(0, end - at))
    if (at % STEP < RUN) yield { stage: 'decoding', done: at, of: bytes.length }
  }
  return text
}

/** Handed over as a whole: spreading would make a list of every piece first. */
function characters(units: Uint16Array): string {
  return Reflect.apply(String.fromCharCode, null, units)
}

import { MonthendError } from '../monthend-error.ts'
import { DEEPEST, type Tag } from './tag.ts'
import type { Progress } from './utf.ts'

const MARKUP = /<!\[CDATA\[|<(\/?)([A-Za-z][\w.-]{0,63})>/
const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ' }
const PIECE = 4096

/**
 * Reads the SGML of OFX 1.x into its OFX element: an element with text of its own may lack its end tag, one with children
 * may not. An element left open with nothing in it (`<MEMO>` before the next tag) is empty, and what followed it is moved
 * up beside it. A lone `&` or `<` is text, as banks write it.
 *
 * @param text from the header on; what stands before `<OFX>` is passed over
 * @throws MonthendError `broken-file` when an end tag has no start or the file breaks off, `too-deep`
 */
export function* readSgml(text: string): Generator<Progress, Tag> {
  const start = text.search(/<OFX>/i)
  if (start < 0) throw new MonthendError('broken-file', 'The file has an OFX header and no <OFX> element.')
  const top: Tag = { name: '', attributes: {}, text: '', children: [], row: 1 }
  const open: Tag[] = [top]
  const rows = rowCounter(text)
  let leaf: Tag | null = null
  let pending = ''
  let tokens = 0
  // A regular expression of its own: two files may be read in turns.
  const markup = new RegExp(MARKUP, 'g')
  markup.lastIndex = start
  for (let from = start; ; ) {
    const found = markup.exec(text)
    pending += withoutEntities(text.slice(from, found?.index ?? text.length))
    if (!found) break
    from = markup.lastIndex
    const [whole, slash, rawName] = found
    if (whole === '<![CDATA[') {
      const end = text.indexOf(']]>', from)
      if (end < 0) throw brokenOff('CDATA', rows(found.index))
      pending += text.slice(from, end)
      from = end + 3
      markup.lastIndex = from
      continue
    }
    const name = (rawName ?? '').toUpperCase()
    const written = pending.trim()
    pending = ''
    const current = open.at(-1) ?? top
    // Text makes the element a leaf; the next tag, whichever it is, ends it.
    if (written !== '' && current.children.length === 0 && current !== top) {
      current.text = written
      open.pop()
      leaf = current
    }
    if (slash === '') {
      leaf = null
      if (open.length > DEEPEST) throw tooDeep(rows(found.index))
      const tag: Tag = { name, attributes: {}, text: '', children: [], row: rows(found.index) }
      open.at(-1)?.children.push(tag)
      open.push(tag)
    } else if (leaf?.name === name) leaf = null
    else {
      leaf = null
      close(open, name, rows(found.index))
    }
    tokens += 1
    if (tokens % PIECE === 0) yield { stage: 'reading', done: from, of: text.length }
  }
  const ofx = top.children[0]
  if (open.length > 1 || !ofx) {
    throw brokenOff(open.at(1)?.name ?? 'OFX', rows(text.length))
  }
  return ofx
}

/** Closes the innermost open element of that name; those inside it were empty elements without an end tag. */
function close(open: Tag[], name: string, row: number): void {
  const at = open.findLastIndex((tag, i) => i > 0 && tag.name === name)
  if (at < 0) {
    throw new MonthendError(
      'broken-file',
      `Line ${row} ends <${name}>, which was never started. The file is damaged.`,
      row,
    )
  }
  for (let i = open.length - 1; i > at; i--) {
    const [inner, outer] = [open[i], open[i - 1]]
    for (const child of inner?.children.splice(0) ?? []) outer?.children.push(child)
  }
  open.length = at
}

function brokenOff(name: string, row: number): MonthendError {
  const message = `The file breaks off at line ${row}: <${name}> is never closed. Fetch it from the bank again.`
  return new MonthendError('broken-file', message, row)
}

function tooDeep(row: number): MonthendError {
  return new MonthendError('too-deep', `Elements nest too deep at line ${row} for a statement.`, row)
}

function withoutEntities(text: string): string {
  if (!text.includes('&')) return text
  return text.replace(/&(?:#(\d{1,7})|#x([0-9a-fA-F]{1,6})|([a-z]+));/g, (whole, decimal, hex, name) => {
    if (name !== undefined) return ENTITIES[name] ?? whole
    const point = decimal === undefined ? Number.parseInt(hex, 16) : Number(decimal)
    return point > 0 && point < 0x110000 && (point < 0xd800 || point > 0xdfff) ? String.fromCodePoint(point) : whole
  })
}

/** Counts lines as it goes forward, so that a file is gone through once. */
function rowCounter(text: string): (index: number) => number {
  let row = 1
  let next = text.indexOf('\n')
  return (index) => {
    // The next line end is kept: looking for it anew at each element would go through a file of one line each time.
    while (next >= 0 && next < index) {
      row += 1
      next = text.indexOf('\n', next + 1)
    }
    return row
  }
}

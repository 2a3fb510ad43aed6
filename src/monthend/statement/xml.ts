import { SaxesParser } from 'saxes'
import { MonthendError } from '../monthend-error.ts'
import { DEEPEST, type Tag } from './tag.ts'
import type { Progress } from './utf.ts'

const PIECE = 1 << 18

/**
 * Reads XML into its root element. The parser knows the five entities of XML and character references and expands no
 * others; a DOCTYPE never reaches it (OWASP, XML External Entity Prevention: disable DTDs completely).
 *
 * @throws MonthendError `hostile-file` for a DOCTYPE, `too-deep`, `broken-file` with the line where it is not sound XML
 */
export function* readXml(text: string): Generator<Progress, Tag> {
  refuseDoctype(text)
  const sound = text.trimStart()
  const skipped = newlines(text.slice(0, text.length - sound.length))
  const parser = new SaxesParser({ xmlns: false, position: true })
  const open: Tag[] = []
  let root: Tag | null = null
  const rowNow = (): number => parser.line + skipped
  parser.on('error', (error) => {
    const why = error.message.replace(/^\d+:\d+:\s*/, '').replace(/\.$/, '')
    const row = rowNow()
    const where = `The file is not sound XML at line ${row} (${why}).`
    throw new MonthendError('broken-file', `${where} It may be cut off: fetch it from the bank again.`, row)
  })
  parser.on('opentag', (node) => {
    if (open.length >= DEEPEST) {
      throw new MonthendError('too-deep', `Elements nest too deep at line ${rowNow()} for a statement.`, rowNow())
    }
    const name = node.name.slice(node.name.indexOf(':') + 1)
    const tag: Tag = { name, attributes: node.attributes, text: '', children: [], row: rowNow() }
    open.at(-1)?.children.push(tag)
    root ??= tag
    open.push(tag)
  })
  const addText = (piece: string): void => {
    const tag = open.at(-1)
    if (tag) tag.text += piece
  }
  parser.on('text', addText)
  parser.on('cdata', addText)
  parser.on('closetag', () => {
    const tag = open.pop()
    if (tag) tag.text = tag.text.trim()
  })
  for (let at = 0; at < sound.length; at += PIECE) {
    parser.write(sound.slice(at, at + PIECE))
    yield { stage: 'reading', done: at, of: sound.length }
  }
  parser.close()
  if (root === null) throw new MonthendError('broken-file', 'The file holds no XML element.')
  return root
}

/**
 * Refuses a text that declares a document type or entities, in any case and however it was encoded.
 *
 * @throws MonthendError `hostile-file`
 */
export function refuseDoctype(text: string): void {
  const found = /<!\s*(?:doctype|entity)/i.exec(text)
  if (!found) return
  const row = newlines(text.slice(0, found.index)) + 1
  throw new MonthendError(
    'hostile-file',
    `Line ${row} declares a document type (<!DOCTYPE>), which no bank's statement needs and attacks are made of. It was not read.`,
    row,
  )
}

function newlines(text: string): number {
  let count = 0
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) count += 1
  return count
}

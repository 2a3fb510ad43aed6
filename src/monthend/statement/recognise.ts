import { MonthendError } from '../monthend-error.ts'

/** A format this library reads. */
export type StatementFormat = 'ofx' | 'camt' | 'csv'

// How files begin that people take for a statement, with what they are.
const NOT_TEXT: readonly { readonly start: string; readonly what: string }[] = [
  { start: '%PDF', what: 'a PDF document' },
  { start: 'PK\u0003\u0004', what: 'a zip archive or a spreadsheet (XLSX, ODS)' },
  { start: 'PK\u0005\u0006', what: 'an empty zip archive' },
  { start: '\u00D0\u00CF\u0011\u00E0', what: 'an old spreadsheet or document (XLS, DOC)' },
  { start: '\u001F\u008B', what: 'a compressed file (gzip)' },
  { start: '\u0089PNG', what: 'a picture' },
  { start: '\u00FF\u00D8\u00FF', what: 'a picture' },
  { start: '{\\rtf', what: 'a text document (RTF)' },
]

/**
 * Refuses a file that is no text at all, by its first bytes.
 *
 * @throws MonthendError `not-a-statement`, saying what the file is; `empty-file`
 */
export function refuseOtherFiles(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new MonthendError('empty-file', 'The file is empty. Fetch it from the bank again.')
  const head = String.fromCharCode(...bytes.subarray(0, 1024)).trimStart()
  const found = NOT_TEXT.find(({ start }) => head.startsWith(start))
  if (!found) return
  const advice = 'Ask the bank for OFX, camt.053 or CSV'
  const more = found.start.startsWith('PK') ? ', or unpack the archive, or save the spreadsheet as CSV' : ''
  throw new MonthendError('not-a-statement', `This is ${found.what}, not a statement to be read. ${advice}${more}.`)
}

/** The encoding a file declares for itself: an XML declaration, or the header of OFX 1.x. Undefined when none. */
export function declaredEncoding(bytes: Uint8Array): string | undefined {
  const head = String.fromCharCode(...bytes.subarray(0, 1024))
  const xml = /<\?xml\b[^>]*?\bencoding\s*=\s*["']([\w.:-]+)["']/i.exec(head)
  if (xml) return xml[1]
  if (!/OFXHEADER\s*:/i.test(head)) return undefined
  const encoding = /\bENCODING\s*:\s*([\w-]+)/i.exec(head)?.[1] ?? ''
  const charset = /\bCHARSET\s*:\s*([\w-]+)/i.exec(head)?.[1] ?? ''
  if (/^(?:unicode|utf-?8)$/i.test(encoding)) return 'utf-8'
  return /^(?:none|)$/i.test(charset) ? undefined : charset
}

/**
 * Tells the format of a text: OFX by its header or root, camt by its XML, anything else that has lines is taken for CSV.
 *
 * @throws MonthendError `empty-file`, `not-a-statement` for a web page or an XML file of another kind
 */
export function recognise(text: string): StatementFormat {
  const head = text.slice(0, 4096).trimStart()
  if (head === '' && text.trim() === '') {
    throw new MonthendError('empty-file', 'The file holds nothing but blanks. Fetch it from the bank again.')
  }
  if (
    /^(?:<!doctype\s+html|<html|<head|<body|<table|<div)\b/i.test(head) ||
    /^<\?xml[^>]*>\s*<(?:!doctype )?html/i.test(head)
  ) {
    const advice = 'It may be a sign-in or error page: sign in to the bank and fetch the file again.'
    throw new MonthendError('not-a-statement', `This is a web page (HTML), whatever its name says. ${advice}`)
  }
  if (/OFXHEADER\s*[:=]|<\?OFX\b/i.test(head) || /^(?:<\?xml[^>]*>\s*)?<OFX>/i.test(head)) return 'ofx'
  if (head.startsWith('<')) return 'camt'
  return 'csv'
}

import { readFileSync } from 'node:fs'
import type { Html } from './html.ts'
import type { Ledger } from './ledger.ts'
import { ShopError } from './model.ts'

/** A request as the shops' routes see it. */
export interface ShopRequest {
  readonly method: string
  readonly path: string
  readonly query: URLSearchParams
  /** The fields of a posted form; empty for other requests. */
  readonly form: URLSearchParams
  /** The body as it came. */
  readonly body: string
  readonly cookie: string
}

/** What the shops share while the server runs. */
export interface ShopContext {
  readonly ledger: Ledger
  /** How long the late total of Lunaire takes, in milliseconds. */
  readonly delayMs: number
}

/** An answer; it is sent after `delayMs`, at once if that is missing. */
export interface Reply {
  readonly status: number
  readonly headers: Readonly<Record<string, string>>
  readonly body: string
  readonly delayMs?: number
}

/** Answers a request, or gives null when the shop has no such page. */
export type ShopRoutes = (request: ShopRequest, context: ShopContext) => Reply | null

/** An HTML page. */
export function page(content: Html, status = 200, headers: Readonly<Record<string, string>> = {}): Reply {
  return { status, headers: { 'content-type': 'text/html; charset=utf-8', ...headers }, body: content.text }
}

/** Sends the browser on with a GET (303), as a classic shop does after a POST. */
export function seeOther(location: string, headers: Readonly<Record<string, string>> = {}): Reply {
  return { status: 303, headers: { location, ...headers }, body: '' }
}

/** JSON for a page's script. */
export function json(data: unknown, status = 200): Reply {
  return { status, headers: { 'content-type': 'application/json; charset=utf-8' }, body: JSON.stringify(data) }
}

/** Reads a style sheet or script that lies beside the caller; the answer is the same each time. */
export function asset(file: URL): Reply {
  const type = file.pathname.endsWith('.css') ? 'text/css' : 'text/javascript'
  return { status: 200, headers: { 'content-type': `${type}; charset=utf-8` }, body: readFileSync(file, 'utf8') }
}

/**
 * A text of a JSON object.
 *
 * @throws ShopError `bad-request` when the body is no JSON object or the field no text
 */
export function textOf(body: string, field: string): string {
  const value = readObject(body)[field]
  if (typeof value !== 'string') throw new ShopError('bad-request', `The request needs a text called “${field}”.`)
  return value
}

function readObject(body: string): Readonly<Record<string, unknown>> {
  try {
    const data: unknown = JSON.parse(body)
    if (typeof data === 'object' && data !== null) return Object.fromEntries(Object.entries(data))
  } catch {
    // Said below, in a sentence, as for any other body that is no object.
  }
  throw new ShopError('bad-request', 'The request needs a JSON object as its body.')
}

/** Markup that is already safe to send. */
export class Html {
  readonly text: string

  constructor(text: string) {
    this.text = text
  }
}

/** What may stand in a template: markup as it is, text escaped, lists joined; null and false leave nothing. */
export type HtmlValue = Html | string | number | null | false | readonly HtmlValue[]

/**
 * Writes markup; every text put in is escaped, in elements and in quoted attributes alike.
 *
 * @example html`<p title="${'a "b"'}">${'<'}</p>`.text // '<p title="a &quot;b&quot;">&lt;</p>'
 */
export function html(strings: TemplateStringsArray, ...values: readonly HtmlValue[]): Html {
  return new Html(strings.map((text, index) => text + write(values[index] ?? null)).join(''))
}

/** Takes markup of our own, such as a drawing, as it is. */
export function markup(text: string): Html {
  return new Html(text)
}

/** Data for a `<script type="application/json">`; no text in it can end the element. */
export function jsonForScript(data: unknown): Html {
  return new Html(JSON.stringify(data).replaceAll('<', '\\u003c'))
}

/** A drawing as an icon the page carries itself, so that no browser asks for one. */
export function iconLink(svg: string): Html {
  const source = svg.replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"')
  return html`<link rel="icon" href="data:image/svg+xml,${encodeURIComponent(source)}">`
}

function write(value: HtmlValue): string {
  if (value === null || value === false) return ''
  if (value instanceof Html) return value.text
  if (typeof value === 'string' || typeof value === 'number') return escapeText(String(value))
  return value.map(write).join('')
}

function escapeText(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}

/** One page of the hostile shop. */
export interface HostilePage {
  /** Markup behind the summary of the order. `ORDER` stands for the address that takes it. */
  readonly body: string
  /** A script that runs behind the markup; it may call `order()`, which sends the order by fetch. */
  readonly script?: string
  /** A script in the head, before anything is drawn. */
  readonly early?: string
  readonly style?: string
  readonly headers?: Readonly<Record<string, string>>
  /** Without the page's frame of summary and total: the body is all there is. */
  readonly bare?: boolean
}

export const TOTAL = '48.20'

const SUMMARY = `<table>
<tr><td>Slate coaster set</td><td>$38.00</td></tr>
<tr><td>Shipping</td><td>$7.00</td></tr>
<tr><td>Tax</td><td>$3.20</td></tr>
<tr><th>Order total</th><th>CA$${TOTAL}</th></tr>
</table>`

/** The whole document of a page. */
export function document(name: string, page: HostilePage): string {
  const order = `/order?from=${encodeURIComponent(name)}`
  const fill = (text: string): string => text.replaceAll('ORDER', order)
  const tools = `const order = () => fetch('${order}', { method: 'POST', keepalive: true });
const tell = (what) => navigator.sendBeacon('/tell', what);`
  return `<!doctype html><html lang="en-CA"><head><meta charset="utf-8"><title>Checkout - Quarry Lane</title>
<style>body{font:16px sans-serif;margin:24px} form,#press{margin-block:12px} ${page.style ?? ''}</style>
<script>${tools}${fill(page.early ?? '')}</script></head><body>
${page.bare ? '' : `<h1>Checkout: review and pay</h1><p>Payment: card ending 4417</p>${SUMMARY}`}
${fill(page.body)}
<script>${fill(page.script ?? '')}</script></body></html>`
}

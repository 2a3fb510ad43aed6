/** How a shop is named in the book: its host name without `www.`. Null for what is not a web page. */
export function shopOf(url: string): string | null {
  const parsed = webUrl(url)
  return parsed ? parsed.hostname.replace(/^www\./, '') : null
}

/** Scheme and host without a port, as match patterns want it. Null for what is not a web page. */
export function originOf(url: string): string | null {
  const parsed = webUrl(url)
  return parsed ? `${parsed.protocol}//${parsed.hostname}` : null
}

function webUrl(url: string): URL | null {
  if (!URL.canParse(url)) return null
  const parsed = new URL(url)
  return parsed.protocol === 'https:' || parsed.protocol === 'http:' ? parsed : null
}

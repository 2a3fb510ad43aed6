/** The tab named in the popup's own address (`?tab=12`), or null when it was opened from the toolbar. */
export function tabOfAddress(search: string): number | null {
  const named = new URLSearchParams(search).get('tab')
  return named !== null && /^\d{1,10}$/.test(named) ? Number(named) : null
}

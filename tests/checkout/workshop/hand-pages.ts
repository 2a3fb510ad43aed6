import { readdir } from 'node:fs/promises'
import { documentOf, type ShopPage } from '../pages/page.ts'
import { chanceOf, type Half, halfOf, keptFor } from './chance.ts'
import { mutations } from './mutate-document.ts'
import type { Expected } from './plan.ts'

/** A page written by hand, with the file it stands in. */
export interface HandPage {
  readonly group: string
  readonly page: ShopPage
}

/** All pages written by hand, by file. */
export async function handPages(): Promise<HandPage[]> {
  const folder = new URL('../pages/', import.meta.url)
  const files = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith('.ts')).sort()
  const pages: HandPage[] = []
  for (const file of files) {
    const module: Record<string, unknown> = await import(new URL(file, folder).href)
    for (const list of Object.values(module)) {
      if (isPages(list)) pages.push(...list.map((page) => ({ group: file.replace(/\.ts$/, ''), page })))
    }
  }
  return pages
}

function isPages(value: unknown): value is readonly ShopPage[] {
  return Array.isArray(value) && value.every((page) => typeof page?.body === 'string' && 'total' in page)
}

export function expectedOf(page: ShopPage): Expected {
  return {
    stages: [page.stage],
    total: page.total,
    orderNumber: page.orderNumber ?? null,
    placeOrder: page.placeOrder ?? [],
  }
}

/**
 * A page written by hand, changed by one to three mutations. Pages with style sheets of their own keep out: a rule that
 * hides something does not reach into the shadow root that a mutation puts it in.
 */
export function mutatedHandPage(
  { group, page }: HandPage,
  round: number,
): { document: Document; half: Half; seed: string; traits: string[] } | null {
  if (page.head?.includes('<style') || page.body.includes('<style') || page.prepare) return null
  const seed = `${group} ${page.name} ${round}`
  const chance = chanceOf(seed)
  const half = halfOf(seed)
  const document = documentOf(page)
  const chosen = chance.shuffled(keptFor(half, mutations)).slice(0, chance.int(1, 3))
  for (const each of chosen) each.mutate(document, chance)
  return { document, half, seed, traits: chosen.map((each) => each.name) }
}

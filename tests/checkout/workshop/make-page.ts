import { JSDOM } from 'jsdom'
import { chanceOf, type Half, halfOf, keptFor } from './chance.ts'
import { coinOf } from './coin.ts'
import { distract } from './distract.ts'
import { mutations } from './mutate-document.ts'
import { planMutations } from './mutate-plan.ts'
import type { Expected, Kind, Scenario } from './plan.ts'
import { renderingOf } from './render.ts'
import { checkouts } from './scenarios-checkout.ts'
import { elsewhere } from './scenarios-elsewhere.ts'
import { steps } from './scenarios-steps.ts'
import { shopOf } from './shop.ts'
import { speeches } from './speech/index.ts'

/** A page of the workshop: made from its seed alone, and what a person reading it would say. */
export interface MadePage {
  readonly seed: string
  readonly half: Half
  readonly name: string
  readonly kind: Kind
  readonly language: string
  readonly traits: readonly string[]
  readonly url: string
  readonly document: Document
  readonly expected: Expected
}

export const scenarios: readonly Scenario[] = [...checkouts, ...steps, ...elsewhere]

/**
 * Makes the page of a seed: scenario, language, money, words, layout, distractions and mutations all follow from it.
 *
 * @example makePage('17').expected.total // '131.80 USD'
 */
export function makePage(seed: string): MadePage {
  const chance = chanceOf(seed)
  const half = halfOf(seed)
  const scenario = chance.pick(scenarios)
  const speech = chance.pick(speeches)
  const coin = coinOf(chance, speech.lang, speech.currency, half === 'unseen')
  const shop = shopOf(chance, speech, coin, half)
  let plan = scenario.plan(shop)
  const planned = chance
    .shuffled(keptFor(half, planMutations))
    .filter((each) => each.fits(plan))
    .slice(0, chance.int(0, 2))
  for (const each of planned) plan = each.mutate(plan, shop, chance)
  const saysLanguage = coin.isShared || chance.often(0.9)
  const manner = renderingOf(chance, shop, coin, half)
  const beside = distract(chance, shop, half)
  const middle = chance.shuffled([
    ...plan.middle.map(manner.show),
    ...beside.html.filter((html) => !/^<(?:header|footer)/.test(html)),
  ])
  const body = [
    ...beside.html.filter((html) => html.startsWith('<header')),
    '<main>',
    ...plan.top.map(manner.show),
    ...middle,
    ...plan.end.map(manner.show),
    '</main>',
    ...beside.html.filter((html) => html.startsWith('<footer')),
  ]
  const url = `https://lanternhouse.example${plan.path}`
  const title = plan.title ?? 'Lanternhouse'
  const { document } = new JSDOM(
    `<!doctype html><html${saysLanguage ? ` lang="${speech.lang}"` : ''}><head><title>${title}</title></head><body>${body.join('\n')}</body></html>`,
    { url },
  ).window
  const changes = chance.shuffled(keptFor(half, mutations)).slice(0, chance.int(0, 3))
  for (const change of changes) change.mutate(document, chance)
  const sellsBeside = beside.traits.some((trait) => trait.includes('bundle'))
  const orders = [...plan.top, ...plan.end].flatMap((block) =>
    block.kind === 'buttons' ? block.buttons.filter((each) => each.orders).map((each) => each.text) : [],
  )
  return {
    seed,
    half,
    name: scenario.name,
    kind: scenario.kind,
    language: speech.lang,
    traits: [
      ...(plan.traits ?? []),
      ...coin.traits,
      ...manner.traits,
      ...planned.map((each) => each.name),
      ...(saysLanguage ? [] : ['language not said']),
      ...beside.traits,
      ...changes.map((each) => each.name),
    ],
    url,
    document,
    expected: {
      // Things to buy at once make any page one of goods.
      stages: sellsBeside && plan.stages.includes('other') ? [...plan.stages, 'product'] : plan.stages,
      total: plan.total === null ? null : coin.plain(plan.total),
      orderNumber: plan.orderNumber ?? null,
      placeOrder: orders.sort(),
    },
  }
}

/** Seeds of one half, in order: `1`, `2`, ... as far as they fall into it. */
export function seedsOf(half: Half, count: number): string[] {
  const seeds: string[] = []
  for (let at = 1; seeds.length < count; at += 1) if (halfOf(String(at)) === half) seeds.push(String(at))
  return seeds
}

// npm run accuracy -- [pages of each half] [seen]: how often the reader is right on pages of the workshop in
// tests/checkout: those written by hand as they stand, the same mutated, and pages made from seeds. With `seen` the half
// kept apart is left alone. Ends with 1 where the half that the reader is tuned on misses a goal.
import { readCheckout } from '../src/checkout/read-checkout.ts'
import { documentOf, type ShopPage } from '../tests/checkout/pages/page.ts'
import type { Half } from '../tests/checkout/workshop/chance.ts'
import { expectedOf, handPages, mutatedHandPage } from '../tests/checkout/workshop/hand-pages.ts'
import { judge, type Verdict } from '../tests/checkout/workshop/judge.ts'
import { makePage, seedsOf } from '../tests/checkout/workshop/make-page.ts'
import type { Expected } from '../tests/checkout/workshop/plan.ts'
import { count, emptyTally, goalsOf, Tallies } from '../tests/checkout/workshop/tally.ts'
import { comparePeers } from '../tests/published/price-peer.ts'

const pages = Number(process.argv.slice(2).find((word) => /^\d+$/.test(word)) ?? 700)
const halves: readonly Half[] = process.argv.includes('seen') ? ['seen'] : ['seen', 'unseen']

const bySource = new Tallies()
const byKind = new Tallies()
const byLanguage = new Tallies()
const byTrait = new Tallies()
const made = { seen: emptyTally(), unseen: emptyTally() }
const worst: { readonly weight: number; readonly line: string }[] = []

for (const hand of await handPages()) {
  const expected = expectedOf(hand.page)
  const verdict = judge(readCheckout(documentOf(hand.page), hints(hand.page)), expected)
  bySource.add('written by hand', verdict, expected)
  note(`${hand.group}: ${hand.page.name}`, verdict, expected)
  for (const round of [1]) {
    const mutated = mutatedHandPage(hand, round)
    if (!mutated || !halves.includes(mutated.half)) continue
    const again = judge(readCheckout(mutated.document, hints(hand.page)), expected)
    bySource.add(`written by hand, mutated, ${mutated.half} half`, again, expected)
    if (mutated.half === 'seen') note(`${mutated.seed} (${mutated.traits.join(', ')})`, again, expected)
  }
}
for (const half of halves) {
  for (const seed of seedsOf(half, pages)) {
    const page = makePage(seed)
    const verdict = judge(readCheckout(page.document, { url: page.url }), page.expected)
    count(made[half], verdict, page.expected)
    bySource.add(`made from seeds, ${half} half`, verdict, page.expected)
    byKind.add(`${page.kind}, ${half}`, verdict, page.expected)
    byLanguage.add(`${page.language}, ${half}`, verdict, page.expected)
    for (const trait of page.traits) byTrait.add(`${trait}, ${half}`, verdict, page.expected)
    // The half kept apart is counted, never shown: nobody can tune to what nobody sees.
    if (half === 'seen')
      note(
        `seed ${seed}, ${page.language}, ${page.kind}: ${page.name} (${page.traits.join(', ')})`,
        verdict,
        page.expected,
      )
    page.document.defaultView?.close()
  }
}

byKind.print('kind')
byLanguage.print('language')
byTrait.print('trait')
bySource.print('all')
let met = true
for (const half of halves) {
  console.log(`\nGoals, pages made from seeds, ${half} half:`)
  for (const goal of goalsOf(made[half])) {
    console.log(`  ${goal.met ? 'met   ' : 'MISSED'} ${goal.goal}: ${goal.reached}`)
    if (half === 'seen' && !goal.met) met = false
  }
}
const peers = comparePeers()
for (const [name, score] of Object.entries(peers)) {
  const { rows, right, none, wrong } = score
  console.log(
    `${name === 'ours' ? '\nPublished price texts, ours: ' : 'npm parse-price: '}${right} of ${rows} right, ${none} not read, ${wrong} wrong`,
  )
}
worst.sort((a, b) => b.weight - a.weight)
if (worst.length > 0) console.log(`\nThe worst of ${worst.length} pages not read right:`)
for (const { line } of worst.slice(0, 40)) console.log(line)
process.exitCode = met ? 0 : 1

function hints(page: ShopPage): { url: string; currency?: string } {
  return page.currency ? { url: page.url, currency: page.currency } : { url: page.url }
}

function note(name: string, verdict: Verdict, expected: Expected): void {
  const { read } = verdict
  const says: string[] = []
  if (verdict.total !== 'right') says.push(`total read ${read.total}, is ${expected.total} (${verdict.total})`)
  if (!verdict.controls)
    says.push(`controls read ${JSON.stringify(read.placeOrder)}, are ${JSON.stringify(expected.placeOrder)}`)
  if (!verdict.number) says.push(`order number read ${read.orderNumber}, is ${expected.orderNumber}`)
  if (!verdict.stage) says.push(`stage read ${read.stage}, is ${expected.stages.join(' or ')}`)
  const weight = { wrong: 8, invented: 8, missed: 4, right: 0 }[verdict.total] + says.length
  if (says.length > 0) worst.push({ weight, line: `- ${name}\n    ${says.join('\n    ')}` })
}

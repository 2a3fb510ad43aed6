import type { Chance } from './chance.ts'
import type { Block, Plan, Shop, SumRow } from './plan.ts'

/** Changes to what a shop plans that leave the meaning: order of rows, copies, rows beside the point, fewer hints. */
export interface PlanMutation {
  readonly name: string
  readonly fits: (plan: Plan) => boolean
  readonly mutate: (plan: Plan, shop: Shop, chance: Chance) => Plan
}

type Sums = Extract<Block, { kind: 'sums' }>

const hasSums = (plan: Plan): boolean => plan.middle.some((block) => block.kind === 'sums')

function onSums(plan: Plan, change: (sums: Sums) => readonly SumRow[]): Plan {
  return {
    ...plan,
    middle: plan.middle.map((block) => (block.kind === 'sums' ? { kind: 'sums', rows: change(block) } : block)),
  }
}

const before = (text: string): string => (text.split('{}')[0] ?? '').replace(/[\s:：]+$/u, '')

/** The last one is kept for the unseen half. */
export const planMutations: readonly PlanMutation[] = [
  {
    name: 'parts in another order',
    fits: hasSums,
    mutate: (plan, _, chance) =>
      onSums(plan, ({ rows }) => {
        const end = rows.findIndex((row) => row.strong)
        return end < 2 ? rows : [...chance.shuffled(rows.slice(0, end)), ...rows.slice(end)]
      }),
  },
  {
    name: 'sums shown twice',
    fits: hasSums,
    mutate: (plan) => ({ ...plan, middle: [...plan.middle, ...plan.middle.filter((block) => block.kind === 'sums')] }),
  },
  {
    name: 'a saving among the sums',
    fits: hasSums,
    mutate: (plan, shop, chance) =>
      onSums(plan, ({ rows }) => {
        const label = before(shop.list('saved').find((each) => /\{\}$/u.test(each) && each.length > 4) ?? '')
        if (label === '') return rows
        const row: SumRow = { label, amount: shop.price(100, 2000) }
        return chance.often(0.5) ? [...rows, row] : [row, ...rows]
      }),
  },
  {
    name: 'rows of words among the sums',
    fits: hasSums,
    mutate: (plan, shop) =>
      onSums(plan, ({ rows }) => {
        const [ways = '', one = ''] = shop.list('ways')
        return [
          { label: ways, amount: null, words: one },
          { label: shop.say('quantity'), amount: null, words: '3' },
          ...rows,
        ]
      }),
  },
  {
    name: 'no headings',
    fits: (plan) => plan.stages[0] === 'checkout',
    mutate: (plan) => ({ ...plan, title: '', top: plan.top.filter((block) => block.kind !== 'heading') }),
  },
  {
    name: 'an address that says nothing',
    fits: (plan) => plan.stages[0] === 'checkout' && plan.end.some(ordersIn),
    mutate: (plan) => ({ ...plan, path: '/s/4f81c?step=4' }),
  },
  {
    name: 'goods and sums in one table',
    fits: (plan) =>
      plan.middle.filter((block) => block.kind === 'sums').length === 1 &&
      plan.middle.filter((block) => block.kind === 'lines').length === 1,
    mutate: (plan) => {
      const lines = plan.middle.flatMap((block) => (block.kind === 'lines' ? block.lines : []))
      const rows = plan.middle.flatMap((block) => (block.kind === 'sums' ? block.rows : []))
      const rest = plan.middle.filter((block) => block.kind !== 'lines' && block.kind !== 'sums')
      return { ...plan, middle: [{ kind: 'ledger', lines, rows }, ...rest] }
    },
  },
  {
    name: 'total before its parts',
    fits: (plan) => hasSums(plan) && plan.total !== null,
    mutate: (plan) =>
      onSums(plan, ({ rows }) =>
        rows.filter((row) => row.strong).length === 1 && rows.length > 2 && rows.every((row) => (row.amount ?? 0) >= 0)
          ? [...rows.filter((row) => row.strong), ...rows.filter((row) => !row.strong)]
          : rows,
      ),
  },
]

function ordersIn(block: Block): boolean {
  return block.kind === 'buttons' && block.buttons.some((each) => each.orders)
}

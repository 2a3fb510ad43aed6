import { type EnvelopeWish, type Importance, type Pot, type PotId, type PotPlan, potId } from '../../src/index.ts'

/** A pot of the demo household and what its envelope and card side should hold on the day the demo is opened. */
export interface DemoPot {
  readonly pot: Pot & { readonly fill: { readonly cash: number; readonly card: number } }
  /** In cents, today; the opening amounts are worked back from these. */
  readonly now: { readonly cash: number; readonly card: number }
  readonly plan: DemoPlan
}

/** What is planned for it; a goal is due so many pays after the latest one, and a few days. */
export interface DemoPlan extends Pick<PotPlan, 'importance' | 'split' | 'wish' | 'reserveMonths'> {
  readonly goal?: { readonly target: number; readonly paysAhead: number; readonly everyYears?: number }
}

const everyday = { kind: 'everyday', rule: 'block', sides: 'both', floor: 0, archived: false } as const

const CAN_WAIT: DemoPlan = { importance: 3 }

/** The pots of an invented household, the Ravndal-Okafors, in the order they keep them. Amounts in cents. */
export const demoPots: readonly DemoPot[] = [
  row('groceries', 'Groceries', { cash: 18_000, card: 3_000 }, { cash: 17_465, card: 3_180 }, {}, needed('learned')),
  row(
    'market',
    'Saturday market',
    { cash: 5_500, card: 0 },
    { cash: 4_500, card: 0 },
    { sides: 'cash' },
    needed(undefined, 'small'),
  ),
  row('piano-lessons', 'Piano lessons', { cash: 3_500, card: 2_500 }, { cash: 3_800, card: 1_250 }),
  row('garden', 'Garden', { cash: 1_000, card: 2_500 }, { cash: 2_000, card: 3_635 }, { rule: 'warn' }, CAN_WAIT),
  row('paper', 'Paper and school', { cash: 0, card: 2_500 }, { cash: 1_500, card: 6_240 }, { floor: 2_000 }),
  row('eating-out', 'Eating out', { cash: 3_500, card: 0 }, { cash: 2_850, card: 1_575 }, { rule: 'warn' }, CAN_WAIT),
  row('household', 'Household things', { cash: 900, card: 3_000 }, { cash: 1_120, card: 9_410 }, {}, needed()),
  row('clothes', 'Clothes', { cash: 0, card: 3_500 }, { cash: 2_000, card: 11_245 }, { rule: 'allow' }, CAN_WAIT),
  row(
    'bicycle',
    'Bicycle service',
    { cash: 0, card: 1_000 },
    { cash: 0, card: 9_750 },
    { kind: 'sinking', sides: 'card' },
    { goal: { target: 15_000, paysAhead: 5 } },
  ),
  row(
    'winter-tyres',
    'Winter tyres',
    { cash: 0, card: 6_000 },
    { cash: 0, card: 42_000 },
    { kind: 'sinking', sides: 'card' },
    { goal: { target: 60_000, paysAhead: 3 } },
  ),
  row(
    'presents',
    'Presents',
    { cash: 1_500, card: 1_000 },
    { cash: 14_000, card: 8_655 },
    { kind: 'sinking' },
    { goal: { target: 40_000, paysAhead: 7, everyYears: 1 } },
  ),
  row(
    'reserve',
    'Reserve',
    { cash: 0, card: 10_000 },
    { cash: 20_000, card: 184_000 },
    { kind: 'reserve', floor: 150_000 },
    { reserveMonths: 3, wish: 'large' },
  ),
]

function row(
  id: string,
  name: string,
  fill: { cash: number; card: number },
  now: { cash: number; card: number },
  changes: Partial<Pick<Pot, 'kind' | 'rule' | 'sides' | 'floor'>> = {},
  plan: DemoPlan = {},
): DemoPot {
  return { pot: { id: potId(id), name, ...everyday, ...changes, fill }, now, plan }
}

function needed(split?: PotPlan['split'], wish?: EnvelopeWish): DemoPlan {
  const importance: Importance = 1
  return { importance, ...(split ? { split } : {}), ...(wish ? { wish } : {}) }
}

/** One pot's figures in cents. */
export type Cents = Map<PotId, { cash: number; card: number }>

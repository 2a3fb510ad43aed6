import type { CurrencyMark } from '../money/currency-names.ts'
import { digitByDigit, isDigit } from './digit-run.ts'
import type { Token } from './lexer.ts'
import { isGarbled, isReference } from './no-amount.ts'

/** A token with its place on the page. */
export interface PlacedToken extends Token {
  readonly leaf: number
  readonly first: boolean
  readonly last: boolean
  /** Its leaf holds nothing but pieces of an amount. */
  readonly fragment: boolean
  /** Two digits that stand where cents stand: raised, small, or glued to the whole. */
  readonly cents: boolean
  /** How far it is from the token before: 0 touching, 1 a space, 2 parts of one small box, 9 apart. */
  readonly reach: number
}

/** What was found: tokens `from` up to, not including, `to`. */
export interface Find {
  readonly from: number
  readonly to: number
  /** Two amounts with a dash between: a range is nobody's price. */
  readonly range: boolean
  readonly money: {
    readonly number: string
    readonly negative: boolean
    readonly marks: readonly CurrencyMark[]
    readonly bare: 'no' | 'decimal' | 'integer'
  }
}

const WHOLE = /^\d+(?:[.,' ٬]\d{3})*$/u
const CENTS = /^\d{2}$/
const BARE_DECIMAL = /^\d{1,3}(?:[.,' ٬]\d{3})*[.,٫]\d{2}$|^\d+[.,٫]\d{2}$/u

const DASHED = /^\d+(?:[.,' ٬]\d{3})*[.,:] ?[-–—]+$/u

/** The amount that starts at token `at`, whichever way it is split over nodes; null when none starts there. */
export function findFigure(tokens: readonly PlacedToken[], at: number, end: number): Find | null {
  const one = readOne(tokens, at, end)
  if (!one) return null
  const dash = tokens[one.to]
  const after = tokens[one.to + 1]
  if (dash?.kind === 'sign' && after && dash.text !== '+' && !dash.first && !after.first && dash.gap === after.gap) {
    const other = readOne(tokens, one.to + 1, end)
    if (other) return { ...other, from: at, range: true }
  }
  return one
}

function readOne(tokens: readonly PlacedToken[], at: number, end: number): Find | null {
  const head = readHead(tokens, at, end)
  if (!head) return null
  const amount: Amount = { number: head.number, negative: head.negative, marks: head.marks, dashed: false }
  let next = head.next
  for (let taken = 1; taken > 0 && next < end; next += taken) taken = extend(tokens, next, end, amount)
  const bare = amount.marks.length > 0 ? 'no' : bareness(tokens, head.start, next, amount)
  if (isGarbled(tokens, next, end)) return null
  const percent = next < end && tokens[next]?.kind === 'percent' && tokens[next]?.reach !== 9
  return bare === null || percent
    ? null
    : {
        from: at,
        to: next,
        range: false,
        money: { number: amount.number, negative: amount.negative, marks: amount.marks, bare },
      }
}

/** An amount as far as it has been read. */
interface Amount {
  number: string
  negative: boolean
  readonly marks: CurrencyMark[]
  /** A dash stands for the cents: `300,-` is money even without a mark. */
  dashed: boolean
}

/** Takes what continues the amount - cents, a mark, a minus behind - and says how many tokens that were. */
function extend(tokens: readonly PlacedToken[], at: number, end: number, amount: Amount): number {
  const token = tokens[at]
  if (!token || token.reach > 2) return 0
  const following = at + 1 < end ? tokens[at + 1] : undefined
  const whole = WHOLE.test(amount.number)
  const cents = (digits: string): void => {
    amount.number = `${amount.number.replace(/\D/g, '')}.${digits}`
  }
  if (token.kind === 'number' && whole && amount.marks.length > 0 && areMinor(tokens, at, following)) {
    cents(token.text.padStart(2, '0'))
    return 2
  }
  if (token.kind === 'number' && token.first) {
    if (whole && areCents(tokens, at) && (amount.marks.length > 0 || isMark(following))) {
      cents(token.text)
      return 1
    }
    return 0
  }
  // A dash for the cents, in a node of its own: `300` `,-`.
  const parts = token.kind === 'point' || token.text === ':'
  if (parts && following?.kind === 'sign' && following.reach === 0 && whole) {
    amount.dashed = true
    return 2
  }
  if (token.kind === 'point' && following?.kind === 'number' && following.reach <= 2 && whole) {
    if (!token.first && !following.first) return 0
    cents(following.text)
    return 2
  }
  if (token.kind === 'sign' && token.text === '-' && token.reach === 0) {
    // `5.00-`, `5.00- €`; not `5-10`.
    if (!token.last && !(isMark(following) && tokens[at + 2]?.kind !== 'number')) return 0
    amount.negative = true
    return 1
  }
  if (!token.money || !(isMark(token) || isMarkBehind(tokens, at)) || !takesMark(tokens, at, end, amount.marks))
    return 0
  amount.marks.push(token.money)
  // `55 €` with the cents after the sign: `55€90`.
  if (following?.kind !== 'number' || !CENTS.test(following.text) || following.reach > 0 || !whole) return 1
  cents(following.text)
  return 2
}

// Hundredths by name, behind the amount's mark: `55 zł 20 gr`, `1 055 руб. 20 коп.`
const MINOR = /^(?:gr|groszy|коп|копеек|коп[іи]йок|h|hal|ban[iy]|öre|øre|ct|cents?|kr?š|стотинки|ст)\.?$/iu

function areMinor(tokens: readonly PlacedToken[], at: number, unit: PlacedToken | undefined): boolean {
  const token = tokens[at]
  if (!token || !unit || !/^\d{1,2}$/.test(token.text) || token.reach > 1 || unit.reach > 1) return false
  return unit.kind === 'word' && MINOR.test(unit.text) && isMark(tokens[at - 1])
}

/** Two digits where cents stand: raised, small, glued to the whole, or the third box after a sign's and a whole's own. */
function areCents(tokens: readonly PlacedToken[], at: number): boolean {
  const token = tokens[at]
  if (!token || token.cents) return token !== undefined
  const [sign, whole] = [tokens[at - 2], tokens[at - 1]]
  const apart = [sign, whole, token].every((each) => each?.first && each.last)
  return CENTS.test(token.text) && token.reach === 2 && apart && isMark(sign)
}

interface Head {
  readonly start: number
  readonly next: number
  readonly number: string
  readonly negative: boolean
  readonly marks: CurrencyMark[]
}

/** Sign, currency before the number, and the number itself. */
function readHead(tokens: readonly PlacedToken[], at: number, end: number): Head | null {
  const marks: CurrencyMark[] = []
  let negative = false
  for (let next = at; next < end && next < at + 5; next += 1) {
    const token = tokens[next]
    if (!token || (next > at && token.reach > 2)) return null
    if (token.kind === 'number' && isReference(tokens[next - 1], token)) return null
    if (token.kind === 'number') {
      const run = isDigit(token) ? digitByDigit(tokens, next, end) : null
      return { start: at, next: run?.next ?? next + 1, number: run?.number ?? token.text, negative, marks }
    }
    if (token.kind === 'sign') {
      const tight = tokens[next + 1]?.reach === 0
      // A dash with space on both sides parts a label from its amount; a minus touches, or stands first.
      if (token.text !== '+' && !tight && !token.first) return null
      negative ||= token.text !== '+'
    } else if (isMark(token) && token.money && marks.length < 2) {
      marks.push(token.money)
    } else return null
  }
  return null
}

function isMark(token: PlacedToken | undefined): boolean {
  if (!token?.money || (token.kind !== 'symbol' && token.kind !== 'word')) return false
  return token.money.trust === 'full' || token.fragment
}

/** `1.250,00 din.`, `25,90 KM`: a short name that is a word elsewhere is money behind two decimals, at the end of its text. */
function isMarkBehind(tokens: readonly PlacedToken[], at: number): boolean {
  const [number, token] = [tokens[at - 1], tokens[at]]
  if (token?.kind !== 'word' || token.money?.trust !== 'alone' || !token.last) return false
  return number?.kind === 'number' && BARE_DECIMAL.test(number.text) && number.leaf === token.leaf
}

/** Whether the mark at `at` belongs to the number before it, and not to the next one. */
function takesMark(tokens: readonly PlacedToken[], at: number, end: number, marks: readonly CurrencyMark[]): boolean {
  const mark = tokens[at]
  const following = at + 1 < end ? tokens[at + 1] : undefined
  if (!mark?.money) return false
  const cents = following?.kind === 'number' && CENTS.test(following.text) && following.reach === 0 && mark.reach === 0
  // One piece of text is written together: what stands in the same node outweighs what merely touches.
  const sameNode = !mark.first && following?.first === true
  if (following?.kind === 'number' && following.reach < mark.reach && !cents && !sameNode) return false
  const [before] = marks
  if (!before) return true
  // `$55.90 CAD` says one thing twice; `€10 $12` says two things.
  return marks.length < 3 && mark.kind === 'word' && before.codes.some((code) => mark.money?.codes.includes(code))
}

/** Whether a number without currency can be an amount: two decimals, or alone in its place; null when neither. */
function bareness(
  tokens: readonly PlacedToken[],
  from: number,
  to: number,
  { number, dashed }: Amount,
): 'decimal' | 'integer' | null {
  const first = tokens[from]
  const last = tokens[to - 1]
  if (!first || !last) return null
  const next = tokens[to]
  const endsLeaf = last.last || !next || next.first || next.kind === 'close' || (next.kind === 'other' && next.last)
  const before = tokens[from - 1]
  const glued = before && !first.first && first.reach === 0 && before.kind !== 'open' && before.text !== ':'
  const counted = before && !first.first && /^[×x#№]$/iu.test(before.text)
  if (glued || counted || !endsLeaf) return null
  if (dashed || BARE_DECIMAL.test(number) || DASHED.test(number)) return 'decimal'
  const alone = first.fragment && (first.first || before?.first === true)
  return alone && /^\d{1,3}(?:[.,' ٬]?\d{3})*$|^\d{1,9}$/u.test(number) ? 'integer' : null
}

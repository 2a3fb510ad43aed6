/** A number as it stands in the text, before anyone has said which of its marks groups and which is decimal. */
export interface RawNumber {
  /** Runs of digits; the first is empty in `.75`. */
  readonly groups: readonly string[]
  /** The marks between the groups, one fewer than groups. A space is a mark too. */
  readonly marks: readonly string[]
  /** Raised cents, as in `12⁹⁹`. */
  readonly raised: string | null
  /** Written with a dash for the cents: `12,-`, `12.—`, `500/-`. */
  readonly dashed: boolean
  /** The decimals stand apart from their mark: `130, 38`. Believed only beside a currency. */
  readonly loose: boolean
}

/** What a lone mark before exactly three digits does: it groups thousands, it starts decimals, or nobody can tell. */
type ThreeDigits = (mark: string) => 'group' | 'decimal' | null

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹'
const DIGIT = /^[0-9]$/
const MARKS = new Set(['.', ',', "'", '٬', '٫', '·'])
const ALWAYS_GROUP = new Set([' ', "'", '٬'])
const EITHER = new Set(['.', ','])
const INDIAN = new Set([',', '٬'])

const isDigit = (char: string | undefined): boolean => char !== undefined && DIGIT.test(char)

/** Whether a number starts here: a digit, or a decimal mark with a digit behind it. */
export function startsNumber(chars: readonly string[], at: number): boolean {
  if (isDigit(chars[at])) return true
  return ['.', ',', '٫', '·'].includes(chars[at] ?? '') && isDigit(chars[at + 1])
}

function digitsFrom(chars: readonly string[], at: number): string {
  let end = at
  while (isDigit(chars[end])) end += 1
  return chars.slice(at, end).join('')
}

/** Where the digits after a gap-ridden mark start (`12 , 50`), or null when this is no such mark. */
function looseDecimals(chars: readonly string[], at: number): number | null {
  const mark = chars[at] === ' ' ? at + 1 : at
  if (!EITHER.has(chars[mark] ?? '')) return null
  const digits = chars[mark + 1] === ' ' ? mark + 2 : mark + 1
  return digitsFrom(chars, digits).length === 2 ? digits : null
}

/** Where a dash written instead of cents ends, or `at` when there is none: `,-` `.—` `:-` `/-` `/=`. */
function afterDash(chars: readonly string[], at: number): number {
  const rest = chars.slice(at, at + 5).join('')
  const match = /^(?: ?[.,:] ?(?:-{1,2}|[–—]{1,2}|=)|\/[-=])/u.exec(rest)
  const end = at + (match?.[0].length ?? 0)
  return isDigit(chars[end]) ? at : end
}

/**
 * Reads the longest number that starts at `at`. A space joins only groups of three; `:` only two decimals at the end.
 *
 * @param extraMark the decimal mark of the locale when it is no usual one (`$` in pt-CV)
 */
export function readNumber(
  chars: readonly string[],
  at: number,
  extraMark: string | null,
): { number: RawNumber; end: number } {
  const groups: string[] = [digitsFrom(chars, at)]
  const marks: string[] = []
  let end = at + (groups[0]?.length ?? 0)
  let loose = false
  for (;;) {
    const mark = chars[end] ?? ''
    const next = digitsFrom(chars, end + 1)
    const spaced = mark === ' ' && next.length === 3 && marks.every((m) => m === ' ') && isHead(groups[0] ?? '')
    const colon = mark === ':' && next.length === 2 && !marks.includes(':') && !startsColon(chars, end + 3)
    if (next !== '' && (MARKS.has(mark) || mark === extraMark || spaced || colon)) {
      marks.push(mark)
      groups.push(next)
      end += 1 + next.length
      continue
    }
    const digits = marks.some((m) => EITHER.has(m)) ? null : looseDecimals(chars, end)
    if (digits === null) break
    marks.push(chars[end] === ' ' ? (chars[end + 1] ?? '') : mark)
    groups.push(digitsFrom(chars, digits))
    end = digits + 2
    loose = true
    break
  }
  const dashEnd = afterDash(chars, end)
  const raised = raisedFrom(chars, end)
  const cents = raised.length === 2 && (marks.length === 0 || groups.at(-1)?.length === 3) ? raised : null
  const number = { groups, marks, raised: cents, dashed: dashEnd > end && chars[end] !== '/', loose }
  // Anything else raised is a footnote; so are the small brackets around it.
  end = Math.max(dashEnd, end + raised.length)
  while (chars[end] === '⁾' || chars[end] === '⁽') end += 1
  return { number, end }
}

const startsColon = (chars: readonly string[], at: number): boolean => chars[at] === ':' && isDigit(chars[at + 1])

function raisedFrom(chars: readonly string[], at: number): string {
  let digits = ''
  for (let i = at; RAISED.includes(chars[i] ?? ' '); i += 1) digits += String(RAISED.indexOf(chars[i] ?? ''))
  return digits
}

/** A first group of thousands: one to three digits, no zero in front. */
function isHead(group: string): boolean {
  return /^[1-9]\d{0,2}$/.test(group)
}

function groupsAreSound(groups: readonly string[], marks: readonly string[]): boolean {
  if (groups.length === 1) return true
  const [head = '', ...rest] = groups
  if (!isHead(head) || new Set(marks).size !== 1) return false
  if (rest.every((group) => group.length === 3)) return true
  const indian = INDIAN.has(marks[0] ?? '') && head.length < 3 && rest.at(-1)?.length === 3
  return indian && rest.slice(0, -1).every((group) => group.length === 2)
}

/** How many groups, from the left, belong to the whole part; null when nobody can tell. */
function wholeGroups(raw: RawNumber, threeDigits: ThreeDigits): number | null {
  const count = raw.groups.length
  const last = raw.marks.at(-1)
  if (last === undefined || raw.raised !== null || raw.dashed) return count
  if (ALWAYS_GROUP.has(last)) return count
  if (!EITHER.has(last) || raw.loose) return count - 1
  if (raw.marks.length > 1) return raw.marks.every((mark) => mark === last) ? count : count - 1
  if (raw.groups[1]?.length !== 3) return count - 1
  const [head = ''] = raw.groups
  const answer = threeDigits(last)
  // `₹.500` may be five hundred behind an abbreviating point.
  if (head === '') return answer === 'decimal' ? count - 1 : null
  if (!isHead(head)) return count - 1
  return answer === null ? null : answer === 'group' ? count : count - 1
}

/**
 * The number as plain decimal text without a sign: grouping out, `.` as decimal mark, as many decimals as written.
 * Null when the groups are not sound (`1,23,4567`; Western threes, or Indian twos with commas) or when a lone mark
 * before three digits could be either.
 */
export function plainNumber(raw: RawNumber, threeDigits: ThreeDigits): string | null {
  const split = wholeGroups(raw, threeDigits)
  if (split === null || split < raw.groups.length - 1) return null
  const whole = raw.groups.slice(0, split)
  if (!groupsAreSound(whole, raw.marks.slice(0, Math.max(0, split - 1)))) return null
  const decimals = raw.raised ?? raw.groups.slice(split).join('')
  const digits = whole.join('').replace(/^0+(?=\d)/, '') || '0'
  return decimals === '' ? digits : `${digits}.${decimals}`
}

/** Whether a number without any name for money may be an amount: no time, and no phone number. */
export function mayStandAlone({ groups, marks, loose }: RawNumber): boolean {
  const digits = groups.join('')
  // A time such as `12:50`; `1 234:50` is none.
  if (loose || (marks.includes(':') && digits.length < 5)) return false
  if (marks.includes(' ') && digits.length > 8 && marks.every((mark) => mark === ' ')) return false
  return marks.length > 0 || (digits.length < 10 && !/^0\d{6}/.test(digits))
}

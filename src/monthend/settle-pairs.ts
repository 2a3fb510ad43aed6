/** Something goes from one party to another; parties are places in the list of balances. */
export interface Transfer {
  readonly from: number
  readonly to: number
  readonly count: number
}

/** Above this many parties the groups are found by matching equal sums only: the exact search doubles with each. */
const MOST_EXACT = 12

/**
 * The fewest transfers that settle balances which sum to zero: a party with a balance above zero gives, one below gets.
 *
 * A group of k parties whose balances sum to zero is settled in k - 1 transfers, so the fewest transfers are the parties
 * less the largest number of such groups (T. Verhoeff, Informatics in Education 3(1), 2004). Exact for up to 12 parties;
 * for more, pairs that cancel are matched first and the rest is settled in a row.
 *
 * @example fewestTransfers([9, 6, -4, -5, -6]).length // 3
 */
export function fewestTransfers(balances: readonly number[]): Transfer[] {
  const parties = balances.map((_, index) => index).filter((index) => balances[index] !== 0)
  const pairs: number[][] = []
  const open = new Set(parties)
  for (const a of parties) {
    if (!open.has(a)) continue
    const b = parties.find((other) => open.has(other) && other !== a && balances[other] === -(balances[a] ?? 0))
    // Two that cancel can always be a group of their own: taking them out of any other groups loses none.
    if (b === undefined) continue
    pairs.push([a, b])
    open.delete(a)
    open.delete(b)
  }
  const rest = parties.filter((party) => open.has(party))
  const groups = rest.length <= MOST_EXACT ? zeroGroups(rest, balances) : [rest]
  return [...pairs, ...groups].flatMap((group) => inARow(group, balances))
}

/** Cuts parties into as many groups that sum to zero as there can be. */
function zeroGroups(parties: readonly number[], balances: readonly number[]): number[][] {
  const size = 1 << parties.length
  const sums = new Array<number>(size).fill(0)
  // How many groups that sum to zero can be cut from a set, and the party taken out last to reach that.
  const most = new Array<number>(size).fill(0)
  const last = new Array<number>(size).fill(0)
  for (let set = 1; set < size; set++) {
    let best = -1
    for (const [place, party] of parties.entries()) {
      const without = set & ~(1 << place)
      if (without === set) continue
      sums[set] = (sums[without] ?? 0) + (balances[party] ?? 0)
      if ((most[without] ?? 0) > best) {
        best = most[without] ?? 0
        last[set] = place
      }
    }
    most[set] = best + (sums[set] === 0 ? 1 : 0)
  }
  const groups: number[][] = []
  let group: number[] = []
  for (let set = size - 1; set > 0; ) {
    if (sums[set] === 0 && group.length > 0) {
      groups.push(group)
      group = []
    }
    const place = last[set] ?? 0
    group.push(parties[place] ?? 0)
    set &= ~(1 << place)
  }
  return group.length > 0 ? [...groups, group] : groups
}

/** Settles one group: those who give and those who get, each in their order. At most one transfer less than parties. */
function inARow(group: readonly number[], balances: readonly number[]): Transfer[] {
  const inOrder = [...group].sort((a, b) => a - b)
  const left = new Map(inOrder.map((party) => [party, balances[party] ?? 0]))
  const givers = inOrder.filter((party) => (balances[party] ?? 0) > 0)
  const takers = inOrder.filter((party) => (balances[party] ?? 0) < 0)
  const transfers: Transfer[] = []
  for (const from of givers) {
    for (const to of takers) {
      const count = Math.min(left.get(from) ?? 0, -(left.get(to) ?? 0))
      if (count <= 0) continue
      transfers.push({ from, to, count })
      left.set(from, (left.get(from) ?? 0) - count)
      left.set(to, (left.get(to) ?? 0) + count)
    }
  }
  return transfers
}

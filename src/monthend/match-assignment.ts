/** A row's possible column and what the pair is worth; only pairs worth more than nothing are ever made. */
export interface Edge {
  readonly column: number
  readonly weight: number
}

/**
 * The assignment of rows to columns that is worth most in all, each row and each column used at most once; a row may
 * stay alone, which is worth nothing. Exact: successive shortest augmenting paths (the Hungarian method on a sparse
 * graph, after Kuhn 1955 and Munkres 1957). Weights are whole numbers, so sums are exact. The same input always gives
 * the same answer; among equals the earlier row gets the earlier edge it lists.
 *
 * @param rows for each row its edges; at most one edge per column
 * @returns for each row its column, or -1
 * @example bestAssignment([[{column: 0, weight: 5}, {column: 1, weight: 4}], [{column: 0, weight: 5}]], 2) // [1, 0]
 */
export function bestAssignment(rows: readonly (readonly Edge[])[], columns: number): number[] {
  const columnOf = new Array<number>(rows.length).fill(-1)
  const rowOf = new Array<number>(columns).fill(-1)
  // Prices of rows and columns: for every pair, weight <= rowPrice + columnPrice, with equality for pairs made.
  const rowPrice = rows.map((edges) => edges.reduce((most, e) => Math.max(most, e.weight), 0))
  const columnPrice = new Array<number>(columns).fill(0)
  for (let row = 0; row < rows.length; row++) {
    if ((rows[row]?.length ?? 0) > 0) augment(rows, row, { columnOf, rowOf, rowPrice, columnPrice })
  }
  return columnOf
}

interface State {
  readonly columnOf: number[]
  readonly rowOf: number[]
  readonly rowPrice: number[]
  readonly columnPrice: number[]
}

/**
 * Brings one more row in by the cheapest path: it ends in a free column, or in a row that is better left alone. The
 * search is Dijkstra's over reduced costs, so it looks no further than it must.
 */
function augment(rows: readonly (readonly Edge[])[], start: number, s: State): void {
  const distance = new Map<number, number>()
  const cameFrom = new Map<number, number>()
  const settled = new Set<number>()
  const heap = new Heap()
  let row = start
  let reached = 0
  // Leaving `row` alone costs what its price still promises.
  let endRow = start
  let endCost = s.rowPrice[start] ?? 0
  let endColumn = -1
  const tree: [row: number, reached: number][] = []
  for (;;) {
    tree.push([row, reached])
    const alone = reached + (s.rowPrice[row] ?? 0)
    if (alone < endCost) {
      endCost = alone
      endRow = row
      endColumn = -1
    }
    for (const { column, weight } of rows[row] ?? []) {
      if (weight <= 0 || settled.has(column)) continue
      const cost = reached + (s.rowPrice[row] ?? 0) + (s.columnPrice[column] ?? 0) - weight
      if (cost >= endCost || cost >= (distance.get(column) ?? Number.POSITIVE_INFINITY)) continue
      distance.set(column, cost)
      cameFrom.set(column, row)
      heap.push(cost, column)
    }
    const next = heap.pop(settled, distance)
    if (next === null || next.cost >= endCost) break
    settled.add(next.column)
    const owner = s.rowOf[next.column] ?? -1
    if (owner === -1) {
      endCost = next.cost
      endColumn = next.column
      break
    }
    row = owner
    reached = next.cost
  }
  for (const [r, at] of tree) s.rowPrice[r] = (s.rowPrice[r] ?? 0) - Math.max(0, endCost - at)
  for (const column of settled) {
    s.columnPrice[column] = (s.columnPrice[column] ?? 0) + Math.max(0, endCost - (distance.get(column) ?? endCost))
  }
  // Walk back: each column on the path goes to the row it was reached from.
  let column = endColumn === -1 ? (s.columnOf[endRow] ?? -1) : endColumn
  if (endColumn === -1) s.columnOf[endRow] = -1
  while (column !== -1) {
    const from = cameFrom.get(column) ?? -1
    if (from === -1) break
    const before = s.columnOf[from] ?? -1
    s.columnOf[from] = column
    s.rowOf[column] = from
    column = from === start ? -1 : before
  }
}

/** Columns by their distance; among equals the one first found. Entries that were overtaken are skipped. */
class Heap {
  readonly #items: { readonly cost: number; readonly column: number; readonly order: number }[] = []
  #count = 0

  push(cost: number, column: number): void {
    const items = this.#items
    items.push({ cost, column, order: this.#count++ })
    let at = items.length - 1
    while (at > 0) {
      const up = (at - 1) >> 1
      if (!this.#less(at, up)) break
      this.#swap(at, up)
      at = up
    }
  }

  pop(settled: ReadonlySet<number>, distance: ReadonlyMap<number, number>): { cost: number; column: number } | null {
    const items = this.#items
    for (;;) {
      const top = items[0]
      const last = items.pop()
      if (top === undefined || last === undefined) return null
      if (items.length > 0) {
        items[0] = last
        this.#sink()
      }
      if (!settled.has(top.column) && distance.get(top.column) === top.cost) return top
    }
  }

  #sink(): void {
    for (let at = 0; ; ) {
      const [left, right] = [2 * at + 1, 2 * at + 2]
      let least = at
      if (left < this.#items.length && this.#less(left, least)) least = left
      if (right < this.#items.length && this.#less(right, least)) least = right
      if (least === at) return
      this.#swap(at, least)
      at = least
    }
  }

  #less(a: number, b: number): boolean {
    const [x, y] = [this.#items[a], this.#items[b]]
    if (!x || !y) return false
    return x.cost !== y.cost ? x.cost < y.cost : x.order < y.order
  }

  #swap(a: number, b: number): void {
    const [x, y] = [this.#items[a], this.#items[b]]
    if (!x || !y) return
    this.#items[a] = y
    this.#items[b] = x
  }
}

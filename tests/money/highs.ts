import loadHighs from 'highs'

interface Row {
  readonly terms: readonly (readonly [number, string])[]
  readonly is: '=' | '<=' | '>='
  readonly value: number
}

const highs = await loadHighs()

/**
 * A small integer program for the HiGHS solver (npm `highs`, MIT; https://highs.dev), the reference that the project's
 * own searches are checked against. All variables are whole and zero or more.
 */
export class IntegerProgram {
  readonly #most = new Map<string, number>()
  readonly #cost: (readonly [number, string])[] = []
  readonly #rows: Row[] = []

  variable(name: string, cost: number, most: number): string {
    this.#most.set(name, most)
    if (cost !== 0) this.#cost.push([cost, name])
    return name
  }

  row(terms: readonly (readonly [number, string])[], is: Row['is'], value: number): void {
    this.#rows.push({ terms, is, value })
  }

  /** The variables of a cheapest solution and its cost, or null where there is none. */
  solve(): { cost: number; values: ReadonlyMap<string, number> } | null {
    const names = [...this.#most.keys()]
    const text = [
      'Minimize',
      ` cost: ${sum(this.#cost.length > 0 ? this.#cost : [[0, names[0] ?? 'none']])}`,
      'Subject To',
      ...this.#rows.map(({ terms, is, value }, index) => ` r${index}: ${sum(terms)} ${is} ${value}`),
      'Bounds',
      ...names.map((name) => ` 0 <= ${name} <= ${this.#most.get(name)}`),
      'General',
      ` ${names.join(' ')}`,
      'End',
    ].join('\n')
    const answer = highs.solve(text, { mip_rel_gap: 0, mip_abs_gap: 0.5, output_flag: false })
    if (answer.Status === 'Infeasible') return null
    if (answer.Status !== 'Optimal') throw new Error(`HiGHS stopped with "${answer.Status}".`)
    const values = new Map(names.map((name) => [name, Math.round(answer.Columns[name]?.Primal ?? Number.NaN)]))
    const cost = this.#cost.reduce((all, [factor, name]) => all + factor * (values.get(name) ?? 0), 0)
    if (Math.abs(cost - answer.ObjectiveValue) > 0.4) throw new Error('HiGHS tells another cost than its values have.')
    return { cost, values }
  }
}

function sum(terms: readonly (readonly [number, string])[]): string {
  return terms.map(([factor, name]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`).join(' ')
}

export type GatherOptions<Row, Outcome> = {
  /** Does the work for all rows in one transaction; outcomes in the order of the rows. A failure must leave nothing behind. */
  readonly runAll: (rows: readonly Row[]) => Promise<readonly Outcome[]>
  /** Rows of one key are never run together: the second must see what became of the first. */
  readonly keyOf: (row: Row) => string
  readonly mostRows: number
  readonly mostRunning: number
}

type Waiting<Row, Outcome> = { readonly row: Row; readonly resolve: (outcome: Outcome) => void; readonly reject: (error: unknown) => void }

/**
 * Runs what comes while others are under way together: one round trip and one commit for many rows instead of for each. A row that comes
 * alone does not wait for company. When a run of several fails, each of its rows is run by itself, so that an error meets only its own.
 * @returns a function that settles with the row's own outcome, or rejects with its own error
 */
export function gatherRows<Row, Outcome>({ runAll, keyOf, mostRows, mostRunning }: GatherOptions<Row, Outcome>): (row: Row) => Promise<Outcome> {
  let waiting: Waiting<Row, Outcome>[] = []
  let running = 0

  function next(): void {
    while (running < mostRunning && waiting.length > 0) {
      running++
      void run(take()).finally(() => {
        running--
        next()
      })
    }
  }

  function take(): Waiting<Row, Outcome>[] {
    const taken: Waiting<Row, Outcome>[] = []
    const left: Waiting<Row, Outcome>[] = []
    const keys = new Set<string>()
    for (const one of waiting) {
      const key = keyOf(one.row)
      if (taken.length < mostRows && !keys.has(key)) taken.push(one)
      else left.push(one)
      keys.add(key)
    }
    waiting = left
    return taken
  }

  async function run(taken: readonly Waiting<Row, Outcome>[]): Promise<void> {
    try {
      const outcomes = await runAll(taken.map(({ row }) => row))
      taken.forEach(({ resolve }, at) => resolve(outcomes[at]!))
    } catch (error) {
      if (taken.length > 1) for (const one of taken) await run([one])
      else taken[0]?.reject(error)
    }
  }

  return (row) => new Promise((resolve, reject) => {
    waiting.push({ row, resolve, reject })
    next()
  })
}

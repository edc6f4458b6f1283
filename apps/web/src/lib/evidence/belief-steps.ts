import type { TrailEntry } from '@evenbore/contract'

/** What the trail keeps of an evaluation, as far as the picture needs it. */
interface Summary {
  readonly cylinders: readonly { readonly cylinder: number; readonly sound: number }[]
  readonly neighbours: readonly { readonly cylinders: readonly [number, number]; readonly probability: number }[]
}

export interface BeliefStep {
  /** Readings kept since the step before, as entries of the trail. */
  readonly readings: readonly TrailEntry[]
  readonly at: string
  /** Probability of a fault, by cylinder ("3") and by gasket land ("4-5"). */
  readonly faults: ReadonlyMap<string, number>
}

function summaryOf(body: unknown): Summary | undefined {
  if (typeof body !== 'object' || body === null || !('summary' in body)) return undefined
  const { summary } = body
  if (typeof summary !== 'object' || summary === null || !('cylinders' in summary) || !Array.isArray(summary.cylinders)) return undefined
  return { cylinders: summary.cylinders as Summary['cylinders'], neighbours: ('neighbours' in summary && Array.isArray(summary.neighbours) ? summary.neighbours : []) as Summary['neighbours'] }
}

/** How belief moved: a step for each evaluation of the trail, oldest first, with the readings that moved it. */
export function beliefSteps(entries: readonly TrailEntry[]): BeliefStep[] {
  const steps: BeliefStep[] = []
  let readings: TrailEntry[] = []
  for (const entry of [...entries].sort((a, b) => a.seq - b.seq)) {
    if (entry.kind.startsWith('reading')) readings.push(entry)
    const summary = entry.kind === 'evaluation' ? summaryOf(entry.body) : undefined
    if (!summary) continue
    const faults = new Map(summary.cylinders.map(({ cylinder, sound }) => [String(cylinder), 1 - sound]))
    for (const { cylinders, probability } of summary.neighbours) faults.set(cylinders.join('-'), probability)
    steps.push({ readings, at: entry.at, faults })
    readings = []
  }
  return steps
}

/** The few lines worth drawing: those that ever stood highest, most of all at the end. */
export function beliefLines(steps: readonly BeliefStep[], most = 4): { readonly of: string; readonly points: readonly number[] }[] {
  const names = [...new Set(steps.flatMap(({ faults }) => [...faults.keys()]))]
  const lines = names.map((of) => ({ of, points: steps.map(({ faults }) => faults.get(of) ?? 0) }))
  const height = ({ points }: { points: readonly number[] }) => (points.at(-1) ?? 0) + Math.max(...points) / 10
  return lines.filter(({ points }) => Math.max(...points) >= 0.1).sort((a, b) => height(b) - height(a)).slice(0, most)
}

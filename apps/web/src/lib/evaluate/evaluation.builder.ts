import type { Evaluation, Reading } from '@evenbore/contract'

// Builders for the tests of this folder: the smallest evaluation that a test needs, everything else quiet.

/** A dry reading in psi. */
export const dry = (cylinder: number, value: number, session = 's1'): Reading => ({ test: 'compression', cylinder, pressure: { value, unit: 'psi' }, session })

/** An evaluation in which nothing is wrong, changed as the test says. */
export function evaluationWith(consistency: Partial<Evaluation['consistency']>, change: Partial<Evaluation> = {}): Evaluation {
  return {
    model: 'sample',
    consistency: { session: 's1', rule: 'one-tenth', basis: '', limitPercent: 10, spreadPercent: null, lowest: null, highest: null, asRead: null, verdict: 'undecided', probabilityInside: null, alsoChecked: [], ...consistency },
    cylinders: [1, 2, 3, 4].map((cylinder) => ({ cylinder, sound: 0.95, faults: [] })),
    neighbours: [], engine: [], leakage: [], because: [], next: [], enough: null, repairs: [], objections: [], cautions: [],
    ...change,
  }
}

/** The ends of a spread, in psi. */
export const ends = (low: [number, number], high: [number, number]): Pick<Evaluation['consistency'], 'lowest' | 'highest'> => ({
  lowest: { cylinder: low[0], pressure: { value: low[1], unit: 'psi' }, readings: [0] },
  highest: { cylinder: high[0], pressure: { value: high[1], unit: 'psi' }, readings: [1] },
})

import type { Truth } from '../../simulator/truth.ts'
import type { Opinion } from './opinion.ts'

/** How one opinion on one engine came out, small enough to travel between threads. */
export type EngineScore = {
  readonly index: number
  readonly cylinders: readonly CylinderScore[]
  readonly bridges: readonly { readonly probability: number; readonly present: boolean }[]
  readonly cause: { readonly truth: string; readonly leading: string; readonly probability: number }
  readonly verdict: { readonly probability: number; readonly inside: boolean } | null
  /** No fault, no bridge, no engine-wide cause. */
  readonly healthy: boolean
}
export type CylinderScore = {
  readonly truth: string
  readonly sound: number
  /** Probability given to what is really so. */
  readonly ofTruth: number
  /** The faults in falling order of probability, sound left out: the first two. */
  readonly first: string
  readonly second: string
  readonly inBridge: boolean
}

/** Compares an opinion with the truth. Missing probabilities count as zero. */
export function scoreEngine(index: number, truth: Truth, inside: boolean | null, opinion: Opinion): EngineScore {
  const bridged = (cylinder: number): boolean => truth.bridges.some((pair) => pair.includes(cylinder))
  return {
    index,
    cylinders: truth.cylinders.map((item) => {
      const belief = opinion.cylinders.find((other) => other.cylinder === item.cylinder)
      if (belief === undefined) throw new Error(`opinion: got no entry for cylinder ${item.cylinder}, expected one for each`)
      const ranked = [...belief.faults].sort((a, b) => b.probability - a.probability)
      return {
        truth: item.state,
        sound: belief.sound,
        ofTruth: item.state === 'sound' ? belief.sound : (belief.faults.find((entry) => entry.fault === item.state)?.probability ?? 0),
        first: ranked[0]?.fault ?? '',
        second: ranked[1]?.fault ?? '',
        inBridge: bridged(item.cylinder),
      }
    }),
    bridges: opinion.neighbours.map((entry) => ({
      probability: entry.probability,
      present: truth.bridges.some((pair) => pair.every((cylinder) => entry.cylinders.includes(cylinder))),
    })),
    cause: {
      truth: truth.cause,
      leading: opinion.engine.reduce((best, entry) => (entry.probability > best.probability ? entry : best)).cause,
      probability: opinion.engine.find((entry) => entry.cause === truth.cause)?.probability ?? 0,
    },
    verdict: inside === null || opinion.probabilityInside === null ? null : { probability: opinion.probabilityInside, inside },
    healthy: truth.cause === 'none' && truth.bridges.length === 0 && truth.cylinders.every((item) => item.state === 'sound'),
  }
}

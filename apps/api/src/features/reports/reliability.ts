import { BRIDGE, type Evaluation, type FindingCode, type Reliability } from '@evenbore/contract'

/** One thing that was found, and everything that could have been found there with the probability it was given. */
export type Observation = { readonly found: FindingCode; readonly believed: readonly Belief[] }
export type Belief = { readonly code: FindingCode; readonly probability: number }

/** A belief of nothing in what then was found would make the log loss endless; probabilities below this count as this. */
const LEAST_PROBABILITY = 1e-4
const BINS = 10

/**
 * A finding as observations, one for each cylinder it names: what was found there against all that was believed of it. A gasket between
 * two is held against the faults of both; something of the whole engine against the other causes.
 */
export function observationsOf(evaluation: Evaluation, { fault, cylinders }: { readonly fault: FindingCode; readonly cylinders: readonly number[] }): Observation[] {
  if (fault === BRIDGE) {
    const pair = evaluation.neighbours.find((neighbours) => cylinders.length === 2 && cylinders.every((cylinder) => neighbours.cylinders.includes(cylinder)))
    if (pair === undefined) return []
    return [{ found: fault, believed: [{ code: BRIDGE, probability: pair.probability }, ...cylinders.flatMap((cylinder) => ofCylinder(evaluation, cylinder).filter(({ code }) => code !== 'nothing'))] }]
  }
  if (cylinders.length === 0) return [{ found: fault, believed: evaluation.engine.map(({ cause, probability }) => ({ code: cause === 'none' ? 'nothing' : cause, probability })) }]
  return cylinders.map((cylinder) => ({ found: fault, believed: ofCylinder(evaluation, cylinder) })).filter(({ believed }) => believed.length > 0)
}

function ofCylinder(evaluation: Evaluation, number: number): Belief[] {
  const belief = evaluation.cylinders.find(({ cylinder }) => cylinder === number)
  if (belief === undefined) return []
  return [{ code: 'nothing', probability: belief.sound }, ...belief.faults.map(({ fault, probability }) => ({ code: fault, probability }))]
}

/**
 * How often the diagnosis was right: share of findings that were the first, or one of the first two, explanations; mean of -ln of the
 * probability given to what was found; and whether things believed with about some probability were found about that often.
 */
export function measured(observations: readonly Observation[]): Pick<Reliability, 'findings' | 'topOne' | 'topTwo' | 'logLoss' | 'bins'> {
  const count = observations.length
  const ranks = observations.map(rankOf)
  const share = (most: number) => (count === 0 ? null : ranks.filter((rank) => rank <= most).length / count)
  const losses = observations.map((observation) => -Math.log(Math.max(LEAST_PROBABILITY, probabilityOf(observation))))
  return { findings: count, topOne: share(1), topTwo: share(2), logLoss: mean(losses), bins: binsOf(observations) }
}

function probabilityOf({ found, believed }: Observation): number {
  return Math.max(0, ...believed.filter(({ code }) => code === found).map(({ probability }) => probability))
}

/** 1 where nothing else was believed more; explanations believed alike share the better rank. */
function rankOf(observation: Observation): number {
  const given = probabilityOf(observation)
  return 1 + observation.believed.filter(({ code, probability }) => code !== observation.found && probability > given).length
}

function binsOf(observations: readonly Observation[]): Reliability['bins'] {
  const all = observations.flatMap(({ found, believed }) => believed.map(({ code, probability }) => ({ probability, found: code === found ? 1 : 0 })))
  return Array.from({ length: BINS }, (_, bin) => {
    const inside = all.filter(({ probability }) => Math.min(BINS - 1, Math.floor(probability * BINS)) === bin)
    return { from: bin / BINS, to: (bin + 1) / BINS, count: inside.length, believed: mean(inside.map(({ probability }) => probability)), found: mean(inside.map(({ found }) => found)) }
  })
}

function mean(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length
}

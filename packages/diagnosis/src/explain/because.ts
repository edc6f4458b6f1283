import type { Because, Case } from '@evenbore/contract'
import { CAUSES } from '../knowledge/causes.ts'
import { FAULTS } from '../knowledge/faults.ts'
import type { Evidence } from '../model/evidence.ts'
import type { Inference } from '../model/posterior.ts'
import { decibans } from './decibans.ts'
import { sayPrior, sayReading, sayTogether } from './sentences.ts'
import { without } from './what-if.ts'

/** What is explained: a fault of a cylinder, a bridge between two, or an engine-wide cause. */
export type Target =
  | { readonly kind: 'cylinder'; readonly cylinder: number; readonly fault: number }
  | { readonly kind: 'bridge'; readonly gasket: number; readonly pair: number; readonly cylinders: [number, number] }
  | { readonly kind: 'cause'; readonly cause: number }

const LEAST_PROBABILITY = 0.15
const MOST_TARGETS = 3
/** Rows that say less than this are left out (a tenth of a deciban is a factor of 1.02). */
const LEAST_DECIBANS = 0.5

/** Leading faults, bridges and causes that need a reason, the likeliest first. */
export function leadingTargets(inference: Inference): Target[] {
  const found: { target: Target; probability: number }[] = []
  inference.own.forEach((own, cylinder) => {
    for (let f = 1; f < own.length; f++) {
      if (own[f]! >= LEAST_PROBABILITY && own[f]! === Math.max(...own.subarray(1))) found.push({ target: { kind: 'cylinder', cylinder, fault: f }, probability: own[f]! })
    }
  })
  inference.evidence.gaskets.forEach((list, gasket) => {
    inference.bridges[gasket]!.forEach((probability, pair) => {
      if (probability >= LEAST_PROBABILITY) found.push({ target: { kind: 'bridge', gasket, pair, cylinders: [list[pair]!, list[pair + 1]!] }, probability })
    })
  })
  CAUSES.forEach((name, cause) => {
    if (name !== 'none' && inference.causes[cause]! >= LEAST_PROBABILITY) found.push({ target: { kind: 'cause', cause }, probability: inference.causes[cause]! })
  })
  return found.sort((a, b) => b.probability - a.probability).slice(0, MOST_TARGETS).map((f) => f.target)
}

/** Probability of a target. */
export function probabilityOf(inference: Inference, target: Target): number {
  if (target.kind === 'cylinder') return inference.own[target.cylinder]![target.fault]!
  return target.kind === 'bridge' ? inference.bridges[target.gasket]![target.pair]! : inference.causes[target.cause]!
}

/**
 * Decibans for each leading explanation: the prior, each group of repeated readings (odds with it over odds without), and what
 * the readings say only together, so that the rows of one target add up to its log odds.
 */
export function because(given: Case, inference: Inference): Because[] {
  const targets = leadingTargets(inference)
  if (targets.length === 0) return []
  const groups = readingGroups(inference.evidence)
  const all = new Set(groups.flat())
  const before = without(inference, all)
  const less = groups.map((group) => without(inference, new Set(group)))
  return targets.flatMap((target) => {
    const about = aboutOf(target)
    const now = probabilityOf(inference, target)
    const prior = decibans(probabilityOf(before, target))
    const rows: Because[] = [{ kind: 'prior', readings: [], ...about, decibans: prior, says: sayPrior(about) }]
    let sum = prior
    groups.forEach((group, g) => {
      const value = clamp(decibans(now) - decibans(probabilityOf(less[g]!, target)))
      if (Math.abs(value) < LEAST_DECIBANS) return
      sum += value
      rows.push({ kind: 'reading', readings: group, ...about, decibans: value, says: sayReading(given, group, value, about) })
    })
    const rest = clamp(decibans(now) - sum)
    if (all.size > 1 && Math.abs(rest) >= LEAST_DECIBANS) rows.push({ kind: 'together', readings: [...all].sort((a, b) => a - b), ...about, decibans: rest, says: sayTogether(rest) })
    return [rows[0]!, ...rows.slice(1).sort((a, b) => Math.abs(b.decibans) - Math.abs(a.decibans))]
  })
}

/** How a target is named in the answer. */
export type About = Pick<Because, 'cylinder' | 'cylinders' | 'fault' | 'cause'>

function aboutOf(target: Target): About {
  if (target.kind === 'cylinder') return { cylinder: target.cylinder + 1, fault: FAULTS[target.fault - 1]! }
  if (target.kind === 'bridge') return { cylinders: [target.cylinders[0] + 1, target.cylinders[1] + 1], fault: 'gasket-between' }
  return { cause: CAUSES[target.cause]! }
}

/** Reading numbers, repeats of one test on one cylinder together. */
function readingGroups(evidence: Evidence): number[][] {
  const groups: number[][] = []
  for (const c of evidence.cylinders) {
    groups.push(c.dry.map((r) => r.reading), c.wet.map((r) => r.reading))
    groups.push(...byKey(c.leakage, (r) => `${r.wet} ${r.rockersSlack}`), ...byKey(c.sights, (s) => (s.kind === 'sign' ? s.code : s.kind === 'clearance' || s.kind === 'valve-lift' ? s.kind + s.valve : s.kind)))
  }
  groups.push(...byKey(evidence.engine, (e) => (e.kind === 'vacuum' ? 'vacuum' : e.code)))
  return groups.filter((g) => g.length > 0).sort((a, b) => a[0]! - b[0]!)
}

function byKey<T extends { readonly reading: number }>(list: readonly T[], key: (item: T) => string): number[][] {
  const map = new Map<string, number[]>()
  for (const item of list) map.set(key(item), [...(map.get(key(item)) ?? []), item.reading])
  return [...map.values()]
}

function clamp(x: number): number {
  return Math.max(-99, Math.min(99, x))
}

import type { Because, Case } from '@evenbore/contract'
import type { Evidence } from '../model/evidence.ts'
import type { Inference } from '../model/posterior.ts'
import { decibans } from './decibans.ts'
import { sayPrior, sayReading, sayTogether } from './sentences.ts'
import { aboutOf, leadingTargets, probabilityOf, type Target } from './targets.ts'
import { without, type Ask } from './what-if.ts'

/** Rows that say less than this are left out (half a deciban is a factor of 1.12). */
const LEAST_DECIBANS = 0.5

/**
 * Decibans for each leading explanation: the prior, each group of repeated readings of its own cylinder, each sister with all her
 * readings (odds with them over odds without), and what the readings say only together, so that the rows of one target add up to its log odds.
 */
export function because(given: Case, inference: Inference): Because[] {
  const targets = leadingTargets(inference)
  if (targets.length === 0) return []
  const all = new Set(readingGroups(inference.evidence).flat())
  const before = without(inference, all)
  const asked = new Map<string, Ask>()
  const less = (group: readonly number[]): Ask => {
    const key = group.join()
    let ask = asked.get(key)
    if (ask === undefined) asked.set(key, (ask = without(inference, new Set(group))))
    return ask
  }
  return targets.flatMap((target) => {
    const about = aboutOf(target)
    const now = decibans(probabilityOf(inference, target))
    const prior = decibans(before(target))
    const rows: Because[] = [{ kind: 'prior', readings: [], ...about, decibans: prior, says: sayPrior(about) }]
    let sum = prior
    for (const group of readingGroups(inference.evidence, closeTo(target))) {
      const value = clamp(now - decibans(less(group)(target)))
      if (Math.abs(value) < LEAST_DECIBANS) continue
      sum += value
      rows.push({ kind: 'reading', readings: group, ...about, decibans: value, says: sayReading(given, group, value, about) })
    }
    const rest = clamp(now - sum)
    if (all.size > 1 && Math.abs(rest) >= LEAST_DECIBANS) rows.push({ kind: 'together', readings: [...all].sort((a, b) => a - b), ...about, decibans: rest, says: sayTogether(rest) })
    return [rows[0]!, ...rows.slice(1).sort((a, b) => Math.abs(b.decibans) - Math.abs(a.decibans))]
  })
}

/** Cylinders whose readings get a row each; those of any other cylinder share one. */
function closeTo(target: Target): (cylinder: number) => boolean {
  if (target.kind === 'cylinder') return (i) => i === target.cylinder
  return target.kind === 'bridge' ? (i) => target.cylinders.includes(i) : () => false
}

/** Reading numbers, repeats of one test on one cylinder together; cylinders that are not `close` give one group each. */
function readingGroups(evidence: Evidence, close: (cylinder: number) => boolean = () => true): number[][] {
  const groups: number[][] = []
  evidence.cylinders.forEach((c, i) => {
    if (!close(i)) {
      groups.push([...c.dry, ...c.wet, ...c.leakage, ...c.sights].map((r) => r.reading).sort((a, b) => a - b))
      return
    }
    groups.push(c.dry.map((r) => r.reading), c.wet.map((r) => r.reading))
    groups.push(...byKey(c.leakage, (r) => `${r.wet} ${r.rockersSlack}`), ...byKey(c.sights, (s) => (s.kind === 'sign' ? s.code : s.kind === 'clearance' || s.kind === 'valve-lift' ? s.kind + s.valve : s.kind)))
  })
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

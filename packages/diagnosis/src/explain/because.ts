import type { Because, Case } from '@evenbore/contract'
import type { Evidence } from '../model/evidence.ts'
import { infer, type Inference } from '../model/posterior.ts'
import { decibans } from './decibans.ts'
import { sayPrior, sayReading, sayTogether } from './sentences.ts'
import { aboutOf, leadingTargets, probabilityOf, type Target } from './targets.ts'
import type { WhatIf } from './what-if.ts'

/** Rows that say less than this are left out (half a deciban is a factor of 1.12). */
const LEAST_DECIBANS = 0.5

/**
 * Decibans for each leading explanation: the prior, each group of repeated readings of its own cylinder, each sister with all her
 * readings (odds with them over odds without), and what the readings say only together, so that the rows of one target add up to its log odds.
 */
export function because(given: Case, inference: Inference, { without }: WhatIf): Because[] {
  const targets = leadingTargets(inference)
  if (targets.length === 0) return []
  const all = new Set(readingGroups(inference.evidence).flat())
  const before = infer(unread(inference.evidence), inference.space.knowledge)
  const groups = targets.map((target) => readingGroups(inference.evidence, closeTo(target)))
  const less = withoutEach(groups, targets, without)
  return targets.flatMap((target, t) => {
    const about = aboutOf(target)
    const now = decibans(probabilityOf(inference, target))
    const prior = decibans(probabilityOf(before, target))
    const rows: Because[] = [{ kind: 'prior', readings: [], ...about, decibans: prior, says: sayPrior(about) }]
    let sum = prior
    for (const group of groups[t]!) {
      const value = clamp(now - less[t]!.get(group.join())!)
      if (Math.abs(value) < LEAST_DECIBANS) continue
      sum += value
      rows.push({ kind: 'reading', readings: group, ...about, decibans: value, says: sayReading(given, group, value, about) })
    }
    const rest = clamp(now - sum)
    if (all.size > 1 && Math.abs(rest) >= LEAST_DECIBANS) rows.push({ kind: 'together', readings: [...all].sort((a, b) => a - b), ...about, decibans: rest, says: sayTogether(rest) })
    return [rows[0]!, ...rows.slice(1).sort((a, b) => Math.abs(b.decibans) - Math.abs(a.decibans))]
  })
}

/** Decibans of each target without each of its groups of readings, one engine with a group left out after the other: each is large. */
function withoutEach(groups: readonly (readonly number[][])[], targets: readonly Target[], without: WhatIf['without']): Map<string, number>[] {
  const less = targets.map(() => new Map<string, number>())
  const distinct = new Map(groups.flat().map((group) => [group.join(), group]))
  for (const [key, group] of distinct) {
    const ask = without(new Set(group))
    targets.forEach((target, t) => {
      if (groups[t]!.some((own) => own.join() === key)) less[t]!.set(key, decibans(ask(target)))
    })
  }
  return less
}

/** The same engine before anything was read: its prior, on a grid of its own. */
function unread(evidence: Evidence): Evidence {
  return { ...evidence, engine: [], cylinders: evidence.cylinders.map((c) => ({ ...c, dry: [], wet: [], leakage: [], sights: [] })) }
}

/** Cylinders whose readings get a row each; those of any other cylinder share one. */
function closeTo(target: Target): (cylinder: number) => boolean {
  if (target.kind === 'cylinder') return (i) => i === target.cylinder
  return target.kind === 'bridge' ? (i) => target.cylinders.includes(i) : () => false
}

/**
 * Reading numbers, repeats of one test on one cylinder together; cylinders that are not `close` give one group each. A reading that
 * speaks of several cylinders (a current trace) is a group of its own, once.
 */
function readingGroups(evidence: Evidence, close: (cylinder: number) => boolean = () => true): number[][] {
  const shared = sharedReadings(evidence)
  // running compression speaks of its cylinder and of the whole engine: it stands by itself
  const ofEngine = new Set(evidence.engine.map(({ reading }) => reading))
  const mine = <T extends { readonly reading: number }>(list: readonly T[]): readonly T[] => list.filter((r) => !shared.has(r.reading) && !ofEngine.has(r.reading))
  const groups: number[][] = [...shared].map((reading) => [reading])
  evidence.cylinders.forEach((c, i) => {
    // first strokes were noted with the dry reading and stand with it
    const dry = new Set(c.dry.map((r) => r.reading))
    const sights = mine(c.sights).filter((s) => !dry.has(s.reading))
    if (!close(i)) {
      groups.push([...c.dry, ...c.wet, ...c.leakage, ...sights].map((r) => r.reading).sort((a, b) => a - b))
      return
    }
    groups.push(c.dry.map((r) => r.reading), c.wet.map((r) => r.reading))
    groups.push(...byKey(c.leakage, (r) => `${r.wet} ${r.rockersSlack}`), ...byKey(sights, (s) => (s.kind === 'sign' ? s.code : s.kind === 'clearance' || s.kind === 'valve-lift' ? s.kind + s.valve : s.kind)))
  })
  groups.push(...byKey(evidence.engine.filter(({ reading }) => !shared.has(reading)), (e) => (e.kind === 'engine-sign' ? e.code : e.kind)))
  return groups.filter((g) => g.length > 0).sort((a, b) => a[0]! - b[0]!)
}

/** Readings that more than one cylinder's evidence comes from. */
function sharedReadings({ cylinders }: Evidence): Set<number> {
  const seen = new Set<number>(), shared = new Set<number>()
  for (const { sights } of cylinders) {
    const own = new Set(sights.map((s) => s.reading))
    for (const reading of own) (seen.has(reading) ? shared : seen).add(reading)
  }
  return shared
}

function byKey<T extends { readonly reading: number }>(list: readonly T[], key: (item: T) => string): number[][] {
  const map = new Map<string, number[]>()
  for (const item of list) map.set(key(item), [...(map.get(key(item)) ?? []), item.reading])
  return [...map.values()]
}

function clamp(x: number): number {
  return Math.max(-99, Math.min(99, x))
}

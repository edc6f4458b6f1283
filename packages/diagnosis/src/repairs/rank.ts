import type { Operation as OperationName, RepairOption } from '@evenbore/contract'
import { CAUSES } from '../knowledge/causes.ts'
import { FAULTS } from '../knowledge/faults.ts'
import type { Operation } from '../knowledge/operations.ts'
import type { Inference } from '../model/posterior.ts'
import { somewhere } from '../model/somewhere.ts'
import { looksThatPay } from './look.ts'
import { operationMinutes, type EngineSize } from './minutes.ts'
import type { Unit } from './unit.ts'

/** Below this chance of being wrong a cylinder needs no repair. */
const LEAST_WRONG = 0.25
/** Where coolant leaks somewhere, cylinders in which it does with so much of the greatest chance are suspects together. */
const AS_LIKELY = 0.5
const MOST_OPTIONS = 8
/** Chance of a cure that an operation must add to those that come before it. */
const LEAST_ADDED = 0.05
/** Below this chance that all cylinders have something in common nothing is repaired for it. */
const LEAST_OF_ENGINE = 0.4

/** A repair and what the operation does in this engine. */
interface Ranked { readonly option: RepairOption; readonly does: Operation }

/** Units with enough chance of being wrong to think of a repair; cylinders 1-based. */
export function suspects(inference: Inference): Unit[] {
  const units: Unit[] = []
  // the head comes off for it whichever cylinder it is
  const coolant = somewhere(inference.own, 'coolant', inference.space.knowledge)
  const leastCoolant = coolant.any >= LEAST_WRONG ? AS_LIKELY * Math.max(...coolant.each) : Infinity
  inference.own.forEach((own, i) => {
    if (1 - own[0]! < LEAST_WRONG && coolant.each[i]! < leastCoolant) return
    units.push({ cylinders: [i + 1], wrong: 1 - own[0]!, by: new Map(FAULTS.map((f, k) => [f as string, own[k + 1]!])) })
  })
  inference.evidence.gaskets.forEach((list, g) => inference.bridges[g]!.forEach((p, j) => {
    if (p >= LEAST_WRONG) units.push({ cylinders: [list[j]! + 1, list[j + 1]! + 1], wrong: p, by: new Map([['gasket-between', p]]) })
  }))
  // a shut throttle and a wrong gauge are mistakes of the test: nothing of the engine is repaired for them
  const ofEngine = CAUSES.flatMap((c, e): [string, number][] => (c === 'none' || c === 'throttle-closed' || c === 'gauge-error' ? [] : [[c, inference.causes[e]!]]))
  const wrong = ofEngine.reduce((sum, [, p]) => sum + p, 0)
  if (wrong >= LEAST_OF_ENGINE) units.push({ cylinders: [], wrong, by: new Map(ofEngine) })
  return units
}

/**
 * Operations in the order of probability of cure over cost (decision-theoretic troubleshooting: Heckerman, Breese and Rommelse 1995).
 * `cures`: probability that all suspects are well afterwards, given that one of them is wrong. A look that costs less than it saves comes first.
 *
 * What adds next to nothing to those before it is left out: a dearer way to the same is no second choice.
 *
 * @param pastCures what operations cure otherwise than usual, because of the engine's kind and past
 */
export function repairs(inference: Inference, size: EngineSize, pastCures: Readonly<Record<string, Operation['cures']>>): RepairOption[] {
  const units = suspects(inference)
  if (units.length === 0) return []
  const { operations } = inference.space.knowledge
  const options: Ranked[] = []
  for (const [name, entry] of Object.entries(operations)) {
    const value = { ...entry.value, cures: { ...entry.value.cures, ...pastCures[name] } }
    const helped = units.filter((u) => cureOf(value, u) > 0.02 * u.wrong)
    if (helped.length === 0) continue
    const cylinders = [...new Set(helped.flatMap((u) => u.cylinders))].sort((a, b) => a - b)
    const cures = cureChance(value, units)
    const expectedMinutes = operationMinutes(value, size, cylinders, inference.space.knowledge)
    if (cures < 0.02) continue
    options.push({ option: { operation: name as OperationName, ...(cylinders.length > 0 ? { cylinders } : {}), cures, expectedMinutes }, does: value })
  }
  const ratio = ({ option }: Ranked): number => option.cures / option.expectedMinutes
  const ordered = options.sort((a, b) => ratio(b) - ratio(a) || a.option.operation.localeCompare(b.option.operation))
  return [...looksThatPay(inference, units, size), ...withoutIdle(ordered, units)].slice(0, MOST_OPTIONS)
}

/** Operations that add something to those before them, each taken to fail by itself. */
function withoutIdle(ordered: readonly Ranked[], units: readonly Unit[]): RepairOption[] {
  let cured: Readonly<Record<string, number>> = {}, before = 0
  return ordered.flatMap(({ option, does }) => {
    const then = { ...cured }
    for (const [what, cure] of Object.entries(does.cures)) then[what] = 1 - (1 - (then[what] ?? 0)) * (1 - cure)
    const after = cureChance({ ...does, cures: then }, units)
    // of a worn engine rings, rebore and overhaul are choices, not one after the other
    if (before > 0 && option.cylinders !== undefined && after - before < LEAST_ADDED) return []
    cured = then
    before = after
    return [option]
  })
}

function cureOf(operation: Operation, unit: Unit): number {
  let sum = 0
  for (const [what, p] of unit.by) sum += p * ((operation.cures as Readonly<Record<string, number>>)[what] ?? 0)
  return sum
}

function cureChance(operation: Operation, units: readonly Unit[]): number {
  let wellAfter = 1, wellBefore = 1
  for (const unit of units) {
    wellBefore *= 1 - unit.wrong
    wellAfter *= Math.min(1, 1 - unit.wrong + cureOf(operation, unit))
  }
  return wellBefore >= 1 ? 0 : Math.min(1, Math.max(0, (wellAfter - wellBefore) / (1 - wellBefore)))
}

import type { Operation as OperationName, RepairOption } from '@evenbore/contract'
import type { Operation } from '../knowledge/operations.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Inference } from '../model/posterior.ts'
import { operationMinutes, type EngineSize } from './minutes.ts'
import { lookPays, type Action } from './troubleshooting.ts'
import type { Unit } from './unit.ts'

/** Says why a look stands before the repairs. */
const SAYS = 'Look first: it costs less than the work it is expected to save.'

/**
 * Looks that pay before the first repair: what they cost and the one right repair after them, against trying repairs in the best order
 * (Heckerman, Breese and Rommelse 1995). The cheapest look of those that pay stands for each cylinder.
 */
export function looksThatPay(inference: Inference, units: readonly Unit[], size: EngineSize): RepairOption[] {
  const { knowledge } = inference.space
  const looks = Object.entries(knowledge.operations).filter(([, { value }]) => value.look === true)
  const found = new Map<string, number[]>()
  for (const unit of units) {
    const cylinder = unit.cylinders[0]
    if (cylinder === undefined || unit.cylinders.length > 1) continue
    const seen = inference.evidence.cylinders[cylinder - 1]!.sights.some((sight) => sight.kind === 'borescope')
    const paying = looks.find(([name, { value }]) => {
      if (name === 'look-borescope' && seen) return false
      const minutes = operationMinutes(value, size, [cylinder], knowledge)
      return lookPays(actionsFor(unit, minutes, value, size, knowledge), minutes, chanceToShow(name, value, unit, knowledge))
    })
    if (paying !== undefined) found.set(paying[0], [...(found.get(paying[0]) ?? []), cylinder])
  }
  return [...found].map(([name, cylinders]) => ({
    operation: name as OperationName, cylinders, cures: 0, expectedMinutes: operationMinutes(knowledge.operations[name]!.value, size, cylinders, knowledge), says: SAYS,
  }))
}

/** One action for each repair that some fault of the unit is best put right by, with the chance that it is that fault. */
function actionsFor(unit: Unit, lookMinutes: number, look: Operation, size: EngineSize, knowledge: Knowledge): Action[] {
  const repairs = Object.values(knowledge.operations).map(({ value }) => value).filter((operation) => operation.look !== true)
  const actions = new Map<Operation, number>()
  for (const [what, p] of unit.by) {
    let best: Operation | undefined, least = Infinity
    for (const operation of repairs) {
      const cures = (operation.cures as Readonly<Record<string, number>>)[what] ?? 0
      const cost = cures > 0 ? operationMinutes(operation, size, unit.cylinders, knowledge) / cures : Infinity
      if (cost < least) [best, least] = [operation, cost]
    }
    if (best !== undefined) actions.set(best, (actions.get(best) ?? 0) + p / unit.wrong)
  }
  return [...actions].map(([operation, cures]) => {
    const cost = operationMinutes(operation, size, unit.cylinders, knowledge)
    // taking the head off is half the work of whatever is done under it
    const partOfIt = look.grows === 'engine' && operation.grows === 'engine'
    return { cures, cost, ...(partOfIt ? { costAfterLook: Math.max(0, cost - lookMinutes) } : {}) }
  })
}

/** Chance that a look shows what is wrong with a unit. */
function chanceToShow(name: string, { shows }: Operation, unit: Unit, knowledge: Knowledge): number {
  let sum = 0
  for (const [what, p] of unit.by) {
    const sights = (knowledge.borescope.faults.value as Readonly<Record<string, Readonly<Record<string, number>> | undefined>>)[what] ?? {}
    const chance = name === 'look-borescope' ? Math.max(0, ...Object.values(sights)) : (shows as Readonly<Record<string, number>> | undefined)?.[what] ?? 0
    sum += p / unit.wrong * chance
  }
  return sum
}

import type { EngineDescription } from '@evenbore/contract'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Operation } from '../knowledge/operations.ts'

/** As much of the engine as repair times depend on. */
export interface EngineSize {
  readonly layout: EngineDescription['layout']
  readonly cylinders: number
  /** Which bank each cylinder is in, by number - 1. */
  readonly bankOf: readonly number[]
}

/** Minutes of an operation on these cylinders, with the run and measurement afterwards. */
export function operationMinutes(operation: Operation, size: EngineSize, cylinders: readonly number[], knowledge: Knowledge): number {
  const middle = 30 * (operation.hours[0] + operation.hours[1])
  const { growth } = knowledge
  const check = operation.look === true ? 0 : growth.checkMinutes.value
  if (operation.grows === 'flat') return middle + check
  if (operation.grows === 'cylinder') return middle * Math.max(1, cylinders.length) + check
  return middle * factorOf(size, cylinders, knowledge) + check
}

function factorOf(size: EngineSize, cylinders: readonly number[], knowledge: Knowledge): number {
  const { six, oneBank, twoBanks } = knowledge.growth
  if (size.layout === 'inline') return size.cylinders >= 6 ? six.value : 1
  const banks = new Set(cylinders.map((n) => size.bankOf[n - 1])).size
  return banks >= 2 || cylinders.length === 0 ? twoBanks.value : oneBank.value
}

import { caseFaults, engineSpecificationSchema, expectedPhrase, fieldErrors, quoteValue, type EngineOwnValues, type EngineSpecification, type FieldError } from '@evenbore/contract'
import { problem } from '../../platform/problems/problem.ts'

/** An engine as the diagnosis knows it: its family's values with its own laid over, field by field. */
export function laidOver(family: object | null | undefined, ownValues: object): EngineSpecification {
  return { ...family, ...ownValues } as EngineSpecification
}

/**
 * What is wrong with a description as a whole: a field that is missing, a firing order that is no permutation, banks that leave a
 * cylinder out. The same checks as those of a case, so that whatever is stored here can be evaluated.
 * @param at path of the field that holds it, such as `/ownValues`
 */
export function specificationErrors(specification: unknown, at: string): FieldError[] {
  const result = engineSpecificationSchema.safeParse(specification, { error: expectedPhrase })
  if (!result.success) return fieldErrors(result.error.issues, specification).map((error) => ({ ...error, path: `${at}${error.path}` }))
  const conditions = { engine: 'hot', throttle: 'open', plugsOut: 'all' } as const
  return caseFaults({ engine: result.data, conditions, readings: [] }).map(({ path, expected, got }) => ({ path: `${at}/${path.slice(1).join('/')}`, expected, got: quoteValue(got) }))
}

/** @throws problem `invalid-request` that names each field at fault */
export function demandSpecification(specification: unknown, at: string): EngineSpecification {
  const errors = specificationErrors(specification, at)
  if (errors.length > 0) throw problem('invalid-request', undefined, { errors })
  return specification as EngineSpecification
}

/** @throws problem `invalid-request` where an engine's own values and its family's make no whole */
export function demandWhole(family: object | null | undefined, ownValues: EngineOwnValues): void {
  demandSpecification(laidOver(family, ownValues), '/ownValues')
}

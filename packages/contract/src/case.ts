import { caseFaults } from './case-faults.ts'
import { caseShapeSchema } from './case-shape.ts'

export * from './case-shape.ts'
export {
  conditionsSchema, engineDescriptionSchema, gaugeSchema, historySchema, leakageTesterSchema, limitsSchema,
} from './engine-description.ts'
export { enteredReadingSchema, readingSchema } from './reading.ts'

/**
 * A case: an engine, conditions, readings. What crosses fields is checked too (a cylinder the engine does not have,
 * a firing order that is no permutation, a session nobody declared, held above supply), each error with its path.
 */
export const caseSchema = caseShapeSchema
  .superRefine((value, context) => {
    for (const fault of caseFaults(value)) {
      context.addIssue({ code: 'custom', path: fault.path, message: fault.expected, input: fault.got })
    }
  })
  .meta({ id: 'Case' })

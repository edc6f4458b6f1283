import { z } from 'zod'
import { CASE_LIMITS } from './case-codes.ts'
import { caseFaults } from './case-faults.ts'
import { conditionsSchema, engineDescriptionSchema, gaugeSchema, leakageTesterSchema } from './engine-description.ts'
import { list } from './fields.ts'
import { readingSchema } from './reading.ts'

export {
  conditionsSchema, engineDescriptionSchema, gaugeSchema, historySchema, leakageTesterSchema, limitsSchema,
} from './engine-description.ts'
export { enteredReadingSchema, readingSchema } from './reading.ts'

/** One set of conditions with the instruments used under it. */
export const caseSessionSchema = z
  .strictObject({ conditions: conditionsSchema, gauge: gaugeSchema.optional(), leakageTester: leakageTesterSchema.optional() })
  .meta({ id: 'CaseSession' })
export type CaseSession = z.infer<typeof caseSessionSchema>

/** The case without the checks that look at more than one field. */
export const caseShapeSchema = z.strictObject({
  engine: engineDescriptionSchema,
  conditions: conditionsSchema,
  gauge: gaugeSchema.optional(),
  leakageTester: leakageTesterSchema.optional(),
  sessions: z
    .record(z.string().min(1, { error: 'a session id of at least one character' }), caseSessionSchema, { error: 'sessions by id' })
    .optional(),
  readings: list(readingSchema, CASE_LIMITS.readings, 'readings'),
})
export type Case = z.infer<typeof caseShapeSchema>

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

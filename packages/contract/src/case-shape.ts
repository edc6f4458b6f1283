import { z } from 'zod'
import { CASE_LIMITS } from './case-codes.ts'
import { conditionsSchema, engineDescriptionSchema, gaugeSchema, leakageTesterSchema } from './engine-description.ts'
import { list } from './fields.ts'
import { readingSchema } from './reading.ts'

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

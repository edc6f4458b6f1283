import { z } from 'zod'
import { idSchema, instantSchema, lineSchema, personRefSchema } from './basics.ts'
import { caseSchema } from './case.ts'
import { evaluationSchema, suggestionSchema } from './evaluation.ts'

/** The evaluation of a job as it stands, with the case behind it; `readings[i]` of the case is the stored reading `readingIds[i]`. */
export const jobEvaluationSchema = z.strictObject({ job: idSchema, case: caseSchema, readingIds: z.array(idSchema), evaluation: evaluationSchema }).meta({ id: 'JobEvaluation' })
export type JobEvaluation = z.infer<typeof jobEvaluationSchema>

/** An evaluation kept for good because somebody decided on it; shown as stored, never computed anew. */
export const storedEvaluationSchema = z.strictObject({ id: idSchema, job: idSchema, model: z.string(), createdAt: instantSchema, case: caseSchema, evaluation: evaluationSchema }).meta({ id: 'StoredEvaluation' })

/** Take a suggestion, or decline it with a reason and, where there is one, what is done instead. */
export const newSuggestionDecisionSchema = z
  .discriminatedUnion('decision', [
    z.strictObject({ decision: z.literal('taken'), suggestion: suggestionSchema }),
    z.strictObject({ decision: z.literal('declined'), suggestion: suggestionSchema, reason: lineSchema, instead: lineSchema.nullable().default(null) }),
  ])
  .meta({ id: 'NewSuggestionDecision' })
export const suggestionDecisionSchema = z
  .strictObject({ id: idSchema, job: idSchema, evaluation: idSchema, decision: z.enum(['taken', 'declined']), suggestion: suggestionSchema, instead: z.string().nullable(), reason: z.string().nullable(), by: personRefSchema.nullable(), at: instantSchema })
  .meta({ id: 'SuggestionDecision' })

export type StoredEvaluation = z.infer<typeof storedEvaluationSchema>
export type NewSuggestionDecision = z.infer<typeof newSuggestionDecisionSchema>
export type SuggestionDecision = z.infer<typeof suggestionDecisionSchema>

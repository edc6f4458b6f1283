import { z } from 'zod'
import { daySchema, idSchema, instantSchema, lineSchema, odometerKmSchema, personRefSchema } from './basics.ts'
import { comparisonSchema } from './comparison.ts'
import { evaluationSchema } from './evaluation.ts'

export const retestKindSchema = z.enum(['release', 'follow-up']).meta({ id: 'RetestKind' })
export const retestDateSchema = z.strictObject({ id: idSchema, latest: daySchema.nullable(), odometerKm: odometerKmSchema.nullable(), event: z.string().nullable(), bookedFor: instantSchema.nullable(), reason: z.string().nullable(), by: personRefSchema.nullable(), at: instantSchema }).meta({ id: 'RetestDate' })
/** A promise to measure again. A release retest belongs to its job and blocks hand-over; a follow-up is fulfilled by a later job. */
export const retestSchema = z
  .strictObject({
    id: idSchema, job: idSchema, code: z.string(), engine: idSchema, kind: retestKindSchema, reason: z.string(), baselineSession: idSchema.nullable(), session: idSchema.nullable(), fulfilledByJob: idSchema.nullable(),
    dates: z.array(retestDateSchema), overdueDays: z.int().nullable(), outcome: z.enum(['passed', 'failed', 'waived']).nullable(), outcomeReason: z.string().nullable(), decidedAt: instantSchema.nullable(), decidedBy: personRefSchema.nullable(), createdAt: instantSchema,
  })
  .meta({ id: 'Retest' })
export type Retest = z.infer<typeof retestSchema>
const due = { latest: daySchema.nullable().default(null), odometerKm: odometerKmSchema.nullable().default(null), event: lineSchema.nullable().default(null) }
export const newRetestSchema = z.strictObject({ reason: lineSchema, baselineSession: idSchema.nullable().default(null), ...due }).meta({ id: 'NewRetest' })
/** Another date, or a booking: the earlier rows stay. */
export const newRetestDateSchema = z.strictObject({ ...due, bookedFor: instantSchema.nullable().default(null), reason: lineSchema }).meta({ id: 'NewRetestDate' })
/** The technician's answer, after the comparison was seen. A failed release retest ends approval and repair: the job is testing again. */
export const retestOutcomeSchema = z.strictObject({ outcome: z.enum(['passed', 'failed']), session: idSchema, reason: lineSchema.optional() }).meta({ id: 'RetestOutcome' })
export const waiverSchema = z.strictObject({ reason: lineSchema }).meta({ id: 'Waiver' })
/** Before and after under comparable conditions, or why they are not; beside it the opinion on each session alone. */
export const retestComparisonSchema = z.strictObject({ retest: idSchema, baselineSession: idSchema.nullable(), session: idSchema.nullable(), comparison: comparisonSchema.nullable(), before: evaluationSchema.nullable(), after: evaluationSchema.nullable() }).meta({ id: 'RetestComparison' })

export type RetestKind = z.infer<typeof retestKindSchema>
export type RetestDate = z.infer<typeof retestDateSchema>
export type NewRetest = z.infer<typeof newRetestSchema>
export type NewRetestDate = z.infer<typeof newRetestDateSchema>
export type RetestOutcome = z.infer<typeof retestOutcomeSchema>
export type Waiver = z.infer<typeof waiverSchema>
export type RetestComparison = z.infer<typeof retestComparisonSchema>

import { z } from 'zod'
import { idSchema, instantSchema, personRefSchema, textSchema } from './basics.ts'
import { engineCauseSchema, faultSchema, operationSchema } from './diagnosis-words.ts'

export const repairRecordSchema = z
  .strictObject({ id: idSchema, job: idSchema, quoteVersion: idSchema, startedAt: instantSchema, startedBy: personRefSchema.nullable(), finishedAt: instantSchema.nullable(), finishedBy: personRefSchema.nullable(), operations: z.array(operationSchema), note: z.string().nullable() })
  .meta({ id: 'Repair' })
export type RepairRecord = z.infer<typeof repairRecordSchema>
/** Operations done, and what the next person should know. */
export const finishRepairSchema = z.strictObject({ operations: z.array(operationSchema).max(30).default([]), note: textSchema.optional() }).meta({ id: 'FinishRepair' })

/** What can be found: a fault, an engine-wide cause, or nothing wrong. */
export const findingCodeSchema = z.union([faultSchema, z.literal('gasket-between'), engineCauseSchema.exclude(['none']), z.literal('nothing')]).meta({ id: 'FindingCode' })
/** What strip-down showed, against what had been believed. A correction names the finding it replaces. */
export const findingSchema = z
  .strictObject({ id: idSchema, job: idSchema, engine: idSchema, evaluation: idSchema.nullable(), cylinders: z.array(z.int()), fault: findingCodeSchema, seen: z.string(), replaces: idSchema.nullable(), believed: z.number().min(0).max(1).nullable(), by: personRefSchema.nullable(), at: instantSchema })
  .meta({ id: 'Finding' })
export const newFindingSchema = z.strictObject({ cylinders: z.array(z.int().min(1).max(16)).max(16), fault: findingCodeSchema, seen: textSchema, replaces: idSchema.optional() }).meta({ id: 'NewFinding' })

export type FinishRepair = z.infer<typeof finishRepairSchema>
export type FindingCode = z.infer<typeof findingCodeSchema>
export type Finding = z.infer<typeof findingSchema>
export type NewFinding = z.infer<typeof newFindingSchema>

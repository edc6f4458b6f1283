import { z } from 'zod'
import { caseSchema } from './case.ts'
import { type Checked, checkInput } from './diagnosis-problem.ts'
import { faultSchema, operationSchema } from './diagnosis-words.ts'
import { OBJECTIONS } from './evaluation-codes.ts'
import { pressureSchema } from './pressure.ts'

const probability = z.number().min(0).max(1)
const cylinder = z.int().min(1)

/** Two sessions of one engine, before and after work. */
export const pairSchema = z
  .strictObject({
    before: caseSchema,
    after: caseSchema,
    work: z.array(operationSchema, { error: 'a list of operations' }).max(100, { error: 'at most 100 operations' }).optional(),
  })
  .superRefine(({ before, after }, context) => {
    if (before.engine.cylinders !== after.engine.cylinders) {
      context.addIssue({ code: 'custom', path: ['after', 'engine', 'cylinders'], message: `the same engine as before, ${before.engine.cylinders} cylinders` })
    }
  })
  .meta({ id: 'ComparisonRequest' })
export type Pair = z.infer<typeof pairSchema>

/** Probabilities of better, the same and worse sum to one; all null where before and after may not be compared. */
const changeShape = {
  improved: probability.nullable(),
  unchanged: probability.nullable(),
  worse: probability.nullable(),
}

/** One cylinder before and after. `change` is percent of the value before. */
export const cylinderChangeSchema = z
  .strictObject({ cylinder, before: pressureSchema.nullable(), after: pressureSchema.nullable(), change: z.number().nullable(), ...changeShape })
  .meta({ id: 'CylinderChange' })
export type CylinderChange = z.infer<typeof cylinderChangeSchema>

/** The spread before and after, percent of the highest; `change` in percentage points. */
export const spreadChangeSchema = z
  .strictObject({ before: z.number().nullable(), after: z.number().nullable(), change: z.number().nullable(), ...changeShape })
  .meta({ id: 'SpreadChange' })

/** A fault believed before the work: how likely it was, is now, and that it is gone. */
export const curedSchema = z
  .strictObject({ cylinder, fault: faultSchema, before: probability, after: probability, cured: probability })
  .meta({ id: 'Cured' })

/** Harm that was not there before. */
export const newHarmSchema = z.strictObject({ cylinder, probability, says: z.string() }).meta({ id: 'NewHarm' })

/** Why the two may not be compared, or only with care. */
export const comparisonObjectionSchema = z
  .strictObject({
    code: z.enum(OBJECTIONS),
    in: z.enum(['before', 'after', 'both']),
    readings: z.array(z.int().min(0)),
    says: z.string(),
    do: z.string(),
  })
  .meta({ id: 'ComparisonObjection' })
export type ComparisonObjection = z.infer<typeof comparisonObjectionSchema>

/** What a retest shows against its baseline. */
export const comparisonSchema = z
  .strictObject({
    model: z.string(),
    comparable: z.boolean(),
    cylinders: z.array(cylinderChangeSchema),
    spread: spreadChangeSchema,
    cured: z.array(curedSchema),
    newHarm: z.array(newHarmSchema),
    objections: z.array(comparisonObjectionSchema),
  })
  .meta({ id: 'Comparison' })
export type Comparison = z.infer<typeof comparisonSchema>

/** Reads a pair of cases from anything, as `parseCase` reads one. */
export function parsePair(input: unknown): Checked<Pair> {
  return checkInput(pairSchema, input)
}

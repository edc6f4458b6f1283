import { z } from 'zod'
import { OBSERVATION_CODES, TESTS } from './case-codes.ts'
import { engineCauseSchema, faultSchema, operationSchema } from './diagnosis-words.ts'
import {
  AS_READ, BRIDGE, CAUTIONS, FAULTS, FIRST_STEPS, OBJECTIONS, RULES, VERDICTS,
} from './evaluation-codes.ts'
import { pressureSchema } from './pressure.ts'

const probability = z.number().min(0).max(1)
const cylinder = z.int().min(1)
const readingIndex = z.int().min(0)

/** The cylinder at one end of the spread: its combined reading and the readings behind it. */
export const extremeSchema = z
  .strictObject({ cylinder, pressure: pressureSchema, readings: z.array(readingIndex) })
  .meta({ id: 'ExtremeCylinder' })
export type Extreme = z.infer<typeof extremeSchema>

/** A rule checked beside the one in force, with where it comes from. `cylinders` are those that fail it as read. */
export const alsoCheckedSchema = z
  .strictObject({
    rule: z.enum(RULES),
    basis: z.string(),
    verdict: z.enum(VERDICTS),
    asRead: z.enum(AS_READ),
    probabilityInside: probability,
    cylinders: z.array(cylinder).optional(),
  })
  .meta({ id: 'AlsoChecked' })
export type AlsoChecked = z.infer<typeof alsoCheckedSchema>

/** How even the cylinders are: the rule in force as read, and with the gauge's uncertainty. Percent of the highest. */
export const consistencySchema = z
  .strictObject({
    session: z.string().nullable().meta({ description: 'The session judged; null is the top level of the case.' }),
    rule: z.enum(RULES),
    basis: z.string(),
    limitPercent: z.number().optional(),
    limitPressure: pressureSchema.optional(),
    spreadPercent: z.number().nullable(),
    lowest: extremeSchema.nullable(),
    highest: extremeSchema.nullable(),
    asRead: z.enum(AS_READ).nullable(),
    verdict: z.enum(VERDICTS),
    probabilityInside: probability.nullable(),
    alsoChecked: z.array(alsoCheckedSchema),
  })
  .meta({ id: 'Consistency' })
export type Consistency = z.infer<typeof consistencySchema>

/** What a sound engine of this geometry should show here on a gauge: a window, never a pass or fail on its own. */
export const expectedSchema = z
  .strictObject({ low: pressureSchema, high: pressureSchema, basis: z.string() })
  .meta({ id: 'ExpectedPressure' })
export type Expected = z.infer<typeof expectedSchema>

/** Belief about one cylinder's own state: `sound` and all faults sum to one. */
export const cylinderBeliefSchema = z
  .strictObject({
    cylinder,
    sound: probability,
    faults: z.array(z.strictObject({ fault: faultSchema, probability })),
    pairs: z.array(z.strictObject({ faults: z.tuple([faultSchema, faultSchema]), probability })).optional(),
    ignitionOrMixture: probability.optional(),
  })
  .meta({ id: 'CylinderBelief' })
export type CylinderBelief = z.infer<typeof cylinderBeliefSchema>

/** Belief that the gasket leaks between two neighbours. */
export const neighbourBeliefSchema = z
  .strictObject({ cylinders: z.tuple([cylinder, cylinder]), fault: z.literal(BRIDGE), probability })
  .meta({ id: 'NeighbourBelief' })
export type NeighbourBelief = z.infer<typeof neighbourBeliefSchema>

/** One leakage reading made comparable: percent lost, leak area in mm2, percent at the reference tester. */
export const leakageResultSchema = z
  .strictObject({
    reading: readingIndex,
    cylinder,
    percentAsRead: z.number().nullable(),
    overLimit: z.boolean().nullable(),
    leakAreaMm2: z.number().nullable(),
    percentAtReference: z.number().nullable(),
    againstSisters: z.number().nullable().meta({ description: 'Leak area over the median area of the other cylinders.' }),
    leakAreaLowMm2: z.number().optional().meta({ description: 'Low end of the 95 percent range of the leak area.' }),
    leakAreaHighMm2: z.number().optional(),
    percentAtReferenceLow: z.number().optional(),
    percentAtReferenceHigh: z.number().optional(),
  })
  .meta({ id: 'LeakageResult' })
export type LeakageResult = z.infer<typeof leakageResultSchema>

/** What a reading (or the prior, or readings only together) adds to a belief, in decibans clamped to 99. */
export const becauseSchema = z
  .strictObject({
    kind: z.enum(['reading', 'prior', 'together']),
    readings: z.array(readingIndex),
    cylinder: cylinder.optional(),
    cylinders: z.tuple([cylinder, cylinder]).optional(),
    fault: z.enum([...FAULTS, BRIDGE, 'sound']).optional(),
    cause: engineCauseSchema.optional(),
    decibans: z.number().min(-99).max(99),
    says: z.string(),
  })
  .meta({ id: 'Because' })
export type Because = z.infer<typeof becauseSchema>

/** The smallest plausible change of one reading that would change the leading explanation. */
export const turnsSchema = z
  .strictObject({ reading: readingIndex, cylinder: cylinder.optional(), to: pressureSchema, leads: z.string(), says: z.string() })
  .meta({ id: 'Turns' })
export type Turns = z.infer<typeof turnsSchema>

/** One test that could be done next. */
export const suggestedTestSchema = z
  .strictObject({
    test: z.enum(TESTS),
    code: z.enum(OBSERVATION_CODES).optional(),
    wet: z.boolean().optional(),
    repeat: z.boolean().optional(),
    running: z.boolean().optional(),
    snap: z.boolean().optional(),
    rockersSlack: z.array(cylinder).optional(),
    first: z.enum(FIRST_STEPS).optional(),
    cylinders: z.array(cylinder).optional(),
  })
  .meta({ id: 'SuggestedTest' })
export type SuggestedTest = z.infer<typeof suggestedTestSchema>

/** A suggestion: one test or a cheap combination, what it would teach (bits), and what it takes (minutes of labour). */
export const suggestionSchema = z
  .strictObject({
    tests: z.array(suggestedTestSchema),
    bits: z.number().min(0),
    minutes: z.number().min(0),
    bitsPerMinute: z.number().min(0),
    says: z.string(),
  })
  .meta({ id: 'Suggestion' })
export type Suggestion = z.infer<typeof suggestionSchema>

/** A repair operation with the probability that it cures, and its expected cost in minutes of labour. */
export const repairSchema = z
  .strictObject({
    operation: operationSchema,
    cylinders: z.array(cylinder).optional(),
    cures: probability,
    expectedMinutes: z.number().min(0),
    says: z.string().optional(),
  })
  .meta({ id: 'RepairOption' })
export type RepairOption = z.infer<typeof repairSchema>

/** A reason why numbers must not be compared or believed, and what to do about it. */
export const objectionSchema = z
  .strictObject({ code: z.enum(OBJECTIONS), readings: z.array(readingIndex), says: z.string(), do: z.string() })
  .meta({ id: 'Objection' })
export type Objection = z.infer<typeof objectionSchema>

/** A caution for the step at hand. */
export const cautionSchema = z.strictObject({ code: z.enum(CAUTIONS), says: z.string() }).meta({ id: 'Caution' })
export type Caution = z.infer<typeof cautionSchema>

/** What the model makes of a case. Reading numbers are 0-based indexes into the case's readings. */
export const evaluationSchema = z
  .strictObject({
    model: z.string(),
    consistency: consistencySchema,
    expected: expectedSchema.optional(),
    cylinders: z.array(cylinderBeliefSchema),
    neighbours: z.array(neighbourBeliefSchema),
    engine: z.array(z.strictObject({ cause: engineCauseSchema, probability })),
    leakage: z.array(leakageResultSchema),
    because: z.array(becauseSchema),
    turns: turnsSchema.optional(),
    next: z.array(suggestionSchema),
    enough: z.strictObject({ says: z.string() }).nullable(),
    repairs: z.array(repairSchema),
    objections: z.array(objectionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ id: 'Evaluation' })
export type Evaluation = z.infer<typeof evaluationSchema>

import { z } from 'zod'
import { idSchema, instantSchema, lineSchema, odometerKmSchema, textSchema, versionSchema } from './basics.ts'
import { engineDescriptionSchema, historySchema } from './engine-description.ts'

/** The engine of a case without its own history: what a design has in common. */
export const engineSpecificationSchema = engineDescriptionSchema.omit({ history: true }).meta({ id: 'EngineSpecification' })
/** Values of one engine that beat its family's. */
export const engineOwnValuesSchema = engineSpecificationSchema.partial().meta({ id: 'EngineOwnValues' })
/** For the plug-lead map: how the rotor turns and which tower serves cylinder 1 (clock position, 12 at the top). */
export const leadPlanSchema = z.strictObject({ rotor: z.enum(['clockwise', 'anticlockwise']), leadOneAtOClock: z.number().min(0).lt(12) }).meta({ id: 'LeadPlan' })

const familyFields = { name: lineSchema, specification: engineSpecificationSchema, basis: z.record(z.string(), lineSchema).meta({ description: 'field of the specification -> where its value comes from' }), leads: leadPlanSchema.nullable() }
/** A design as the chain knows it, each value with its basis. */
export const engineFamilySchema = z.strictObject({ id: idSchema, ...familyFields, version: versionSchema }).meta({ id: 'EngineFamily' })
export const newEngineFamilySchema = z.strictObject({ ...familyFields, leads: leadPlanSchema.nullable().default(null) }).meta({ id: 'NewEngineFamily' })
export const engineFamilyEditSchema = z.strictObject(familyFields).partial().meta({ id: 'EngineFamilyEdit' })

/** An engine: a thing of its own that outlives cars. `specification` is the family's with its own values laid over. */
export const engineSchema = z
  .strictObject({
    id: idSchema,
    family: z.strictObject({ id: idSchema, name: z.string() }).nullable(),
    description: z.string(),
    stampedNumber: z.string().nullable(),
    specification: engineSpecificationSchema,
    ownValues: engineOwnValuesSchema,
    history: historySchema,
    leads: leadPlanSchema.nullable(),
    fittedIn: z.strictObject({ fitting: idSchema, vehicle: idSchema, plate: z.string().nullable(), from: instantSchema }).nullable(),
    version: versionSchema,
  })
  .meta({ id: 'Engine' })
export type Engine = z.infer<typeof engineSchema>
/** Without a family, `ownValues` must hold fuel, layout and cylinders. */
export const newEngineSchema = z
  .strictObject({ family: idSchema.nullable().default(null), description: lineSchema, stampedNumber: z.string().trim().min(1).max(60).nullable().default(null), ownValues: engineOwnValuesSchema.default({}), history: historySchema.default({}) })
  .meta({ id: 'NewEngine' })
export const engineEditSchema = z
  .strictObject({ family: idSchema.nullable(), description: lineSchema, stampedNumber: z.string().trim().min(1).max(60).nullable(), ownValues: engineOwnValuesSchema, history: historySchema })
  .partial()
  .meta({ id: 'EngineEdit' })

export const fittingSchema = z.strictObject({ id: idSchema, engine: idSchema, vehicle: idSchema, from: instantSchema, until: instantSchema.nullable(), odometerKm: odometerKmSchema.nullable() }).meta({ id: 'Fitting' })
/** Fitting an engine ends the vehicle's present fitting at `from`; an engine still fitted elsewhere is refused (409). */
export const newFittingSchema = z.strictObject({ vehicle: idSchema, from: instantSchema.optional(), odometerKm: odometerKmSchema.nullable().default(null) }).meta({ id: 'NewFitting' })
export const removalSchema = z.strictObject({ until: instantSchema.optional() }).meta({ id: 'Removal' })
/** Something that happened to the engine itself; written to its trail. */
export const newEngineEventSchema = z.strictObject({ kind: z.enum(['rebuilt', 'head-off', 'note']), at: instantSchema.optional(), text: textSchema }).meta({ id: 'NewEngineEvent' })
/** The event as kept in the trail of the engine. */
export const engineEventSchema = z.strictObject({ engine: idSchema, kind: z.enum(['rebuilt', 'head-off', 'note']), at: instantSchema, text: z.string() }).meta({ id: 'EngineEvent' })
/**
 * One line of an engine's life, newest first. `job`, `code` and `text` of another garage's job are null: its date and garage are
 * known, no more. `text` is the complaint, the purpose of a session, or what was seen.
 */
export const engineHistoryEntrySchema = z
  .strictObject({ at: instantSchema, kind: z.enum(['fitted', 'removed', 'job', 'session', 'finding']), garage: z.string(), plate: z.string().nullable(), job: idSchema.nullable(), code: z.string().nullable(), text: z.string().nullable() })
  .meta({ id: 'EngineHistoryEntry' })
/** A record made twice: both trails say so, neither record goes away. */
export const sameEngineSchema = z.strictObject({ same: idSchema, reason: lineSchema }).meta({ id: 'SameEngine' })

export type EngineSpecification = z.infer<typeof engineSpecificationSchema>
export type EngineOwnValues = z.infer<typeof engineOwnValuesSchema>
export type LeadPlan = z.infer<typeof leadPlanSchema>
export type EngineFamily = z.infer<typeof engineFamilySchema>
export type NewEngineFamily = z.infer<typeof newEngineFamilySchema>
export type EngineFamilyEdit = z.infer<typeof engineFamilyEditSchema>
export type NewEngine = z.infer<typeof newEngineSchema>
export type EngineEdit = z.infer<typeof engineEditSchema>
export type Fitting = z.infer<typeof fittingSchema>
export type NewFitting = z.infer<typeof newFittingSchema>
export type Removal = z.infer<typeof removalSchema>
export type NewEngineEvent = z.infer<typeof newEngineEventSchema>
export type EngineEvent = z.infer<typeof engineEventSchema>
export type EngineHistoryEntry = z.infer<typeof engineHistoryEntrySchema>
export type SameEngine = z.infer<typeof sameEngineSchema>

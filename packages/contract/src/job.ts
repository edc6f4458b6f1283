import { z } from 'zod'
import { currencySchema, idSchema, instantSchema, lineSchema, minorSchema, odometerKmSchema, personRefSchema, textSchema, versionSchema } from './basics.ts'
import { customerSchema, newCustomerSchema, newVehicleSchema, vehicleSchema } from './customer.ts'
import { engineSchema, newEngineSchema } from './engine.ts'

/** Where a job stands: derived from facts, the first that fits. */
export const jobStateSchema = z
  .enum(['handed-over', 'cancelled', 'ready', 'waiting-for-parts', 'waiting-for-manager', 'waiting-for-customer', 'retest-due', 'in-repair', 'approved', 'testing', 'in-bay', 'booked'])
  .meta({ id: 'JobState' })
export type JobState = z.infer<typeof jobStateSchema>

/** State with what it waits for, on whom and since when: screens make the sentence, `reasons` are facts said beside it. */
export const standingSchema = z
  .strictObject({
    state: jobStateSchema,
    since: instantSchema,
    waitsFor: z.enum(['manager', 'customer', 'parts', 'technician', 'front-desk', 'nobody']),
    waitsOn: z.string().nullable().meta({ description: 'name of the person or thing waited on, where one is known' }),
    until: instantSchema.nullable().meta({ description: 'next call, arrival of parts, or the promise to the customer' }),
    beside: z.array(z.enum(['draft', 'sent-back', 'refused', 'sent', 'declined', 'nothing-found', 'release-passed', 'release-failed', 'release-waived', 'unplaced-readings', 'excess-needs-permission'])),
  })
  .meta({ id: 'Standing' })
export type Standing = z.infer<typeof standingSchema>

/** What was done before, as told at book-in. */
export const priorWorkSchema = z
  .strictObject({ headTorqued: z.boolean(), clearancesSet: z.boolean(), ringsNew: z.boolean(), gasketNew: z.boolean(), valvesGround: z.boolean(), overheated: z.boolean(), monthsStored: z.number().min(0).max(1200), note: textSchema })
  .partial()
  .meta({ id: 'PriorWork' })

export const jobSummarySchema = z
  .strictObject({
    id: idSchema,
    garage: idSchema,
    code: z.string().meta({ examples: ['K 27'] }),
    plate: z.string(),
    vehicle: z.string().meta({ description: 'the vehicle in a few words' }),
    customer: z.string(),
    complaint: z.string(),
    bay: z.strictObject({ id: idSchema, name: z.string() }).nullable(),
    engine: idSchema,
    cylinders: z.int(),
    standing: standingSchema,
    promisedAt: instantSchema.nullable(),
    bookedAt: instantSchema,
  })
  .meta({ id: 'JobSummary' })
export type JobSummary = z.infer<typeof jobSummarySchema>

export const contactSchema = z.strictObject({ id: idSchema, kind: z.enum(['call', 'message', 'visit', 'note']), text: z.string(), nextAt: instantSchema.nullable(), by: personRefSchema.nullable(), at: instantSchema }).meta({ id: 'Contact' })
export const newContactSchema = z.strictObject({ kind: z.enum(['call', 'message', 'visit', 'note']), text: textSchema, nextAt: instantSchema.nullable().default(null) }).meta({ id: 'NewContact' })

export const partsOrderSchema = z
  .strictObject({ id: idSchema, text: z.string(), orderedAt: instantSchema, orderedBy: personRefSchema.nullable(), expectedAt: instantSchema.nullable(), arrivedAt: instantSchema.nullable(), arrivedBy: personRefSchema.nullable() })
  .meta({ id: 'PartsOrder' })
export const newPartsOrderSchema = z.strictObject({ text: lineSchema, expectedAt: instantSchema.nullable().default(null) }).meta({ id: 'NewPartsOrder' })

export const jobSchema = jobSummarySchema.extend({
  customerRecord: customerSchema.nullable().meta({ description: 'null for who may not see it' }),
  vehicleRecord: vehicleSchema,
  engineRecord: engineSchema,
  odometerKm: odometerKmSchema.nullable(),
  priorWork: priorWorkSchema,
  comeBackOf: idSchema.nullable(),
  bookedBy: personRefSchema.nullable(),
  contacts: z.array(contactSchema),
  parts: z.array(partsOrderSchema),
  permitted: z.strictObject({ amountMinor: minorSchema, currency: currencySchema }).nullable().meta({ description: 'what the customer has permitted so far' }),
  cancelReason: z.string().nullable(),
  handedOverAt: instantSchema.nullable(),
  version: versionSchema,
}).meta({ id: 'Job' })
export type Job = z.infer<typeof jobSchema>

/** Book in: each of customer, vehicle and engine is named by its id or made along the way. A vehicle whose engine is known needs no engine. */
export const newJobSchema = z
  .strictObject({
    customer: z.union([idSchema, newCustomerSchema]),
    vehicle: z.union([idSchema, newVehicleSchema.omit({ customer: true })]),
    engine: z.union([idSchema, newEngineSchema]).optional(),
    complaint: textSchema,
    odometerKm: odometerKmSchema.nullable().default(null),
    priorWork: priorWorkSchema.default({}),
    promisedAt: instantSchema.nullable().default(null),
    bay: idSchema.nullable().default(null),
    comeBackOf: idSchema.nullable().default(null),
    fulfils: z.array(idSchema).default([]).meta({ description: 'follow-up retests that this visit is for' }),
  })
  .meta({ id: 'NewJob' })
export const jobEditSchema = z.strictObject({ complaint: textSchema, odometerKm: odometerKmSchema.nullable(), priorWork: priorWorkSchema, promisedAt: instantSchema.nullable() }).partial().meta({ id: 'JobEdit' })
export const bayPlacementSchema = z.strictObject({ bay: idSchema.nullable() }).meta({ id: 'BayPlacement' })
export const cancellationSchema = z.strictObject({ reason: lineSchema }).meta({ id: 'Cancellation' })
/** Testing ends with nothing found: the job is ready once nothing is owed. */
export const testingClosedSchema = z.strictObject({ note: textSchema.optional() }).meta({ id: 'TestingClosed' })
export const handOverSchema = z
  .strictObject({
    odometerKm: odometerKmSchema.nullable().default(null),
    note: textSchema.optional(),
    followUps: z.array(z.strictObject({ reason: lineSchema, latest: z.iso.date().nullable().default(null), odometerKm: odometerKmSchema.nullable().default(null), event: lineSchema.nullable().default(null) })).max(10).default([]),
  })
  .meta({ id: 'HandOver' })

export const jobsQuerySchema = z.strictObject({
  after: z.string().max(200).optional(),
  limit: z.coerce.number().int().min(1).max(200).default(50),
  open: z.enum(['true', 'false']).optional().meta({ description: 'true: only jobs not handed over nor cancelled' }),
  q: z.string().trim().max(100).optional().meta({ description: 'plate, code, name or phone, typed loosely' }),
})

/** The garage seen from above, and three lists. Sorted as people look: bays by position, the lists by who waits longest. */
export const floorSchema = z
  .strictObject({
    garage: idSchema,
    name: z.string(),
    bays: z.array(z.strictObject({ id: idSchema, name: z.string(), job: jobSummarySchema.nullable() })),
    elsewhere: z.array(jobSummarySchema).meta({ description: 'open jobs in no bay and in none of the lists' }),
    waitsForDecision: z.array(jobSummarySchema),
    retestsDue: z.array(z.strictObject({ retest: idSchema, job: idSchema, code: z.string(), plate: z.string(), kind: z.enum(['release', 'follow-up']), reason: z.string(), due: z.string().nullable(), overdueDays: z.int().nullable(), bookedFor: instantSchema.nullable() })),
    ready: z.array(jobSummarySchema),
  })
  .meta({ id: 'Floor' })
export type Floor = z.infer<typeof floorSchema>

export const searchHitSchema = jobSummarySchema.extend({ matched: z.enum(['code', 'plate', 'customer', 'phone']) }).meta({ id: 'SearchHit' })

export type PriorWork = z.infer<typeof priorWorkSchema>
export type Contact = z.infer<typeof contactSchema>
export type NewContact = z.infer<typeof newContactSchema>
export type PartsOrder = z.infer<typeof partsOrderSchema>
export type NewPartsOrder = z.infer<typeof newPartsOrderSchema>
export type NewJob = z.infer<typeof newJobSchema>
export type JobEdit = z.infer<typeof jobEditSchema>
export type BayPlacement = z.infer<typeof bayPlacementSchema>
export type Cancellation = z.infer<typeof cancellationSchema>
export type TestingClosed = z.infer<typeof testingClosedSchema>
export type HandOver = z.infer<typeof handOverSchema>
export type JobsQuery = z.infer<typeof jobsQuerySchema>
export type SearchHit = z.infer<typeof searchHitSchema>

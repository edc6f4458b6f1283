import { z } from 'zod'
import { clientIdSchema, idSchema, instantSchema, lineSchema, personRefSchema, versionSchema } from './basics.ts'
import { conditionsSchema, gaugeSchema, leakageTesterSchema } from './engine-description.ts'
import { enteredReadingSchema } from './reading.ts'

export const sessionPurposeSchema = z.enum(['test', 'release', 'follow-up']).meta({ id: 'SessionPurpose' })


/** Body of `PUT /v1/sessions/{session}/readings/{reading}`. */
export const readingPutSchema = z
  .strictObject({
    reading: enteredReadingSchema.optional(),
    takenAt: instantSchema.meta({ description: "the tablet's clock" }),
    takenBy: idSchema.optional().meta({ description: 'person who took it, where that is not who sends it' }),
    offline: z.literal(true).optional(),
    replaces: idSchema.optional(),
    withdrawn: z.literal(true).optional(),
    reason: lineSchema.optional(),
  })
  .superRefine((put, context) => {
    if (put.replaces && !put.reason) context.addIssue({ code: 'custom', path: ['reason'], message: 'a reason, since the reading replaces another' })
    if (put.withdrawn && !put.replaces) context.addIssue({ code: 'custom', path: ['replaces'], message: 'the id of the reading that is withdrawn' })
    if (put.withdrawn && put.reading) context.addIssue({ code: 'custom', path: ['reading'], message: 'no reading, since one is withdrawn' })
    if (!put.withdrawn && !put.reading) context.addIssue({ code: 'custom', path: ['reading'], message: 'a reading' })
  })
  .meta({ id: 'ReadingPut' })
export type ReadingPut = z.infer<typeof readingPutSchema>

/** Answered 201 the first time, 200 with the same words ever after. Acknowledged means on disk. */
export const readingKeptSchema = z.strictObject({ id: idSchema, receivedAt: instantSchema, state: z.enum(['placed', 'unplaced']) }).meta({ id: 'ReadingKept' })
export type ReadingKept = z.infer<typeof readingKeptSchema>

/** A reading as stored. `current` is false once another replaces or withdraws it. */
export const storedReadingSchema = z
  .strictObject({
    id: clientIdSchema,
    session: idSchema,
    reading: enteredReadingSchema.nullable(),
    state: z.enum(['placed', 'unplaced']),
    current: z.boolean(),
    replaces: idSchema.nullable(),
    replacedBy: idSchema.nullable(),
    withdrawn: z.boolean(),
    reason: z.string().nullable(),
    takenAt: instantSchema,
    receivedAt: instantSchema,
    takenBy: personRefSchema.nullable(),
    offline: z.boolean(),
  })
  .meta({ id: 'StoredReading' })
export type StoredReading = z.infer<typeof storedReadingSchema>

export const sessionSchema = z
  .strictObject({
    id: idSchema,
    job: idSchema,
    engine: idSchema,
    purpose: sessionPurposeSchema,
    conditions: conditionsSchema,
    gauge: z.strictObject({ id: idSchema, name: z.string() }).nullable(),
    gaugeSpecification: gaugeSchema.nullable(),
    tester: z.strictObject({ id: idSchema, name: z.string() }).nullable(),
    testerSpecification: leakageTesterSchema.nullable(),
    apps: z.array(idSchema),
    openedAt: instantSchema,
    openedBy: personRefSchema.nullable(),
    closedAt: instantSchema.nullable(),
    readings: z.array(storedReadingSchema),
    version: versionSchema,
  })
  .meta({ id: 'Session' })
export type Session = z.infer<typeof sessionSchema>

/** Opens a session; conditions and instruments never change afterwards: other ones open another session. */
export const newSessionSchema = z
  .strictObject({ id: clientIdSchema.optional().meta({ description: 'made by the tablet when it opens a session without network; the same id again answers the same session' }), purpose: sessionPurposeSchema.default('test'), conditions: conditionsSchema, gauge: idSchema.nullable().default(null), tester: idSchema.nullable().default(null), apps: z.array(idSchema).max(10).default([]), openedAt: instantSchema.optional() })
  .meta({ id: 'NewSession' })

export type SessionPurpose = z.infer<typeof sessionPurposeSchema>
export type NewSession = z.infer<typeof newSessionSchema>

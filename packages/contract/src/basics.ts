import { z } from 'zod'

/** Identifier of a record: a UUID, time-ordered (version 7) where we make it. */
export const idSchema = z.uuid().meta({ description: 'identifier, a UUID', examples: ['019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b'] })
/** Identifier that the client makes: UUID version 7, so that the order of making shows. */
export const clientIdSchema = z.uuidv7().meta({ description: 'identifier made by the client, a UUID version 7' })
/** An instant, UTC on the wire (RFC 3339). */
export const instantSchema = z.iso.datetime({ offset: true }).meta({ description: 'instant, RFC 3339', examples: ['2026-05-06T10:20:00.000Z'] })
/** A calendar day in the garage's zone. */
export const daySchema = z.iso.date().meta({ description: 'calendar day in the zone of the garage', examples: ['2026-05-20'] })
/** Short text on one line. */
export const lineSchema = z.string().trim().min(1).max(300)
/** Longer text, may hold line breaks. */
export const textSchema = z.string().trim().min(1).max(4000)
/** Integer minor units (pence, cents); the currency is the garage's. */
export const minorSchema = z.int().min(0).max(100_000_000).meta({ description: 'money in minor units of the currency named beside it' })
/** ISO 4217 code. */
export const currencySchema = z.string().regex(/^[A-Z]{3}$/).meta({ description: 'ISO 4217 currency code', examples: ['EUR'] })
/** A rate in hundredths of a percent: 2000 is 20 percent. */
export const basisPointsSchema = z.int().min(0).max(10_000)
export const localeSchema = z.enum(['en', 'de', 'es'])
/** Counts up with every edit; also sent as ETag and asked for in If-Match. */
export const versionSchema = z.int().min(1)
/** Kilometres on the clock. */
export const odometerKmSchema = z.int().min(0).max(5_000_000)

/** Body of an action that needs none: `{}`, or nothing at all. */
export const nothingSchema = z.strictObject({}).nullish()

/** A page of a list: `next` is the cursor to pass as `after`, null on the last page. */
export const page = <T extends z.ZodType>(item: T) => z.strictObject({ items: z.array(item), next: z.string().nullable() })
/** Query of every paged list. */
export const pageQuerySchema = z.strictObject({ after: z.string().max(200).optional(), limit: z.coerce.number().int().min(1).max(200).default(50) })
/** A person as others see him. */
export const personRefSchema = z.strictObject({ id: idSchema, name: z.string() }).meta({ id: 'PersonRef' })
export type PersonRef = z.infer<typeof personRefSchema>

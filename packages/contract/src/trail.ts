import { z } from 'zod'
import { idSchema, instantSchema } from './basics.ts'

export const trailKindSchema = z
  .enum([
    'job-booked', 'session-opened', 'session-closed', 'reading', 'reading-replaced', 'reading-withdrawn', 'photo', 'photo-withdrawn', 'evaluation', 'suggestion-taken', 'suggestion-declined', 'testing-closed',
    'quote-sent', 'quote-approved', 'quote-sent-back', 'quote-refused', 'approval-withdrawn', 'authorisation-given', 'authorisation-declined',
    'repair-started', 'repair-finished', 'finding', 'retest-promised', 'retest-date', 'retest-passed', 'retest-failed', 'retest-waived', 'handed-over', 'cancelled',
    'fitted', 'removed', 'engine-event', 'same-engine',
  ])
  .meta({ id: 'TrailKind' })
export type TrailKind = z.infer<typeof trailKindSchema>

/** One entry of an engine's trail. An `evaluation` follows the readings that it names: what the model made of the case with them, and which model. `actor` and `body` are null where another garage may see only kind, time and hash. */
export const trailEntrySchema = z
  .strictObject({
    id: idSchema,
    engine: idSchema,
    job: idSchema.nullable(),
    garage: idSchema.nullable(),
    seq: z.int(),
    at: instantSchema,
    kind: trailKindSchema,
    actor: z.strictObject({ kind: z.string(), id: z.string(), name: z.string().nullable() }).nullable(),
    body: z.unknown().nullable(),
    previousHash: z.string(),
    hash: z.string(),
  })
  .meta({ id: 'TrailEntry' })
export type TrailEntry = z.infer<typeof trailEntrySchema>

/** What checking a trail found; `broken` names the first entry that does not fit. */
export const trailCheckSchema = z
  .strictObject({ engine: idSchema, entries: z.int(), head: z.string(), whole: z.boolean(), broken: z.strictObject({ seq: z.int(), says: z.string() }).nullable() })
  .meta({ id: 'TrailCheck' })

export type TrailCheck = z.infer<typeof trailCheckSchema>

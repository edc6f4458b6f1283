import { z } from 'zod'
import { idSchema, instantSchema } from './basics.ts'

/** Every kind of live event; the documentation lists them from here. */
export const EVENT_KINDS = {
  'job.changed': 'a job was booked, edited, placed, or stands elsewhere than before',
  'session.opened': 'a session was opened on a job',
  'session.closed': 'a session was closed',
  'reading.kept': 'a reading, a correction or a withdrawal was kept',
  'photo.changed': 'a photo was attached to a reading, or withdrawn',
  'suggestion.decided': 'a suggested test was taken or declined',
  'quote.sent': 'a quote version was sent to the manager',
  'quote.answered': 'a manager approved, sent back, refused or withdrew',
  'authorisation.recorded': 'the customer permitted or declined',
  'repair.changed': 'a repair was started or finished',
  'finding.recorded': 'a finding was recorded',
  'retest.changed': 'a retest was promised, booked, moved, decided or waived',
  'garage.changed': 'bays, gauges, prices or settings of a garage changed',
  'customer.changed': 'a customer or a vehicle was added, edited or erased',
  'engine.changed': 'an engine, its family, where it is fitted or what happened to it changed',
  'trail.heads': 'heads of trails, exported daily',
} as const satisfies Record<string, string>
export const eventKindSchema = z.enum(Object.keys(EVENT_KINDS) as [keyof typeof EVENT_KINDS, ...(keyof typeof EVENT_KINDS)[]]).meta({ id: 'EventKind' })
export type EventKind = z.infer<typeof eventKindSchema>

/** A live event: says what changed; details are fetched by who may see them. `reading.kept` carries the stored reading. */
export const liveEventSchema = z
  .strictObject({ id: z.string(), kind: eventKindSchema, at: instantSchema, garage: idSchema.nullable(), job: idSchema.nullable(), engine: idSchema.nullable(), body: z.record(z.string(), z.unknown()) })
  .meta({ id: 'LiveEvent' })
export type LiveEvent = z.infer<typeof liveEventSchema>

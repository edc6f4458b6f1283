import { createHash } from 'node:crypto'
import type { Actor, EnteredReading, ReadingPut } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import { newId } from '../../platform/ids.ts'
import { canonicalText, trailActor } from '../trail/service.ts'
import { pressurePaOf } from './reading-faults.ts'
import type { KeepReading, ReplacedReading } from './reading-store.ts'
import type { SessionFacts } from './session-facts.ts'

/** The row, the trail entries and the events of one PUT. */
export function readingRow(actor: Actor, facts: SessionFacts, id: string, put: ReadingPut, requestHash: string, replaced: ReplacedReading | null): KeepReading {
  const { reading, replaces = null, withdrawn = false, reason = null, offline = false } = put
  const person = personOf(actor)
  const takenBy = put.takenBy ?? person
  const subject = { test: reading?.test ?? replaced!.test, cylinder: reading === undefined ? replaced!.cylinder : cylinderOf(reading) }
  const told = (state: string) => canonicalText({
    reading: id, session: facts.session, state, takenAt: put.takenAt, takenBy, offline, ...subject,
    ...(reading === undefined ? {} : { entered: withoutSamples(reading) }),
    ...(replaces === null ? {} : { replaces, reason, ...leaves(facts, replaced!) }),
  })
  return {
    id, session: facts.session, engine: facts.engine, job: facts.job, garage: facts.garage, engineVersion: facts.engineVersion, familyVersion: facts.familyVersion,
    ...subject, body: reading ?? null, pressurePa: reading === undefined ? null : pressurePaOf(reading),
    replaces, withdrawn, reason, takenAt: put.takenAt, takenBy,
    tablet: actor.kind === 'tablet' ? actor.tablet : null, app: actor.kind === 'app' ? actor.app : null,
    unprovenTaker: put.takenBy !== undefined && put.takenBy !== person ? put.takenBy : null,
    offline, requestHash, actor: canonicalText(trailActor(actor)),
    entryId: newId(), kind: withdrawn ? 'reading-withdrawn' : replaces === null ? 'reading' : 'reading-replaced',
    told: told('placed'), toldUnplaced: offline ? told('unplaced') : null,
    eventHead: eventHeadOf(facts, id, put, takenBy),
  }
}

/** What the trail of the job that a moved reading leaves is told. */
export function leftBody(facts: SessionFacts, id: string, put: ReadingPut, replaced: ReplacedReading): Record<string, unknown> {
  return { reading: id, replaces: replaced.id, reason: put.reason ?? null, movedTo: { session: facts.session, job: facts.job, engine: facts.engine }, test: replaced.test, cylinder: replaced.cylinder }
}

function cylinderOf(reading: EnteredReading): number | null {
  return 'cylinder' in reading ? (reading.cylinder ?? null) : null
}

function leaves(facts: SessionFacts, replaced: ReplacedReading): Record<string, unknown> {
  return replaced.session === facts.session ? {} : { movedFrom: { session: replaced.session, job: replaced.job, engine: replaced.engine } }
}

/** A current trace is kept in the reading; the trail holds its digest, which binds it as well as the samples would. */
function withoutSamples(reading: EnteredReading): unknown {
  if (reading.test !== 'cranking-current') return reading
  const { samples, ...rest } = reading
  return { ...rest, samplesSha256: createHash('sha256').update(canonicalText(samples)).digest('hex') }
}

/**
 * What live screens get: the stored reading without the taker's name (`takenById` names him to who may know). Of a current trace, which
 * is large, they get all but the samples. Ends inside the reading: the statement adds its state and the time it was received.
 */
function eventHeadOf(facts: SessionFacts, id: string, put: ReadingPut, takenById: string | null): string {
  const { replaces = null, withdrawn = false, reason = null, takenAt, offline = false } = put
  const reading = put.reading === undefined || put.reading.test === 'cranking-current' ? null : put.reading
  const head = JSON.stringify({
    session: facts.session, readingId: id, takenById, replaces, test: put.reading?.test ?? null,
    reading: { id, session: facts.session, reading, current: !withdrawn, replaces, replacedBy: null, withdrawn, reason, takenAt, takenBy: null, offline },
  })
  return head.slice(0, -2)
}

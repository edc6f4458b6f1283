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
    ...subject, body: reading === undefined ? null : JSON.stringify(reading), pressurePa: reading === undefined ? null : pressurePaOf(reading),
    replaces, withdrawn, reason, takenAt: put.takenAt, takenBy,
    tablet: actor.kind === 'tablet' ? actor.tablet : null, app: actor.kind === 'app' ? actor.app : null,
    unprovenTaker: put.takenBy !== undefined && put.takenBy !== person ? put.takenBy : null,
    offline, requestHash, actor: canonicalText(trailActor(actor)),
    entry: {
      id: newId(), kind: withdrawn ? 'reading-withdrawn' : replaces === null ? 'reading' : 'reading-replaced',
      body: told('placed'), bodyUnplaced: offline ? told('unplaced') : null, event: JSON.stringify(eventOf(facts, id, put, takenBy)),
    },
    left: replaced === null || replaced.job === facts.job ? null : {
      id: newId(), engine: replaced.engine, job: replaced.job, garage: replaced.garage, kind: withdrawn ? 'reading-withdrawn' : 'reading-replaced',
      body: canonicalText({ reading: id, replaces, reason, movedTo: { session: facts.session, job: facts.job, engine: facts.engine }, test: replaced.test, cylinder: replaced.cylinder }),
      event: JSON.stringify({ session: replaced.session, readingId: id, replaces }),
    },
  }
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

/** What live screens get: the stored reading without the taker's name (`takenById` names him to who may know), or its id where it is large. */
function eventOf(facts: SessionFacts, id: string, put: ReadingPut, takenById: string | null): Record<string, unknown> {
  const base = { session: facts.session, readingId: id, takenById, replaces: put.replaces ?? null }
  if (put.reading?.test === 'cranking-current') return base
  return {
    ...base,
    reading: {
      id, session: facts.session, reading: put.reading ?? null, current: true, replaces: put.replaces ?? null, replacedBy: null,
      withdrawn: put.withdrawn ?? false, reason: put.reason ?? null, takenAt: put.takenAt, takenBy: null, offline: put.offline ?? false,
    },
  }
}

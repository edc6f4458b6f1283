import type { Database } from '../../platform/database/database.ts'
import type { LiveEvents } from '../../platform/live/live-events.ts'
import { ProblemError } from '../../platform/problems/problem.ts'
import { jobPlace } from '../sessions/service.ts'
import { appendModelNote } from '../trail/service.ts'
import { caseOfJob } from './case.ts'
import { hashed, opinionOn } from './model.ts'
import { notedThrough, readJobsPending, readPending, tryNoting } from './store.ts'
import { summaryOf } from './summary.ts'

/**
 * What the model made of each reading is written into the trail just behind it, as a note that names the readings it covers.
 *
 * Not in the statement that keeps the reading: an evaluation takes some 10 to 60 ms of processor, a reading well under one, so the PUT
 * would keep a tenth of its pace and hold the head of the engine's trail all that time. Readings that come faster than one in GATHER_MS
 * share a note, and notes are made one after the other with pauses, so that they never take more than a tenth of one core.
 * Nothing is lost when a process dies in between: notes are owed wherever the trail has a reading without one, and every process looks
 * for those; the database lets one of them write.
 */
const GATHER_MS = 400
const LOOK_FOR_OWED_MS = 60_000
/** Notes that a dead process owed are looked for this far back. */
const LOOK_BACK_MS = 2 * 24 * 3_600_000
/** A pause of this many times the work before it. */
const REST = 9

export type Noting = { readonly stop: () => Promise<void> }

/** Writes notes behind readings of any process, until stopped. */
export function keepNoting(database: Database, live: LiveEvents, report: (error: unknown) => void): Noting {
  /** Jobs that owe a note, in the order in which they began to; the value is when there will be nothing more to gather. */
  const owing = new Map<string, number>()
  let working: Promise<void> | undefined
  let timer: NodeJS.Timeout | undefined
  let stopped = false

  function owe(job: string): void {
    if (!owing.has(job)) owing.set(job, Date.now() + GATHER_MS)
    if (working === undefined && timer === undefined) rest(GATHER_MS)
  }

  function rest(ms: number): void {
    if (stopped) return
    timer = setTimeout(() => {
      timer = undefined
      working = noteNext().finally(() => { working = undefined })
    }, ms).unref()
  }

  async function noteNext(): Promise<void> {
    const [job, from] = owing.entries().next().value ?? []
    if (job === undefined || from === undefined) return
    const wait = from - Date.now()
    if (wait > 0) return rest(wait)
    owing.delete(job)
    const began = Date.now()
    await noteJob(database, job).catch((error: unknown) => { if (!stopped) report(error) })
    if (owing.size > 0) rest(REST * (Date.now() - began))
  }

  const leave = live.subscribe(({ kind, job_id }) => { if (kind === 'reading.kept' && job_id !== null) owe(job_id) })
  const looking = setInterval(() => void readJobsPending(database, new Date(Date.now() - LOOK_BACK_MS)).then((jobs) => jobs.forEach(owe), report), LOOK_FOR_OWED_MS).unref()

  return {
    stop: async () => {
      stopped = true
      leave()
      clearInterval(looking)
      clearTimeout(timer)
      await working
    },
  }
}

/** Writes the note that a job's trail owes, if it owes one. @returns whether it was written here */
export async function noteJob(database: Database, job: string): Promise<boolean> {
  const pending = await readPending(database, job)
  const last = pending.at(-1)
  if (last === undefined) return false
  const told = await opinionOfJob(database, job)
  return database.transaction(async (tx) => {
    if (!(await tryNoting(tx, job)) || (await notedThrough(tx, job)) >= last.seq) return false
    await appendModelNote(tx, { engine: told.engine, job, garage: told.garage, model: told.model, body: { readings: pending.map(({ reading }) => reading), through: last.seq, ...told.body } })
    return true
  })
}

async function opinionOfJob(database: Database, job: string) {
  try {
    const { engine, garage, given } = await caseOfJob(database, job)
    const asked = hashed(given)
    const evaluation = await opinionOn(asked, false)
    return { engine, garage, model: evaluation.model, body: { case: asked.hash, model: evaluation.model, summary: summaryOf(evaluation) } }
  } catch (error) {
    // More readings than a case may hold: the note says so instead, or it would be owed for ever.
    if (!(error instanceof ProblemError) || error.code !== 'invalid-case') throw error
    const { garage, engine } = await jobPlace(database.prisma, job)
    return { engine, garage, model: 'none', body: { summary: null, refused: error.details.errors?.[0]?.expected ?? error.message } }
  }
}

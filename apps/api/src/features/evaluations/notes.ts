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
 * share a note. Nothing is lost when a process dies in between: notes are owed wherever the trail has a reading without one, and every
 * process looks for those; the database lets one of them write.
 */
const GATHER_MS = 400
const AT_THE_LATEST_MS = 3_000
const LOOK_FOR_OWED_MS = 60_000

export type Noting = { readonly stop: () => Promise<void> }

/** Writes notes behind readings of any process, until stopped. */
export function keepNoting(database: Database, live: LiveEvents, report: (error: unknown) => void): Noting {
  const waiting = new Map<string, { timer: NodeJS.Timeout; readonly since: number }>()
  const running = new Set<Promise<unknown>>()
  let stopped = false

  function run(job: string): void {
    waiting.delete(job)
    const work: Promise<unknown> = noteJob(database, job).catch((error: unknown) => { if (!stopped) report(error) }).finally(() => running.delete(work))
    running.add(work)
  }

  function soon(job: string): void {
    if (stopped) return
    const before = waiting.get(job)
    const since = before?.since ?? Date.now()
    clearTimeout(before?.timer)
    const wait = Math.max(0, Math.min(GATHER_MS, since + AT_THE_LATEST_MS - Date.now()))
    waiting.set(job, { since, timer: setTimeout(() => run(job), wait).unref() })
  }

  const leave = live.subscribe(({ kind, job_id }) => { if (kind === 'reading.kept' && job_id !== null) soon(job_id) })
  const looking = setInterval(() => void readJobsPending(database).then((jobs) => jobs.forEach(soon), report), LOOK_FOR_OWED_MS).unref()

  return {
    stop: async () => {
      stopped = true
      leave()
      clearInterval(looking)
      for (const { timer } of waiting.values()) clearTimeout(timer)
      await Promise.all(running)
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

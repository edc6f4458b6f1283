import { v7 as uuidv7 } from 'uuid'
import { need } from './answer.ts'
import type { DemoSession } from './chain/index.ts'
import type { Visit } from './decide.ts'

const HOUR_MS = 3_600_000
/** Between two readings, by the tablet's clock. */
const PACE_MS = 75_000

/** Opens a session under the story's conditions, keeps its readings and closes it, unless it is left open. Answers its id. */
export async function measure(visit: Visit, story: DemoSession, purpose: 'test' | 'release'): Promise<string> {
  const { technician } = visit.crew
  const startedAt = Date.now() - story.hoursAgo * HOUR_MS
  const instrument = (name: string | undefined) => (name === undefined ? null : visit.garage.gauges.get(name)!)
  const session = await need(
    technician.POST('/v1/jobs/{job}/sessions', {
      params: { path: { job: visit.id } },
      body: { purpose, conditions: story.conditions, gauge: instrument(story.gauge), tester: instrument(story.tester), openedAt: new Date(startedAt).toISOString() },
    }),
  )
  const ids: string[] = []
  const keep = async (body: object, step: number) => {
    const reading = uuidv7()
    ids.push(reading)
    await need(technician.PUT('/v1/sessions/{session}/readings/{reading}', { params: { path: { session: session.id, reading } }, body: { ...body, takenAt: new Date(Math.min(startedAt + step * PACE_MS, Date.now())).toISOString() } }))
  }
  for (const [step, reading] of story.readings.entries()) {
    await keep({ reading }, step)
    if (visit.job.slowly) await modelsWord(visit)
  }
  if (story.moved) {
    const wrong = story.readings[story.moved.index]!
    await keep({ reading: { ...wrong, cylinder: story.moved.cylinder }, replaces: ids[story.moved.index]!, reason: story.moved.reason }, story.readings.length)
  }
  if (!story.leftOpen) await need(technician.POST('/v1/sessions/{session}/close', { params: { path: { session: session.id } } }))
  return session.id
}

/** The model's notes follow the readings by themselves; a load that is in a hurry gets one for all of them. Waits at most so long. */
const WORD_MS = 5000
const ASK_MS = 200

/** Waits until the last entry of the job's trail is the model's. */
async function modelsWord({ id, crew }: Visit): Promise<void> {
  for (const until = Date.now() + WORD_MS; Date.now() < until; await new Promise((resolve) => setTimeout(resolve, ASK_MS))) {
    const { items } = await need(crew.technician.GET('/v1/jobs/{job}/trail', { params: { path: { job: id }, query: { limit: 200 } } }))
    if (items.toSorted((a, b) => b.seq - a.seq)[0]?.kind === 'evaluation') return
  }
}

import type { Operation } from '@evenbore/contract'
import { need } from './answer.ts'
import type { Visit } from './decide.ts'
import { measure } from './measure.ts'

const HOUR_MS = 3_600_000
const DAY_MS = 24 * HOUR_MS
const day = (inDays: number) => new Date(Date.now() + inDays * DAY_MS).toISOString().slice(0, 10)

/** From the parts to the hand-over, as far as the story says. */
export async function finish(visit: Visit): Promise<void> {
  const { job, crew } = visit
  const path = { job: visit.id }
  for (const { text, expectedInHours, arrived } of job.parts ?? []) {
    const order = await need(crew.technician.POST('/v1/jobs/{job}/parts', { params: { path }, body: { text, expectedAt: new Date(Date.now() + expectedInHours * HOUR_MS).toISOString() } }))
    if (arrived) await need(crew.technician.POST('/v1/parts/{part}/arrival', { params: { path: { part: order.id } } }))
  }
  if (job.repair) await need(crew.technician.POST('/v1/jobs/{job}/repair', { params: { path }, body: {} }))
  for (const finding of job.findings ?? []) await need(crew.technician.POST('/v1/jobs/{job}/findings', { params: { path }, body: finding }))
  if (job.repair?.finished) await finishRepair(visit)
  if (job.release) await release(visit)
  if (job.handOver) await handOver(visit)
  if (job.cancelled) await need(crew.desk.POST('/v1/jobs/{job}/cancellation', { params: { path }, body: { reason: job.cancelled } }))
}

async function finishRepair(visit: Visit): Promise<void> {
  const lines = visit.job.sentBack?.lines ?? visit.job.quote!.lines
  const operations = [...new Set(lines.flatMap((line): Operation[] => (line.operation ? [line.operation] : [])))]
  await need(visit.crew.technician.POST('/v1/jobs/{job}/repair/finish', { params: { path: { job: visit.id } }, body: { operations, ...(visit.job.repair?.note ? { note: visit.job.repair.note } : {}) } }))
}

async function release(visit: Visit): Promise<void> {
  const { technician, manager } = visit.crew
  const { items } = await need(technician.GET('/v1/jobs/{job}/retests', { params: { path: { job: visit.id } } }))
  const owed = items.find((retest: { kind: string; outcome: string | null }) => retest.kind === 'release' && retest.outcome === null)
  const path = { retest: owed!.id }
  const told = visit.job.release!
  if ('waived' in told) {
    await need(manager.POST('/v1/retests/{retest}/waiver', { params: { path }, body: { reason: told.waived } }))
    return
  }
  const session = await measure(visit, told.session, 'release')
  await need(technician.POST('/v1/retests/{retest}/outcome', { params: { path }, body: { outcome: told.outcome, session, ...(told.reason ? { reason: told.reason } : {}) } }))
}

async function handOver(visit: Visit): Promise<void> {
  const { note, followUps } = visit.job.handOver!
  await need(
    visit.crew.desk.POST('/v1/jobs/{job}/hand-over', {
      params: { path: { job: visit.id } },
      body: {
        odometerKm: visit.job.odometerKm ?? null,
        ...(note ? { note } : {}),
        followUps: (followUps ?? []).map(({ reason, inDays, odometerKm, event }) => ({ reason, latest: inDays === undefined ? null : day(inDays), odometerKm: odometerKm ?? null, event: event ?? null })),
      },
    }),
  )
}

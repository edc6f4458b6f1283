import { readFileSync } from 'node:fs'
import { caller } from '../support/caller.ts'
import { testChain } from '../support/chain.ts'
import { localService, preparedStatement, type LocalService } from '../support/local-service.ts'
import type { TestService } from '../support/service.ts'
import { startBare } from './service/bare.ts'
import { measure, type Measured } from './service/measure.ts'

/**
 * `npm run bench:service`: two of our routes against bare ones, in one process and one run (only ratios mean anything).
 * BENCH_SECONDS sets the length of each of the three rounds. Ends with 1 when a ratio is missed or any answer was not 2xx.
 */
const SECONDS = Number(process.env['BENCH_SECONDS'] ?? 5)
const REQUIRED = { reading: 0.45, floor: 0.35 }
/** As many engines under test at once as connections: readings of one engine wait for each other in its trail. */
const SESSIONS = 32

const service = await localService()
// The builders of the tests need the database and the keys only.
const chain = await testChain(service as unknown as TestService)
const garage = chain.mill.id
try {
  const sessions = await openSessions(service)
  const busy = readFileSync(new URL('./service/busy-garage.sql', import.meta.url), 'utf8').replace('{garage}', garage).replace('{person}', chain.mill.technician.id)
  await service.database.pool.query(busy)
  await service.database.pool.query('ANALYZE')
  const ours = await ourFloor()
  const bare = await startBare(service.databaseUrl, await preparedStatement(service, 'jobs-floor'))
  await demandSameData(bare.address, ours)

  const floor = await measure([
    { name: 'bare Fastify, the floor’s data as one prepared query', url: `${bare.address}/floor/${garage}` },
    { name: 'GET /v1/garages/{garage}/floor', url: `${service.address}/v1/garages/${garage}/floor`, token: chain.mill.technician.token },
  ], SECONDS)
  const floorOk = report('Floor of a garage with 200 open jobs', floor, REQUIRED.floor)
  const reading = await measure([
    { name: 'bare Fastify, one prepared single-row insert', url: bare.address, puts: sessions.map((id) => `/sessions/${id}/readings/{id}`) },
    { name: 'PUT /v1/sessions/{session}/readings/{reading}', url: service.address, token: chain.mill.technician.token, puts: sessions.map((id) => `/v1/sessions/${id}/readings/{id}`) },
  ], SECONDS)
  const readingOk = report(`Reading PUT, ${SESSIONS} engines under test at once`, reading, REQUIRED.reading)
  await demandKept()
  await bare.close()
  process.exitCode = floorOk && readingOk ? 0 : 1
} finally {
  await service.close()
}

/** Jobs with an open session each, booked over the API. */
async function openSessions({ server }: LocalService): Promise<string[]> {
  const desk = caller({ server } as TestService, chain.mill.frontDesk.token)
  const bench = caller({ server } as TestService, chain.mill.technician.token)
  const ids: string[] = []
  for (let at = 0; at < SESSIONS; at++) {
    const job = await desk.post(`/v1/garages/${garage}/jobs`, {
      customer: { name: `Driver ${at}` }, vehicle: { plate: `RD ${at}`, description: 'red saloon' }, complaint: 'down on power',
      engine: { description: `four ${at}`, ownValues: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2] } },
    })
    const session = await bench.post(`/v1/jobs/${job.body.id}/sessions`, { conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' } })
    ids.push(session.body.id)
    // Off the floor again: that is measured with the 200 jobs of busy-garage.sql.
    await service.database.pool.query('UPDATE job SET handed_over_at = now() WHERE id = $1', [job.body.id])
  }
  return ids
}

type Standing = { readonly id: string; readonly standing: { readonly state: string } }
type FloorAnswer = Readonly<Record<'elsewhere' | 'waitsForDecision' | 'ready', Standing[]>> & { readonly bays: { readonly job: Standing | null }[]; readonly retestsDue: { readonly job: string }[] }

async function ourFloor(): Promise<FloorAnswer> {
  const answer = await fetch(`${service.address}/v1/garages/${garage}/floor`, { headers: { authorization: `Bearer ${chain.mill.technician.token}` } })
  if (!answer.ok) throw new Error(`the floor answers ${answer.status}`)
  return (await answer.json()) as FloorAnswer
}

/** Both sides of the floor must speak of the same 200 jobs, and ours must have worked out where each stands. */
async function demandSameData(bareAddress: string, ours: FloorAnswer): Promise<void> {
  const raw = (await (await fetch(`${bareAddress}/floor/${garage}`)).json()) as { jobs: { id: string }[] }
  const jobs = [...ours.bays.flatMap(({ job }) => (job === null ? [] : [job])), ...ours.elsewhere, ...ours.waitsForDecision, ...ours.ready]
  const shown = new Set([...jobs.map(({ id }) => id), ...ours.retestsDue.map(({ job }) => job)])
  if (raw.jobs.length !== 200 || !raw.jobs.every(({ id }) => shown.has(id))) throw new Error(`the two sides differ: ${raw.jobs.length} and ${shown.size} jobs`)
  const states = Map.groupBy(jobs, ({ standing }) => standing.state)
  process.stdout.write(`200 open jobs: ${[...states].map(([state, of]) => `${of.length} ${state}`).join(', ')}\n`)
}

/** What was answered 2xx is there, each with its trail entry and its event. */
async function demandKept(): Promise<void> {
  const { rows } = await service.database.pool.query<{ readings: string; entries: string; events: string }>(
    `SELECT (SELECT count(*) FROM reading WHERE request_hash <> 'x') AS readings, (SELECT count(*) FROM trail_entry WHERE kind = 'reading') AS entries, (SELECT count(*) FROM outbox_event WHERE kind = 'reading.kept') AS events`,
  )
  const { readings, entries, events } = rows[0] ?? { readings: '0', entries: '-1', events: '-1' }
  if (readings !== entries || readings !== events) throw new Error(`${readings} readings, ${entries} trail entries, ${events} events`)
  process.stdout.write(`Kept: ${readings} readings, as many trail entries and events\n`)
}

function report(title: string, [bare, ours]: readonly Measured[], required: number): boolean {
  if (bare === undefined || ours === undefined) return false
  const ratio = ours.perSecond / bare.perSecond
  const ok = ratio >= required && bare.bad + ours.bad === 0
  const line = (one: Measured) => `  ${one.name.padEnd(56)} ${Math.round(one.perSecond).toString().padStart(6)}/s  p50 ${one.p50} ms  p99 ${one.p99} ms  not 2xx: ${one.bad}  rounds ${one.rounds.join(', ')}\n`
  process.stdout.write(`${title}\n${line(bare)}${line(ours)}  ratio ${ratio.toFixed(2)}, required ${required}: ${ok ? 'met' : 'MISSED'}\n`)
  return ok
}

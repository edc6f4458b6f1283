import { createClient, type Client } from '@evenbore/client'
import type { NewJob } from '@evenbore/contract'
import { newId, TEST_PASSWORD, type TestChain } from '../../support/index.ts'

/** The people of one garage, each signed in by a client of their own, as they act through the public API. */
export interface Crew {
  readonly owner: Client
  readonly technician: Client
  readonly frontDesk: Client
  readonly manager: Client
}

export async function signInCrew(baseUrl: string, chain: TestChain): Promise<Crew> {
  const enter = async ({ email }: { readonly email: string }) => {
    const client = createClient({ baseUrl })
    const answer = await client.session.signIn({ kind: 'person', email, password: TEST_PASSWORD })
    if (!answer.ok) throw new Error(answer.error.title)
    return client
  }
  const { mill, owner } = chain
  return { owner: await enter(owner), technician: await enter(mill.technician), frontDesk: await enter(mill.frontDesk), manager: await enter(mill.manager) }
}

/** @throws Error with the problem where a call was refused */
export async function need<Data>(call: Promise<{ readonly data?: Data; readonly error?: unknown }>): Promise<Data> {
  const { data, error } = await call
  if (error !== undefined) throw new Error(JSON.stringify(error))
  return data as Data
}

export const stages = ['booked', 'testing', 'sent', 'approved', 'authorised', 'in-repair', 'retest-due', 'retested', 'ready', 'handed-over'] as const
export type Stage = (typeof stages)[number]

const psi = (value: number) => ({ value, unit: 'psi' as const })
const before = [152, 156, 129, 147]
const after = [152, 155, 151, 149]

/** Brings a new job as far as a stage, each step by whoever does it in a garage. @returns its id */
export async function jobAt(stage: Stage, crew: Crew, garage: string, gauge: string, told: Pick<NewJob, 'complaint'> & { readonly plate: string; readonly vehicle: string; readonly customer: string; readonly bay?: string }): Promise<string> {
  const until = stages.indexOf(stage)
  const { id: job } = await need(crew.frontDesk.POST('/v1/garages/{garage}/jobs', {
    params: { path: { garage } },
    body: {
      customer: { name: told.customer, phone: '0100 204 204' },
      vehicle: { plate: told.plate, description: told.vehicle, year: 1987 },
      engine: { description: '1.6 litre, four in line', stampedNumber: `LR ${told.plate}`, ownValues: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], boreMm: 84, strokeMm: 72, compressionRatio: 8.8 } },
      complaint: told.complaint, odometerKm: 84_100, bay: told.bay ?? null, promisedAt: new Date(Date.now() + 6 * 3_600_000).toISOString(),
    },
  }))
  const path = { job }
  const measure = async (purpose: 'test' | 'release', values: readonly number[]) => {
    const session = await need(crew.technician.POST('/v1/jobs/{job}/sessions', { params: { path }, body: { purpose, conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 10 }, gauge, tester: null } }))
    for (const [i, value] of values.entries()) {
      await need(crew.technician.PUT('/v1/sessions/{session}/readings/{reading}', { params: { path: { session: session.id, reading: newId() } }, body: { takenAt: new Date(Date.now() + i).toISOString(), reading: { test: 'compression', cylinder: i + 1, pressure: psi(value), strokeCount: 10 } } }))
    }
    return session.id
  }
  if (until < 1) return job
  await need(crew.frontDesk.POST('/v1/jobs/{job}/contacts', { params: { path }, body: { kind: 'call', text: 'Asked when it will be ready', nextAt: new Date(Date.now() + 3_600_000).toISOString() } }))
  await measure('test', before)
  const { evaluation } = await need(crew.technician.GET('/v1/jobs/{job}/evaluation', { params: { path } }))
  const [suggestion] = evaluation.next
  if (suggestion) await need(crew.technician.POST('/v1/jobs/{job}/suggestions', { params: { path }, body: { decision: 'declined', suggestion, reason: 'plugs already dry, no smoke', instead: 'head off' } }))
  if (until < 2) return job
  await need(crew.technician.PUT('/v1/jobs/{job}/quote/draft', { params: { path, header: { 'if-none-match': '*' } }, body: { lines: [{ kind: 'labour', operation: 'head-valves', cylinders: [3], text: 'Head off and on, valve ground in', quantity: 4.5, rateMinor: 8_000, taxBasisPoints: 2_000 }, { kind: 'part', text: 'Gasket set', quantity: 1, rateMinor: 11_840, taxBasisPoints: 2_000 }], note: 'Seat of 3 looks burnt' } }))
  const version = await need(crew.technician.POST('/v1/jobs/{job}/quote/versions', { params: { path } }))
  const on = { params: { path: { version: version.id } } }
  if (until < 3) return job
  await need(crew.manager.POST('/v1/quote-versions/{version}/approval', { ...on, body: {} }))
  if (until < 4) return job
  await need(crew.frontDesk.POST('/v1/quote-versions/{version}/authorisations', { ...on, body: { kind: 'given', personName: told.customer, method: 'phone', numberCalled: '0100 204 204', givenAt: new Date().toISOString() } }))
  if (until < 5) return job
  await need(crew.technician.POST('/v1/jobs/{job}/parts', { params: { path }, body: { text: 'Gasket set', expectedAt: new Date(Date.now() + 86_400_000).toISOString() } }).then(({ data, error }) => crew.technician.POST('/v1/parts/{part}/arrival', { params: { path: { part: data!.id } } }).then((arrived) => ({ ...arrived, error: error ?? arrived.error }))))
  await need(crew.technician.POST('/v1/jobs/{job}/repair', { params: { path } }))
  if (until < 6) return job
  await need(crew.technician.POST('/v1/jobs/{job}/findings', { params: { path }, body: { cylinders: [3], fault: 'exhaust-valve-leak', seen: 'Seat of the exhaust valve pitted over a third of its width' } }))
  await need(crew.technician.POST('/v1/jobs/{job}/repair/finish', { params: { path }, body: { operations: ['head-valves'] } }))
  if (until < 7) return job
  const session = await measure('release', after)
  if (until < 8) return job
  const { items } = await need(crew.technician.GET('/v1/jobs/{job}/retests', { params: { path } }))
  await need(crew.technician.POST('/v1/retests/{retest}/outcome', { params: { path: { retest: items[0]!.id } }, body: { outcome: 'passed', session } }))
  if (until < 9) return job
  await need(crew.frontDesk.POST('/v1/jobs/{job}/hand-over', { params: { path }, body: { odometerKm: 84_150, followUps: [{ reason: 'head torqued again', latest: new Date(Date.now() + 20 * 86_400_000).toISOString().slice(0, 10), odometerKm: 84_650 }] } }))
  return job
}

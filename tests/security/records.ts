import { newId, testJob, type TestApp, type TestChain, type TestJob, type TestService, type TestTablet } from '../support/index.ts'

/** One record of each kind in the garage at Mill Lane, so that every route has something to be asked about. */
export type Records = { readonly job: TestJob; readonly ids: Readonly<Record<string, string>> }

/** Writes them straight into the database: who may do what is what is being tested. */
export async function makeRecords(service: TestService, chain: TestChain, tablet: TestTablet, apps: readonly TestApp[]): Promise<Records> {
  const { prisma } = service.database
  const { mill } = chain
  const job = await testJob(service, mill)
  await prisma.job.update({ where: { id: job.id }, data: { bayId: tablet.bay, placedAt: new Date() } })
  const hot = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6 }
  const ids = Object.fromEntries(
    ['session', 'reading', 'photo', 'evaluation', 'family', 'fitting', 'part', 'item', 'deputy', 'version', 'approvalWithdrawable', 'repair', 'retest', 'followUp', 'spareTablet', 'spareApp', 'sameEngine', 'colleague', 'finding'].map((name) => [name, newId()]),
  ) as Record<string, string>
  const id = (name: string) => ids[name] ?? ''
  await prisma.session.create({ data: { id: id('session'), jobId: job.id, engineId: job.engine, conditions: hot, gaugeId: job.gauge, appIds: apps.map((app) => app.id), openedById: mill.technician.id } })
  await prisma.reading.create({ data: { id: id('reading'), sessionId: id('session'), engineId: job.engine, test: 'plug', cylinder: 1, body: { test: 'plug', cylinder: 1, appearance: 'wet-oil' }, state: 'placed', takenAt: new Date(), requestHash: 'x' } })
  const file = await service.app.files.keep(Buffer.from(GREY_SQUARE, 'base64'))
  await prisma.photo.create({ data: { id: id('photo'), jobId: job.id, readingId: id('reading'), sha256: file, smallSha256: file, bytes: 105, width: 8, height: 8, takenAt: new Date(), requestHash: 'x' } })
  await prisma.engineFamily.create({ data: { id: id('family'), name: 'family of the test', specification: { fuel: 'petrol', layout: 'inline', cylinders: 4 }, basis: {} } })
  await prisma.engine.create({ data: { id: id('sameEngine'), specification: { fuel: 'petrol', layout: 'inline', cylinders: 4 }, description: 'the same engine, written down twice', history: {} } })
  await prisma.fitting.create({ data: { id: id('fitting'), engineId: job.engine, vehicleId: job.vehicle, from: new Date('2026-01-01T00:00:00Z') } })
  await prisma.partsOrder.create({ data: { id: id('part'), jobId: job.id, text: 'head gasket' } })
  await prisma.catalogueItem.create({ data: { id: id('item'), garageId: mill.id, kind: 'part', text: 'head gasket', unitPriceMinor: 4_000, taxBasisPoints: 2_000 } })
  await prisma.deputy.create({ data: { id: id('deputy'), garageId: mill.id, managerId: mill.manager.id, deputyId: mill.technician.id, from: new Date('2020-01-01T00:00:00Z'), until: new Date('2020-02-01T00:00:00Z'), createdById: mill.manager.id } })
  await prisma.evaluation.create({ data: { id: id('evaluation'), jobId: job.id, engineId: job.engine, caseHash: 'x', model: '1', ...(await storedEvaluation(service, chain)) } })
  const version = { jobId: job.id, authorId: mill.technician.id, currency: 'EUR', pricesIncludeTax: false, netMinor: 10_000, taxMinor: 2_000, totalMinor: 12_000 }
  await prisma.quoteVersion.create({ data: { id: id('version'), number: 1, ...version } })
  await prisma.repair.create({ data: { id: id('repair'), jobId: job.id, quoteVersionId: id('version'), operations: [], finishedAt: new Date('2026-02-01T00:00:00Z') } })
  await prisma.retest.create({ data: { id: id('retest'), jobId: job.id, engineId: job.engine, kind: 'release', reason: 'repair', repairId: id('repair'), baselineSessionId: id('session') } })
  await prisma.retest.create({ data: { id: id('followUp'), jobId: job.id, engineId: job.engine, kind: 'follow-up', reason: 'after 1,000 km' } })
  await prisma.tablet.create({ data: { id: id('spareTablet'), garageId: mill.id, bayId: mill.bays[1] ?? '', name: 'Spare' } })
  await prisma.outsideApp.create({ data: { id: id('spareApp'), name: 'Spare', clientId: `app-${id('spareApp')}`, secretHash: id('spareApp'), scopes: ['evaluate'] } })
  await prisma.person.create({ data: { id: id('colleague'), name: 'Cole League', personRoles: { create: { id: newId(), garageId: mill.id, role: 'technician' } } } })
  return { job, ids }
}

/** A case and what the model makes of it, asked of the service itself. */
async function storedEvaluation(service: TestService, chain: TestChain): Promise<{ caseText: string; resultText: string }> {
  const caseText = JSON.stringify({ case: CASE, readingIds: CASE.readings.map(() => newId()) })
  const answer = await service.app.inject({ method: 'POST', url: '/v1/evaluations', headers: { authorization: `Bearer ${chain.owner.token}` }, payload: CASE })
  return { caseText, resultText: answer.body }
}

/** A picture of 8 by 8 pixels, PNG in base64. */
export const GREY_SQUARE = 'iVBORw0KGgoAAAANSUhEUgAAAAgAAAAICAMAAADz0U65AAAAA1BMVEV3d3dY20ihAAAACXBIWXMAAAPoAAAD6AG1e1JrAAAADElEQVQImWNgoA4AAABIAAF7pRHIAAAAAElFTkSuQmCC'

const psi = (value: number) => ({ value, unit: 'psi' })
/** Dry compression of a petrol four, cylinder 3 low. */
export const CASE = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2] },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6 },
  gauge: { span: psi(300), accuracyClass: 1.6 },
  readings: [150, 152, 110, 149].map((value, at) => ({ test: 'compression', cylinder: at + 1, pressure: psi(value) })),
}

/** A draft of the job's quote, for what each caller uses up. */
export async function putDraft(service: TestService, chain: TestChain, jobId: string): Promise<void> {
  const lines = [{ kind: 'part', operation: null, cylinders: [], text: 'gasket', quantity: 1, rateMinor: 10_000, taxBasisPoints: 2_000 }]
  await service.database.prisma.quoteDraft.upsert({ where: { jobId }, create: { id: newId(), jobId, lines, authorId: chain.mill.technician.id }, update: { lines, version: 1 } })
}

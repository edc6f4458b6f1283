import type { Client } from '@evenbore/client'
import type { QuoteLineInput } from '@evenbore/contract'
import type { LoadedGarage } from './accounts.ts'
import { need } from './answer.ts'
import type { DemoJob, DemoLine } from './chain/index.ts'
import type { Crew } from './crew.ts'

/** A visit under way: its story, and who tells it. */
export interface Visit {
  readonly job: DemoJob
  readonly id: string
  readonly garage: LoadedGarage
  readonly crew: Crew
  readonly customerName: string
  readonly phone: string | null
}

/** From the first suggestion to the customer's answer, as far as the story says. */
export async function decide(visit: Visit): Promise<void> {
  const { job, crew } = visit
  const path = { job: visit.id }
  if (job.suggestion) await decideSuggestion(visit)
  if (job.nothingFound) await need(crew.technician.POST('/v1/jobs/{job}/testing-closed', { params: { path }, body: { note: job.nothingFound } }))
  if (!job.quote) return

  let version = await write(visit, job.quote.lines, job.quote.note, job.quote.draftOnly !== true)
  if (version === null) return
  if (job.sentBack) {
    const call = { params: { path: { version } }, body: { question: job.sentBack.question } }
    await answer(visit, (client) => client.POST('/v1/quote-versions/{version}/send-back', call))
    version = (await write(visit, job.sentBack.lines, undefined, true))!
  }
  const answered = { path: { version } }
  if (job.refused) {
    const body = { reason: job.refused }
    await answer(visit, (client) => client.POST('/v1/quote-versions/{version}/refusal', { params: answered, body }))
  }
  if (job.approved) await answer(visit, (client) => client.POST('/v1/quote-versions/{version}/approval', { params: answered, body: {} }))
  if (job.customer) await authorise(visit, version, job.customer)
}

async function decideSuggestion(visit: Visit): Promise<void> {
  const { technician } = visit.crew
  const path = { job: visit.id }
  const { evaluation } = await need(technician.GET('/v1/jobs/{job}/evaluation', { params: { path } }))
  const suggestion = evaluation.next[0]
  // where enough is known the model suggests nothing: then there is nothing to take or decline
  if (!suggestion) return
  const told = visit.job.suggestion!
  const body = told.decision === 'taken' ? { decision: told.decision, suggestion } : { decision: told.decision, suggestion, reason: told.reason, instead: told.instead ?? null }
  await need(technician.POST('/v1/jobs/{job}/suggestions', { params: { path }, body }))
}

/** Writes the draft and sends it; answers the version's id, null where it stays a draft. */
async function write(visit: Visit, lines: readonly DemoLine[], note: string | undefined, send: boolean): Promise<string | null> {
  const { technician } = visit.crew
  const path = { job: visit.id }
  const { draft } = await need(technician.GET('/v1/jobs/{job}/quote', { params: { path } }))
  const condition = draft ? { 'if-match': `"${draft.version}"` } : { 'if-none-match': '*' }
  await need(technician.PUT('/v1/jobs/{job}/quote/draft', { params: { path, header: condition }, body: { lines: lines.map((line) => priced(line, visit.garage)), note: note ?? null } }))
  if (!send) return null
  return (await need(technician.POST('/v1/jobs/{job}/quote/versions', { params: { path }, body: {} }))).id
}

function priced(line: DemoLine, garage: LoadedGarage): QuoteLineInput {
  return { kind: line.kind, operation: line.operation ?? null, cylinders: line.cylinders ?? [], text: line.text, quantity: line.quantity, rateMinor: line.kind === 'labour' ? garage.labourRateMinor : line.priceMinor!, taxBasisPoints: garage.taxBasisPoints }
}

/** The manager answers; above his limit the owner does. */
async function answer<T>(visit: Visit, ask: (client: Client) => Promise<{ data?: T; error?: unknown; response: Response }>): Promise<void> {
  const { error } = await ask(visit.crew.manager)
  if (error) await need(ask(visit.crew.owner))
}

async function authorise(visit: Visit, version: string, told: NonNullable<DemoJob['customer']>): Promise<void> {
  await need(
    visit.crew.desk.POST('/v1/quote-versions/{version}/authorisations', {
      params: { path: { version } },
      body: { kind: told.kind, personName: visit.customerName, method: told.method, ...(told.method === 'phone' ? { numberCalled: visit.phone ?? 'number withheld' } : {}), partsBack: told.partsBack ?? false, givenAt: new Date().toISOString() },
    }),
  )
}

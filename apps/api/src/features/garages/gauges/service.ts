import { expectedPhrase, fieldErrors, gaugeSchema, leakageTesterSchema, type Actor, type GarageGauge, type GaugeEdit, type NewGauge } from '@evenbore/contract'
import { demand } from '../../../access/door.ts'
import type { Database } from '../../../platform/database/database.ts'
import { demandChanged, demandVersion } from '../../../platform/http/etag.ts'
import { problem } from '../../../platform/problems/problem.ts'
import { changed, demandGarage } from '../service.ts'
import { gaugeById, gaugesOf, insertGauge, updateGauge, type GaugeRow } from './store.ts'

/** The instruments of a garage, retired ones included: old sessions name them. */
export async function listGauges(database: Database, actor: Actor, garage: string): Promise<GarageGauge[]> {
  await demandGarage(database.prisma, actor, 'garages.read', garage)
  return (await gaugesOf(database.prisma, garage)).map(shown)
}

export async function makeGauge(database: Database, actor: Actor, garage: string, { checkDue, ...gauge }: NewGauge): Promise<GarageGauge> {
  return database.transaction(async (tx) => {
    await demandGarage(tx, actor, 'settings.write', garage)
    const row = await insertGauge(tx, garage, { ...gauge, checkDue: dayOrNull(checkDue) })
    await changed(tx, actor, garage, 'gauge.made', { gauge: row.id })
    return shown(row)
  })
}

/** Edits an instrument. Sessions keep its specification as it was when they were opened. */
export async function editGauge(database: Database, actor: Actor, id: string, version: number, edit: GaugeEdit): Promise<GarageGauge> {
  return database.transaction(async (tx) => {
    const present = await gaugeById(tx, id)
    demand(actor, 'settings.write', { garage: present?.garageId })
    if (present === null) throw problem('not-found')
    demandVersion(present.version, version)
    const { checkDue, retired, specification, name } = edit
    const row = demandChanged(await updateGauge(tx, id, version, {
      name,
      ...(specification === undefined ? {} : { specification: demandSpecification(present.kind, specification) }),
      ...(checkDue === undefined ? {} : { checkDue: dayOrNull(checkDue) }),
      ...(retired === undefined ? {} : { retiredAt: retired ? (present.retiredAt ?? new Date()) : null }),
    }))
    await changed(tx, actor, row.garageId, 'gauge.edited', { gauge: id, fields: Object.keys(edit) })
    return shown(row)
  })
}

/** The body alone does not say which instrument it edits, so its specification is checked here against the kind on record. */
function demandSpecification(kind: string, specification: unknown): object {
  const schema = kind === 'leakage' ? leakageTesterSchema : gaugeSchema
  const result = schema.safeParse(specification, { error: expectedPhrase })
  if (result.success) return result.data
  const errors = fieldErrors(result.error.issues, specification).map((error) => ({ ...error, path: `/specification${error.path}` }))
  throw problem('invalid-request', `A ${kind} instrument is described by other fields.`, { errors })
}

function dayOrNull(day: string | null): Date | null {
  return day === null ? null : new Date(`${day}T00:00:00Z`)
}

function shown(row: GaugeRow): GarageGauge {
  return {
    id: row.id, garage: row.garageId, name: row.name, kind: row.kind, specification: row.specification,
    checkDue: row.checkDue?.toISOString().slice(0, 10) ?? null, retiredAt: row.retiredAt?.toISOString() ?? null, version: row.version,
  } as GarageGauge
}

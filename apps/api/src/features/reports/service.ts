import type { Actor, Evaluation, Reliability } from '@evenbore/contract'
import { demand } from '../../access/door.ts'
import type { Database } from '../../platform/database/database.ts'
import { demandGarage } from '../garages/service.ts'
import { measured, observationsOf, type Observation } from './reliability.ts'
import { readFindingsAgainst, readOverrides } from './store.ts'

const BEFORE_ALL = '00000000-0000-0000-0000-000000000000'

/** How often the diagnosis was right in a garage, by what strip-down showed; and how often technicians were right to decline. */
export async function reliability(database: Database, actor: Actor, garage: string): Promise<Reliability> {
  demand(actor, 'reports.read', { garage })
  await demandGarage(database.prisma, actor, 'reports.read', garage)
  const observations: Observation[] = []
  for (let after: string | undefined = BEFORE_ALL; after !== undefined; ) {
    const rows = await readFindingsAgainst(database, garage, after)
    for (const row of rows) observations.push(...observationsOf(JSON.parse(row.evaluation) as Evaluation, row))
    after = rows.at(-1)?.id
  }
  return { garage, ...measured(observations), overrides: await readOverrides(database, garage) }
}

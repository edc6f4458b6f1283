import type { Conditions, EngineSpecification, LeakageTester } from '@evenbore/contract'
import type { Database } from '../../platform/database/database.ts'
import { sqlFile } from '../../platform/database/sql-file.ts'

/** What a reading is checked against. All but the engine's description never changes, and that has its versions. */
export type SessionFacts = {
  readonly session: string
  readonly job: string
  readonly engine: string
  readonly garage: string
  readonly apps: readonly string[]
  readonly conditions: Conditions
  readonly tester: LeakageTester | null
  readonly engineVersion: number
  readonly familyVersion: number
  readonly description: EngineSpecification
}

const FACTS = { name: 'session-facts', text: sqlFile(import.meta.url, './sql/session-facts.sql') }
const MOST_REMEMBERED = 2_000
/** Only a saving: the statement that keeps a reading says when what is remembered here is out of date. */
const remembered = new WeakMap<Database, Map<string, SessionFacts>>()

/** The facts of a session, remembered or read; undefined where there is no such session. */
export async function sessionFacts(database: Database, session: string): Promise<SessionFacts | undefined> {
  const known = remembered.get(database)?.get(session)
  return known ?? readSessionFacts(database, session)
}

/** The facts as they are now. */
export async function readSessionFacts(database: Database, session: string): Promise<SessionFacts | undefined> {
  const [facts] = await database.run<SessionFacts>(FACTS, [session])
  if (facts === undefined) return undefined
  let map = remembered.get(database)
  if (map === undefined) remembered.set(database, (map = new Map()))
  if (map.size >= MOST_REMEMBERED) map.delete(map.keys().next().value!)
  map.set(session, facts)
  return facts
}

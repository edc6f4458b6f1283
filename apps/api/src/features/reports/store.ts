import type { FindingCode } from '@evenbore/contract'
import type { Database } from '../../platform/database/database.ts'
import { sqlFile } from '../../platform/database/sql-file.ts'

export type FindingAgainst = { readonly id: string; readonly fault: FindingCode; readonly cylinders: number[]; readonly evaluation: string }

const FINDINGS = { name: 'reports-findings', text: sqlFile(import.meta.url, './sql/findings.sql') }
const OVERRIDES = { name: 'reports-overrides', text: sqlFile(import.meta.url, './sql/overrides.sql') }

/** Findings of a garage's jobs after the one named, with the evaluation that each is held against. */
export function readFindingsAgainst(database: Database, garage: string, after: string): Promise<FindingAgainst[]> {
  return database.run<FindingAgainst>(FINDINGS, [garage, after])
}

export async function readOverrides(database: Database, garage: string): Promise<{ declined: number; turnedOutRight: number }> {
  return (await database.run<{ declined: number; turnedOutRight: number }>(OVERRIDES, [garage]))[0]!
}

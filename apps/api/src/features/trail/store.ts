import type { TrailCheck, TrailKind } from '@evenbore/contract'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { sqlFile } from '../../platform/database/sql-file.ts'

/** A row to append; sequence number, time and hashes are the database's (trigger `trail_entry_chain`). */
export type EntryRow = {
  readonly id: string
  readonly engine: string
  readonly job: string | null
  readonly garage: string | null
  readonly kind: string
  readonly actor: string
  readonly body: string
}

/** Appends one entry; the head of the engine's trail stays locked until the transaction ends. */
export async function insertEntry(tx: Transaction, row: EntryRow): Promise<void> {
  await tx.$executeRaw`
    INSERT INTO trail_entry (id, engine_id, job_id, garage_id, kind, actor, body)
    VALUES (${row.id}::uuid, ${row.engine}::uuid, ${row.job}::uuid, ${row.garage}::uuid, ${row.kind}, ${row.actor}, ${row.body})`
}

/** An entry with the present name of who acted. `actor` and `body` are the texts as hashed. */
export type EntryShown = {
  readonly id: string
  readonly engine: string
  readonly job: string | null
  readonly garage: string | null
  readonly seq: number
  readonly at: Date
  readonly kind: TrailKind
  readonly actor: string
  readonly body: string
  readonly previousHash: string
  readonly hash: string
  readonly name: string | null
}

const ENTRIES = { name: 'trail-entries', text: sqlFile(import.meta.url, './sql/entries.sql') }
const CHECK = { name: 'trail-check', text: sqlFile(import.meta.url, './sql/check.sql') }

/** Entries after a sequence number, in order. */
export async function readEntries(database: Database, of: { readonly engine: string } | { readonly job: string }, after: number, limit: number): Promise<EntryShown[]> {
  return database.run<EntryShown>(ENTRIES, ['engine' in of ? of.engine : null, 'job' in of ? of.job : null, after, limit])
}

/** What checking the trail of one engine, or of every engine, found. */
export async function checkTrails(database: Pick<Database, 'run'>, engine: string | null): Promise<TrailCheck[]> {
  const rows = await database.run<{ engine: string; entries: number; head: string; brokenSeq: number | null; says: string | null }>(CHECK, [engine])
  return rows.map(({ brokenSeq, says, ...rest }) => ({ ...rest, whole: brokenSeq === null, broken: brokenSeq === null ? null : { seq: brokenSeq, says: says ?? 'the entry does not fit' } }))
}

export async function engineExists(database: Database, engine: string): Promise<boolean> {
  return (await database.prisma.engine.count({ where: { id: engine } })) > 0
}

export async function jobGarage(database: Database, job: string): Promise<string | undefined> {
  return (await database.prisma.job.findUnique({ where: { id: job }, select: { garageId: true } }))?.garageId
}

/** Heads of all trails, in the order of their engines. */
export async function readHeads(tx: Transaction): Promise<{ engine: string; seq: number; hash: string }[]> {
  const rows = await tx.trailHead.findMany({ orderBy: { engineId: 'asc' } })
  return rows.map(({ engineId, seq, hash }) => ({ engine: engineId, seq: Number(seq), hash }))
}

/** Takes, until the transaction ends, the right to export heads; answers whether that was done since `day` began. */
export async function headsExported(tx: Transaction, since: Date): Promise<boolean> {
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtext('trail.heads'))`
  return (await tx.outboxEvent.count({ where: { kind: 'trail.heads', at: { gte: since } } })) > 0
}

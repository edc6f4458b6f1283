import { Readable } from 'node:stream'
import { may, type Actor } from '@evenbore/contract'
import { demand } from '../../access/door.ts'
import type { Database } from '../../platform/database/database.ts'
import { problem } from '../../platform/problems/problem.ts'
import { demandGarage } from '../garages/service.ts'
import { allGarages, readRecords } from './store.ts'

/** Each export holds a connection for as long as its reader takes. */
const MOST_AT_ONCE = 2
let running = 0

/**
 * The records of a garage (or of all that the actor may export) as JSON lines: `{"kind", "record"}` each. The last line,
 * `{"kind":"end","lines":n}`, says that nothing is missing.
 */
export async function exportRecords(database: Database, actor: Actor, garage: string | undefined): Promise<Readable> {
  const garages = await garagesFor(database, actor, garage)
  if (running >= MOST_AT_ONCE) throw problem('unavailable', 'Other exports are running. Try again in a minute.', { headers: { 'retry-after': '60' } })
  running++
  const lines = Readable.from(linesOf(database, garages), { objectMode: false, encoding: 'utf8' })
  lines.once('close', () => { running-- })
  return lines
}

async function garagesFor(database: Database, actor: Actor, garage: string | undefined): Promise<string[]> {
  if (garage !== undefined) {
    demand(actor, 'export', { garage })
    await demandGarage(database.prisma, actor, 'export', garage)
    return [garage]
  }
  const garages = (await allGarages(database)).filter((each) => may(actor, 'export', { garage: each }))
  if (garages.length === 0) throw problem('not-allowed', 'This takes the permission export.')
  return garages
}

/** In pieces of some size: a chunk for each line would cost more than the line. */
async function* linesOf(database: Database, garages: readonly string[]): AsyncGenerator<string> {
  let lines = 0
  let piece = ''
  for await (const line of readRecords(database, garages)) {
    lines++
    piece += `${JSON.stringify(line)}\n`
    if (piece.length > 65_536) {
      yield piece
      piece = ''
    }
  }
  yield `${piece}${JSON.stringify({ kind: 'end', lines })}\n`
}

import { afterAll, beforeAll, expect, test } from 'vitest'
import { testService, type TestService } from '../../../../../tests/support/index.ts'
import { FLOOR, LIST, OF_JOBS, SEARCH } from './statements.ts'

let service: TestService
beforeAll(async () => {
  service = await testService()
})
afterAll(() => service.close())

/** What grows with every visit: reading one of these whole would make the floor slower every year. */
const GROWING = ['session', 'reading', 'quote_version', 'approval', 'authorisation', 'parts_order', 'repair', 'retest', 'retest_date', 'contact', 'quote_draft', 'job', 'customer', 'vehicle', 'engine']

type Plan = { readonly 'Node Type': string; readonly 'Relation Name'?: string; readonly Plans?: readonly Plan[] }

/** Tables that the plan reads whole although that was made as dear as possible: those that no index leads into. */
async function readWhole(text: string): Promise<string[]> {
  const client = await service.database.pool.connect()
  try {
    await client.query('SET enable_seqscan = off')
    const { rows } = await client.query<{ 'QUERY PLAN': { Plan: Plan }[] }>(`EXPLAIN (GENERIC_PLAN, FORMAT JSON) ${text}`)
    return whole(rows[0]?.['QUERY PLAN'][0]?.Plan)
  } finally {
    await client.query('RESET enable_seqscan')
    client.release()
  }
}
function whole(plan: Plan | undefined): string[] {
  if (plan === undefined) return []
  const here = plan['Node Type'] === 'Seq Scan' && GROWING.includes(plan['Relation Name'] ?? '') ? [plan['Relation Name'] ?? ''] : []
  return [...here, ...(plan.Plans ?? []).flatMap(whole)]
}

test.each([['the floor', FLOOR.text], ['a list', LIST.text], ['a search', SEARCH.text], ['one job', OF_JOBS]])('an index leads into every table that grows, for %s', async (_, text) => {
  expect(await readWhole(text)).toEqual([])
})
test('a table without such an index would be seen', async () => {
  await service.database.pool.query('DROP INDEX repair_job_id_idx, repair_one_under_way')
  expect(await readWhole(FLOOR.text)).toEqual(['repair'])
})

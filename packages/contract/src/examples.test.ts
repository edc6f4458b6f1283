import { z } from 'zod'
import { expect, test } from 'vitest'
import { BODY_EXAMPLES } from './examples.ts'
import * as contract from './index.ts'

const schemas = new Map(
  Object.values(contract as Record<string, unknown>)
    .filter((value) => value instanceof z.ZodType)
    .map((schema) => [z.globalRegistry.get(schema)?.id, schema]),
)

/** These two stand with the routes that take them; the test of bad input sends their examples. */
const NOT_OF_THE_CONTRACT = new Set(['SecondFactorKept', 'WayBackIn'])

test.each(Object.entries(BODY_EXAMPLES).filter(([id]) => !NOT_OF_THE_CONTRACT.has(id)))('the example of %s is as its schema asks', (id, example) => {
  const schema = schemas.get(id)
  expect(schema, `no schema of the contract is called ${id}`).toBeDefined()
  expect(schema!.safeParse(example).error).toBeUndefined()
})

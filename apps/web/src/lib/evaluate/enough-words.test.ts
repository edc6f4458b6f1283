import { evaluate } from '@evenbore/diagnosis'
import type { Case } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { de } from '@evenbore/words/de.ts'
import { en } from '@evenbore/words/en.ts'
import { es } from '@evenbore/words/es.ts'
import { enoughWords } from '@evenbore/words/sentences/enough.ts'

const dry = (...values: number[]): Case => ({ engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, boreMm: 80, strokeMm: 80, compressionRatio: 9, firingOrder: [1, 3, 4, 2] }, conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', crankingRpm: 200 }, readings: values.map((value, i) => ({ test: 'compression', cylinder: i + 1, pressure: { value, unit: 'psi' } })) })

test('what the model says of enough is known in every language', () => {
  const low = dry(260, 261, 259, 260)
  const cases: Case[] = [dry(150, 149, 151, 150), { ...low, engine: { ...low.engine, fuel: 'diesel', compressionRatio: 18 } }, { ...dry(110, 112), engine: { fuel: 'petrol', layout: 'inline', cylinders: 2, cycle: 2 } }]
  const said = new Set(cases.flatMap((given) => evaluate(given).enough?.says ?? []))
  expect(said.size).toBe(3)
  for (const says of said) {
    expect(enoughWords({ says }, en)).toEqual({ text: says, own: false })
    for (const words of [de, es]) expect(enoughWords({ says }, words)).toMatchObject({ own: false })
  }
})

test('a sentence of another model stands as it was written', () => {
  expect(enoughWords({ says: 'Something else.' }, de)).toEqual({ text: 'Something else.', own: true })
})

import type { TrailEntry } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { beliefLines, beliefSteps } from './belief-steps.ts'

const entry = (seq: number, kind: TrailEntry['kind'], body: unknown): TrailEntry => ({ id: String(seq), engine: 'e', job: 'j', garage: 'g', seq, at: `2026-05-06T10:0${seq}:00Z`, kind, actor: null, body, previousHash: '', hash: '' })
const note = (three: number, gasket: number) => ({ summary: { cylinders: [{ cylinder: 2, sound: 0.97 }, { cylinder: 3, sound: 1 - three }], neighbours: gasket ? [{ cylinders: [3, 4], probability: gasket }] : [] } })

test('each evaluation is a step, with the readings that came before it', () => {
  const steps = beliefSteps([entry(3, 'evaluation', note(0.4, 0)), entry(1, 'reading', {}), entry(2, 'reading', {}), entry(4, 'reading', {}), entry(5, 'evaluation', note(0.1, 0.8))])
  expect(steps.map(({ readings }) => readings.map(({ seq }) => seq))).toEqual([[1, 2], [4]])
})

test('only lines that ever mattered are drawn, the leading one first', () => {
  const steps = beliefSteps([entry(1, 'evaluation', note(0.4, 0)), entry(2, 'evaluation', note(0.1, 0.8))])
  expect(beliefLines(steps)).toEqual([{ of: '3-4', points: [0, 0.8] }, { of: '3', points: [expect.closeTo(0.4), expect.closeTo(0.1)] }])
})

test('an entry of another garage, or one that refused to reckon, moves nothing', () => {
  expect(beliefSteps([entry(1, 'evaluation', null), entry(2, 'evaluation', { summary: null, refused: 'too many' })])).toEqual([])
})

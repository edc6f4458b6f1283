import type { Case } from '@evenbore/contract'
import { expect, it } from 'vitest'
import { admit } from '../admission/admit.ts'
import { defaultKnowledge as knowledge } from '../knowledge/knowledge.ts'
import { gather } from './gather.ts'
import { infer } from './posterior.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
const DRY = [82, 78, 75, 92, 91, 87], WET = [87, 94, 100, 109, 120, 100], HELD = [74, 66, 72, 77, 77, 73]
const HEARD = [
  { intake: 2, exhaust: 0, crankcase: 0, coolant: 0, outside: 0, neighbour: 0 }, { intake: 0, exhaust: 1, coolant: 0, neighbour: 0 },
  { intake: 2, exhaust: 0, coolant: 0, neighbour: 1 }, { intake: 0, exhaust: 0, crankcase: 1, coolant: 0, outside: 0, neighbour: 1 },
  { intake: 0, exhaust: 0, crankcase: 1, neighbour: 0 }, { intake: 0, coolant: 0, neighbour: 0 },
] as const
const NEIGHBOURS = [3, 4, 5, 6, 3, 4] as const

/** Sisters that lose 4 to 18 percent: sound ones that seep, or faulty ones beside tighter sisters. */
const uneven: Case = {
  engine: { fuel: 'petrol', layout: 'v', cylinders: 6, injection: 'port', firingOrder: [1, 2, 3, 4, 5, 6], banks: [[1, 3, 5], [2, 4, 6]], boreMm: 67.6, strokeMm: 75, compressionRatio: 8.2 },
  conditions: { engine: 'cold', throttle: 'open', plugsOut: 'one', strokes: 8, batteryVolts: 10.7, altitudeM: 210 },
  leakageTester: { supply: psi(80), restrictorMm: 1.016 },
  readings: [
    ...DRY.map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) })),
    ...WET.map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, wet: true, pressure: psi(value) })),
    ...HELD.map((value, i) => ({ test: 'leakage' as const, cylinder: i + 1, held: psi(value), heard: HEARD[i]!, neighbour: NEIGHBOURS[i]! })),
  ],
}

// where the edge lies shifts with the step: a grid that is laid too narrowly shows when the step is changed
it('lays the healthy leak wide enough for sisters that leak unevenly', () => {
  const { evidence } = gather(uneven, admit(uneven), knowledge)
  const sound = (refine: number): number[] => infer(evidence, knowledge, refine).own.map((own) => own[0]!)
  const plain = sound(1)
  for (const refine of [2, 3]) sound(refine).forEach((p, i) => expect(Math.abs(p - plain[i]!)).toBeLessThan(0.01))
})

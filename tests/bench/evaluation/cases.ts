import type { Case } from '@evenbore/contract'

/** How much of the engine was tested. */
export const STAGES = ['dry', 'leakage', 'everything', 'petrol'] as const
export type Stage = (typeof STAGES)[number]

export interface Engine {
  readonly name: string
  readonly cylinders: number
  readonly layout: 'inline' | 'v'
  readonly firingOrder: number[]
  /** Aims in milliseconds: with ranking and without. */
  readonly ranked: number
  readonly plain: number
}

export const ENGINES: readonly Engine[] = [
  { name: 'four', cylinders: 4, layout: 'inline', firingOrder: [1, 3, 4, 2], ranked: 15, plain: 2 },
  { name: 'V8', cylinders: 8, layout: 'v', firingOrder: [1, 8, 4, 3, 6, 5, 7, 2], ranked: 60, plain: 8 },
]

const psi = (value: number) => ({ value, unit: 'psi' as const })
const DRY = [152, 149, 112, 150, 154, 147, 151, 148]
const WET = [172, 168, 126, 170, 175, 166, 171, 169]

/** An engine with a leaking exhaust valve in 3, read dry; dry, wet and leakage; with every other test too; and with petrol found in its oil: signs of all kinds. */
export function caseFor({ cylinders, layout, firingOrder }: Engine, stage: Stage): Case {
  const numbers = Array.from({ length: cylinders }, (_, i) => i + 1)
  const leakage = numbers.flatMap((cylinder): Case['readings'] => [
    { test: 'compression', cylinder, wet: true, oilMl: 8, pressure: psi(WET[cylinder - 1]!) },
    { test: 'leakage', cylinder, percent: cylinder === 3 ? 34 : 5 + (cylinder % 3), heard: { intake: 0, exhaust: cylinder === 3 ? 3 : 0, crankcase: 1, coolant: 0 } },
  ])
  const rest: Case['readings'] = [
    ...numbers.flatMap((cylinder): Case['readings'] => [
      { test: 'plug', cylinder, appearance: cylinder === 3 ? 'white' : 'tan' },
      { test: 'power-balance', cylinder, rpmDrop: cylinder === 3 ? 20 : 60 },
    ]),
    { test: 'vacuum', pattern: 'regular-drop' }, { test: 'coolant-gas', present: false }, { test: 'observation', code: 'oil-use-high', present: false },
    { test: 'observation', code: 'breather-smoke', present: false }, { test: 'clearance', cylinder: 3, valve: 'exhaust', state: 'right' }, { test: 'borescope', cylinder: 3, seen: ['nothing'] },
  ]
  return {
    engine: {
      fuel: 'petrol', layout, cylinders, boreMm: 84, strokeMm: 76, compressionRatio: 9, firingOrder: [...firingOrder],
      banks: layout === 'v' ? [numbers.filter((n) => n % 2 === 1), numbers.filter((n) => n % 2 === 0)] : [numbers],
    },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6, crankingRpm: 200 },
    leakageTester: { supply: psi(80), restrictorMm: 1.016 },
    readings: [
      ...numbers.map((cylinder): Case['readings'][number] => ({ test: 'compression', cylinder, pressure: psi(DRY[cylinder - 1]!) })),
      ...(stage === 'dry' ? [] : leakage), ...(stage === 'everything' || stage === 'petrol' ? rest : []),
      ...(stage === 'petrol' ? [{ test: 'observation' as const, code: 'petrol-in-oil' as const, present: true }] : []),
    ],
  }
}

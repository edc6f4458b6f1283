import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { admit } from '../admission/admit.ts'
import { consistency } from './consistency.ts'
import { readingDensity } from './reading-density.ts'

/** Four dry readings in psi; `held` of the third one. */
function third(psi: number, held?: boolean): Case {
  return {
    engine: { fuel: 'petrol', layout: 'inline', cylinders: 4 },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6 },
    readings: [156, 160, psi, 160].map((value, i) => ({
      test: 'compression', cylinder: i + 1, pressure: { value, unit: 'psi' }, ...(i === 2 && held !== undefined ? { heldTenSeconds: held } : {}),
    })),
  } as Case
}

const inside = (given: Case): number => consistency(admit(given)).probabilityInside!

describe('a reading that did not hold for ten seconds, in the verdict on the spread', () => {
  it('bounds from below: a low one leaves the spread undecided, one that held condemns it', () => {
    expect(inside(third(120))).toBeLessThan(0.01)
    expect(inside(third(120, true))).toBeLessThan(0.01)
    expect(inside(third(120, false))).toBeGreaterThan(0.2)
    expect(inside(third(120, false))).toBeLessThan(0.95)
  })

  it('makes no even spread more certain', () => {
    expect(inside(third(158, false))).toBeLessThanOrEqual(inside(third(158)))
  })

  it('is summed finely enough: twice the steps move nothing by more than 1e-5', () => {
    const judged = admit(third(120, false)).judged!.cylinders[2]!
    const sisters = [156, 160, 160].map((psi) => psi * 6894.757293168361)
    const [coarse, fine] = [48, 96].map((steps) => readingDensity(judged, sisters, steps))
    expect(Math.abs(coarse!.mean / fine!.mean - 1)).toBeLessThan(1e-5)
    expect(Math.abs(coarse!.variance / fine!.variance - 1)).toBeLessThan(1e-4)
  })
})

import { describe, expect, it } from 'vitest'
import { loadCurves } from './gas-torque.ts'

// trends to compare with, from the same rough one-zone reasoning; no published source
describe('torque of the air in one cylinder', () => {
  const curves = loadCurves()
  const at = (relative: number) => curves.find((each) => Math.abs(each.relative - relative) < 1e-9)!.load
  const work = (load: Float64Array, sign: 1 | -1): number => load.reduce((sum, torque) => sum + Math.max(0, sign * torque), 0)

  it('asks for nothing where nothing is compressed', () => expect(work(at(0), 1) + work(at(0), -1)).toBe(0))
  it('holds the crank back before firing top, most at 10 to 40 degrees, and pushes it on after', () => {
    const sound = at(1), most = sound.indexOf(Math.max(...sound))
    expect(720 - most).toBeGreaterThan(10)
    expect(720 - most).toBeLessThan(40)
    expect(sound[20]).toBeLessThan(0)
  })
  it('gives most of the work back where it is tight, and next to none where half the pressure is lost: the work that goes in hardly falls', () => {
    expect(work(at(1), -1) / work(at(1), 1)).toBeGreaterThan(0.7)
    expect(work(at(0.5), -1) / work(at(0.5), 1)).toBeLessThan(0.3)
    expect(work(at(0.5), 1) / work(at(1), 1)).toBeGreaterThan(0.7)
  })
})

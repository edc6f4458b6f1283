import { flowFactor } from './orifice.ts'
import { ringLeakAt } from './cranking.ts'

/** Air from a regulated supply through the tester's restrictor into a cylinder held at top dead centre. Absolute pressures, effective areas. */
export type LeakDown = {
  readonly supplyPa: number
  readonly airPressurePa: number
  readonly restrictorM2: number
  readonly fixedLeakM2: number
  readonly ringLeakM2: number
  readonly ringLowPressureExcess: number
}

/** Pressure held in the cylinder (absolute Pa), where what comes in through the restrictor goes out through the leaks; by bisection. */
export function heldPressurePa(test: LeakDown): number {
  let low = test.airPressurePa
  let high = test.supplyPa
  for (let i = 0; i < 40; i++) {
    const held = (low + high) / 2
    const leak = test.fixedLeakM2 + ringLeakAt(test.ringLeakM2, test.ringLowPressureExcess, held - test.airPressurePa)
    const inflow = test.restrictorM2 * test.supplyPa * flowFactor(held / test.supplyPa)
    const outflow = leak * held * flowFactor(test.airPressurePa / held)
    if (inflow > outflow) low = held
    else high = held
  }
  return (low + high) / 2
}

/** A starter with its battery and cables, and the engine that it turns. Angles in degrees of crank over one engine cycle of 720. */
export type Starter = {
  /** Torque that the air in all cylinders asks for, by degree, Nm: above zero where it holds the crank back. */
  readonly airTorqueNm: Float64Array
  /** Mean speed and current, rad/s and A, that friction is chosen for. */
  readonly speedRadS: number
  readonly meanAmps: number
  readonly batteryVolts: number
  /** Armature, cables and battery together. */
  readonly resistanceOhm: number
  /** Everything that turns, at the crank: flywheel, and the armature by the square of its gear. */
  readonly inertiaKgM2: number
}

const STEP_S = 1 / 4000

/**
 * Current of a starter that turns an engine from rest, averaged over each of `count` samples: J dw/dt = K I - friction - air, I = (V - K w) / R
 * (a machine of constant field; electric machines, from memory). Friction is what is left of the mean torque.
 *
 * @returns amperes, and the crank angle in degrees at the middle of each sample
 */
export function crankingAmps(starter: Starter, startDeg: number, rateHz: number, count: number): { amps: Float64Array; degrees: Float64Array } {
  const { airTorqueNm, speedRadS, meanAmps, batteryVolts, resistanceOhm, inertiaKgM2 } = starter
  const constant = (batteryVolts - resistanceOhm * meanAmps) / speedRadS
  const meanAir = airTorqueNm.reduce((sum, torque) => sum + torque, 0) / airTorqueNm.length
  const friction = Math.max(0, constant * meanAmps - meanAir)
  const each = Math.max(1, Math.round(1 / (rateHz * STEP_S)))
  const amps = new Float64Array(count), degrees = new Float64Array(count)
  let speed = 0, deg = startDeg
  for (let i = 0; i < count; i++) {
    let sum = 0
    for (let k = 0; k < each; k++) {
      const current = (batteryVolts - constant * speed) / resistanceOhm
      const place = ((Math.floor(deg) % 720) + 720) % 720
      // friction holds what stands still
      const torque = constant * current - airTorqueNm[place]! - friction * Math.tanh(speed / 0.3)
      speed += (torque / inertiaKgM2) * STEP_S
      deg += ((speed * 180) / Math.PI) * STEP_S
      if (k === each >> 1) degrees[i] = deg
      sum += current
    }
    amps[i] = sum / each
  }
  return { amps, degrees }
}

import { GAS_CONSTANT_J_PER_KG_K, gammaAt } from './air.ts'
import { flowFactor } from './orifice.ts'
import { type CylinderGeometry, pistonAreaM2, pistonDepthM } from './slider-crank.ts'

/** A gauge behind its check valve: hose and tube after the valve, the valve's effective hole and the pressure it needs to lift. */
export type GaugeLine = {
  readonly volumeBeforeValveM3: number
  readonly volumeAfterValveM3: number
  readonly valveAreaM2: number
  readonly liftPressurePa: number
}

/** Everything one cylinder's cranking test depends on. Pressures absolute, areas effective (discharge included). */
export type CrankingRun = {
  readonly geometry: CylinderGeometry
  /** Crank degrees after bottom dead centre at which the intake valve stops passing air worth counting. */
  readonly intakeClosesDegAbdc: number
  readonly speedRpm: number
  readonly airPressurePa: number
  /** Pressure and temperature of the charge when the intake valve closes. */
  readonly chargePressurePa: number
  readonly chargeTempK: number
  readonly wallTempK: number
  /** Leaks that do not change with pressure: valves, gasket, cracks, threads, holes. */
  readonly fixedLeakM2: number
  /** Ring leak at 80 psi across the rings; below that rings press less on the wall and leak more. */
  readonly ringLeakM2: number
  /** Extra share of ring leak as the pressure goes to nothing, relative to 80 psi. */
  readonly ringLowPressureExcess: number
  readonly gauge: GaugeLine
  readonly strokes: number
  /** Gauge pressure still in the line from an earlier test. */
  readonly leftInGaugePa?: number
  readonly stepDeg?: number
  /** Crank degrees after top at which to end, and who is told the pressure (absolute) on the way. */
  readonly endDegAtdc?: number
  readonly follow?: (degAtdc: number, pressurePa: number) => void
}

const RING_REFERENCE_PA = 551_580
const RING_SCALE_PA = 250_000
const RING_REFERENCE_DECAY = Math.exp(-RING_REFERENCE_PA / RING_SCALE_PA)
const END_DEG_ATDC = 16
const GAUGE_GAS_TEMP_K = 315

/** Ring leak in m2 at a pressure across the rings: falls towards the value at 80 psi as pressure seats the rings. */
export function ringLeakAt(ringLeakM2: number, lowPressureExcess: number, acrossPa: number): number {
  return ringLeakM2 * (1 + lowPressureExcess * (Math.exp(-Math.max(acrossPa, 0) / RING_SCALE_PA) - RING_REFERENCE_DECAY))
}

/**
 * Gauge pressure (Pa above air) shown after each compression stroke, by mass and energy balance over crank angle.
 *
 * Each stroke starts with a fresh charge when the intake closes. In every step: isentropic change of volume, then heat to the walls
 * (Hohenberg's motored form, SAE 790825, from memory), leaks as isentropic holes, and flow past the check valve into the gauge line.
 * The gas in the line has the line's temperature. Halving the step of 2 degrees moves no reading by more than .5 percent (a test).
 */
export function crank(run: CrankingRun): Float64Array {
  const { geometry, gauge, airPressurePa } = run
  const step = run.stepDeg ?? 2
  const start = -180 + run.intakeClosesDegAbdc
  const range = (run.endDegAtdc ?? END_DEG_ATDC) - start
  const steps = Math.max(1, Math.ceil(range / step))
  const width = range / steps
  const dt = width / (6 * run.speedRpm)
  const area = pistonAreaM2(geometry)
  const clearance = geometry.clearanceM3 + gauge.volumeBeforeValveM3
  // Ends and middles of the steps: losses are reckoned at the middle volume (Strang splitting), which makes 2 degrees enough.
  const volumes = new Float64Array(2 * steps + 1)
  for (let i = 0; i <= 2 * steps; i++) volumes[i] = clearance + area * pistonDepthM(geometry, start + (i * width) / 2)
  const meanPistonSpeed = (2 * geometry.strokeM * run.speedRpm) / 60
  const filmScale = 130 * (meanPistonSpeed + 1.4) ** 0.8 * (clearance + 0.3 * area * geometry.strokeM) ** -0.06
  const peaks = new Float64Array(run.strokes)
  let linePa = airPressurePa + (run.leftInGaugePa ?? 0)
  for (let stroke = 0; stroke < run.strokes; stroke++) {
    let volume = volumes[0] as number
    let temp = run.chargeTempK
    let mass = (run.chargePressurePa * volume) / (GAS_CONSTANT_J_PER_KG_K * temp)
    for (let i = 1; i <= steps; i++) {
      const middle = volumes[2 * i - 1] as number
      const gamma = gammaAt(temp)
      temp *= Math.exp((gamma - 1) * Math.log(volume / middle))
      volume = middle
      let pressure = (mass * GAS_CONSTANT_J_PER_KG_K * temp) / volume
      const film = filmScale * Math.exp(0.8 * Math.log(pressure * 1e-5) - 0.4 * Math.log(temp))
      const surface = 2 * area + (4 * (volume - gauge.volumeBeforeValveM3)) / geometry.boreM
      const heatCapacity = (mass * GAS_CONSTANT_J_PER_KG_K) / (gamma - 1)
      // Heat and leak go half before and half after the check valve, so that the gauge sees the middle of the step.
      const cooled = 1 - Math.exp((-0.5 * film * surface * dt) / heatCapacity)
      temp -= (temp - run.wallTempK) * cooled
      const across = pressure - airPressurePa
      const leak = run.fixedLeakM2 + ringLeakAt(run.ringLeakM2, run.ringLowPressureExcess, across)
      const lost = 0.5 * leakedKg(leak, pressure, temp, mass, run, dt)
      temp *= lost > 0 ? 1 - ((gamma - 1) * lost) / mass : 1
      mass -= lost
      pressure = (mass * GAS_CONSTANT_J_PER_KG_K * temp) / volume
      const drive = pressure - linePa - gauge.liftPressurePa
      if (drive > 0) {
        const flow = (gauge.valveAreaM2 * pressure * flowFactor(linePa / pressure)) / Math.sqrt(GAS_CONSTANT_J_PER_KG_K * temp)
        const stiffness = (gamma * pressure) / mass + (GAS_CONSTANT_J_PER_KG_K * GAUGE_GAS_TEMP_K) / gauge.volumeAfterValveM3
        const passed = Math.min(flow * dt, drive / stiffness)
        temp *= 1 - ((gamma - 1) * passed) / mass
        mass -= passed
        linePa += (passed * GAS_CONSTANT_J_PER_KG_K * GAUGE_GAS_TEMP_K) / gauge.volumeAfterValveM3
      }
      temp *= lost > 0 ? 1 - ((gamma - 1) * lost) / mass : 1
      mass -= lost
      temp -= (temp - run.wallTempK) * cooled
      const end = volumes[2 * i] as number
      temp *= Math.exp((gamma - 1) * Math.log(volume / end))
      volume = end
      run.follow?.(start + i * width, (mass * GAS_CONSTANT_J_PER_KG_K * temp) / volume)
    }
    peaks[stroke] = linePa - airPressurePa
  }
  return peaks
}

/** Mass that leaves in a step through the leaks, negative when air comes in; never past the point where pressures are equal. */
function leakedKg(leakM2: number, pressure: number, tempK: number, massKg: number, run: CrankingRun, dt: number): number {
  const air = run.airPressurePa
  const across = pressure - air
  if (across >= 0) {
    const flow = (leakM2 * pressure * flowFactor(air / pressure)) / Math.sqrt(GAS_CONSTANT_J_PER_KG_K * tempK)
    return Math.min(flow * dt, massKg * (across / pressure))
  }
  const flow = (leakM2 * air * flowFactor(pressure / air)) / Math.sqrt(GAS_CONSTANT_J_PER_KG_K * run.wallTempK)
  return -Math.min(flow * dt, massKg * (-across / pressure))
}

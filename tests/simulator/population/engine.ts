import type { Random } from '../random.ts'
import { drawRange, drawSpread } from '../worlds/draw.ts'
import type { Cause, OwnFault, World } from '../worlds/world.ts'
import { cylinderNumbers, type Design, drawDesign, gasketPairs } from './design.ts'
import { drawFault, type FaultEffect } from './faults.ts'

/** One cylinder as it is today. Sound leaks in mm2, effective, hot, at 80 psi. */
export type Cylinder = {
  readonly number: number
  readonly clearanceScale: number
  readonly soundRingsMm2: number
  readonly soundExhaustMm2: number
  readonly soundIntakeMm2: number
  readonly soundRingsOilLeaves: number
  /** Ratio of the leak held at top dead centre to the leak while cranking. */
  readonly heldRings: number
  readonly heldOthers: number
  readonly faults: readonly FaultEffect[]
  /** Ignition or mixture at fault here: shows in running tests and plugs only. */
  readonly ignitionFault: boolean
}
export type Bridge = { readonly cylinders: readonly [number, number]; readonly areaMm2: number }

/** What the engine-wide cause changes; neutral values when there is none. */
export type CauseEffect = {
  readonly cause: Cause
  readonly chargeFill: number
  readonly speedRpm: number | null
  readonly intakeShiftDeg: ReadonlyMap<number, number>
  readonly gaugeFactor: number
}

export type History = { readonly monthsStored?: number; readonly overheated?: boolean; readonly headSkimmed?: boolean }

export type Engine = {
  readonly world: World
  readonly design: Design
  readonly ringLowPressureExcess: number
  readonly cause: CauseEffect
  readonly cylinders: readonly Cylinder[]
  readonly bridges: readonly Bridge[]
  readonly history: History
  readonly breather: boolean
}

/** Faults that come in several cylinders at once: wear, heat and storage reach all; an accident strikes one. */
const COMES_AGAIN: ReadonlySet<OwnFault | 'gasket-between'> = new Set([
  'exhaust-valve-leak',
  'intake-valve-leak',
  'ring-wear',
  'ring-broken-or-stuck',
  'clearance-tight',
  'valve-sticking',
  'carbon-build-up',
  'fuel-wash',
] as const)

type Found = { readonly own: ReadonlyMap<number, readonly FaultEffect[]>; readonly bridges: readonly Bridge[] }

/** Draws an engine with what is wrong with it. */
export function drawEngine(random: Random, world: World): Engine {
  const design = drawDesign(random)
  const numbers = cylinderNumbers(design)
  const healthy = random.chance(world.healthyShare)
  const history = drawHistory(random)
  const cause = healthy ? 'none' : random.weighted<Cause>(world.causes)
  const faulty = !healthy && (cause === 'none' || random.chance(world.faultBesideCause))
  const found: Found = faulty ? drawFound(random, world, design, history) : { own: new Map(), bridges: [] }
  const level =
    drawSpread(random, world.soundRingsMm2) *
    (design.boreM / 0.082) *
    (cause === 'worn-evenly' ? drawRange(random, world.wornEvenlyFactor) : 1)
  const skim = history.headSkimmed === true ? random.between(0.9, 0.97) : 1
  const flat = design.layout.layout === 'flat'
  return {
    world,
    design,
    history,
    ringLowPressureExcess: drawRange(random, world.ringLowPressureExcess),
    cause: drawCause(random, world, design, cause),
    breather: random.chance(world.listening.breatherChance),
    bridges: found.bridges,
    cylinders: numbers.map((number) => {
      const leaves = drawRange(random, world.oilLeaves.soundRings)
      return {
        number,
        clearanceScale: skim * (1 + random.normal(0, world.sisterClearanceSd)),
        soundRingsMm2: scattered(random, level, world.sisterRingLogSd),
        soundExhaustMm2: drawSpread(random, world.soundValveMm2),
        soundIntakeMm2: drawSpread(random, world.soundValveMm2),
        soundRingsOilLeaves: flat ? (1 + leaves) / 2 : leaves,
        heldRings: scattered(random, 1, world.heldAgainstCrankingLogSd.rings),
        heldOthers: scattered(random, 1, world.heldAgainstCrankingLogSd.others),
        faults: found.own.get(number) ?? [],
        ignitionFault: random.chance(world.ignitionFault),
      }
    }),
  }
}

/** Scatter between sound cylinders, cut at two standard deviations: what lies further out would be called worn at strip-down. */
function scattered(random: Random, median: number, logSd: number): number {
  return median * Math.exp(logSd * Math.min(2, Math.max(-2, random.normal(0, 1))))
}

function drawHistory(random: Random): History {
  return {
    ...(random.chance(0.15) ? { monthsStored: random.integer(6, 60) } : {}),
    ...(random.chance(0.08) ? { overheated: true } : {}),
    ...(random.chance(0.05) ? { headSkimmed: true } : {}),
  }
}

/** Storage sticks rings and valves, heat hurts gaskets, heads and pistons: weights times three (from memory). */
function faultWeights(world: World, design: Design, history: History): Partial<Record<OwnFault | 'gasket-between', number>> {
  const weights: Partial<Record<OwnFault | 'gasket-between', number>> = { ...world.faultWeights }
  const scale = (fault: OwnFault | 'gasket-between', factor: number): void => {
    weights[fault] = (weights[fault] ?? 0) * factor
  }
  if (history.monthsStored !== undefined) for (const fault of ['valve-sticking', 'ring-broken-or-stuck'] as const) scale(fault, 3)
  if (history.overheated === true)
    for (const fault of ['gasket-to-coolant', 'gasket-between', 'gasket-to-outside', 'cracked-head', 'piston-damage'] as const)
      scale(fault, 3)
  if (design.cooling === 'air') scale('gasket-to-coolant', 0)
  if (gasketPairs(design).length === 0) scale('gasket-between', 0)
  if (design.fuel === 'diesel') for (const fault of ['fuel-wash', 'plug-thread-leak', 'carbon-build-up'] as const) scale(fault, 0.3)
  return weights
}

function drawFound(random: Random, world: World, design: Design, history: History): Found {
  const weights = faultWeights(world, design, history)
  const own = new Map<number, FaultEffect[]>()
  const bridges: Bridge[] = []
  const free = random.shuffled(cylinderNumbers(design))
  let last: OwnFault | 'gasket-between' | undefined
  do {
    const fault: OwnFault | 'gasket-between' =
      last !== undefined && COMES_AGAIN.has(last) && random.chance(world.sameFaultAgain)
        ? last
        : random.weighted<OwnFault | 'gasket-between'>(weights)
    last = fault
    if (fault === 'gasket-between') {
      const pair = random.pick(gasketPairs(design))
      if (!bridges.some((bridge) => bridge.cylinders[0] === pair[0]))
        bridges.push({ cylinders: pair, areaMm2: drawSpread(random, world.leaksMm2['gasket-between']) })
      continue
    }
    const number = free.pop()
    if (number === undefined) break
    const effects = [drawFault(random, world, design, fault)]
    if (random.chance(world.secondFaultSameCylinder)) {
      const second = random.weighted<OwnFault | 'gasket-between'>({ ...weights, 'gasket-between': 0, [fault]: 0 }) as OwnFault
      effects.push(drawFault(random, world, design, second))
    }
    own.set(number, effects)
  } while (random.chance(world.anotherCylinder))
  return { own, bridges }
}

function drawCause(random: Random, world: World, design: Design, cause: Cause): CauseEffect {
  const banks = design.layout.banks
  const shifted = cause !== 'valve-timing' ? [] : banks.length > 1 && random.chance(world.oneBankTiming) ? random.pick(banks) : banks.flat()
  const late = random.chance(0.8) ? 1 : -0.7
  const shift = drawRange(random, world.timingShiftDeg) * late
  const low = random.chance(world.gaugeOff.lowShare)
  return {
    cause,
    chargeFill: cause === 'throttle-closed' ? drawRange(random, world.shutThrottleFill) : 1,
    speedRpm: cause === 'slow-cranking' ? drawRange(random, world.slowRpm) : null,
    intakeShiftDeg: new Map(shifted.map((cylinder) => [cylinder, shift])),
    gaugeFactor: cause === 'gauge-error' ? drawRange(random, low ? world.gaugeOff.low : world.gaugeOff.high) : 1,
  }
}

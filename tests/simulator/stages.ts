import type { Case, EngineDescription, Reading } from '@evenbore/contract'
import { cylinderNumbers } from './population/design.ts'
import { drawEngine } from './population/engine.ts'
import { createRandom } from './random.ts'
import { type Truth, truthOf } from './truth.ts'
import { measureCompression, measureRunningCompression } from './visit/compression.ts'
import { testCoolantGas } from './visit/coolant.ts'
import { caseOf, describeEngine } from './visit/describe.ts'
import { measureLeakage } from './visit/leakage.ts'
import { checkClearance, lookAtPlug, lookThroughBorescope, measureValveLift } from './visit/looks.ts'
import { ENGINE_SIGN_CODES, observe } from './visit/observations.ts'
import { measurePowerBalance, readVacuum } from './visit/running.ts'
import { insideLimit } from './visit/verdict.ts'
import { openVisit, type Visit } from './visit/visit.ts'
import type { World } from './worlds/world.ts'

export const STAGES = ['dry', 'wet', 'leakage', 'all'] as const
export type Stage = (typeof STAGES)[number]

/** One simulated engine: the case after each stage of testing, and what is really so. */
export type SimulatedEngine = {
  readonly seed: number
  readonly index: number
  readonly world: string
  readonly truth: Truth
  readonly cases: Readonly<Record<Stage, Case>>
  /** Whether the dry readings, free of the gauge's noise, lie inside the limit in force; null for a single cylinder. */
  readonly inside: boolean | null
}

/** Draws engine `index` of a seed and takes it through dry compression, wet, leakage with listening, and everything else. */
export function simulateEngine(world: World, seed: number, index: number): SimulatedEngine {
  const random = createRandom(seed, index)
  const engine = drawEngine(random, world)
  const visit = openVisit(random, engine)
  const described = describeEngine(visit)
  const numbers = cylinderNumbers(engine.design)
  const dry = takeDry(visit, numbers)
  const wet: Reading[] = engine.design.fuel === 'diesel' ? [] : numbers.map((number) => measureCompression(visit, number, true).reading)
  const leakage = numbers.map((number) => measureLeakage(visit, number))
  const upToLeakage = [...dry.readings, ...wet, ...leakage]
  const rest = takeTheRest(visit, described, numbers)
  return {
    seed,
    index,
    world: world.name,
    truth: truthOf(engine, visit.session),
    cases: {
      dry: caseOf(visit, described, dry.readings),
      wet: caseOf(visit, described, [...dry.readings, ...wet]),
      leakage: caseOf(visit, described, upToLeakage),
      all: caseOf(visit, described, [...upToLeakage, ...rest]),
    },
    inside: dry.noiseFree.length < 2 ? null : insideLimit(described, dry.noiseFree),
  }
}

/** Dry compression of every cylinder; sometimes the lowest again, sometimes two noted the wrong way round. */
function takeDry(visit: Visit, numbers: readonly number[]): { readings: Reading[]; noiseFree: number[] } {
  const { random, engine } = visit
  const measured = numbers.map((number) => ({ ...measureCompression(visit, number, false), number }))
  const sums = measured.map((item) => [item.noiseFreePa])
  if (numbers.length > 1 && random.chance(0.3)) {
    const lowest = measured.reduce((low, item) => (item.reading.pressure.value < low.reading.pressure.value ? item : low))
    const again = measureCompression(visit, lowest.number, false)
    sums[numbers.indexOf(lowest.number)]?.push(again.noiseFreePa)
    measured.push({ ...again, number: lowest.number })
  }
  const readings = measured.map((item) => ({ ...item.reading }))
  if (numbers.length > 1 && random.chance(engine.world.mistakes.wrongCylinder)) {
    const at = random.integer(0, numbers.length - 2)
    const [one, two] = [readings[at], readings[at + 1]]
    if (one !== undefined && two !== undefined) [one.cylinder, two.cylinder] = [two.cylinder, one.cylinder]
  }
  return { readings, noiseFree: sums.map((values) => values.reduce((a, b) => a + b, 0) / values.length) }
}

/** Everything else a thorough garage does: looks at all, dearer checks on the weak cylinders only. */
function takeTheRest(visit: Visit, described: EngineDescription, numbers: readonly number[]): Reading[] {
  const { random, engine } = visit
  const petrol = described.fuel === 'petrol'
  const weak = numbers.filter((number) => {
    const cylinder = engine.cylinders.find((item) => item.number === number)
    return (cylinder !== undefined && cylinder.faults.length > 0) || random.chance(0.2)
  })
  return [
    ...(petrol ? numbers.map((number) => lookAtPlug(visit, number)) : []),
    ...numbers.map((number) => measurePowerBalance(visit, number)),
    ...(petrol ? [readVacuum(visit)] : []),
    ...(engine.design.cooling === 'water' ? [testCoolantGas(visit)] : []),
    ...ENGINE_SIGN_CODES.filter((code) => petrol || code !== 'petrol-in-oil').map((code) => observe(visit, code)),
    ...weak.flatMap((number) => [
      lookThroughBorescope(visit, number),
      checkClearance(visit, number, 'intake'),
      checkClearance(visit, number, 'exhaust'),
      ...(random.chance(0.5) ? [measureValveLift(visit, number, 'intake'), measureValveLift(visit, number, 'exhaust')] : []),
      ...(random.chance(0.5) ? [measureRunningCompression(visit, number, false)] : []),
      observe(visit, 'spits-back', number),
      observe(visit, 'better-with-other-plug-and-lead', number),
      observe(visit, 'bubbles-at-plug-thread', number),
      observe(visit, 'bubbles-at-joint', number),
      observe(visit, 'piston-low-at-top', number),
    ]),
  ]
}

import type { CompressionReading, Pressure } from '@evenbore/contract'
import { shown } from '../instruments/gauge.ts'
import { chargeTempK, runCylinder } from './cylinder-run.ts'
import { leaksOf, showsNow } from './leaks.ts'
import { cylinderOf, sessionField, type Visit } from './visit.ts'
import { drawRange } from '../worlds/draw.ts'

/** A reading with what a perfect gauge would have shown under the same conditions. */
export type MeasuredCompression = { readonly reading: CompressionReading; readonly noiseFreePa: number }

const FULL_CHARGE = 0.985
/** Charge of an idling and of a snapped engine as a share of air pressure, and their speeds (from memory). */
const RUNNING = { idle: { fill: 0.45, rpm: 750 }, snap: { fill: 0.8, rpm: 1400 } } as const
/** Burnt gas that an exhaust valve which stays shut leaves in: the running pressure rises (from memory). */
const TRAPPED_EXHAUST = 1.45
const ADAPTOR_LEAK = [0.55, 0.92] as const

/** Cranking compression of one cylinder, dry or wet; each costs the battery a little speed. */
export function measureCompression(visit: Visit, number: number, wet: boolean): MeasuredCompression {
  const { engine, random, session } = visit
  const { world } = engine
  const cylinder = cylinderOf(visit, number)
  const shows = showsNow(visit, cylinder)
  const leaks = leaksOf(engine, cylinder, { wet, temperature: session.temperature, held: false, shows })
  const oilMl = Math.round(drawRange(random, world.oilMl))
  const speedRpm = session.speedRpm * (1 - session.sagPerReading * visit.crankings)
  visit.crankings += 1
  visit.seq += 1
  const run = runCylinder(engine, cylinder, session, leaks, {
    speedRpm: Math.max(50, speedRpm),
    strokes: session.strokes,
    fill: FULL_CHARGE * engine.cause.chargeFill,
    chargeTempK: chargeTempK(session),
    oilM3: wet ? oilMl * 1e-6 * drawRange(random, world.oilStays) : 0,
    leftInGaugePa: 0,
    shows: () => true,
  })
  const truePa = run[run.length - 1] as number
  const adaptor = random.chance(world.mistakes.adaptorLeaking) ? drawRange(random, ADAPTOR_LEAK) : 1
  const scatter = random.normal(0, 1)
  const shownAfter = (pa: number): Pressure => shown(session.gauge, Math.max(pa * adaptor, visit.leftInGaugePa), scatter)
  const strokes = [...run].map(shownAfter)
  const pressure = strokes[strokes.length - 1] as Pressure
  const reading: CompressionReading = {
    test: 'compression',
    cylinder: number,
    ...sessionField(visit),
    ...(wet ? { wet: true, ...(random.chance(0.5) ? { oilMl } : {}) } : {}),
    pressure,
    ...(visit.recordsFirstStroke || visit.recordsStrokes ? { firstStroke: strokes[0] as Pressure } : {}),
    ...(visit.recordsStrokes ? { strokes } : {}),
    ...(adaptor < 1 && random.chance(0.5) ? { heldTenSeconds: false } : random.chance(0.1) ? { heldTenSeconds: adaptor === 1 } : {}),
    seq: visit.seq,
  }
  if (visit.leavesGaugeFull) visit.leftInGaugePa = Math.max(visit.leftInGaugePa, truePa * adaptor)
  return { reading, noiseFreePa: truePa }
}

/** Running compression at idle, or in a snap of the throttle. */
export function measureRunningCompression(visit: Visit, number: number, snap: boolean): CompressionReading {
  const { engine, random, session } = visit
  const cylinder = cylinderOf(visit, number)
  const shows = showsNow(visit, cylinder)
  const leaks = leaksOf(engine, cylinder, { wet: false, temperature: 'hot', held: false, shows })
  const state = snap ? RUNNING.snap : RUNNING.idle
  const run = runCylinder(engine, cylinder, { ...session, temperature: 'hot' }, leaks, {
    speedRpm: state.rpm * random.normal(1, 0.03),
    strokes: 12,
    fill: state.fill * random.normal(1, 0.03),
    chargeTempK: chargeTempK({ ...session, temperature: 'hot' }),
    oilM3: 0,
    leftInGaugePa: 0,
    shows: () => true,
  })
  const deadExhaust = cylinder.faults.some((effect) => effect.fault === 'valve-not-opening' && effect.valve === 'exhaust')
  const truePa = (run[run.length - 1] as number) * (deadExhaust ? TRAPPED_EXHAUST * random.normal(1, 0.12) : 1)
  return {
    test: 'compression',
    cylinder: number,
    ...sessionField(visit),
    running: true,
    ...(snap ? { snap: true } : {}),
    pressure: shown(session.gauge, truePa, 3 * random.normal(0, 1)),
  }
}

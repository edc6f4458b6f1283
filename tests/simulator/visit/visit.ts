import type { Conditions } from '@evenbore/contract'
import { drawGauge, type SimulatedGauge } from '../instruments/gauge.ts'
import { drawTester, type SimulatedTester } from '../instruments/leakage-tester.ts'
import { stationPressurePa } from '../physics/air.ts'
import type { Cylinder, Engine } from '../population/engine.ts'
import type { Random } from '../random.ts'
import { drawRange } from '../worlds/draw.ts'

/** One set of true conditions with its instruments. `id` null is the top level of the case. */
export type SimulatedSession = {
  readonly id: string | null
  readonly temperature: 'hot' | 'warm' | 'cold'
  readonly plugsOut: 'all' | 'one'
  readonly strokes: number
  readonly speedRpm: number
  readonly sagPerReading: number
  readonly airPressurePa: number
  readonly airTempK: number
  readonly gauge: SimulatedGauge
  readonly tester: SimulatedTester
  readonly conditions: Conditions
}

/** An engine on the bay, what has been done to it, and the session in force. Tests change it: the battery tires. Oil is blown out after each wet test. */
export type Visit = {
  readonly engine: Engine
  readonly random: Random
  readonly sessions: SimulatedSession[]
  session: SimulatedSession
  /** Cranking tests so far in this session: the battery sags with each. */
  crankings: number
  /** The order taken, over the whole visit. */
  seq: number
  /** Gauge pressure left in the line by a technician who does not release it. */
  readonly leavesGaugeFull: boolean
  leftInGaugePa: number
  /** Cylinders whose sticky valve has come free, whose clearances were set, whose plug and lead were swapped. */
  readonly freed: Set<number>
  readonly adjusted: Set<number>
  readonly replugged: Set<number>
  readonly recordsFirstStroke: boolean
  readonly recordsStrokes: boolean
  readonly idleDropRpm: number
}

/** Opens a visit: conditions, instruments and habits drawn, nothing measured yet. */
export function openVisit(random: Random, engine: Engine): Visit {
  const session = drawSession(random, engine, null)
  return {
    engine,
    random,
    sessions: [session],
    session,
    crankings: 0,
    seq: 0,
    leavesGaugeFull: random.chance(engine.world.mistakes.gaugeNotReleased),
    leftInGaugePa: 0,
    freed: new Set(),
    adjusted: new Set(),
    replugged: new Set(),
    recordsFirstStroke: random.chance(0.35),
    recordsStrokes: random.chance(0.12),
    idleDropRpm: (random.between(0.7, 1.3) * 240) / engine.cylinders.length,
  }
}

type Known = Pick<SimulatedSession, 'airPressurePa' | 'airTempK'> & { readonly heightM: number }

function drawSession(random: Random, engine: Engine, id: string | null): SimulatedSession {
  const { world, design } = engine
  const temperature = random.weighted({ hot: 62, warm: 20, cold: 18 })
  const heightM = random.chance(0.75) ? random.between(0, 350) : random.between(350, 2000)
  const airPressurePa = stationPressurePa(heightM) * random.normal(1, 0.008)
  const airTempC = random.normal(16, 8)
  const plugsOut = random.chance(0.9) ? 'all' : 'one'
  const few = random.chance(world.mistakes.fewStrokes)
  const strokes = few ? random.integer(2, 3) : random.integer(5, 9)
  const normal = drawRange(random, world.crankingRpm[design.fuel])
  const slow = engine.cause.speedRpm
  const speedRpm = (slow ?? normal) * (temperature === 'cold' ? 0.9 : 1) * (plugsOut === 'one' ? 0.88 : 1)
  const tired = slow !== null && random.chance(0.7)
  const volts = tired ? random.normal(8.4, 0.5) : random.normal(10.6, 0.4)
  const gauge = drawGauge(random, world, design.fuel, engine.cause.gaugeFactor)
  const tester = drawTester(random, world, design.boreM)
  const known: Known = { airPressurePa, airTempK: airTempC + 273.15, heightM }
  return {
    id,
    temperature,
    plugsOut,
    strokes,
    speedRpm,
    sagPerReading: drawRange(random, world.speedSagPerReading) * (tired ? 1.5 : 1),
    ...known,
    gauge,
    tester,
    conditions: {
      engine: temperature,
      throttle: 'open',
      plugsOut,
      strokes,
      ...(random.chance(0.35) ? { crankingRpm: Math.round(speedRpm * random.normal(1, 0.03)) } : {}),
      ...(random.chance(0.45) ? { batteryVolts: Math.round(volts * 10) / 10 } : {}),
      ...(random.chance(0.65) ? { altitudeM: Math.round(heightM / 10) * 10 } : {}),
      ...(random.chance(0.25) ? { airPressure: { value: Math.round(airPressurePa / 100) / 10, unit: 'kPa' as const } } : {}),
      ...(random.chance(0.4) ? { airTempC: Math.round(airTempC) } : {}),
    },
  }
}

/** Starts a further session in which some things differ (the engine warmed up, another gauge). */
export function furtherSession(visit: Visit, change: { readonly hot?: boolean; readonly otherGauge?: boolean }): void {
  const { random, engine, session } = visit
  const temperature = change.hot === true ? 'hot' : session.temperature
  visit.session = {
    ...session,
    id: `s${visit.sessions.length}`,
    temperature,
    speedRpm: session.speedRpm * (session.temperature === 'cold' && temperature === 'hot' ? 1 / 0.9 : 1),
    gauge: change.otherGauge === true ? drawGauge(random, engine.world, engine.design.fuel, 1) : session.gauge,
    conditions: { ...session.conditions, engine: temperature },
  }
  visit.sessions.push(visit.session)
  visit.crankings = 0
  visit.leftInGaugePa = 0
}

export function cylinderOf(visit: Visit, number: number): Cylinder {
  const cylinder = visit.engine.cylinders.find((item) => item.number === number)
  if (cylinder === undefined) throw new Error(`cylinder: got ${number}, the engine has ${visit.engine.cylinders.length}`)
  return cylinder
}

/** The field that ties a reading to its session; nothing for the top level. */
export function sessionField(visit: Visit): { session?: string } {
  return visit.session.id === null ? {} : { session: visit.session.id }
}

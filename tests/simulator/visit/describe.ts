import type { Case, EngineDescription, Reading } from '@evenbore/contract'
import { PA_PER_PSI } from '../physics/air.ts'
import { chargeTempK, runCylinder } from './cylinder-run.ts'
import { leaksOf } from './leaks.ts'
import type { Visit } from './visit.ts'

/** What the garage knows of the engine: some dimensions missing, as in life. Call once a visit. */
export function describeEngine(visit: Visit): EngineDescription {
  const { engine, random } = visit
  const { design, history } = engine
  const inline = design.layout.layout === 'inline'
  const given = <T extends object>(chance: number, fields: T): Partial<T> => (random.chance(chance) ? fields : {})
  const gaskets = design.gaskets.map((piece) => [...piece])
  const separate = gaskets.length !== design.layout.banks.length
  return {
    fuel: design.fuel,
    ...given(0.6, { injection: design.injection }),
    layout: design.layout.layout,
    cylinders: engine.cylinders.length,
    ...given(0.85, { firingOrder: [...design.layout.firingOrder] }),
    ...(inline && random.chance(0.5) ? {} : { banks: design.layout.banks.map((bank) => [...bank]) }),
    ...(separate ? { gaskets } : {}),
    ...given(0.65, { boreMm: Math.round(design.boreM * 1e4) / 10, strokeMm: Math.round(design.strokeM * 1e4) / 10 }),
    ...given(0.7, { compressionRatio: Math.round(design.compressionRatio * 10) / 10 }),
    ...given(0.3, { intakeClosesDegAbdc: design.catalogueIntakeClosesDegAbdc }),
    ...(design.valveGear === 'side' ? { valveGear: 'side' as const } : {}),
    ...(design.cooling === 'air' ? { cooling: 'air' as const } : given(0.5, { cooling: 'water' as const })),
    ...given(0.35, { limits: drawLimits(visit) }),
    ...(Object.keys(history).length > 0 ? { history } : {}),
  }
}

function drawLimits(visit: Visit): NonNullable<EngineDescription['limits']> {
  const { random } = visit
  const psi = Math.round((0.75 * soundPressurePa(visit)) / PA_PER_PSI / 5) * 5
  const minimum = { minimum: { value: psi, unit: 'psi' as const } }
  const rule = random.weighted({ percent: 40, pressure: 25, minimum: 35 })
  if (rule === 'minimum') return minimum
  const more = random.chance(0.4) ? minimum : {}
  if (rule === 'percent') return { ...more, spreadPercent: random.pick([10, 12, 15, 20, 25]) }
  return { ...more, spreadPressure: { value: Math.max(10, Math.round((psi * random.pick([0.13, 0.17, 0.2])) / 5) * 5), unit: 'psi' } }
}

/** What a sound cylinder of this engine would read at 200 rpm and hot: the maker's limit is set from it. */
function soundPressurePa(visit: Visit): number {
  const { engine, session } = visit
  const cylinder = { ...(engine.cylinders[0] as (typeof engine.cylinders)[number]), faults: [], clearanceScale: 1, soundRingsMm2: 0.3 }
  const plain = { ...engine, bridges: [], cause: { ...engine.cause, intakeShiftDeg: new Map<number, number>() } }
  const hot = { ...session, temperature: 'hot' as const, airPressurePa: 101_325 }
  const leaks = leaksOf(plain, cylinder, { wet: false, temperature: 'hot', held: false, shows: () => true })
  const run = runCylinder(plain, cylinder, hot, leaks, {
    speedRpm: 200,
    strokes: 8,
    fill: 0.985,
    chargeTempK: chargeTempK(hot),
    oilM3: 0,
    leftInGaugePa: 0,
    shows: () => true,
  })
  return run[run.length - 1] as number
}

/** The case as it would be sent: the first session at the top, further ones by id. */
export function caseOf(visit: Visit, engine: EngineDescription, readings: readonly Reading[]): Case {
  const [first, ...others] = visit.sessions
  if (first === undefined) throw new Error('visit: got no session, expected at least one')
  const sets = (session: typeof first) => ({
    conditions: session.conditions,
    ...(session.gauge.stated === undefined ? {} : { gauge: session.gauge.stated }),
    ...(session.tester.stated === undefined ? {} : { leakageTester: session.tester.stated }),
  })
  return {
    engine,
    ...sets(first),
    ...(others.length > 0 ? { sessions: Object.fromEntries(others.map((session) => [session.id as string, sets(session)])) } : {}),
    readings: [...readings],
  }
}

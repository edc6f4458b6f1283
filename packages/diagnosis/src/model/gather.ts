import type { Case, ObjectionCode } from '@evenbore/contract'
import type { Admission, AdmittedSession } from '../admission/types.ts'
import type { Cause } from '../knowledge/causes.ts'
import type { Fault } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { measuredBuiltUp } from '../admission/built-up.ts'
import { builtBy, expectedLevel } from '../physics/expected.ts'
import { percentAtReference, prescribedRestrictorMm } from '../physics/leakage.ts'
import { toPascal } from '../units/pressure.ts'
import { currentEvidence } from '../waveform/current-evidence.ts'
import type { CylinderEvidence, EngineEvidence, Evidence, SightEvidence } from './evidence.ts'
import { causeFactors, faultFactors } from './past.ts'
import { oilRise } from './oil-rise.ts'
import { otherGauges } from './other-gauge.ts'
import { runningShares } from './running-share.ts'
import { gatherSights } from './sights.ts'
import { sagOf, type Sag } from './sag.ts'
import { unreleasedChances } from './unreleased.ts'
import { openValves } from './valve-states.ts'

/** Evidence for the model from an admitted case, and the readings that it has no use for. */
export interface Gathered {
  readonly evidence: Evidence
  readonly notWeighed: readonly number[]
}

/** Collects what was admitted into the evidence the model reasons from. Every reading is weighed, left out by admission, or reported. */
export function gather(given: Case, admission: Admission, knowledge: Knowledge): Gathered {
  const { engine, layout } = admission
  const session = admission.sessions[admission.judged?.session ?? 0]!
  const used = new Set<number>()
  const expected = expectation(admission, session, knowledge)
  const sights = gatherSights(given, admission, expected.logPa, knowledge, used)
  const unreleased = unreleasedChances(admission.compression, knowledge)
  const sag = admission.judged?.kind === 'dry' ? sagOf(admission.compression.filter((c) => c.usable && c.session === admission.judged?.session && (c.kind === 'dry' || c.kind === 'wet')), knowledge) : new Map<number, Sag>()
  const { whole, each } = fuelNotFound(gatherEngine(given, admission, used), knowledge)
  // oil in a diesel, and a check valve in the hose, are objected to, and nothing is built on them
  const spoilt = objectedTo(admission, ['oil-in-diesel', 'check-valve-left-in'])
  const cylinders = Array.from({ length: engine.cylinders }, (_, i): CylinderEvidence => ({
    ...gaugeReadings(i + 1, admission, { unreleased, sag }, used),
    leakage: leakageReadings(i + 1, admission, spoilt, used),
    sights: [...sights[i]!, ...each],
    faultFactors: faultFactors(i + 1, engine, session.conditions, knowledge) as Partial<Record<Fault, number>>,
  }))
  const rpm = session.conditions.crankingRpm
  const restrictor = prescribedRestrictorMm(engine.boreMm)
  const checks = [...otherGauges(given, admission), ...runningShares(given, admission)]
  for (const { reading } of checks) used.add(reading)
  const engineEvidence = [...whole, ...checks, ...crankingSpeeds(admission, session, knowledge, used)]
  const leftOut = objectedTo(admission, ['mixed-strokes', 'mixed-conditions', 'oil-in-diesel', 'check-valve-left-in', 'no-tester'])
  const notWeighed = given.readings.map((_, r) => r).filter((r) => !used.has(r) && !leftOut.has(r))
  return {
    evidence: {
      cylinders,
      gaskets: gasketLists(layout.gaskets, engine.cylinders),
      timedBanks: engine.valveGear === 'side' ? [] : layout.banks.map((bank) => bank.map((n) => n - 1)),
      openValves: layout.firingOrder !== null && (engine.cycle ?? 4) === 4 ? openValves(layout.firingOrder) : null,
      engine: engineEvidence,
      causeFactors: causeFactors(engine, session, knowledge) as Partial<Record<Cause, number>>,
      expected,
      speedKnown: rpm !== undefined,
      speedRatio: (rpm ?? knowledge.levels.normalCrankingRpm.value) / knowledge.levels.normalCrankingRpm.value,
      displacementCm3: layout.displacementCm3,
      oilRise: oilRise(engine, layout.displacementCm3, knowledge),
      oilWay: {
        rings: engine.layout === 'flat' ? knowledge.oil.flatRings.value : 1,
        valves: engine.valveGear === 'side' ? knowledge.oil.sideValves.value : { mean: 0, spread: 0 },
      },
      percentAtReference: (area) => percentAtReference(area, restrictor),
    },
    notWeighed,
  }
}

/** Readings that any of these objections is about. */
function objectedTo({ objections }: Admission, codes: readonly ObjectionCode[]): Set<number> {
  return new Set(objections.flatMap(({ code, readings }) => (codes.includes(code) ? readings : [])))
}

/** 0-based lists; a cylinder that no gasket names stands alone. */
function gasketLists(gaskets: readonly (readonly number[])[], count: number): number[][] {
  const lists = gaskets.filter((list) => list.length > 0).map((list) => list.map((n) => n - 1))
  const named = new Set(lists.flat())
  for (let i = 0; i < count; i++) if (!named.has(i)) lists.push([i])
  return lists
}

function gaugeReadings(cylinder: number, admission: Admission, order: { readonly unreleased: ReadonlyMap<number, number>; readonly sag: ReadonlyMap<number, Sag> }, used: Set<number>): Pick<CylinderEvidence, 'dry' | 'wet'> {
  const judged = admission.judged
  const mine = admission.compression.filter((c) => c.cylinder === cylinder && c.usable && (judged === null || c.session === judged.session))
  const dry = judged?.kind === 'dry' ? mine.filter((c) => c.judged) : []
  const wet = dry.length === 0 ? [] : mine.filter((c) => c.kind === 'wet')
  for (const c of [...dry, ...wet]) used.add(c.reading)
  const marks = marksPa(admission.compression)
  const plain = (c: (typeof mine)[number]) => ({
    reading: c.reading, pressurePa: c.pa, sdPa: Math.hypot(c.sdPa, Math.max(c.resolutionPa, marks) / Math.sqrt(12)),
    ...(c.oilMl === null ? {} : { oilMl: c.oilMl }), ...(c.heldTenSeconds === false ? { dropped: true } : {}), ...(admission.sessions[c.session]!.gauge.held ? { held: true } : {}), ...(order.unreleased.has(c.reading) ? { unreleased: order.unreleased.get(c.reading)! } : {}),
    ...(order.sag.has(c.reading) ? { sag: order.sag.get(c.reading)! } : {}),
  })
  return { dry: dry.map(plain), wet: wet.map(plain) }
}

/** Readings of four cylinders or more that are all multiples of five marks were read to five marks, whatever the finest place is. */
function marksPa(readings: Admission['compression']): number {
  const least = Math.min(...readings.map((c) => c.resolutionPa))
  const five = 5 * least
  const cranked = readings.filter((c) => c.kind === 'dry' || c.kind === 'wet')
  if (new Set(cranked.map((c) => c.cylinder)).size < 4) return least
  return cranked.every((c) => Math.abs(c.pa / five - Math.round(c.pa / five)) < 1e-6) ? five : least
}

function leakageReadings(cylinder: number, admission: Admission, spoilt: ReadonlySet<number>, used: Set<number>): CylinderEvidence['leakage'] {
  const mine = admission.leakage.filter((l) => l.cylinder === cylinder && !spoilt.has(l.reading) && (l.percent !== null || (l.heard !== null && Object.keys(l.heard).length > 0)))
  for (const l of mine) used.add(l.reading)
  return mine.map((l) => ({
    reading: l.reading,
    percentAtReference: l.percentAtReference ?? l.percent,
    heard: l.heard ?? {},
    neighbour: l.neighbour === null ? null : l.neighbour - 1,
    wet: l.wet,
    rockersSlack: l.rockersSlack.includes(cylinder),
    neighbourSlack: l.neighbour !== null && l.rockersSlack.includes(l.neighbour),
  }))
}

function expectation(admission: Admission, session: AdmittedSession, knowledge: Knowledge): Evidence['expected'] {
  const { engine } = admission
  const { levels } = knowledge
  // a shut throttle is a cause of its own, so the level is expected as if it were open
  const measured = measuredBuiltUp(admission.judged)
  const level = expectedLevel(engine, { ...session.conditions, throttle: 'open' }, session.airPa, session.gauge.volumeBeforeValveMl, measured)
  const skimmed = engine.history?.headSkimmed === true ? 0.04 : 0
  if (level !== null) return { logPa: Math.log(level.medianPa) + skimmed, spread: Math.hypot(level.logSd, levels.knownSpread.value, skimmed) }
  const base = engine.fuel === 'diesel' ? levels.dieselPa.value : engine.valveGear === 'side' ? levels.petrolSideValvePa.value : levels.petrolPa.value
  const air = Math.log(session.airPa / 101325)
  const rpm = session.conditions.crankingRpm ?? levels.normalCrankingRpm.value * (session.conditions.plugsOut === 'one' ? knowledge.crankingSpeed.plugsIn.value : 1)
  const ratio = engine.fuel === 'diesel' ? levels.dieselRatio.value : engine.valveGear === 'side' ? knowledge.oil.usualRatio.value.side : knowledge.oil.usualRatio.value.overhead
  const built = measured ?? builtBy(session.conditions.strokes, (admission.layout.displacementCm3 ?? knowledge.noise.unknownDisplacementCm3.value) / (ratio - 1))
  return {
    logPa: Math.log(base) + air + skimmed + levels.speedExponent.value * Math.log(rpm / levels.normalCrankingRpm.value) + built.log,
    spread: Math.hypot(levels.unknownSpread.value, built.sd),
  }
}

/** Cranking speeds from current traces, where nobody measured it: a starter that turns all cylinders against their compression is slower. */
function crankingSpeeds(admission: Admission, { conditions }: AdmittedSession, { crankingSpeed }: Knowledge, used: Set<number>): EngineEvidence[] {
  if (conditions.crankingRpm !== undefined) return []
  const part = conditions.plugsOut === 'all' ? crankingSpeed.plugsIn.value : 1
  return currentEvidence(admission).speeds.map(({ reading, rpm }) => {
    used.add(reading)
    return { kind: 'cranking-speed', reading, rpm: rpm / part }
  })
}

/**
 * Looked for petrol in the oil or black smoke, and found neither: what each cylinder would have shown by itself, if petrol ran down its bore (it
 * adds up). Where one was found it may come from any of them, and all are weighed as signs of the engine, at twice the work. Not so signs of coolant:
 * two cylinders that bubble share one leak.
 */
function fuelNotFound(signs: readonly EngineEvidence[], { engineSigns }: Knowledge): { readonly whole: readonly EngineEvidence[]; readonly each: readonly SightEvidence[] } {
  const mine = signs.flatMap((e) => (e.kind === 'engine-sign' && engineSigns[e.code]?.value.groups.fuel !== undefined ? [e] : []))
  if (mine.some(({ present }) => present)) return { whole: signs, each: [] }
  return {
    whole: signs.filter((e) => !mine.some((one) => one === e)),
    each: mine.map(({ reading, code, present }): SightEvidence => ({ kind: 'sign', reading, code, present })),
  }
}

function gatherEngine(given: Case, { sessions }: Admission, used: Set<number>): EngineEvidence[] {
  const list: EngineEvidence[] = []
  given.readings.forEach((reading, index) => {
    if (reading.test === 'vacuum') {
      const { airPa } = sessions.find(({ id }) => id === (reading.session ?? null))!
      list.push({ kind: 'vacuum', reading: index, pattern: reading.pattern, depth: reading.reading === undefined ? null : toPascal(reading.reading) / airPa })
    } else if (reading.test === 'coolant-gas') list.push({ kind: 'engine-sign', reading: index, code: 'coolant-gas', present: reading.present })
    else if (reading.test === 'cooling-pressure') {
      // over 2 psi (13.8 kPa) lost in 2 minutes (a maker's text, not named)
      const lostPa = toPascal(reading.lostPressure)
      list.push({ kind: 'engine-sign', reading: index, code: 'cooling-pressure', present: lostPa / reading.minutes > 6894.76 })
    } else if (reading.test === 'observation' && ENGINE_CODES.has(reading.code)) {
      list.push({ kind: 'engine-sign', reading: index, code: reading.code, present: reading.present ?? true })
    } else return
    used.add(index)
  })
  return list
}


const ENGINE_CODES = new Set([
  'smoke-blue-throttle', 'smoke-blue-overrun', 'smoke-white', 'smoke-black', 'breather-smoke', 'water-in-oil', 'petrol-in-oil', 'oil-in-water', 'oil-use-high',
])

import type { Conditions, EngineDescription } from '@evenbore/contract'
import type { AdmittedSession } from '../admission/types.ts'
import { FAULTS } from '../knowledge/faults.ts'
import type { PastFactors } from '../knowledge/history.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Operation } from '../knowledge/operations.ts'

/** Factors on the shares of faults in one cylinder from its place and the engine's past. 0 where the engine cannot have it. */
export function faultFactors(cylinder: number, engine: EngineDescription, conditions: Conditions, knowledge: Knowledge): Record<string, number> {
  const factors: Record<string, number> = {}
  for (const past of applying(engine, conditions, knowledge)) multiply(factors, past.faults)
  if (engine.hotExhaustCylinders?.includes(cylinder)) multiply(factors, knowledge.past.hotExhaust!.value.faults)
  if (engine.cooling === 'air') {
    factors['gasket-to-coolant'] = 0
    // without water a crack can only lead outside or into a port
    factors['cracked-head'] = 0.24 * (factors['cracked-head'] ?? 1)
  }
  const frees = engine.history?.minutesRunBeforeTest
  if (frees !== undefined && frees >= knowledge.pastLimits.runFreesMinutes.value && stored(engine, knowledge)) {
    const part = knowledge.pastLimits.runFreesPart.value
    for (const fault of FAULTS) if ((factors[fault] ?? 1) > 1) factors[fault] = 1 + (factors[fault]! - 1) * part
  }
  return factors
}

/** Chance that a given cylinder of an engine of so many has a fault of its own. */
export function faultChance(cylinders: number, knowledge: Knowledge): number {
  const { faultyCylinder, withCylinders } = knowledge.population
  return Math.min(0.5, faultyCylinder.value * (4 / cylinders) ** withCylinders.value)
}

/** Factors on the priors of engine-wide causes. */
export function causeFactors(engine: EngineDescription, { conditions, gauge }: Pick<AdmittedSession, 'conditions' | 'gauge'>, knowledge: Knowledge): Record<string, number> {
  const factors: Record<string, number> = {}
  for (const past of applying(engine, conditions, knowledge)) multiply(factors, past.causes)
  if (gauge.held) multiply(factors, knowledge.past.heldGauge!.value.causes)
  const slow = slowCranking(conditions, knowledge)
  if (slow !== null) factors['slow-cranking'] = slow
  return factors
}

/** What operations cure otherwise than usual: what has stood comes free, what is new beds in, what is not there cannot be put right. */
export function pastCures(engine: EngineDescription, conditions: Conditions, knowledge: Knowledge): Record<string, Operation['cures']> {
  return Object.assign({}, ...applying(engine, conditions, knowledge).map(({ cures }) => cures ?? {}))
}

/** Factor on slow cranking by the measured speed, else by the volts of a 12 V system; null where neither is known. */
function slowCranking({ crankingRpm: rpm, batteryVolts: volts }: Conditions, { pastLimits, causes }: Knowledge): number | null {
  // even odds at the limit, whatever the prior without a measurement
  const odds = (belowLimit: number): number => Math.exp(Math.max(-6, Math.min(6, belowLimit))) / causes['slow-cranking'].value.prior
  if (rpm !== undefined) return odds((pastLimits.slowRpm.value - rpm) / pastLimits.slowBlur.value)
  const { least, most } = pastLimits.twelveVolts.value
  if (volts === undefined || volts <= least || volts >= most) return null
  return Math.max(pastLimits.goodVolts.value, odds((pastLimits.slowVolts.value - volts) / pastLimits.voltsBlur.value))
}

function applying(engine: EngineDescription, conditions: Conditions, knowledge: Knowledge): PastFactors[] {
  const { pastLimits } = knowledge
  const history = engine.history ?? {}
  const km = history.kmSinceRings
  const names = [
    stored(engine, knowledge) && 'stored',
    history.overheated === true && 'overheated',
    km !== undefined && km > pastLimits.tiredKm.value && 'tiredRings',
    km !== undefined && km < pastLimits.freshKm.value && km >= pastLimits.beddedKm.value && 'freshRings',
    km !== undefined && km < pastLimits.beddedKm.value && 'notBedded',
    conditions.clearancesSet === true && 'clearancesSet',
    conditions.headTorqued === true && 'headTorqued',
    conditions.throttle === 'closed' && 'throttleNoted',
    engine.camshaft === 'other' && 'otherCam',
    engine.fuel === 'diesel' && 'diesel',
    engine.valveGear === 'side' && 'sideValves',
    engine.fuel === 'petrol' && engine.injection === 'none' && 'carburettor',
    engine.fuel === 'petrol' && (engine.injection === 'port' || engine.injection === 'direct') && 'injected',
    engine.fuel === 'petrol' && engine.injection === 'direct' && 'direct',
  ]
  return names.filter((n): n is string => typeof n === 'string').map((n) => knowledge.past[n]!.value)
}

function stored(engine: EngineDescription, knowledge: Knowledge): boolean {
  return (engine.history?.monthsStored ?? 0) >= knowledge.pastLimits.storedMonths.value
}

function multiply(into: Record<string, number>, factors: Readonly<Record<string, number | undefined>>): void {
  for (const [key, factor] of Object.entries(factors)) if (factor !== undefined) into[key] = (into[key] ?? 1) * factor
}

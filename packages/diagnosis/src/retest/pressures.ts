import type { ComparisonObjection, CylinderChange } from '@evenbore/contract'
import type { AdmittedSession, CombinedCylinder } from '../admission/types.ts'
import { readingDensity } from '../rules/reading-density.ts'
import { fromPascal } from '../units/pressure.ts'
import type { Side } from './baseline.ts'
import { changeProbabilities, type CylinderLogChange } from './change.ts'
import { CARRIED_FURTHER_SD, equalStrokes } from './strokes.ts'

/** What shifts all cylinders alike from one session to another, relative; from memory. */
const COMMON = {
  /** battery, oil and seating of another day */
  day: 0.03,
  /** 30 K colder reads 1 percent higher (rough calculation, from memory): widens only */
  perKelvin: 0.01 / 30,
  /** reading against speed: 160 rpm reads 6 to 8 percent below 200 (rough calculation, from memory) */
  speedPower: 0.3,
} as const

/** No reading counts as less than this, Pa: below the first mark of any gauge. */
const LEAST_PA = 3500

interface Pairing {
  readonly cylinder: number
  readonly before: CombinedCylinder
  readonly after: CombinedCylinder
  /** after over before, corrected for air and strokes */
  readonly change: CylinderLogChange | null
}

/** Each cylinder before and after: the change corrected for air pressure and strokes, and how likely it is real. */
export function cylinderChanges(before: Side, after: Side, comparable: boolean, worked: boolean): { cylinders: CylinderChange[]; objections: ComparisonObjection[] } {
  const old = before.admission.judged
  const now = after.admission.judged
  const sessions = old && now ? { before: before.admission.sessions[old.session]!, after: after.admission.sessions[now.session]! } : null
  const pairings = new Map<number, Pairing>()
  for (const each of old?.cylinders ?? []) {
    const later = now?.cylinders.find(({ cylinder }) => cylinder === each.cylinder)
    if (later && sessions) pairings.set(each.cylinder, { cylinder: each.cylinder, before: each, after: later, change: comparable ? logChange(each, later, sessions.before, sessions.after) : null })
  }
  const compared = [...pairings.values()].filter(({ change }) => change !== null)
  const probabilities = sessions ? changeProbabilities(compared.map(({ change }) => change!), commonSd(sessions.before, sessions.after, compared), worked) : []
  const byCylinder = new Map(compared.map(({ cylinder }, index) => [cylinder, probabilities[index]!]))
  const cylinders = Array.from({ length: after.case.engine.cylinders }, (_, index): CylinderChange => {
    const cylinder = index + 1
    const change = pairings.get(cylinder)?.change
    const earlier = old?.cylinders.find((each) => each.cylinder === cylinder)
    const later = now?.cylinders.find((each) => each.cylinder === cylinder)
    return {
      cylinder,
      before: earlier ? fromPascal(earlier.pa, before.admission.unit) : null,
      after: later ? fromPascal(later.pa, after.admission.unit) : null,
      change: change ? 100 * Math.expm1(change.log) : null,
      ...(byCylinder.get(cylinder) ?? { improved: null, unchanged: null, worse: null }),
    }
  })
  const unlike = comparable ? [...pairings.values()].filter(({ change }) => change === null) : []
  return {
    cylinders,
    objections: unlike.length === 0 ? [] : [{
      code: 'mixed-strokes', in: 'both', readings: unlike.flatMap((pairing) => pairing.after.readings),
      says: 'Before and after were cranked for different numbers of strokes, and the build-up was not recorded.',
      do: 'Repeat with the number of strokes of the baseline, or note the pressure after each stroke.',
    }],
  }
}

function logChange(before: CombinedCylinder, after: CombinedCylinder, old: AdmittedSession, now: AdmittedSession): CylinderLogChange | null {
  const strokes = equalStrokes(before, after)
  if (!strokes) return null
  const first = valueOf(before, strokes.before)
  const second = valueOf(after, strokes.after)
  return {
    log: Math.log(second.pa / first.pa) - airShift(old, now),
    sd: Math.hypot(first.relativeSd, second.relativeSd, strokes.carried ? CARRIED_FURTHER_SD : 0),
  }
}

function valueOf(cylinder: CombinedCylinder, factor: number): { pa: number; relativeSd: number } {
  const { mean, variance } = readingDensity(cylinder)
  const pa = Math.max(mean, LEAST_PA)
  return { pa: pa * factor, relativeSd: Math.sqrt(variance) / pa }
}

/** Cranking pressure follows air pressure; corrected where both are known. */
function airShift(old: AdmittedSession, now: AdmittedSession): number {
  return old.airFrom === 'assumed' || now.airFrom === 'assumed' ? 0 : Math.log(now.airPa / old.airPa)
}

/** What both sessions do not share: the day, another gauge, air pressure nobody noted, temperature, cranking speed. */
function commonSd(old: AdmittedSession, now: AdmittedSession, compared: readonly Pairing[]): number {
  const level = compared.length === 0 ? 1 : compared.reduce((sum, { before }) => sum + before.pa, 0) / compared.length
  const gauge = sameGauge(old, now) ? 0 : Math.hypot(old.gauge.boundPa, now.gauge.boundPa) / Math.sqrt(3) / Math.max(level, LEAST_PA)
  const bothAssumed = old.airFrom === 'assumed' && now.airFrom === 'assumed'
  const air = bothAssumed ? 0 : Math.hypot(old.airSdPa / old.airPa, now.airSdPa / now.airPa)
  const kelvin = old.conditions.airTempC !== undefined && now.conditions.airTempC !== undefined ? Math.abs(old.conditions.airTempC - now.conditions.airTempC) : 0
  const [slow, fast] = [old.conditions.crankingRpm, now.conditions.crankingRpm]
  const speed = slow !== undefined && fast !== undefined ? COMMON.speedPower * Math.abs(Math.log(fast / slow)) : 0
  return Math.hypot(COMMON.day, gauge, air, kelvin * COMMON.perKelvin, speed)
}

/** The same description counts as the same gauge; its errors are then shared. */
function sameGauge(old: AdmittedSession, now: AdmittedSession): boolean {
  return old.gauge.stated && now.gauge.stated && old.gauge.spanPa === now.gauge.spanPa && old.gauge.boundPa === now.gauge.boundPa && old.gauge.statedResolutionPa === now.gauge.statedResolutionPa
}

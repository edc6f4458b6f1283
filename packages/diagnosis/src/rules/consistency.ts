import type { AlsoChecked, AsRead, Consistency, Extreme, PressureUnit, Rule, Verdict } from '@evenbore/contract'
import type { Admission, CombinedCylinder } from '../admission/types.ts'
import { fromPascal, toPascal } from '../units/pressure.ts'
import { type GaugeError, gaugeError, probabilityAboveMeanPart, probabilityAllAbove, probabilityAllBelow, probabilitySpreadInside, type SpreadLimit } from './inside.ts'
import { normalBelow } from './normal.ts'
import { type ReadingDensity, readingDensity } from './reading-density.ts'
import { INSIDE_FROM, ONE_FIFTH, ONE_QUARTER, ONE_TENTH, OUTSIDE_TO, RULE_BASIS, TEN_PSI_PA } from './trade-rules.ts'

/** Equal to the limit is inside; a part in 1e9 counts as equal. */
const SLACK = 1e-9
const atMost = (value: number, limit: number): boolean => value <= limit + SLACK * Math.max(Math.abs(value), Math.abs(limit))

/** Inside from .95, outside to .05, else undecided (JCGM 106:2012). */
export function verdictOf(probabilityInside: number): Verdict {
  if (probabilityInside >= INSIDE_FROM) return 'inside'
  return probabilityInside <= OUTSIDE_TO ? 'outside' : 'undecided'
}

/**
 * How even the judged cylinders are: the limit in force (the engine's own, else one tenth of the highest) as read and with the
 * gauge's uncertainty, and every other rule of maker and trade beside it.
 */
export function consistency(admission: Admission): Consistency {
  const { engine, judged, sessions, unit } = admission
  const { limits } = engine
  const ownPercent = limits?.spreadPercent
  const ownPressurePa = limits?.spreadPressure ? toPascal(limits.spreadPressure) : undefined
  const cylinders = judged?.cylinders ?? []
  const front = admission.layout.banks.flat()
  const places = cylinders.toSorted((a, b) => front.indexOf(a.cylinder) - front.indexOf(b.cylinder))
  const lowest = extreme(places, -1)
  const highest = extreme(places, 1)
  const spreadPa = lowest && highest ? highest.pa - lowest.pa : 0
  const rule = ruleInForce(ownPercent, ownPressurePa, spreadPa, highest?.pa ?? 0)
  const shared = {
    session: judged ? sessions[judged.session]!.id : null,
    rule,
    basis: RULE_BASIS[rule],
    ...(rule === 'one-tenth' ? { limitPercent: 100 * ONE_TENTH } : {}),
    ...(ownPercent !== undefined ? { limitPercent: ownPercent } : {}),
    ...(limits?.spreadPressure ? { limitPressure: limits.spreadPressure } : {}),
  }
  const error = judged ? gaugeError(sessions[judged.session]!.gauge, highest?.pa ?? 0) : { boundPa: 0, spanPa: 1 }
  const tables = cylinders.map((cylinder) => readingDensity(cylinder, cylinders.filter((other) => other !== cylinder).map(({ pa }) => pa)))
  if (!judged || cylinders.length < 2 || !lowest || !highest) {
    return {
      ...shared, spreadPercent: null, lowest: null, highest: null, asRead: null, verdict: 'undecided', probabilityInside: null,
      alsoChecked: pressureLimits(admission, cylinders, tables, error),
    }
  }
  const limit: SpreadLimit = {
    ...(ownPercent !== undefined || rule === 'one-tenth' ? { part: 1 - (ownPercent ?? 100 * ONE_TENTH) / 100 } : {}),
    ...(ownPressurePa !== undefined ? { differencePa: ownPressurePa } : {}),
  }
  const probabilityInside = probabilitySpreadInside(tables, limit, error)
  return {
    ...shared,
    spreadPercent: spreadPercentOf(shown(lowest, unit), shown(highest, unit)),
    lowest: shown(lowest, unit),
    highest: shown(highest, unit),
    asRead: spreadAsRead(limit, lowest.pa, highest.pa),
    verdict: verdictOf(probabilityInside),
    probabilityInside,
    alsoChecked: [...spreadRules(admission, rule, cylinders, tables, error), ...pressureLimits(admission, cylinders, tables, error)],
  }
}

/** With both of the maker's limits in force, the one that the readings come nearer to (or further past) names the rule. */
function ruleInForce(percent: number | undefined, pressurePa: number | undefined, spreadPa: number, highestPa: number): Rule {
  if (percent === undefined && pressurePa === undefined) return 'one-tenth'
  if (percent === undefined) return 'own-spread-pressure'
  if (pressurePa === undefined) return 'own-spread-percent'
  return spreadPa * percent * highestPa > 100 * spreadPa * pressurePa * (1 + SLACK) ? 'own-spread-pressure' : 'own-spread-percent'
}

/** The cylinder at one end; among equals the one further to the front, by bank, so that renumbering an engine renames the answer. */
function extreme(cylinders: readonly CombinedCylinder[], side: 1 | -1): CombinedCylinder | undefined {
  return cylinders.reduce<CombinedCylinder | undefined>((best, each) => (!best || side * (each.pa - best.pa) > 0 ? each : best), undefined)
}

function shown({ cylinder, pa, readings, evidence }: CombinedCylinder, unit: PressureUnit): Extreme {
  return { cylinder, pressure: fromPascal(pa, unit), readings: evidence.length > 0 ? [...readings] : [] }
}

/** Taken in the unit of the readings, so that round readings give round percentages. */
function spreadPercentOf({ pressure: low }: Extreme, { pressure: high }: Extreme): number {
  return high.value > 0 ? (100 * (high.value - low.value)) / high.value : 0
}

function spreadAsRead({ part, differencePa }: SpreadLimit, lowestPa: number, highestPa: number): AsRead {
  const evenEnough = part === undefined || atMost(part * highestPa, lowestPa)
  const nearEnough = differencePa === undefined || atMost(highestPa - lowestPa, differencePa)
  return evenEnough && nearEnough ? 'inside' : 'outside'
}

function checked(rule: Rule, asRead: AsRead, probabilityInside: number, cylinders: readonly CombinedCylinder[]): AlsoChecked {
  const failing = cylinders.map(({ cylinder }) => cylinder)
  return {
    rule, basis: RULE_BASIS[rule], verdict: verdictOf(probabilityInside), asRead, probabilityInside,
    ...(asRead === 'outside' && failing.length > 0 ? { cylinders: failing } : {}),
  }
}

/** Every rule of spread beside the one in force. The ten psi rule is stated for petrol engines only. */
function spreadRules(
  { engine }: Admission, inForce: Rule, cylinders: readonly CombinedCylinder[], tables: readonly ReadingDensity[], error: GaugeError,
): AlsoChecked[] {
  const lowestPa = Math.min(...cylinders.map(({ pa }) => pa))
  const highestPa = Math.max(...cylinders.map(({ pa }) => pa))
  const { spreadPercent, spreadPressure } = engine.limits ?? {}
  const candidates: [Rule, SpreadLimit][] = []
  if (spreadPercent !== undefined && spreadPressure) candidates.push(['own-spread-percent', { part: 1 - spreadPercent / 100 }], ['own-spread-pressure', { differencePa: toPascal(spreadPressure) }])
  candidates.push(['one-tenth', { part: 1 - ONE_TENTH }], ['three-quarters', { part: 1 - ONE_QUARTER }])
  if (engine.fuel === 'petrol') candidates.push(['ten-psi', { differencePa: TEN_PSI_PA }])
  const results = candidates.filter(([rule]) => rule !== inForce).map(([rule, limit]) => {
    const failing = cylinders.filter(({ pa }) => spreadAsRead(limit, pa, highestPa) === 'outside')
    return checked(rule, spreadAsRead(limit, lowestPa, highestPa), probabilitySpreadInside(tables, limit, error), failing)
  })
  const mean = cylinders.reduce((sum, { pa }) => sum + pa, 0) / cylinders.length
  const below = cylinders.filter(({ pa }) => !atMost((1 - ONE_FIFTH) * mean, pa))
  const inside = probabilityAboveMeanPart(tables, 1 - ONE_FIFTH, error, normalBelow)
  return [...results, checked('fifth-below-mean', below.length > 0 ? 'outside' : 'inside', inside, below)]
}

/** The maker's minimum and maximum: gain and zero of the gauge count in full here. */
function pressureLimits({ engine }: Admission, cylinders: readonly CombinedCylinder[], tables: readonly ReadingDensity[], error: GaugeError): AlsoChecked[] {
  if (cylinders.length === 0) return []
  const { minimum, maximum } = engine.limits ?? {}
  const results: AlsoChecked[] = []
  if (minimum) {
    const limitPa = toPascal(minimum)
    const below = cylinders.filter(({ pa }) => !atMost(limitPa, pa))
    results.push(checked('own-minimum', below.length > 0 ? 'outside' : 'inside', probabilityAllAbove(tables, limitPa, error), below))
  }
  if (maximum) {
    const limitPa = toPascal(maximum)
    const above = cylinders.filter(({ pa }) => !atMost(pa, limitPa))
    results.push(checked('own-maximum', above.length > 0 ? 'outside' : 'inside', probabilityAllBelow(tables, limitPa, error), above))
  }
  return results
}

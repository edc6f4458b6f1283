import type { Case } from '@evenbore/contract'
import {
  REFERENCE_SUPPLY_PA, heldPressurePa, holeAreaMm2, leakAreaRatio, percentAtReference, prescribedRestrictorMm,
} from '../physics/leakage.ts'
import { PSI, toPascal } from '../units/pressure.ts'
import { objection, type Remark } from './remark.ts'
import type { AdmittedSession, LeakageEvidence } from './types.ts'

/** Percent lost above which a cylinder is suspect: FAA AC 43.13-1B par. 8-14b(5)(i), exactly 25 is not over. */
export const LEAKAGE_LIMIT_PERCENT = 25
/** The limit is stated for 80 psi; a supply within 1 psi of it is judged as read. */
const SUPPLY_SLACK_PA = PSI
/** Two class 1.6 gauges of 100 psi: about 3 points at 60 of 80 psi (rectangular bound, from memory), as a standard deviation of the percentage. */
const PERCENT_SD = 1.4
/** Discharge of restrictor against leak, and rings that leak more under more pressure: relative, from memory. */
const DISCHARGE_LOG_SD = 0.12
/** 95 percent of a normal distribution lies within so many standard deviations. */
const TWO_SIDED_95 = 1.959964
const relativeSlack = 1 + 1e-9

/** Percent lost as read: the pair of gauges where both were noted, else the percentage typed. */
export function percentLost(percent: number | undefined, supplyPa: number | null, heldPa: number | null): number | null {
  if (heldPa !== null && supplyPa !== null) return 100 * (1 - Math.min(heldPa, supplyPa) / supplyPa)
  return percent ?? null
}

/**
 * Whether more than 25 percent was lost (25 exactly is not over). Judged as read where the restrictor is the one prescribed for
 * the bore and the supply is 80 psi within 1, or where nobody described the tester; otherwise at the reference tester.
 */
function isOverLimit(percent: number, supplyPa: number | null, restrictorMm: number | null, prescribedMm: number, reference: number | null): boolean {
  const asPrescribed = restrictorMm === null || Math.abs(restrictorMm - prescribedMm) <= 1e-9 * prescribedMm
  const asSupplied = supplyPa === null || Math.abs(supplyPa - REFERENCE_SUPPLY_PA) <= SUPPLY_SLACK_PA * relativeSlack
  const judged = restrictorMm === null || (asPrescribed && asSupplied) || reference === null ? percent : reference
  return judged > LEAKAGE_LIMIT_PERCENT * relativeSlack
}

interface Area {
  readonly areaRatio: number
  readonly leakAreaMm2: number
  readonly areaLogSd: number
  readonly percentAtReference: number
  readonly percentAtReferenceLow: number
  readonly percentAtReferenceHigh: number
}

/** Leak area of a pair of pressures, null where nothing is held. */
function areaOf(percent: number, supplyPa: number, restrictorMm: number, prescribedMm: number, airPa: number): Area | null {
  const ratioAt = (lost: number): number => leakAreaRatio(supplyPa, supplyPa * (1 - lost / 100), airPa)
  const areaRatio = ratioAt(percent)
  if (!Number.isFinite(areaRatio)) return null
  const restrictorMm2 = holeAreaMm2(restrictorMm)
  const leakAreaMm2 = areaRatio * restrictorMm2
  const up = Math.min(percent + PERCENT_SD, 99.5)
  const down = Math.max(percent - PERCENT_SD, 0.2)
  const gaugeLogSd = Math.log(ratioAt(Math.max(up, down + 0.2)) / ratioAt(down)) / 2
  const areaLogSd = Math.hypot(gaugeLogSd, DISCHARGE_LOG_SD)
  const reach = Math.exp(TWO_SIDED_95 * areaLogSd)
  return {
    areaRatio,
    leakAreaMm2,
    areaLogSd,
    percentAtReference: percentAtReference(leakAreaMm2, prescribedMm),
    percentAtReferenceLow: percentAtReference(leakAreaMm2 / reach, prescribedMm),
    percentAtReferenceHigh: percentAtReference(leakAreaMm2 * reach, prescribedMm),
  }
}

const NO_AREA = { areaRatio: null, leakAreaMm2: null, areaLogSd: null, percentAtReference: null, percentAtReferenceLow: null, percentAtReferenceHigh: null }

/** Every leakage reading made comparable, with objections where the leak area cannot be computed. */
export function leakageEvidence(value: Case, sessions: readonly AdmittedSession[]): { evidence: LeakageEvidence[]; remarks: Remark[] } {
  const prescribedMm = prescribedRestrictorMm(value.engine.boreMm)
  const evidence = value.readings.flatMap((reading, index): LeakageEvidence[] => {
    if (reading.test !== 'leakage') return []
    const place = sessions.findIndex((session) => session.id === (reading.session ?? null))
    const { tester, airPa } = sessions[place]!
    const supplyPa = reading.supply ? toPascal(reading.supply) : (tester?.supplyPa ?? null)
    const percent = percentLost(reading.percent, supplyPa, reading.held ? toPascal(reading.held) : null)
    const area = percent !== null && supplyPa !== null && tester ? areaOf(percent, supplyPa, tester.restrictorMm, prescribedMm, airPa) : null
    return [{
      reading: index,
      cylinder: reading.cylinder,
      session: place,
      percent,
      ...(area ?? NO_AREA),
      overLimit: percent === null ? null : isOverLimit(percent, supplyPa, tester?.restrictorMm ?? null, prescribedMm, area?.percentAtReference ?? null),
      againstSisters: null,
      heard: reading.heard ?? null,
      neighbour: reading.neighbour ?? null,
      rockersSlack: reading.rockersSlack ?? [],
      wet: reading.wet ?? false,
      offTopDeg: reading.offTopDeg ?? null,
    }]
  })
  return { evidence: evidence.map((entry) => ({ ...entry, againstSisters: againstSisters(entry, evidence) })), remarks: areaRemarks(value, evidence, sessions) }
}

/** Leak area over the median area of the other cylinders (readings taken as usual, without oil or slack rockers; repeats of one sister count once, by their mean). */
function againstSisters(entry: LeakageEvidence, all: readonly LeakageEvidence[]): number | null {
  if (entry.leakAreaMm2 === null) return null
  const sisters = Map.groupBy(all.filter((other) => other.cylinder !== entry.cylinder && other.leakAreaMm2 !== null && !other.wet && !other.rockersSlack.includes(other.cylinder)), (other) => other.cylinder)
  const areas = [...sisters.values()].map((repeats) => repeats.map((each) => each.leakAreaMm2!).sort((a, b) => a - b).reduce((sum, area) => sum + area, 0) / repeats.length)
  const middle = median(areas)
  return middle === null || middle <= 0 ? null : entry.leakAreaMm2 / middle
}

/** Median of a list, null when it is empty. */
export function median(values: readonly number[]): number | null {
  if (values.length === 0) return null
  const sorted = values.toSorted((a, b) => a - b)
  const half = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
}

function areaRemarks(value: Case, evidence: readonly LeakageEvidence[], sessions: readonly AdmittedSession[]): Remark[] {
  const remarks: Remark[] = []
  // a pressure held says nothing while nobody knows what was supplied
  const held = ({ reading }: LeakageEvidence): boolean => 'held' in value.readings[reading]!
  const unread = evidence.filter((entry) => entry.percent === null && !held(entry))
  const noTester = evidence.filter((entry) => entry.leakAreaMm2 === null && (entry.percent === null ? held(entry) : entry.percent < 100 || !sessions[entry.session]!.tester))
  const nothingHeld = evidence.filter(({ percent, leakAreaMm2, session }) => percent === 100 && leakAreaMm2 === null && sessions[session]!.tester)
  if (noTester.length > 0) remarks.push(objection('no-tester', noTester, 'Without the supply pressure and the restrictor of the tester the leak area cannot be computed.', 'Note supply and restrictor of the tester, and the pressure held.'))
  if (unread.length > 0) remarks.push(objection('not-weighed', unread, 'No loss was noted: only what was heard counts.', 'Note the pressure held, or the percentage lost.'))
  if (nothingHeld.length > 0) remarks.push(objection('not-weighed', nothingHeld, 'Nothing was held, so no leak area can be computed.', 'Check that the piston is at top dead centre of its compression stroke and that the hose is tight, then repeat.'))
  return remarks
}

/** Gauge pressure, in pascal, that a tester would hold against a leak of this area; for the model's own predictions. */
export function predictedHeldPa(leakAreaMm2: number, supplyPa: number, restrictorMm: number, airPa: number): number {
  return heldPressurePa(leakAreaMm2 / holeAreaMm2(restrictorMm), supplyPa, airPa)
}

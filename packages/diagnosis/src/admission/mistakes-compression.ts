import type { EngineDescription } from '@evenbore/contract'
import { expectedLevel } from '../physics/expected.ts'
import { measuredBuiltUp } from './built-up.ts'
import { overSpan } from './compression.ts'
import { median } from './leakage.ts'
import { cylinderWords, objection, type Remark } from './remark.ts'
import { disagree } from './repeats.ts'
import { THRESHOLDS } from './thresholds.ts'
import type { AdmittedSession, CombinedCylinder, CompressionEvidence, Judged } from './types.ts'

/** Mistakes that compression readings betray one by one: past the gauge, too few strokes, a leaking adaptor, rounding, a wrong unit. */
export function readingMistakes(all: readonly CompressionEvidence[], sessions: readonly AdmittedSession[]): Remark[] {
  const remarks: Remark[] = []
  const raise = (code: Remark['code'], about: readonly CompressionEvidence[], says: string, todo: string): void => {
    if (about.length > 0) remarks.push(objection(code, about, says, todo))
  }
  raise('over-span', all.filter((entry) => overSpan(entry, sessions[entry.session]!)), 'The needle stood at or past the end of the gauge, so the reading only says "at least".', 'Use a gauge whose span is well above the reading.')
  const cranking = all.filter(({ kind }) => kind === 'dry' || kind === 'wet')
  raise('too-few-strokes', cranking.filter(tooFewStrokes), 'The pressure was still building up: too few strokes.', 'Crank until the reading stops rising, at least five compression strokes, the same for all.')
  raise('adaptor-leaking', all.filter(({ heldTenSeconds }) => heldTenSeconds === false), 'The gauge did not hold its reading for ten seconds: adaptor or check valve leaks, and the reading may be low.', 'Renew the seal, reseat the adaptor, blow out the check valve and read again.')
  raise('rounded', all.filter((entry) => sessions[entry.session]!.gauge.statedResolutionPa !== null && entry.resolutionPa > sessions[entry.session]!.gauge.statedResolutionPa! * 1.5), 'All readings lie on multiples of five marks: they were rounded, and are weighed as such.', 'Read the gauge to its finest mark.')
  return remarks
}

function tooFewStrokes({ strokesPa, strokes, pa }: CompressionEvidence): boolean {
  if (strokesPa && strokesPa.length >= 2) return pa > 0 && (pa - strokesPa.at(-2)!) / pa > THRESHOLDS.lastStep.value
  return strokes !== null && strokes < THRESHOLDS.fewestStrokes.value
}

/** How many of the smaller unit go into the larger: bar in psi, kPa in psi, kgf/cm2 in psi, bar in kPa, kgf/cm2 in kPa. */
const UNIT_RATIOS = [14.5038, 6.89476, 14.2233, 100, 98.0665]

const unitsApart = (ratio: number, slack: number): boolean => UNIT_RATIOS.some((units) => Math.abs(Math.max(ratio, 1 / ratio) / units - 1) < slack)

/**
 * Readings whose ratio to their sisters is that of two units; or all of them, where it is their ratio to what the engine should
 * show. Judged by ratio, so that the unit of the list does not matter.
 */
export function wrongUnit(engine: EngineDescription, session: AdmittedSession, judged: Judged): Remark[] {
  const suspects = judged.cylinders.filter((cylinder) => {
    const others = median(judged.cylinders.filter((other) => other !== cylinder).map((other) => other.pa))
    if (others === null || others <= 0 || cylinder.pa <= 0) return false
    return unitsApart(others / cylinder.pa, THRESHOLDS.unitRatioSlack.value)
  })
  if (suspects.length === 0) return wrongUnitThroughout(engine, session, judged)
  return [objection('wrong-unit', suspects.flatMap(({ evidence }) => evidence), `${cap(cylinderWords(suspects))}: the ratio to the other cylinders is that of two pressure units.`, 'Look at the unit on the gauge; correct the unit if it was entered wrongly.')]
}

function wrongUnitThroughout(engine: EngineDescription, session: AdmittedSession, judged: Judged): Remark[] {
  const expected = judged.kind === 'dry' ? expectedLevel(engine, session.conditions, session.airPa, session.gauge.volumeBeforeValveMl, measuredBuiltUp(judged)) : null
  const level = median(judged.cylinders.map(({ pa }) => pa))
  if (!expected || level === null || level <= 0 || !unitsApart(expected.medianPa / level, THRESHOLDS.unitRatioSlackOfAll.value)) return []
  return [objection('wrong-unit', judged.cylinders.flatMap(({ evidence }) => evidence), 'All readings are away from what this engine should show by the ratio of two pressure units.', 'Look at the unit on the gauge; correct the unit if it was entered wrongly.')]
}

const cap = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Mistakes that only the order taken betrays: a tiring battery, an engine going cold, a gauge that was not released. */
export function orderMistakes(all: readonly CompressionEvidence[]): Remark[] {
  const remarks: Remark[] = []
  const groups = Map.groupBy(all.filter(({ kind, usable, seq }) => kind === 'dry' && usable && seq !== null), ({ session }) => session)
  for (const group of groups.values()) {
    const order = group.toSorted((a, b) => a.seq! - b.seq!)
    if (order.some((entry, index) => index > 0 && entry.seq === order[index - 1]!.seq)) continue
    remarks.push(...sag(order), ...notReleased(order))
  }
  return remarks
}

function sag(order: readonly CompressionEvidence[]): Remark[] {
  const first = order[0]
  const again = first && order.slice(2).findLast(({ cylinder }) => cylinder === first.cylinder)
  if (first && again && again.pa < first.pa && disagree(first, again)) {
    return [objection('speed-sag', [first, again], `${cap(cylinderWords([first]))} read lower at the end than at the beginning: the starter slowed down or the engine cooled.`, 'Charge the battery or connect a second one, warm the engine, and take all cylinders again.')]
  }
  const falling = order.every((entry, index) => index === 0 || entry.pa < order[index - 1]!.pa)
  if (order.length >= THRESHOLDS.orderedReadings.value && falling && disagree(first!, order.at(-1)!)) {
    return [objection('speed-sag', order, 'The readings fall steadily in the order they were taken, as with a tiring battery or a cooling engine.', 'Read the first cylinder again: if it is lower now, charge the battery and repeat all.')]
  }
  return []
}

function notReleased(order: readonly CompressionEvidence[]): Remark[] {
  if (order.length < 2) return []
  const rising = order.every((entry, index) => index === 0 || entry.pa >= order[index - 1]!.pa * (1 - 1e-9))
  if (!rising) return []
  const steps = order.slice(1).map((entry, index) => ({ entry, before: order[index]! }))
  const withFirst = steps.filter(({ entry }) => entry.firstStrokePa !== null)
  const carried = withFirst.filter(({ entry, before }) => entry.firstStrokePa! >= THRESHOLDS.firstOverPrevious.value * before.pa)
  const stuck = withFirst.length > 0
    ? carried.length >= Math.max(1, Math.ceil(withFirst.length * 0.75))
    : order.length >= THRESHOLDS.orderedAlone.value && order.at(-1)!.pa > order[0]!.pa
  if (!stuck) return []
  return [objection('gauge-not-released', order, 'No reading is below the one before it, and the needle seems to have started where it last stood: the gauge was not released between cylinders.', 'Release the gauge to zero before each cylinder and take all again.')]
}

/** All readings even but far below what this engine should show: the throttle (or choke) was probably shut. */
export function throttleShut(engine: EngineDescription, session: AdmittedSession, judged: Judged): Remark[] {
  const { cylinders } = judged
  if (judged.kind !== 'dry' || engine.fuel === 'diesel') return []
  const about = cylinders.flatMap(({ evidence }) => evidence)
  if (session.conditions.throttle === 'closed') {
    return [objection('throttle-shut', about, 'The throttle was closed: the readings can be compared with each other but are all lower than they should be.', 'Prop throttle and choke wide open and take all again.')]
  }
  const expected = expectedLevel(engine, session.conditions, session.airPa, session.gauge.volumeBeforeValveMl, measuredBuiltUp(judged))
  if (!expected || cylinders.length < 3) return []
  const highest = Math.max(...cylinders.map(({ pa }) => pa))
  const lowest = Math.min(...cylinders.map(({ pa }) => pa))
  // a shut throttle leaves more than a third: less is a gauge that is not connected, another unit, or a camshaft that stands still
  if (highest >= THRESHOLDS.throttleShut.value * expected.lowPa || highest < THRESHOLDS.throttleShutLeast.value * expected.lowPa || highest - lowest > THRESHOLDS.throttleShutSpread.value * highest) return []
  return [objection('throttle-shut', about, 'All cylinders are even but well below what this engine should show, as when throttle or choke is shut.', 'Check that throttle and choke are wide open, then read one cylinder again.')]
}

/** Cylinders with no reading among the judged, or too few to compare. */
export function missingCylinders(engine: EngineDescription, judged: Judged | null): Remark[] {
  const read: readonly CombinedCylinder[] = judged?.cylinders ?? []
  const about = read.flatMap(({ evidence }) => evidence)
  if (read.length < 2) {
    return [objection('no-sister', about, engine.cylinders === 1 ? 'One cylinder has no sister to compare with.' : 'Fewer than two cylinders can be compared.', engine.cylinders === 1 ? "Go by the maker's limits and by the leakage test." : 'Read the other cylinders under the same conditions.')]
  }
  const missing = Array.from({ length: engine.cylinders }, (_, index) => ({ cylinder: index + 1 })).filter(({ cylinder }) => !read.some((each) => each.cylinder === cylinder))
  if (missing.length === 0) return []
  return [objection('incomplete', about, `${cap(cylinderWords(missing))} ${missing.length === 1 ? 'has' : 'have'} no reading that can be compared.`, `Read ${cylinderWords(missing)} under the same conditions.`)]
}

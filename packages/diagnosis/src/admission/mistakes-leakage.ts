import type { Case } from '@evenbore/contract'
import { leakageTest } from '../knowledge/noise.ts'
import { pressureLeft } from '../physics/cranking.ts'
import { toPascal } from '../units/pressure.ts'
import { median } from './leakage.ts'
import { cylinderWords, objection, oilInDiesel, type Remark } from './remark.ts'
import { THRESHOLDS } from './thresholds.ts'
import type { AdmittedSession, CombinedCylinder, EngineLayout, Judged, LeakageEvidence } from './types.ts'

/** Swept volume where bore and stroke are unknown, cm3, and the rest of a middling engine; from memory. */
const MIDDLING = { displacementCm3: 400, compressionRatio: 9, rodRatio: 3.5, intakeClosesDegAbdc: 50, rpm: 200, exponent: 1.25, startK: 300 } as const

/** Mistakes that leakage readings betray, alone and against compression. */
export function leakageMistakes(value: Case, layout: EngineLayout, sessions: readonly AdmittedSession[], all: readonly LeakageEvidence[], judged: Judged | null): Remark[] {
  const remarks: Remark[] = oilInDiesel(value.engine.fuel, all.filter(({ wet }) => wet))
  const raise = (code: Remark['code'], about: readonly { reading: number }[], says: string, todo: string): void => {
    if (about.length > 0) remarks.push(objection(code, about, says, todo))
  }
  const off = all.filter((entry) => offTop(entry, judged))
  raise('piston-off-top', off, `Almost everything was lost through one place in ${off.length > 0 ? cylinderWords(off) : ''}, which compression does not bear out: the piston was probably not at top dead centre of its compression stroke.`, 'Bring the piston to firing top dead centre, secure the crank, and repeat.')
  const none = all.filter(({ percent }) => percent !== null && percent <= THRESHOLDS.nothingLostPercent.value)
  if (new Set(none.map(({ cylinder }) => cylinder)).size >= 2) {
    raise('check-valve-left-in', none, 'Several cylinders lost nothing at all: a check valve was probably left in the hose.', 'Take the valve core out of the hose and repeat.')
  }
  raise('regulator-droop', droop(value, sessions, all), 'The supply pressure did not stay the same, or the percentage disagrees with the pair of gauges.', 'Check the regulator, let both gauges agree before connecting, note supply and held each time.')
  const swapped = wrongCylinder(layout, all, judged)
  raise('wrong-cylinder', swapped, `One of ${swapped.length > 0 ? cylinderWords(swapped) : ''} is low but tight and its neighbour normal but leaky: a reading may stand under the wrong cylinder.`, 'Repeat one of the two tests on both cylinders.')
  for (const list of Map.groupBy(all.filter(({ percent }) => percent !== null), ({ cylinder, wet, rockersSlack }) => JSON.stringify([cylinder, wet, rockersSlack])).values()) {
    const percents = list.map(({ percent }) => percent!).sort((a, b) => a - b)
    if (Math.max(...percents) - Math.min(...percents) > leakageTest.repeatsApart.value) {
      raise('repeat-disagrees', list, `Leakage of ${cylinderWords(list)}, tested in the same way, was ${percents.map(Math.round).join(' and ')} percent.`, 'Turn the engine over, bring the piston to firing top dead centre and test once more. If the leak stays away a valve hung or something lay on its seat: run the engine and test again before the head comes off.')
    }
  }
  const against = againstCompression(layout, sessions, all, judged)
  raise('leakage-against-compression', against, `Leakage and compression of ${against.length > 0 ? cylinderWords(against) : ''} do not fit each other.`, 'Repeat both; if they stay so, look at the valve train (valve not opening) or at speed-dependent sealing.')
  return remarks
}

function judgedCylinder(judged: Judged | null, cylinder: number): { own: CombinedCylinder; sisters: number } | null {
  const own = judged?.cylinders.find((each) => each.cylinder === cylinder)
  const sisters = own && median(judged!.cylinders.filter((each) => each !== own).map(({ pa }) => pa))
  return own && sisters ? { own, sisters } : null
}

function offTop(entry: LeakageEvidence, judged: Judged | null): boolean {
  if (entry.offTopDeg !== null && Math.abs(entry.offTopDeg) > THRESHOLDS.offTopDeg.value) return true
  if (entry.percent === null || entry.percent <= THRESHOLDS.offTopPercent.value || !entry.heard) return false
  const loud = Object.values(entry.heard).filter((loudness) => loudness === 3).length
  const found = judgedCylinder(judged, entry.cylinder)
  return loud === 1 && found !== null && found.own.pa >= found.sisters * (1 - THRESHOLDS.low.value)
}

function droop(value: Case, sessions: readonly AdmittedSession[], all: readonly LeakageEvidence[]): LeakageEvidence[] {
  const found = new Set<LeakageEvidence>()
  const supplied = all.flatMap((entry) => {
    const reading = value.readings[entry.reading]!
    if (reading.test !== 'leakage') return []
    const supplyPa = reading.supply ? toPascal(reading.supply) : (sessions[entry.session]!.tester?.supplyPa ?? null)
    if (reading.percent !== undefined && reading.held && supplyPa !== null) {
      if (Math.abs(entry.percent! - reading.percent) > 100 * THRESHOLDS.droop.value) found.add(entry)
    }
    return reading.supply && supplyPa !== null ? [{ entry, supplyPa }] : []
  })
  for (const group of Map.groupBy(supplied, ({ entry }) => entry.session).values()) {
    const highest = Math.max(...group.map(({ supplyPa }) => supplyPa))
    const lowest = Math.min(...group.map(({ supplyPa }) => supplyPa))
    if (highest - lowest > THRESHOLDS.droop.value * highest) group.forEach(({ entry }) => found.add(entry))
  }
  return [...found]
}

function wrongCylinder(layout: EngineLayout, all: readonly LeakageEvidence[], judged: Judged | null): LeakageEvidence[] {
  const state = (entry: LeakageEvidence): 'low-tight' | 'normal-leaky' | null => {
    const found = judgedCylinder(judged, entry.cylinder)
    if (!found || entry.percent === null) return null
    const part = found.own.pa / found.sisters
    if (part < 1 - THRESHOLDS.low.value && entry.percent < THRESHOLDS.tightPercent.value) return 'low-tight'
    if (part > 1 - THRESHOLDS.normal.value && entry.percent > THRESHOLDS.leakyPercent.value) return 'normal-leaky'
    return null
  }
  const near = (a: number, b: number): boolean => layout.neighbours.some(([x, y]) => (x === a && y === b) || (x === b && y === a))
  const found = new Set<LeakageEvidence>()
  for (const low of all.filter((entry) => state(entry) === 'low-tight')) {
    for (const leaky of all.filter((entry) => state(entry) === 'normal-leaky' && near(entry.cylinder, low.cylinder))) {
      found.add(low).add(leaky)
    }
  }
  return [...found]
}

/**
 * Cylinders whose leak and compression are apart by a factor of two (three where the swept volume is unknown): loss predicted from
 * the leak area beyond its sisters', against loss read beyond the sisters'. Where some sisters leak as well (two neighbours on one
 * gasket), their median is no measure of a tight cylinder: the reading must disagree with the tightest of them too. A leak into the
 * neighbour is left out: while cranking, the pressure on its other side is never that of the room.
 */
function againstCompression(layout: EngineLayout, sessions: readonly AdmittedSession[], all: readonly LeakageEvidence[], judged: Judged | null): LeakageEvidence[] {
  if (judged?.kind !== 'dry') return []
  const { conditions, airPa } = sessions[judged.session]!
  const stroke = { ...MIDDLING, airPa, rpm: conditions.crankingRpm ?? MIDDLING.rpm, displacementCm3: layout.displacementCm3 ?? MIDDLING.displacementCm3 }
  const factor = layout.displacementCm3 === null ? THRESHOLDS.leakDisagreementUnknownSize.value : THRESHOLDS.leakDisagreement.value
  const lossOf = (areaMm2: number): number => -Math.log(Math.max(pressureLeft(areaMm2, stroke), 1e-6))
  return all.filter((entry) => {
    const found = judgedCylinder(judged, entry.cylinder)
    if (!found || entry.leakAreaMm2 === null || (entry.heard?.neighbour ?? 0) >= 2 || entry.wet || found.own.pa <= 0 || entry.againstSisters === null) return false
    const tightest = Math.min(...all.flatMap((other) => (other.cylinder === entry.cylinder || other.leakAreaMm2 === null ? [] : [other.leakAreaMm2])))
    const read = Math.log(found.sisters / found.own.pa)
    return [entry.leakAreaMm2 / entry.againstSisters, tightest].every((sisterArea) => {
      const predicted = lossOf(entry.leakAreaMm2!) - lossOf(sisterArea)
      const larger = Math.max(predicted, read)
      return larger > THRESHOLDS.leakDisagreementLeast.value && larger > factor * Math.max(0, Math.min(predicted, read)) + 0.05
    })
  })
}

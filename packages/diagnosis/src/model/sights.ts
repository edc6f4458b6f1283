import type { Case } from '@evenbore/contract'
import type { Admission } from '../admission/types.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { currentEvidence } from '../waveform/current-evidence.ts'
import type { SightEvidence } from './evidence.ts'
import type { LiftFound } from './valve-train.ts'

const CYLINDER_CODES = new Set([
  'weak-by-hand', 'locked-by-hand', 'spits-back', 'bubbles-at-plug-thread', 'bubbles-at-joint', 'better-with-other-plug-and-lead', 'piston-low-at-top',
])

/**
 * Things seen and relative readings, by cylinder (0-based). Marks the readings it takes as used.
 *
 * @param expectedLog what a sound engine of this kind should crank (natural logarithm of Pa)
 */
export function gatherSights(given: Case, admission: Admission, expectedLog: number, knowledge: Knowledge, used: Set<number>): SightEvidence[][] {
  const lists: SightEvidence[][] = Array.from({ length: admission.engine.cylinders }, () => [])
  const put = (cylinder: number, sight: SightEvidence): void => {
    lists[cylinder - 1]!.push(sight)
    used.add(sight.reading)
  }
  const balance: { cylinder: number; reading: number; drop: number }[] = []
  const lifts: Lift[] = []
  given.readings.forEach((reading, index) => {
    switch (reading.test) {
      case 'plug': put(reading.cylinder, { kind: 'plug', reading: index, appearance: reading.appearance, afterRunAtSpeed: reading.afterRunAtSpeed ?? false }); break
      case 'borescope': put(reading.cylinder, { kind: 'borescope', reading: index, seen: reading.seen }); break
      case 'clearance': put(reading.cylinder, { kind: 'clearance', reading: index, valve: reading.valve, state: reading.state }); break
      case 'valve-lift': lifts.push({ cylinder: reading.cylinder, reading: index, valve: reading.valve, mm: reading.mm }); break
      case 'power-balance': balance.push({ cylinder: reading.cylinder, reading: index, drop: reading.rpmDrop }); break
      case 'observation':
        if (reading.cylinder !== undefined && CYLINDER_CODES.has(reading.code)) put(reading.cylinder, { kind: 'sign', reading: index, code: reading.code, present: reading.present ?? true })
    }
  })
  valveLifts(lifts, knowledge, put)
  const usualDrop = upperMedian(balance.map((b) => b.drop))
  if (new Set(balance.map((b) => b.cylinder)).size >= 2 && usualDrop > 0) {
    for (const b of balance) put(b.cylinder, { kind: 'power-balance', reading: b.reading, dropShare: b.drop / usualDrop })
  }
  relativePressures(admission, expectedLog, knowledge, put)
  firstStrokes(admission, put)
  for (const { cylinder, reading, logRatio, sd } of currentEvidence(admission).evidence) put(cylinder, { kind: 'relative', reading, logRatio, sd, of: 'current' })
  return lists
}

interface Lift { readonly cylinder: number; readonly reading: number; readonly valve: 'intake' | 'exhaust'; readonly mm: number }

/** Lifts against the same valve of sisters; where one cylinder alone was measured, against its other valve, which only tells what is short by a good part. */
function valveLifts(lifts: readonly Lift[], { valveTrain }: Knowledge, put: (cylinder: number, sight: SightEvidence) => void): void {
  const { liftShort, liftFar } = valveTrain
  for (const valve of ['intake', 'exhaust'] as const) {
    const same = lifts.filter((l) => l.valve === valve)
    const sisters = new Set(same.map((l) => l.cylinder)).size > 1
    const usual = upperMedian((sisters ? same : lifts).map((l) => l.mm))
    if (!(usual > 0) || !sisters && lifts.length === same.length) continue
    for (const { cylinder, reading, mm } of same) {
      const short = usual - mm
      const found: LiftFound[] = short > liftFar.value.part * usual ? ['far'] : !sisters ? ['right', 'short'] : short > liftShort.value.allowedMm ? ['short'] : ['right']
      put(cylinder, { kind: 'valve-lift', reading, valve, found })
    }
  }
}

/** First strokes of the judged dry readings, as part of the final pressure, against the median of the sisters. */
function firstStrokes(admission: Admission, put: (cylinder: number, sight: SightEvidence) => void): void {
  const noted = admission.compression.filter((c) => c.kind === 'dry' && c.judged && c.usable && c.pa > 0 && c.firstStrokePa !== null && c.firstStrokePa > 0 && c.firstStrokePa < c.pa)
  if (new Set(noted.map((c) => c.cylinder)).size < 3) return
  const ratio = (c: (typeof noted)[number]): number => Math.log(c.firstStrokePa! / c.pa)
  const usual = median(noted.map(ratio))
  for (const c of noted) put(c.cylinder, { kind: 'first-stroke', reading: c.reading, logRatio: ratio(c) - usual, sd: Math.hypot(c.sdPa / c.pa, c.resolutionPa / Math.sqrt(12) / c.firstStrokePa!) })
}

/**
 * Running, snap and other sessions' readings count against the median of their own sisters; where fewer than three cylinders were read while the engine
 * ran, against what is usual for what the sisters cranked.
 */
function relativePressures(admission: Admission, expectedLog: number, { running }: Knowledge, put: (cylinder: number, sight: SightEvidence) => void): void {
  const judged = admission.judged
  const cranked = judged?.kind === 'dry' && judged.cylinders.length > 1 ? upperMedian(judged.cylinders.map((c) => c.pa)) : 0
  // what all lack while cranking may be there when the engine runs, or not
  const lacks = cranked > 0 ? Math.max(0, expectedLog - Math.log(cranked)) / 2 : 0
  const groups = new Map<string, Admission['compression'][number][]>()
  for (const c of admission.compression) {
    if (!c.usable || c.kind === 'wet' || c.pa <= 0) continue
    if (c.judged && admission.judged?.kind === 'dry') continue
    const key = `${c.session} ${c.kind}`
    groups.set(key, [...(groups.get(key) ?? []), c])
  }
  for (const list of groups.values()) {
    const of = list[0]!.kind === 'dry' ? 'session' : list[0]!.kind === 'snap' ? 'snap' : 'running'
    const few = new Set(list.map((c) => c.cylinder)).size < 3
    if (few && (of === 'session' || cranked === 0 || admission.engine.fuel !== 'petrol')) continue
    const { share, spread } = (of === 'snap' ? running.snap : running.idle).value
    const usual = few ? Math.log(share * cranked) + lacks : Math.log(upperMedian(list.map((c) => c.pa)))
    for (const c of list) put(c.cylinder, { kind: 'relative', reading: c.reading, logRatio: Math.log(c.pa) - usual, sd: Math.hypot(few ? Math.hypot(spread, lacks) : 0.03, c.sdPa / c.pa), of })
  }
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  return sorted.length === 0 ? 0 : sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}

/** The median, the upper of the two middle ones when the number is even: faults only take away. */
function upperMedian(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted.length === 0 ? 0 : sorted[sorted.length >> 1]!
}

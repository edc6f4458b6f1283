import type { Case } from '@evenbore/contract'
import type { Admission } from '../admission/types.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { currentEvidence } from '../waveform/current-evidence.ts'
import type { SightEvidence } from './evidence.ts'
import { type LiftFound, pullLosing } from './valve-train.ts'

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
  const lost = lostWhileCranking(admission)
  const usualDrop = upperMedian(balance.map((b) => b.drop / pullLosing(lost(b.cylinder), knowledge)))
  if (new Set(balance.map((b) => b.cylinder)).size >= 2 && usualDrop > 0) {
    for (const b of balance) put(b.cylinder, { kind: 'power-balance', reading: b.reading, dropShare: b.drop / usualDrop })
  }
  relativePressures(admission, expectedLog, lost, knowledge, put)
  firstStrokes(admission, lost, knowledge, put)
  for (const { cylinder, reading, relative, sd } of currentEvidence(admission).evidence) put(cylinder, { kind: 'trace', reading, relative, sd })
  return lists
}

/** By cylinder number. */
type Lost = (cylinder: number) => number

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

/**
 * What a cylinder lost while cranking, against the best one (natural logarithm), nothing where that is not known. What its sisters show by other tests
 * counts as if they lost nothing: a sound cylinder among worn ones would else stand out as if it were the odd one.
 */
function lostWhileCranking({ judged }: Admission): (cylinder: number) => number {
  const dry = judged?.kind === 'dry' ? judged.cylinders.filter(({ pa }) => pa > 0) : []
  const best = dry.reduce((most, { pa }) => Math.max(most, pa), 0)
  return (cylinder) => Math.log(best / (dry.find((c) => c.cylinder === cylinder)?.pa ?? best)) || 0
}

/** First strokes of the judged dry readings, as part of the final pressure, against the median of the sisters, if these had lost nothing. */
function firstStrokes(admission: Admission, lost: Lost, { noise }: Knowledge, put: (cylinder: number, sight: SightEvidence) => void): void {
  const noted = admission.compression.filter((c) => c.kind === 'dry' && c.judged && c.usable && c.pa > 0 && c.firstStrokePa !== null && c.firstStrokePa > 0 && c.firstStrokePa < c.pa)
  if (new Set(noted.map((c) => c.cylinder)).size < 3) return
  const ratio = (c: (typeof noted)[number]): number => Math.log(c.firstStrokePa! / c.pa)
  const { perLoss, perLossSpread } = noise.firstStroke.value
  const usual = median(noted.map((c) => ratio(c) - perLoss * lost(c.cylinder)))
  const sd = perLossSpread * median(noted.map((c) => lost(c.cylinder)))
  for (const c of noted) put(c.cylinder, { kind: 'first-stroke', reading: c.reading, logRatio: ratio(c) - usual, sd: Math.hypot(sd, c.sdPa / c.pa, c.resolutionPa / Math.sqrt(12) / c.firstStrokePa!) })
}

/**
 * Running, snap and other sessions' readings count against the median of their own sisters; while the engine runs, of what these would show if they cranked
 * like the best one: a sound cylinder among leaking ones would else read high. Where fewer than three cylinders were read while the engine ran, against
 * what is usual for what the sisters cranked.
 */
function relativePressures(admission: Admission, expectedLog: number, lost: Lost, { running }: Knowledge, put: (cylinder: number, sight: SightEvidence) => void): void {
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
    const part = of === 'session' ? 0 : running.leakPart.value
    const usual = few ? Math.log(share * cranked) + lacks : upperMedian(list.map((c) => Math.log(c.pa) + part * lost(c.cylinder)))
    const sd = few ? Math.hypot(spread, lacks) : Math.hypot(0.03, of === 'session' ? 0 : running.leakPartSpread.value * upperMedian(list.map((c) => lost(c.cylinder))))
    for (const c of list) put(c.cylinder, { kind: 'relative', reading: c.reading, logRatio: Math.log(c.pa) - usual, sd: Math.hypot(sd, c.sdPa / c.pa), of })
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

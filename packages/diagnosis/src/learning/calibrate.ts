import { FAULTS, type Fault } from '../knowledge/faults.ts'
import { defaultKnowledge, type Knowledge } from '../knowledge/knowledge.ts'
import { brierParts, calibrationError, logLoss, reliabilityTable, type BrierParts, type Forecast, type ReliabilityRow } from './reliability.ts'

/** What a strip-down, or a follow-up, showed of one cylinder. */
export interface Finding {
  /** Engine family of the chain's own catalogue; findings of other families are left out. */
  readonly family?: string
  readonly cylinder: number
  /** The fault found, or that the cylinder was sound. */
  readonly found: Fault | 'sound'
  /** True when every engine of its kind was looked at or followed up, not only the suspected ones: only these tell how common soundness is. */
  readonly followedUp?: boolean
  /** What the evaluation at the time of deciding had said, when it was kept. */
  readonly believed?: { readonly sound: number; readonly faults: Readonly<Partial<Record<Fault, number>>> }
}

/** Knowledge after findings, and how well the earlier evaluations did on them. */
export interface Calibration {
  readonly knowledge: Knowledge
  readonly used: number
  readonly reliability: { readonly table: ReliabilityRow[]; readonly brier: BrierParts; readonly logLoss: number; readonly calibrationError: number } | null
  /** Set when the findings contradict the tables more than chance allows. */
  readonly drift: { readonly says: string; readonly faults: Fault[] } | null
}

/** Weight of the tables, counted as findings: so many of the chain's own are needed to weigh as much (from memory). */
const TABLE_WEIGHT = 60
const SOUND_WEIGHT = 100
/** A kind of fault that lies so many standard deviations off what the tables foresee has drifted. */
const DRIFT_SDS = 3.5

/**
 * Dirichlet update of the kinds of faults, given that something was wrong, from what was found; soundness changes only by
 * engines that were followed up, because otherwise only suspects are opened.
 * @param family take only findings of this engine family
 */
export function calibrate(findings: readonly Finding[], knowledge: Knowledge = defaultKnowledge, family?: string): Calibration {
  const used = findings.filter((f) => family === undefined || f.family === family)
  const total = FAULTS.reduce((sum, f) => sum + knowledge.faults[f].value.share, 0)
  const wrong = used.filter((f) => f.found !== 'sound')
  const count = (fault: Fault): number => wrong.filter((f) => f.found === fault).length
  const shares = new Map(FAULTS.map((fault) => {
    const share = knowledge.faults[fault].value.share / total
    return [fault, (TABLE_WEIGHT * share + count(fault)) / (TABLE_WEIGHT + wrong.length)] as const
  }))
  const followed = used.filter((f) => f.followedUp === true)
  const before = knowledge.population.faultyCylinder
  const faulty = (SOUND_WEIGHT * before.value + followed.filter((f) => f.found !== 'sound').length) / (SOUND_WEIGHT + followed.length)
  const changed = wrong.length === 0 && followed.length === 0 ? knowledge : {
    ...knowledge,
    version: `${knowledge.version}+findings`,
    faults: Object.fromEntries(FAULTS.map((fault) => [fault, {
      ...knowledge.faults[fault], value: { ...knowledge.faults[fault].value, share: shares.get(fault)! },
      basis: `${knowledge.faults[fault].basis}; share updated by ${wrong.length} findings of the chain`,
    }])) as Knowledge['faults'],
    population: { ...knowledge.population, faultyCylinder: { ...before, value: faulty, basis: `${before.basis}; updated by ${followed.length} engines followed up` } },
  }
  return { knowledge: changed, used: used.length, reliability: reliabilityOf(used), drift: driftOf(wrong.length, count, knowledge, total) }
}

function reliabilityOf(findings: readonly Finding[]): Calibration['reliability'] {
  const forecasts = findings.flatMap(({ believed, found }): Forecast[] => (believed === undefined ? [] : [
    { probability: believed.sound, happened: found === 'sound' },
    ...FAULTS.map((fault) => ({ probability: believed.faults[fault] ?? 0, happened: found === fault })),
  ]))
  if (forecasts.length === 0) return null
  return { table: reliabilityTable(forecasts), brier: brierParts(forecasts), logLoss: logLoss(forecasts), calibrationError: calibrationError(forecasts) }
}

function driftOf(n: number, count: (fault: Fault) => number, knowledge: Knowledge, total: number): Calibration['drift'] {
  const off = FAULTS.filter((fault) => {
    const p = knowledge.faults[fault].value.share / total
    // the tables are themselves known only as well as their weight says
    const sd = Math.sqrt(n * p * (1 - p) * (1 + n / TABLE_WEIGHT)) + 0.5
    return n > 0 && Math.abs(count(fault) - n * p) > DRIFT_SDS * sd
  })
  return off.length === 0 ? null : { says: `Findings and tables disagree on: ${off.join(', ')}. Look at how these are found and noted before trusting either.`, faults: off }
}

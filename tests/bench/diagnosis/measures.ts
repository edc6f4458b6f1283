import type { CylinderScore, EngineScore } from './score.ts'

/** The figures of one judge at one stage. Rates are 0 to 1. */
export type Measures = {
  readonly engines: number
  readonly cylinders: number
  readonly faulty: number
  readonly precision: number
  readonly recall: number
  readonly f1: number
  readonly top1: number
  readonly top2: number
  readonly logLoss: number
  readonly brierSound: number
  readonly calibrationError: number
  readonly reliability: readonly Bin[]
  readonly verdictBrier: number
  readonly falseAlarms: number
  readonly causeAccuracy: number
  /** Share of the engines that have a cause other than none whose cause leads. */
  readonly causeFound: number
  readonly bridgePrecision: number
  readonly bridgeRecall: number
  /** Sound cylinders in a bridge that are called faulty of their own. */
  readonly blamedInBridge: number
}
export type Bin = { readonly from: number; readonly count: number; readonly meanForecast: number; readonly frequency: number }

/** A probability of exactly zero given to the truth would make the log loss infinite: it counts as this. */
const FLOOR = 1e-6
const BINS = 10

export function measure(scores: readonly EngineScore[]): Measures {
  const cylinders = scores.flatMap((score) => score.cylinders)
  const faulty = cylinders.filter(isFaulty)
  const called = cylinders.filter((item) => item.sound < 0.5)
  const hits = called.filter(isFaulty).length
  const precision = ratio(hits, called.length)
  const recall = ratio(hits, faulty.length)
  const verdicts = scores.flatMap((score) => (score.verdict === null ? [] : [score.verdict]))
  const healthy = scores.filter((score) => score.healthy)
  const withCause = scores.filter((score) => score.cause.truth !== 'none')
  const bridges = scores.flatMap((score) => score.bridges)
  const bridgeHits = bridges.filter((entry) => entry.probability >= 0.5 && entry.present).length
  const inBridge = cylinders.filter((item) => item.inBridge && !isFaulty(item))
  const reliability = reliabilityOf(cylinders)
  return {
    engines: scores.length,
    cylinders: cylinders.length,
    faulty: faulty.length,
    precision,
    recall,
    f1: ratio(2 * precision * recall, precision + recall),
    top1: share(faulty, (item) => item.first === item.truth),
    top2: share(faulty, (item) => item.first === item.truth || item.second === item.truth),
    logLoss: mean(cylinders, (item) => -Math.log(Math.max(FLOOR, item.ofTruth))),
    brierSound: mean(cylinders, (item) => (item.sound - (isFaulty(item) ? 0 : 1)) ** 2),
    calibrationError: reliability.reduce(
      (sum, bin) => sum + (bin.count / cylinders.length) * Math.abs(bin.meanForecast - bin.frequency),
      0,
    ),
    reliability,
    verdictBrier: mean(verdicts, (item) => (item.probability - (item.inside ? 1 : 0)) ** 2),
    falseAlarms: share(healthy, (score) => score.cylinders.some((item) => item.sound < 0.5)),
    causeAccuracy: share(scores, (score) => score.cause.leading === score.cause.truth),
    causeFound: share(withCause, (score) => score.cause.leading === score.cause.truth),
    bridgePrecision: ratio(bridgeHits, bridges.filter((entry) => entry.probability >= 0.5).length),
    bridgeRecall: ratio(bridgeHits, bridges.filter((entry) => entry.present).length),
    blamedInBridge: share(inBridge, (item) => item.sound < 0.5),
  }
}

/** Forecasts of `sound` in tenths against how often the cylinder was sound. */
function reliabilityOf(cylinders: readonly CylinderScore[]): Bin[] {
  return Array.from({ length: BINS }, (_, i) => {
    const inBin = cylinders.filter((item) => Math.min(BINS - 1, Math.floor(item.sound * BINS)) === i)
    return {
      from: i / BINS,
      count: inBin.length,
      meanForecast: inBin.length === 0 ? 0 : mean(inBin, (item) => item.sound),
      frequency: inBin.length === 0 ? 0 : share(inBin, (item) => !isFaulty(item)),
    }
  })
}

export function isFaulty(item: CylinderScore): boolean {
  return item.truth !== 'sound'
}

function ratio(part: number, whole: number): number {
  return whole === 0 ? 0 : part / whole
}

function mean<T>(items: readonly T[], value: (item: T) => number): number {
  return ratio(
    items.reduce((sum, item) => sum + value(item), 0),
    items.length,
  )
}

function share<T>(items: readonly T[], holds: (item: T) => boolean): number {
  return ratio(items.filter(holds).length, items.length)
}

/** One forecast probability and what came of it. */
export interface Forecast {
  readonly probability: number
  readonly happened: boolean
}

/** Brier score and its parts (Murphy 1973): score = reliability - resolution + uncertainty when forecasts fall on the bins' values. */
export interface BrierParts {
  readonly score: number
  readonly reliability: number
  readonly resolution: number
  readonly uncertainty: number
}

/** Rows of a reliability table: how many forecasts, their mean, how often it happened. */
export interface ReliabilityRow {
  readonly count: number
  readonly forecast: number
  readonly happened: number
}

/** Mean squared error of the forecasts. NaN-free: no forecasts score 0. */
export function brierScore(forecasts: readonly Forecast[]): number {
  if (forecasts.length === 0) return 0
  return forecasts.reduce((sum, f) => sum + (f.probability - (f.happened ? 1 : 0)) ** 2, 0) / forecasts.length
}

/** Mean of -ln of the probability given to what happened; a certain miss counts as one in a million million. */
export function logLoss(forecasts: readonly Forecast[]): number {
  if (forecasts.length === 0) return 0
  return -forecasts.reduce((sum, f) => sum + Math.log(Math.max(1e-12, f.happened ? f.probability : 1 - f.probability)), 0) / forecasts.length
}

/** Reliability table over forecasts grouped by `bins` equal bands of probability; empty bands are left out. */
export function reliabilityTable(forecasts: readonly Forecast[], bins = 10): ReliabilityRow[] {
  const groups = Map.groupBy(forecasts, (f) => Math.min(bins - 1, Math.floor(f.probability * bins + 1e-9)))
  return [...groups.entries()].sort(([a], [b]) => a - b).map(([, list]) => ({
    count: list.length,
    forecast: list.reduce((sum, f) => sum + f.probability, 0) / list.length,
    happened: list.filter((f) => f.happened).length / list.length,
  }))
}

/** The Brier score taken apart over the bands of the reliability table (Murphy 1973). */
export function brierParts(forecasts: readonly Forecast[], bins = 10): BrierParts {
  const n = Math.max(1, forecasts.length)
  const base = forecasts.filter((f) => f.happened).length / n
  const rows = reliabilityTable(forecasts, bins)
  return {
    score: brierScore(forecasts),
    reliability: rows.reduce((sum, r) => sum + r.count * (r.forecast - r.happened) ** 2, 0) / n,
    resolution: rows.reduce((sum, r) => sum + r.count * (r.happened - base) ** 2, 0) / n,
    uncertainty: base * (1 - base),
  }
}

/** Mean distance of forecast and frequency over the table, weighted by count (expected calibration error). */
export function calibrationError(forecasts: readonly Forecast[], bins = 10): number {
  const n = Math.max(1, forecasts.length)
  return reliabilityTable(forecasts, bins).reduce((sum, r) => sum + r.count * Math.abs(r.forecast - r.happened), 0) / n
}

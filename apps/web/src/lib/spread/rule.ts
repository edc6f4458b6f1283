import { roundAxis } from './axis.ts'

/** One reading on the rule; `half` is its expanded uncertainty (95 in 100), in the unit of the axis. */
export interface SpreadTick {
  readonly cylinder: number
  readonly value: number
  readonly half: number
}

/** The values the limit in force allows: from `low` to `high`, either end open. */
export interface LimitBand {
  readonly low: number | undefined
  readonly high: number | undefined
  /** What the band is, in words: "one tenth below the highest". */
  readonly says: string
}

export interface RuleGeometry {
  readonly width: number
  readonly domain: readonly [number, number]
  readonly axis: readonly { readonly x: number; readonly label: string | undefined }[]
  readonly band: { readonly x: number; readonly width: number; readonly edge: number | undefined; readonly labelLeft: boolean } | undefined
  readonly ticks: readonly { readonly cylinder: number; readonly x: number; readonly left: number; readonly width: number; readonly place: TickPlace; readonly row: number }[]
}

/** Where a tick stands against the edge of the band, noise included: a tick that crosses it is not sure. */
export type TickPlace = 'in' | 'out' | 'crosses'

/** In or out as a whole tick; one that lies across an edge is neither. */
export function placeOf(tick: SpreadTick, band: Pick<LimitBand, 'low' | 'high'>): TickPlace {
  const low = band.low ?? -Infinity
  const high = band.high ?? Infinity
  const [from, to] = [tick.value - tick.half, tick.value + tick.half]
  if (to < low || from > high) return 'out'
  // the highest reading lies on the band's own upper edge by definition: only a stated maximum counts there
  return from >= low && to <= high ? 'in' : 'crosses'
}

const MARGIN = 22
const LABEL_ROOM = 22 // px that a cylinder's number needs before the next one must go a row higher

/**
 * Lays ticks, band and axis out on a width in px. The axis starts below the lowest tick, not at zero: the question is the spread.
 * Labels that would collide are lifted a row.
 */
export function ruleGeometry(ticks: readonly SpreadTick[], band: LimitBand | undefined, width: number, format: (value: number) => string): RuleGeometry {
  const values = ticks.flatMap(({ value, half }) => [value - half, value + half])
  if (band?.low !== undefined) values.push(band.low)
  if (band?.high !== undefined) values.push(band.high)
  const [min, max] = values.length ? [Math.min(...values), Math.max(...values)] : [0, 1]
  const pad = Math.max((max - min) * 0.12, max * 0.02, 1e-6)
  const { at: scale, ticks: marks, domain } = roundAxis(Math.max(0, min - pad), max + pad, [MARGIN, width - MARGIN])
  const [from, to] = domain
  const major = marks(Math.max(3, Math.round(width / 110)))
  const minor = marks(Math.max(6, Math.round(width / 50)))
  const isMajor = (value: number) => major.some((other) => Math.abs(other - value) < 1e-9 * Math.max(1, Math.abs(value)))
  const axis = [...new Set([...minor, ...major])].sort((a, b) => a - b).map((value) => ({ x: scale(value), label: isMajor(value) ? format(value) : undefined }))

  let rows: number[] = []
  const placed = [...ticks]
    .sort((a, b) => a.value - b.value)
    .map((tick) => {
      const x = scale(tick.value)
      let row = 0
      while ((rows[row] ?? -Infinity) > x - LABEL_ROOM) row += 1
      rows[row] = x
      rows = rows.slice()
      return { cylinder: tick.cylinder, x, left: scale(tick.value - tick.half), width: Math.max(3, scale(tick.value + tick.half) - scale(tick.value - tick.half)), place: band ? placeOf(tick, band) : ('in' as const), row }
    })
  const bandFrom = band ? scale(band.low ?? from) : 0
  const bandTo = band ? scale(band.high ?? to) : 0
  return {
    width,
    domain: [from, to],
    axis,
    band: band && { x: bandFrom, width: Math.max(0, bandTo - bandFrom), edge: band.low === undefined ? undefined : bandFrom, labelLeft: bandFrom > width * 0.55 },
    ticks: placed,
  }
}

import { parseNumber } from '@evenbore/words/format/number.ts'

/** A percentage as typed into hundredths of a percent; undefined where it cannot be read. */
export function basisPointsFrom(typed: string): number | undefined {
  const read = parseNumber(typed, '%')
  if (read.error !== undefined || read.value > 100 || read.decimals > 2) return undefined
  return Math.round(read.value * 100)
}

/** Hundredths of a percent as they stand in a field. */
export const typedPercent = (basisPoints: number): string => String(basisPoints / 100)

import type { Random } from '../random.ts'
import type { Range, Spread } from './world.ts'

export function drawSpread(random: Random, spread: Spread): number {
  for (let attempt = 0; attempt < 50; attempt++) {
    const value = random.lognormal(spread.median, spread.logSd)
    if (value >= spread.low && value <= spread.high) return value
  }
  return spread.median
}

export function drawRange(random: Random, range: Range): number {
  return random.between(range[0], range[1])
}

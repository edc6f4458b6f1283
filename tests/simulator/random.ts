/** Seeded random numbers (xoshiro128**, Blackman and Vigna, from memory), so that every simulated engine can be drawn again. */
export type Random = {
  /** Uniform on [0, 1). */
  readonly uniform: () => number
  readonly between: (low: number, high: number) => number
  /** Whole number from `low` to `high`, both included. */
  readonly integer: (low: number, high: number) => number
  readonly chance: (probability: number) => boolean
  readonly normal: (mean: number, sd: number) => number
  /** Log-normal by its median and the standard deviation of the logarithm. */
  readonly lognormal: (median: number, logSd: number) => number
  readonly pick: <T>(items: readonly T[]) => T
  /** Picks a key in proportion to its weight. */
  readonly weighted: <K extends string>(weights: Readonly<Partial<Record<K, number>>>) => K
  readonly shuffled: <T>(items: readonly T[]) => T[]
}

/** A stream of its own for each pair of seed and index: engine 17 of seed 3 is the same however many are drawn. */
export function createRandom(seed: number, index = 0): Random {
  let mix = (Math.imul(seed | 0, 0x9e3779b1) ^ Math.imul((index + 1) | 0, 0x85ebca6b)) >>> 0
  const word = (): number => {
    mix = (mix + 0x9e3779b9) >>> 0
    let z = mix
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad)
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97)
    return (z ^ (z >>> 15)) >>> 0
  }
  let a = word()
  let b = word()
  let c = word()
  let d = word() | 1
  const next = (): number => {
    const scaled = Math.imul(b, 5)
    const result = Math.imul((scaled << 7) | (scaled >>> 25), 9) >>> 0
    const shifted = b << 9
    c ^= a
    d ^= b
    b ^= c
    a ^= d
    c ^= shifted
    d = (d << 11) | (d >>> 21)
    return result
  }
  const uniform = (): number => next() / 4294967296
  const between = (low: number, high: number): number => low + (high - low) * uniform()
  const integer = (low: number, high: number): number => low + Math.floor((high - low + 1) * uniform())
  const normal = (mean: number, sd: number): number =>
    mean + sd * Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform())
  const pick = <T>(items: readonly T[]): T => {
    if (items.length === 0) throw new Error('pick: got an empty list, expected at least one item')
    return items[Math.floor(uniform() * items.length)] as T
  }
  const weighted = <K extends string>(weights: Readonly<Partial<Record<K, number>>>): K => {
    const entries = Object.entries(weights) as [K, number][]
    let left = uniform() * entries.reduce((sum, [, weight]) => sum + weight, 0)
    for (const [key, weight] of entries) {
      left -= weight
      if (left < 0) return key
    }
    return (entries[entries.length - 1] as [K, number])[0]
  }
  const shuffled = <T>(items: readonly T[]): T[] => {
    const copy = [...items]
    for (let i = copy.length - 1; i > 0; i--) {
      const j = integer(0, i)
      ;[copy[i], copy[j]] = [copy[j] as T, copy[i] as T]
    }
    return copy
  }
  return {
    uniform,
    between,
    integer,
    normal,
    pick,
    weighted,
    shuffled,
    chance: (probability) => uniform() < probability,
    lognormal: (median, logSd) => median * Math.exp(normal(0, logSd)),
  }
}

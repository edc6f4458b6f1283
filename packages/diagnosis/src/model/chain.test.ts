import { describe, expect, it } from 'vitest'
import { around, bridged, chainTotal, sumChain } from './chain.ts'

const CELLS = 3
const PRIOR = Float64Array.of(0.9, 0.07, 0.03)

/** Numbers that look random and are always the same. */
function numbersFrom(seed: number): () => number {
  let x = seed
  return () => {
    x = (x * 16807) % 2147483647
    return x / 2147483647
  }
}

function enumerate(emissions: readonly Float64Array[], cell: number, visit: (bridges: readonly number[], weight: number) => void): void {
  const n = emissions.length
  const bridges = new Array<number>(n - 1).fill(0)
  const walk = (at: number): void => {
    if (at < n - 1) {
      for (let b = 0; b < PRIOR.length; b++) {
        bridges[at] = b
        walk(at + 1)
      }
      return
    }
    let weight = 1
    bridges.forEach((b) => { weight *= PRIOR[b]! })
    emissions.forEach((e, j) => { weight *= e[Math.max(bridges[j - 1] ?? 0, bridges[j] ?? 0) * CELLS + cell]! })
    visit(bridges, weight)
  }
  walk(0)
}

describe('forward-backward over the bridges of a gasket', () => {
  it.each([1, 2, 3, 4, 5])('sums %i cylinders as enumeration does, with every lattice in between', (n) => {
    const next = numbersFrom(40 + n)
    const emissions = Array.from({ length: n }, () => Float64Array.from({ length: PRIOR.length * CELLS }, next))
    const sums = sumChain(emissions, PRIOR, CELLS)
    for (let cell = 0; cell < CELLS; cell++) {
      let total = 0
      const felt = emissions.map(() => new Float64Array(PRIOR.length))
      const pair = new Float64Array(Math.max(0, n - 1))
      enumerate(emissions, cell, (bridges, weight) => {
        total += weight
        emissions.forEach((e, j) => {
          const level = Math.max(bridges[j - 1] ?? 0, bridges[j] ?? 0)
          felt[j]![level]! += weight / e[level * CELLS + cell]!
        })
        bridges.forEach((b, j) => { if (b > 0) pair[j]! += weight })
      })
      expect(chainTotal(emissions, PRIOR, CELLS, new Float64Array(CELLS))[cell]).toBeCloseTo(total, 12)
      emissions.forEach((_, j) => {
        const cavity = new Float64Array(PRIOR.length * CELLS)
        // the sums of one cylinder alone are the same
        around(cell === 0 ? sumChain(emissions, PRIOR, CELLS, undefined, j, j) : sums, j, PRIOR, CELLS, cavity)
        for (let b = 0; b < PRIOR.length; b++) expect(cavity[b * CELLS + cell]).toBeCloseTo(felt[j]![b]!, 12)
      })
      pair.forEach((p, j) => expect(bridged(sums, j, PRIOR, CELLS)[cell]).toBeCloseTo(p, 12))
    }
  })
})

import { lossGroups } from './groups.ts'
import { OWN_COUNT } from './states.ts'
import type { Box, Cells, Emission, KeptCells, Likelihood, Workspace } from './workspace.ts'

/** Cells this far below the best carry nothing. */
const LEAST_CELL = 1e-5
/** As much by a rough score, which may be off by some hundreds: with this no probability of 960 simulated evaluations moved by .0002. */
const LEAST_ROUGHLY = 3e-8
/** A bridge is rare but may explain what nothing else does: its levels count so much. */
const BRIDGED = 1e-3

/**
 * Cells in which the readings of all cylinders together can leave weight, so that the sums over the states need not go over the others: a first
 * sum in which bridges are anywhere, and what an engine is prone to is weighed for each cylinder as a whole.
 */
export function roughlyKept(likelihoods: readonly Likelihood[], space: Workspace): Cells {
  const { grid } = space
  const all = Int32Array.from({ length: grid.cells }, (_, cell) => cell)
  // nothing but the level is unknown: the sums are no dearer than the search
  if (grid.cells === grid.columns) return cellsOf(all, grid)
  const score = priorOf(all, grid)
  grid.families.forEach((classes, f) => {
    const width = grid.rises.length * (grid.leakTo[classes[0]!]! - grid.leakFrom[classes[0]!]!)
    const together = new Float64Array(grid.ladders[f]!.count * width).fill(1)
    for (const likelihood of likelihoods) {
      const sums = roughSums(likelihood, f, width, space)
      for (let at = 0; at < together.length; at++) together[at]! *= sums[at]!
    }
    for (const c of classes) {
      const prone = likelihoods.reduce((product, likelihood) => product * partOf(c, f, likelihood), 1)
      for (let q = grid.columnFrom[c]!; q < grid.columnFrom[c + 1]!; q++) {
        const to = grid.offset[q]!, from = (grid.levelOf[q]! - grid.ladderFrom[f]!) * width
        for (let k = 0; k < width; k++) score[to + k]! *= prone * together[from + k]!
      }
    }
  })
  return cellsOf(placesAbove(score, LEAST_ROUGHLY), grid)
}

/** What the prior of a class leaves of a cylinder's sum with the largest of its family. */
function partOf(c: number, f: number, { atBest, prior, kinds }: Likelihood): number {
  let own = 0, most = 0
  for (let o = 0; o < OWN_COUNT; o++) {
    own += atBest[o]! * prior[c * OWN_COUNT + o]!
    most += atBest[o]! * kinds.lead[f * OWN_COUNT + o]!
  }
  return most > 0 ? own / most : 1
}

/** A cylinder's sums over the leading states, whatever they answer to tests of the whole engine: [level * cells of a column + cell of the column]. */
function roughSums({ dry, wet, leak, leakAt, leakRow, weight, leading, kinds }: Likelihood, f: number, width: number, { grid, states }: Workspace): Float64Array {
  const levels = grid.ladders[f]!.count, from = grid.leakFrom[grid.families[f]![0]!]!, rises = grid.rises.length, leaks = width / rises
  const out = new Float64Array(levels * width), byLeak = new Float64Array(leaks), byCell = new Float64Array(width)
  for (const { lossRow, states: list, runs } of lossGroups(states)) {
    let anyInGroup = false
    for (let r = 0; r + 1 < runs.length; r++) {
      let any = false
      for (let i = runs[r]!; i < runs[r + 1]!; i++) {
        const s = list[i]!
        if (leading[s] === 0) continue
        if (!any) byLeak.fill(0)
        any = true
        const bridge = states.bridgeLevel[s] === 0 ? 1 : Math.max(BRIDGED, states.bridgePrior[states.bridgeLevel[s]!]!)
        const w = bridge * weight[s]! * kinds.lead[f * OWN_COUNT + states.own[s]!]!
        const row = leakAt[f]! + leakRow[s]! * grid.leakCount + from
        for (let l = 0; l < leaks; l++) byLeak[l]! += leak === null ? w : w * leak[row + l]!
      }
      if (!any) continue
      if (!anyInGroup) byCell.fill(0)
      anyInGroup = true
      const wetAt = (f * states.sealRows.length + states.sealRow[list[runs[r]!]!]!) * rises
      for (let v = 0, cell = 0; v < rises; v++) {
        const factor = wet === null ? 1 : wet[wetAt + v]!
        for (let l = 0; l < leaks; l++) byCell[cell++]! += factor * byLeak[l]!
      }
    }
    if (!anyInGroup) continue
    const dryAt = lossRow * grid.ladderFrom[grid.families.length]! + grid.ladderFrom[f]!
    for (let j = 0, to = 0; j < levels; j++, to += width) {
      const factor = dry === null ? 1 : dry[dryAt + j]!
      if (factor > 0) for (let k = 0; k < width; k++) out[to + k]! += factor * byCell[k]!
    }
  }
  return out
}

/**
 * Of cells over which the cylinders were summed, those in which all readings together, bridges at their best, leave weight, and their places among
 * them.
 */
export function trim(roughly: Cells, emissions: readonly Emission[], space: Workspace): { kept: KeptCells; places: Int32Array } {
  const levels = space.states.bridgePrior.length, count = roughly.cells.length
  const score = priorOf(roughly.cells, space.grid)
  const most = new Float64Array(count), level = new Float64Array(count)
  for (const { blocks } of emissions) {
    for (let b = 0; b < levels; b++) {
      const into = b === 0 ? most : level
      into.fill(0)
      for (let at = b; at < blocks.length; at += levels) {
        const block = blocks[at]!
        if (block !== null) for (let k = 0; k < count; k++) into[k]! += block[k]!
      }
      if (b > 0) for (let k = 0; k < count; k++) if (level[k]! * BRIDGED > most[k]!) most[k] = level[k]! * BRIDGED
    }
    for (let k = 0; k < count; k++) score[k]! *= most[k]!
  }
  const places = placesAbove(score, LEAST_CELL)
  const cells = places.map((at) => roughly.cells[at]!)
  return { kept: { ...cellsOf(cells, space.grid), prior: space.grid.prior.map((array) => valuesAt(array, cells)) }, places }
}

function valuesAt(array: Float64Array, cells: Int32Array): Float64Array {
  const out = new Float64Array(cells.length)
  for (let at = 0; at < out.length; at++) out[at] = array[cells[at]!]!
  return out
}

/** Prior of the cells, all causes together. */
function priorOf(cells: Int32Array, { prior }: Workspace['grid']): Float64Array {
  const out = new Float64Array(cells.length)
  for (const array of prior) for (let at = 0; at < out.length; at++) out[at]! += array[cells[at]!]!
  return out
}

/** Places where a score is not less than this part of the best; all where every score has vanished. */
function placesAbove(score: Float64Array, part: number): Int32Array {
  let best = 0
  for (let at = 0; at < score.length; at++) if (score[at]! > best) best = score[at]!
  const least = part * best
  let count = 0
  for (let at = 0; at < score.length; at++) if (score[at]! >= least) count++
  const places = new Int32Array(count)
  for (let at = 0, to = 0; at < score.length; at++) if (score[at]! >= least) places[to++] = at
  return places
}

/** These cells of the grid, in order, with where each column begins among them and what holds those of each family. */
function cellsOf(cells: Int32Array, grid: Workspace['grid']): Cells {
  const from = new Int32Array(grid.columns + 1)
  for (let q = 0, at = 0; q < grid.columns; q++) {
    const end = q + 1 < grid.columns ? grid.offset[q + 1]! : grid.cells
    while (at < cells.length && cells[at]! < end) at++
    from[q + 1] = at
  }
  return { cells, from, ...boxesOf(cells, from, grid) }
}

/** What holds the kept cells of each family, and the place of each cell in it. */
function boxesOf(cells: Int32Array, from: Int32Array, { families, columnFrom, offset, leakFrom, leakTo }: Workspace['grid']): Pick<Cells, 'boxes' | 'inner'> {
  const inner = new Int32Array(cells.length)
  const boxes = families.map((classes): Box => {
    const width = leakTo[classes[0]!]! - leakFrom[classes[0]!]!
    let rise = Infinity, lastRise = -1, leak = Infinity, lastLeak = -1
    const each = (visit: (at: number, v: number, l: number) => void): void => {
      for (const c of classes) {
        for (let q = columnFrom[c]!; q < columnFrom[c + 1]!; q++) {
          for (let at = from[q]!; at < from[q + 1]!; at++) {
            const within = cells[at]! - offset[q]!
            visit(at, Math.trunc(within / width), within % width)
          }
        }
      }
    }
    each((_, v, l) => {
      rise = Math.min(rise, v); lastRise = Math.max(lastRise, v)
      leak = Math.min(leak, l); lastLeak = Math.max(lastLeak, l)
    })
    if (lastRise < 0) return { rise: 0, rises: 0, leak: 0, leaks: 0 }
    const leaks = lastLeak - leak + 1
    each((at, v, l) => { inner[at] = (v - rise) * leaks + l - leak })
    return { rise, rises: lastRise - rise + 1, leak, leaks }
  })
  return { boxes, inner }
}

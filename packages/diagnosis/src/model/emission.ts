import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { dryTable, wetTable } from './compression.ts'
import type { CylinderEvidence, Evidence } from './evidence.ts'
import type { GaugeEvidence, Grid } from './grid.ts'
import { leakSums } from './leakage.ts'
import type { Ears } from './listening.ts'
import { weighLooks, type Looks } from './looks.ts'
import { OWN_COUNT, type StateSpace } from './states.ts'

/** What is shared by all cylinders while the evidence is summed. */
export interface Workspace {
  readonly knowledge: Knowledge
  readonly states: StateSpace
  readonly grid: Grid
  readonly ears: Ears
  readonly curve: Float64Array
  /** Groups of faults (bits) that some test of the whole engine answers to, by state. */
  readonly signature: Uint8Array
  /** Subsets of the groups in question: arrays below hold one block for each. */
  readonly subsets: readonly number[]
}

/** The likelihood of a cylinder's readings, factored over the grid for each state, and summed over its own states. */
export interface Emission {
  readonly dry: Float64Array | null
  readonly wet: Float64Array | null
  /** [leakRow * leakCount + l] */
  readonly leak: Float64Array | null
  readonly looks: Looks | null
  readonly prior: Float64Array
  /** [subset][bridge level * cells + cell], scaled to a largest value of one. */
  readonly sums: readonly Float64Array[]
}

/** Prior of a cylinder's own state: sound, then each fault. */
export function ownPrior(cylinder: CylinderEvidence, knowledge: Knowledge): Float64Array {
  const prior = new Float64Array(OWN_COUNT)
  const faulty = knowledge.population.faultyCylinder.value
  const total = FAULTS.reduce((sum, f) => sum + knowledge.faults[f].value.share, 0)
  let sum = 1 - faulty
  prior[0] = sum
  FAULTS.forEach((fault, f) => {
    prior[f + 1] = faulty * knowledge.faults[fault].value.share / total * (cylinder.faultFactors[fault] ?? 1)
    sum += prior[f + 1]!
  })
  for (let f = 0; f < OWN_COUNT; f++) prior[f]! /= sum
  return prior
}

/** Sums the readings of one cylinder over its own states, for each bridge level and cell of the grid. */
export function emit(index: number, cylinder: CylinderEvidence, gauge: GaugeEvidence, evidence: Evidence, space: Workspace): Emission {
  const { states, grid, knowledge } = space
  const dry = dryTable(gauge, grid, states)
  const wet = wetTable(gauge, grid, states, knowledge)
  const looks = weighLooks(cylinder, states, knowledge)
  const prior = ownPrior(cylinder, knowledge)
  const sums = leakSums(index, cylinder, evidence, grid, knowledge, space.ears, space.curve)
  let leak: Float64Array | null = null
  if (sums !== null) {
    leak = new Float64Array(states.leaks.length * grid.leakCount)
    for (let r = 0; r < states.leaks.length; r++) sums.fill(states.leaks[r]!, leak.subarray(r * grid.leakCount, (r + 1) * grid.leakCount))
  }
  const levels = states.bridgePrior.length
  const blocks = space.subsets.map(() => new Float64Array(levels * grid.cells))
  const partial: Emission = { dry, wet, leak, looks, prior, sums: blocks }
  const row = new Float64Array(grid.cells)
  const bounds = stateBounds(partial, space)
  const least = bounds.largest * PRUNE
  for (let s = 0; s < states.count; s++) {
    if (bounds.of[s]! < least) continue
    fillState(s, partial, space, row)
    const at = states.bridgeLevel[s]! * grid.cells
    for (let k = 0; k < blocks.length; k++) {
      if ((space.signature[s]! & space.subsets[k]!) !== 0) continue
      const block = blocks[k]!
      for (let cell = 0; cell < grid.cells; cell++) block[at + cell]! += row[cell]!
    }
  }
  scaleToOne(blocks)
  return partial
}

/** States whose best case is this small against the best of all are left out: together they cannot move a probability by 1e-6. */
const PRUNE = 1e-9

function stateBounds(emission: Emission, space: Workspace): { of: Float64Array; largest: number } {
  const { states, grid } = space
  const levels = grid.levels.length, rises = grid.rises.length
  const dryMax = emission.dry === null ? null : rowMaxima(emission.dry, states.lossRows.length, levels)
  const wetMax = emission.wet === null ? null : rowMaxima(emission.wet, states.sealRows.length, rises)
  const leakMax = emission.leak === null ? null : rowMaxima(emission.leak, states.leaks.length, grid.leakCount)
  const of = new Float64Array(states.count)
  let largest = 0
  for (let s = 0; s < states.count; s++) {
    let bound = emission.prior[states.own[s]!]! * states.weight[s]!
    if (emission.looks !== null) bound *= emission.looks.both[s]!
    if (dryMax !== null) bound *= dryMax[states.lossRow[s]!]!
    if (wetMax !== null) bound *= wetMax[states.sealRow[s]!]!
    if (leakMax !== null) bound *= leakMax[states.leakRow[s]!]!
    of[s] = bound
    if (bound > largest) largest = bound
  }
  return { of, largest }
}

/** Largest value of each row over all classes: tables are [class][row][width] or [row][width]. */
function rowMaxima(table: Float64Array, rows: number, width: number): Float64Array {
  const maxima = new Float64Array(rows)
  for (let i = 0; i < table.length; i++) {
    const row = Math.floor(i / width) % rows
    if (table[i]! > maxima[row]!) maxima[row] = table[i]!
  }
  return maxima
}

/** Writes prior x likelihood of one state over all cells into `out`. */
export function fillState(s: number, emission: Emission, space: Workspace, out: Float64Array): void {
  const { states, grid } = space
  const levels = grid.levels.length, rises = grid.rises.length, leaks = grid.leakCount
  let weight = emission.prior[states.own[s]!]! * states.weight[s]!
  if (emission.looks !== null) weight *= emission.looks.both[s]!
  const leakAt = states.leakRow[s]! * leaks
  for (let c = 0; c < grid.classes.length; c++) {
    const dryAt = (c * states.lossRows.length + states.lossRow[s]!) * levels
    const wetAt = (c * states.sealRows.length + states.sealRow[s]!) * rises
    const from = grid.leakFrom[c]!, to = grid.leakTo[c]!
    for (let m = 0; m < levels; m++) {
      const byLevel = emission.dry === null ? weight : weight * emission.dry[dryAt + m]!
      for (let v = 0; v < rises; v++) {
        const byRise = emission.wet === null ? byLevel : byLevel * emission.wet[wetAt + v]!
        const at = ((c * levels + m) * rises + v) * leaks
        if (emission.leak === null) for (let l = from; l < to; l++) out[at + l] = byRise
        else for (let l = from; l < to; l++) out[at + l] = byRise * emission.leak[leakAt + l]!
      }
    }
  }
}

function scaleToOne(blocks: readonly Float64Array[]): void {
  let most = 0
  for (const block of blocks) for (let i = 0; i < block.length; i++) if (block[i]! > most) most = block[i]!
  if (most <= 0) return
  const scale = 1 / most
  for (const block of blocks) for (let i = 0; i < block.length; i++) block[i]! *= scale
}

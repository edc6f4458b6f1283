import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { dryTable, wetTable } from './compression.ts'
import type { CylinderEvidence, Evidence } from './evidence.ts'
import type { GaugeEvidence, Grid } from './grid.ts'
import type { StateGroup } from './groups.ts'
import { leakSums, type LeakSums, type PercentCurve } from './leakage.ts'
import type { Ears } from './listening.ts'
import { weighLooks, type Looks } from './looks.ts'
import { faultChance } from './past.ts'
import { OWN_COUNT, type LeakRow, type StateSpace } from './states.ts'

/** What is shared by all cylinders while the evidence is summed. */
export interface Workspace {
  readonly knowledge: Knowledge
  readonly states: StateSpace
  readonly grid: Grid
  readonly ears: Ears
  readonly curve: PercentCurve
  readonly groups: readonly StateGroup[]
  /** Subsets of the groups in question: arrays below hold one block for each. */
  readonly subsets: readonly number[]
}

/** The likelihood of a cylinder's readings, factored over the grid for each state, and summed over its own states. */
export interface Emission {
  /** [loss row * columns + column] */
  readonly dry: Float64Array | null
  /** [(class * seal rows + row) * rises + v] */
  readonly wet: Float64Array | null
  /** [row * leakCount + l] for the row of each state in `leakRow`, filled for the rows of live states */
  readonly leak: Float64Array | null
  readonly leakRow: Int32Array
  readonly looks: Looks | null
  /** Weight x looks of each state; the prior of its own fault stands in `prior` ([class * OWN_COUNT + own]). */
  readonly weight: Float64Array
  readonly prior: Float64Array
  /** 1 for states worth summing. */
  readonly live: Uint8Array
  /** [subset][bridge level * cells + cell], scaled to a largest value of one by `scale`. */
  readonly sums: readonly Float64Array[]
  readonly scale: number
}

/** Prior of a cylinder's own state (sound, then each fault) in each class of engine: [class * OWN_COUNT + own]. */
function ownPriors(cylinder: CylinderEvidence, count: number, grid: Grid, knowledge: Knowledge): Float64Array {
  const base = new Float64Array(OWN_COUNT)
  const faulty = faultChance(count, knowledge)
  const total = FAULTS.reduce((sum, f) => sum + knowledge.faults[f].value.share, 0)
  let sum = 1 - faulty
  base[0] = sum
  FAULTS.forEach((fault, f) => {
    base[f + 1] = faulty * knowledge.faults[fault].value.share / total * (cylinder.faultFactors[fault] ?? 1)
    sum += base[f + 1]!
  })
  const out = new Float64Array(grid.classes.length * OWN_COUNT)
  grid.classes.forEach(({ tendency, each }, c) => {
    for (let f = 0; f < OWN_COUNT; f++) out[c * OWN_COUNT + f] = base[f]! / sum * (tendency === 0 ? 1 : 1 - each) + (tendency !== 0 && f === tendency ? each : 0)
  })
  return out
}

/** States whose best case is this small against the best of all are left out: together they cannot move a probability by 1e-4. */
const PRUNE = 1e-7

/** Sums the readings of one cylinder over its own states, for each bridge level and cell of the grid. */
export function emit(index: number, cylinder: CylinderEvidence, gauge: GaugeEvidence, evidence: Evidence, space: Workspace): Emission {
  const { states, grid, knowledge } = space
  const dry = dryTable(gauge, grid, states)
  const wet = wetTable(gauge, grid, states, knowledge)
  const looks = weighLooks(cylinder, states, knowledge)
  const leaks = leakSums(index, cylinder, evidence, grid, knowledge, space.ears, space.curve)
  const prior = ownPriors(cylinder, evidence.cylinders.length, grid, knowledge)
  const likeliest = Float64Array.from({ length: OWN_COUNT }, (_, f) => grid.classes.reduce((most, _, c) => Math.max(most, prior[c * OWN_COUNT + f]!), 0))
  const weight = new Float64Array(states.count)
  for (let s = 0; s < states.count; s++) weight[s] = states.weight[s]! * (looks === null ? 1 : looks.both[s]!)
  const bound = gaugeBounds(weight, likeliest, dry, wet, space)
  const plain = cylinder.leakage.every((r) => !r.wet && !r.rockersSlack)
  const rows = plain ? states.plainLeaks : states.leaks
  const leakRow = plain ? states.plainRowOf : states.leakRow
  const leak = leaks === null ? null : new Float64Array(rows.length * grid.leakCount)
  if (leaks !== null && leak !== null) boundByLeaks(bound, leaks, leak, rows, leakRow, grid)
  let largest = 0
  for (let s = 0; s < states.count; s++) if (bound[s]! > largest) largest = bound[s]!
  const live = new Uint8Array(states.count)
  for (let s = 0; s < states.count; s++) if (bound[s]! >= largest * PRUNE) live[s] = 1
  const sums = space.subsets.map(() => new Float64Array(states.bridgePrior.length * grid.cells))
  const emission: Emission = { dry, wet, leak, leakRow, looks, weight, prior, live, sums, scale: 1 }
  const inner = new Float64Array(grid.rises.length * grid.leakCount)
  for (const group of space.groups) addGroup(group, emission, space, inner)
  return { ...emission, scale: scaleToOne(sums) }
}

/** Upper bounds of each state's contribution by prior, looks and gauge. */
function gaugeBounds(weight: Float64Array, prior: Float64Array, dry: Float64Array | null, wet: Float64Array | null, space: Workspace): Float64Array {
  const { states, grid } = space
  const dryMax = dry === null ? null : rowMaxima(dry, states.lossRows.length, grid.columns)
  const wetMax = wet === null ? null : rowMaxima(wet, states.sealRows.length, grid.rises.length)
  const bound = new Float64Array(states.count)
  for (let s = 0; s < states.count; s++) {
    bound[s] = weight[s]! * prior[states.own[s]!]! * (dryMax === null ? 1 : dryMax[states.lossRow[s]!]!) * (wetMax === null ? 1 : wetMax[states.sealRow[s]!]!)
  }
  return bound
}

/** Fills the leak likelihoods of the rows that can matter and tightens the bounds by them. */
function boundByLeaks(bound: Float64Array, leaks: LeakSums, leak: Float64Array, rows: readonly LeakRow[], leakRow: Int32Array, grid: Grid): void {
  const rowMost = new Float64Array(rows.length)
  for (let s = 0; s < bound.length; s++) if (bound[s]! > rowMost[leakRow[s]!]!) rowMost[leakRow[s]!] = bound[s]!
  const order = Int32Array.from(rowMost.keys()).sort((a, b) => rowMost[b]! - rowMost[a]!)
  const rowLeak = new Float64Array(rows.length)
  let best = 0
  for (const r of order) {
    if (rowMost[r]! * leaks.atMost < best * PRUNE) break
    leaks.fill(rows[r]!, leak, r * grid.leakCount)
    let most = 0
    for (let l = r * grid.leakCount; l < (r + 1) * grid.leakCount; l++) if (leak[l]! > most) most = leak[l]!
    rowLeak[r] = most
    if (rowMost[r]! * most > best) best = rowMost[r]! * most
  }
  for (let s = 0; s < bound.length; s++) bound[s]! *= rowLeak[leakRow[s]!]!
}

/** Largest value of each row over all classes: tables are [class][row][width] or [row][width]. */
function rowMaxima(table: Float64Array, rows: number, width: number): Float64Array {
  const maxima = new Float64Array(rows)
  for (let start = 0, row = 0; start < table.length; start += width, row = row + 1 === rows ? 0 : row + 1) {
    for (let i = start; i < start + width; i++) if (table[i]! > maxima[row]!) maxima[row] = table[i]!
  }
  return maxima
}

/** Adds weight x wet x leak likelihood of a state over (rise, healthy leak) of one class to `inner`. */
function addInner(s: number, c: number, weight: number, emission: Emission, space: Workspace, inner: Float64Array): void {
  const { states, grid } = space
  const from = grid.leakFrom[c]!, to = grid.leakTo[c]!
  const leakAt = emission.leakRow[s]! * grid.leakCount
  const wetAt = (c * states.sealRows.length + states.sealRow[s]!) * grid.rises.length
  let at = 0
  for (let v = 0; v < grid.rises.length; v++) {
    const wet = emission.wet === null ? weight : weight * emission.wet[wetAt + v]!
    if (emission.leak === null) for (let l = from; l < to; l++) inner[at++]! += wet
    else for (let l = from; l < to; l++) inner[at++]! += wet * emission.leak[leakAt + l]!
  }
}

/** States of a group share their loss, so they are summed before the levels are multiplied in. */
function addGroup(group: StateGroup, emission: Emission, space: Workspace, inner: Float64Array): void {
  const { grid, subsets } = space
  const base = group.bridgeLevel * grid.cells
  const dryAt = group.lossRow * grid.columns
  if (!group.states.some((s) => emission.live[s] === 1)) return
  for (let q = 0; q < grid.columns;) {
    const c = grid.classOf[q]!
    const count = grid.rises.length * (grid.leakTo[c]! - grid.leakFrom[c]!)
    inner.fill(0, 0, count)
    for (let i = 0; i < group.states.length; i++) {
      const s = group.states[i]!
      if (emission.live[s] === 1) addInner(s, c, emission.weight[s]! * emission.prior[c * OWN_COUNT + space.states.own[s]!]!, emission, space, inner)
    }
    for (; q < grid.columns && grid.classOf[q] === c; q++) {
      const factor = emission.dry === null ? 1 : emission.dry[dryAt + q]!
      const at = base + grid.offset[q]!
      for (let k = 0; k < subsets.length; k++) {
        if ((group.signature & subsets[k]!) !== 0) continue
        const block = emission.sums[k]!
        for (let i = 0; i < count; i++) block[at + i]! += factor * inner[i]!
      }
    }
  }
}

/**
 * Sums over the cells of prior x likelihood of each state x `around`, which holds all else ([bridge level * cells + cell]),
 * added to `out` for the states of one group.
 */
export function weighGroup(group: StateGroup, emission: Emission, space: Workspace, around: Float64Array, columnLive: Uint8Array, out: Float64Array, inner: Float64Array): void {
  const { grid } = space
  const base = group.bridgeLevel * grid.cells
  const dryAt = group.lossRow * grid.columns
  if (!group.states.some((s) => emission.live[s] === 1)) return
  for (let q = 0; q < grid.columns;) {
    const c = grid.classOf[q]!
    const count = grid.rises.length * (grid.leakTo[c]! - grid.leakFrom[c]!)
    inner.fill(0, 0, count)
    let any = 0
    for (; q < grid.columns && grid.classOf[q] === c; q++) {
      if (columnLive[q] === 0) continue
      any = 1
      const factor = emission.dry === null ? 1 : emission.dry[dryAt + q]!
      const at = base + grid.offset[q]!
      for (let i = 0; i < count; i++) inner[i]! += factor * around[at + i]!
    }
    if (any === 0) continue
    for (let i = 0; i < group.states.length; i++) {
      const s = group.states[i]!
      if (emission.live[s] === 1) out[s]! += emission.weight[s]! * emission.prior[c * OWN_COUNT + space.states.own[s]!]! * emission.scale * dotInner(s, c, emission, space, inner)
    }
  }
}

function dotInner(s: number, c: number, emission: Emission, space: Workspace, inner: Float64Array): number {
  const { states, grid } = space
  const from = grid.leakFrom[c]!, to = grid.leakTo[c]!
  const leakAt = emission.leakRow[s]! * grid.leakCount
  const wetAt = (c * states.sealRows.length + states.sealRow[s]!) * grid.rises.length
  let at = 0, total = 0
  for (let v = 0; v < grid.rises.length; v++) {
    let sum = 0
    if (emission.leak === null) for (let l = from; l < to; l++) sum += inner[at++]!
    else for (let l = from; l < to; l++) sum += inner[at++]! * emission.leak[leakAt + l]!
    total += emission.wet === null ? sum : sum * emission.wet[wetAt + v]!
  }
  return total
}

function scaleToOne(blocks: readonly Float64Array[]): number {
  let most = 0
  for (const block of blocks) for (let i = 0; i < block.length; i++) if (block[i]! > most) most = block[i]!
  if (!(most > 0)) return 1
  const scale = 1 / most
  for (const block of blocks) for (let i = 0; i < block.length; i++) block[i]! *= scale
  return scale
}

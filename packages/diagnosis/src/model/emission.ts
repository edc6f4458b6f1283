import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { dryTable, wetTable } from './compression.ts'
import type { CylinderEvidence, Evidence } from './evidence.ts'
import type { GaugeEvidence, Grid } from './grid.ts'
import { kindsOf } from './kinds.ts'
import { comesAndGoes, leakSums } from './leakage.ts'
import { weighLooks } from './looks.ts'
import { withPlugs } from './oily-plugs.ts'
import { faultChance } from './past.ts'
import { mistakenFor, notedUnder } from './swapped.ts'
import { sumStates } from './state-sums.ts'
import { OWN_COUNT } from './states.ts'
import type { Cells, Emission, Likelihood, Priors, Workspace } from './workspace.ts'

/** Priors of the own states (sound, then each fault) of cylinders with this place and past. */
export function ownPriors({ faultFactors }: CylinderEvidence, count: number, grid: Grid, knowledge: Knowledge): Priors {
  const base = new Float64Array(OWN_COUNT)
  const faulty = faultChance(count, knowledge)
  const total = FAULTS.reduce((sum, f) => sum + knowledge.faults[f].value.share, 0)
  let sum = 1 - faulty
  base[0] = sum
  FAULTS.forEach((fault, f) => {
    base[f + 1] = faulty * knowledge.faults[fault].value.share / total * (faultFactors[fault] ?? 1)
    sum += base[f + 1]!
  })
  for (let f = 0; f < OWN_COUNT; f++) base[f]! /= sum
  const prior = new Float64Array(grid.classes.length * OWN_COUNT), likeliest = new Float64Array(OWN_COUNT)
  grid.classes.forEach(({ tendency, each }, c) => {
    for (let f = 0; f < OWN_COUNT; f++) {
      const p = base[f]! * (1 - each) + (tendency !== 0 && f === tendency ? each : 0)
      prior[c * OWN_COUNT + f] = p
      if (p > likeliest[f]!) likeliest[f] = p
    }
  })
  return { prior, likeliest, kinds: kindsOf(prior, grid) }
}

/** The priors of every cylinder; those that differ in nothing share them. */
export function allPriors({ cylinders }: Evidence, grid: Grid, knowledge: Knowledge): Priors[] {
  const known = new Map<string, Priors>()
  return cylinders.map((cylinder) => {
    const key = JSON.stringify(cylinder.faultFactors)
    let priors = known.get(key)
    if (priors === undefined) known.set(key, (priors = ownPriors(cylinder, cylinders.length, grid, knowledge)))
    return priors
  })
}

/** States whose best case is this small against the best of all are left out: together they cannot move a probability by 1e-4. */
const PRUNE = 1e-7
/** States under a bridge are many small ones: so much less of them is left out. */
const BRIDGE_CARE = 10
/** Where all readings together can lie is told by states that are not below this part of the best. */
const LEADING = 1e-4

/** The sums of a cylinder whose tables are there over its own states, for each bridge level and kept cell; `room` as in `sumStates`. */
export function summed(likelihood: Likelihood, kept: Cells, space: Workspace, room?: Float64Array[]): Emission {
  const blocks = sumStates(likelihood, kept, space, room)
  return { ...likelihood, blocks, scale: scaleToOne(blocks) }
}

/** What is known of a cylinder already: tables of lists of readings that stay the same need not be made again. */
export interface Before {
  readonly cylinders: readonly CylinderEvidence[]
  readonly likelihood: Likelihood
}

/** Weighs the readings of one cylinder for every state. */
export function likelihoodOf(index: number, gauge: readonly GaugeEvidence[], evidence: Evidence, space: Workspace, plain: Priors, before?: Before): Likelihood {
  const { states, grid, knowledge } = space
  const cylinder = evidence.cylinders[index]!, was = before?.cylinders[index]
  const sameOthers = mistakenFor(grid.classes, index).every((i) => before?.cylinders[i] === evidence.cylinders[i])
  // whether there is a wet reading says how a dry one may be wrong
  const sameDry = sameOthers && was?.dry === cylinder.dry && (was.wet.length > 0) === (cylinder.wet.length > 0)
  const dry = before !== undefined && sameDry ? before.likelihood.dry : dryTable(index, gauge, grid, states)
  const wet = before !== undefined && sameDry && was?.wet === cylinder.wet ? before.likelihood.wet : wetTable(index, gauge, grid, states, knowledge)
  const looks = weighLooks(cylinder, states, knowledge)
  const { prior, likeliest, kinds } = withPlugs(plain, cylinder, grid, knowledge)
  const weight = new Float64Array(states.count)
  for (let s = 0; s < states.count; s++) weight[s] = states.weight[s]! * (looks === null ? 1 : looks.both[s]!)
  // a leaking adaptor is told from the mixture of the dry readings unless oil came after it; a repeat that agrees rules it out
  const seat = wet === null || cylinder.dry.length > 1 || cylinder.dry[0]?.dropped === true ? 0 : 1
  if (seat === 0) for (let s = 0; s < states.count; s++) if (states.drySeat[s] === 1) weight[s] = 0
  const bound = gaugeBounds(weight, likeliest, dry, wet, space)
  const { leak, leakAt, leakRow } = before !== undefined && sameOthers && was?.leakage === cylinder.leakage ? before.likelihood : leakTables(index, evidence, bound, space)
  if (leak !== null) {
    const most = rowMaxima(leak, leakRow === states.plainRowOf ? states.plainLeaks.length : states.leaks.length, grid.leakCount)
    for (let s = 0; s < bound.length; s++) bound[s]! *= most[leakRow[s]!]!
  }
  let largest = 0
  for (let s = 0; s < states.count; s++) if (bound[s]! > largest) largest = bound[s]!
  const live = new Uint8Array(states.count), leading = new Uint8Array(states.count), atBest = new Float64Array(OWN_COUNT)
  for (let s = 0; s < states.count; s++) {
    if (!(bound[s]! >= largest * PRUNE)) continue
    live[s] = 1
    if (bound[s]! >= largest * LEADING) leading[s] = 1
    atBest[states.own[s]!]! += bound[s]! / likeliest[states.own[s]!]!
  }
  return { plain, dry, wet, leak, leakAt, leakRow, looks, weight, prior, likeliest, kinds, live, leading, atBest }
}

/** Upper bounds of each state's contribution by prior (that of a bridge included: it is counted once for both its cylinders), looks and gauge. */
function gaugeBounds(weight: Float64Array, prior: Float64Array, dry: Float64Array | null, wet: Float64Array | null, space: Workspace): Float64Array {
  const { states, grid } = space
  const dryMax = dry === null ? null : rowMaxima(dry, states.lossRows.length, grid.ladderFrom[grid.families.length]!)
  const wetMax = wet === null ? null : rowMaxima(wet, states.sealRows.length, grid.rises.length)
  const bound = new Float64Array(states.count)
  for (let s = 0; s < states.count; s++) {
    const bridge = states.bridgeLevel[s] === 0 ? 1 : BRIDGE_CARE * states.bridgePrior[states.bridgeLevel[s]!]!
    bound[s] = bridge * weight[s]! * prior[states.own[s]!]! * (dryMax === null ? 1 : dryMax[states.lossRow[s]!]!) * (wetMax === null ? 1 : wetMax[states.sealRow[s]!]!)
  }
  return bound
}

/** Leak likelihoods of the rows that can matter under the bounds so far, and again where another cylinder's reading may stand here; rows that cannot stay at zero. */
function leakTables(index: number, evidence: Evidence, bound: Float64Array, space: Workspace): Pick<Emission, 'leak' | 'leakAt' | 'leakRow'> {
  const { states, grid } = space
  const { cylinders } = evidence
  const noted = grid.families.map((classes) => ({ from: notedUnder(grid.classes[classes[0]!]!, 'leakage', index), whenWet: grid.classes[classes[0]!]!.leakWhenWet }))
  // whose notes they are, and where any of them is with oil what that leaves of the leak
  const keyOf = ({ from, whenWet }: (typeof noted)[number]): string => (cylinders[from]!.leakage.some((r) => r.wet) ? JSON.stringify([from, whenWet]) : String(from))
  const tables = new Map(noted.map((each) => [keyOf(each), each]))
  const plain = cylinders[index]!.leakage.every((r) => !r.wet && !r.rockersSlack) && !comesAndGoes(cylinders[index]!, space.knowledge)
  const rows = plain ? states.plainLeaks : states.leaks, leakRow = plain ? states.plainRowOf : states.leakRow
  const size = rows.length * grid.leakCount
  const places = [...tables.keys()]
  const leakAt = Int32Array.from(noted, (each) => places.indexOf(keyOf(each)) * size)
  if (cylinders[index]!.leakage.length === 0) return { leak: null, leakAt, leakRow }
  const leak = new Float64Array(tables.size * size)
  const rowMost = new Float64Array(rows.length)
  for (let s = 0; s < bound.length; s++) if (bound[s]! > rowMost[leakRow[s]!]!) rowMost[leakRow[s]!] = bound[s]!
  const order = Int32Array.from(rowMost.keys()).sort((a, b) => rowMost[b]! - rowMost[a]!)
  ;[...tables.values()].forEach(({ from, whenWet }, k) => {
    const leaks = leakSums(index, cylinders[from]!, evidence, grid, space.knowledge, space.ears, space.curve, whenWet)
    // what is not there cannot stand in the wrong place
    if (leaks === null) return
    let best = 0
    for (const r of order) {
      if (rowMost[r]! * leaks.atMost < best * PRUNE) break
      const at = k * size + r * grid.leakCount
      leaks.fill(rows[r]!, leak, at)
      let most = 0
      for (let l = at; l < at + grid.leakCount; l++) if (leak[l]! > most) most = leak[l]!
      if (rowMost[r]! * most > best) best = rowMost[r]! * most
    }
  })
  return { leak, leakAt, leakRow }
}

/** Largest value of each row over all classes: tables are [class][row][width] or [row][width]. */
function rowMaxima(table: Float64Array, rows: number, width: number): Float64Array {
  const maxima = new Float64Array(rows)
  for (let start = 0, row = 0; start < table.length; start += width, row = row + 1 === rows ? 0 : row + 1) {
    for (let i = start; i < start + width; i++) if (table[i]! > maxima[row]!) maxima[row] = table[i]!
  }
  return maxima
}

/** Scales the blocks to a largest value of one, so that products over many cylinders do not vanish. */
function scaleToOne(blocks: readonly (Float64Array | null)[]): number {
  let most = 0
  for (const block of blocks) {
    if (block === null) continue
    for (let i = 0; i < block.length; i++) if (block[i]! > most) most = block[i]!
  }
  if (!(most > 0)) return 1
  const scale = 1 / most
  for (const block of blocks) {
    if (block === null) continue
    for (let i = 0; i < block.length; i++) block[i]! *= scale
  }
  return scale
}

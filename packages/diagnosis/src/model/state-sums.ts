import { sumDry, weighDry } from './dry-sums.ts'
import type { StateGroup } from './groups.ts'
import type { Kinds } from './kinds.ts'
import { OWN_COUNT } from './states.ts'
import type { Emission, KeptCells, Workspace } from './workspace.ts'

/** What the sums need of a cylinder. */
export type Tables = Pick<Emission, 'dry' | 'wet' | 'leak' | 'leakRow' | 'weight' | 'prior' | 'live' | 'kinds'>

/** Room for the sums over one group, for each kind: by healthy leak, and by rise and healthy leak. */
interface Scratch { readonly byLeak: Float64Array; readonly byCell: Float64Array; readonly mixed: Float64Array; readonly touched: Uint8Array; readonly inGroup: Uint8Array }

function scratchFor(kinds: Kinds, { grid }: Workspace): Scratch {
  const cells = grid.rises.length * grid.leakCount
  return {
    byLeak: new Float64Array(kinds.most * grid.leakCount), byCell: new Float64Array(kinds.most * cells), mixed: new Float64Array(cells),
    touched: new Uint8Array(kinds.most), inGroup: new Uint8Array(kinds.most),
  }
}

function anyLive(group: StateGroup, live: Uint8Array): boolean {
  for (let i = 0; i < group.states.length; i++) if (live[group.states[i]!] === 1) return true
  return false
}

/**
 * Sums the likelihood of a cylinder's readings over its own states: blocks [signature * bridge levels + level], each over the
 * cells of the grid; null where no state is.
 */
export function sumStates(tables: Tables, space: Workspace): (Float64Array | null)[] {
  if (tables.wet === null && tables.leak === null) return sumDry(tables, space)
  const { grid, grouping, states } = space
  const levels = states.bridgePrior.length
  const blocks: (Float64Array | null)[] = new Array<null>(grouping.signatures.length * levels).fill(null)
  const scratch = scratchFor(tables.kinds, space)
  for (const group of tables.dry === null ? grouping.unread : grouping.read) {
    if (!anyLive(group, tables.live)) continue
    const block = (blocks[group.signature * levels + group.bridgeLevel] ??= new Float64Array(grid.cells))
    for (let f = 0; f < grid.families.length; f++) {
      innerOf(group, f, tables, space, scratch)
      spread(group, f, tables, space, scratch, block)
    }
  }
  return blocks
}

/** Weight x wet x leak likelihood of a group's states over rise and healthy leak, for each kind, into `byCell`. */
function innerOf(group: StateGroup, f: number, { wet, leak, leakRow, weight, live, kinds }: Tables, space: Workspace, scratch: Scratch): void {
  const { grid, states } = space
  const { byLeak, byCell, touched, inGroup } = scratch
  const first = grid.families[f]![0]!
  const from = grid.leakFrom[first]!, width = grid.leakTo[first]! - from
  const rises = grid.rises.length, count = rises * width
  const kindCount = kinds.ratios[f]!.length
  byCell.fill(0, 0, kindCount * count)
  byLeak.fill(0, 0, kindCount * width)
  inGroup.fill(0)
  const { states: list, runs } = group
  for (let r = 0; r + 1 < runs.length; r++) {
    let any = 0
    for (let i = runs[r]!; i < runs[r + 1]!; i++) {
      const s = list[i]!
      if (live[s] === 0) continue
      const own = f * OWN_COUNT + states.own[s]!
      const kind = kinds.kindOf[own]!, at = kind * width
      const w = weight[s]! * kinds.lead[own]!
      touched[kind] = 1
      any = 1
      if (leak === null) for (let l = 0; l < width; l++) byLeak[at + l]! += w
      else {
        const row = leakRow[s]! * grid.leakCount + from
        for (let l = 0; l < width; l++) byLeak[at + l]! += w * leak[row + l]!
      }
    }
    if (any === 0) continue
    const wetAt = (f * states.sealRows.length + states.sealRow[list[runs[r]!]!]!) * rises
    for (let kind = 0; kind < kindCount; kind++) {
      if (touched[kind] === 0) continue
      touched[kind] = 0
      inGroup[kind] = 1
      const at = kind * width
      let cell = kind * count
      for (let v = 0; v < rises; v++) {
        const factor = wet === null ? 1 : wet[wetAt + v]!
        for (let l = 0; l < width; l++) byCell[cell++]! += factor * byLeak[at + l]!
      }
      byLeak.fill(0, at, at + width)
    }
  }
}

/** Multiplies the levels of the columns in. */
function spread(group: StateGroup, f: number, { dry, kinds }: Tables, { grid }: Workspace, { byCell, mixed, inGroup }: Scratch, block: Float64Array): void {
  const classes = grid.families[f]!
  const count = grid.rises.length * (grid.leakTo[classes[0]!]! - grid.leakFrom[classes[0]!]!)
  const dryAt = group.lossRow * grid.columns
  for (let i = 0; i < classes.length; i++) {
    const c = classes[i]!
    if (grid.columnFrom[c] === grid.columnFrom[c + 1]) continue
    mixed.fill(0, 0, count)
    for (let kind = 0; kind < inGroup.length; kind++) {
      if (inGroup[kind] === 0) continue
      const ratio = kinds.ratios[f]![kind]![i]!
      if (ratio === 0) continue
      for (let k = 0, at = kind * count; k < count; k++) mixed[k]! += ratio * byCell[at + k]!
    }
    for (let q = grid.columnFrom[c]!; q < grid.columnFrom[c + 1]!; q++) {
      const factor = dry === null ? 1 : dry[dryAt + q]!
      const at = grid.offset[q]!
      for (let k = 0; k < count; k++) block[at + k]! += factor * mixed[k]!
    }
  }
}

/**
 * Weight of each state of a cylinder: the sum over the kept cells of prior x likelihood x all else. `around` holds what is not this
 * cylinder's own, for each signature: [bridge level * kept cells + cell].
 *
 * @param worn takes, if given, the part of each weight that lies in evenly worn engines
 */
export function weighStates(tables: Tables, scale: number, around: readonly Float64Array[], kept: KeptCells, space: Workspace, worn?: Float64Array): Float64Array {
  const { grid, grouping, states } = space
  const out = new Float64Array(states.count)
  if (tables.wet === null && tables.leak === null) weighDry(tables, around, kept, space, out, worn ?? out)
  else {
    const into = grid.families.map((classes) => (worn !== undefined && grid.classes[classes[0]!]!.commonLoss > 0 ? worn : out))
    const scratch = scratchFor(tables.kinds, space)
    for (const group of tables.dry === null ? grouping.unread : grouping.read) {
      if (!anyLive(group, tables.live)) continue
      for (let f = 0; f < grid.families.length; f++) {
        if (gatherColumns(group, f, tables, space, around[group.signature]!, kept, scratch)) outOf(group, f, tables, space, scratch, into[f]!)
      }
    }
  }
  for (let s = 0; s < out.length; s++) {
    if (worn !== undefined) {
      worn[s]! *= scale
      out[s]! *= scale
      out[s]! += worn[s]!
    } else out[s]! *= scale
  }
  return out
}

/** Sums the columns of a family with the dry likelihood of a group, for each kind that the group has, into `byCell`; false when nothing is kept there. */
function gatherColumns(group: StateGroup, f: number, { dry, kinds, live }: Tables, { grid, states }: Workspace, around: Float64Array, kept: KeptCells, { byCell, mixed, inGroup }: Scratch): boolean {
  const classes = grid.families[f]!
  const count = grid.rises.length * (grid.leakTo[classes[0]!]! - grid.leakFrom[classes[0]!]!)
  const kindCount = kinds.ratios[f]!.length
  inGroup.fill(0)
  for (let i = 0; i < group.states.length; i++) {
    const s = group.states[i]!
    if (live[s] === 1) inGroup[kinds.kindOf[f * OWN_COUNT + states.own[s]!]!] = 1
  }
  byCell.fill(0, 0, kindCount * count)
  const base = group.bridgeLevel * kept.cells.length
  const dryAt = group.lossRow * grid.columns
  let any = false
  for (let i = 0; i < classes.length; i++) {
    const c = classes[i]!
    const first = grid.columnFrom[c]!, last = grid.columnFrom[c + 1]!
    if (kept.from[first] === kept.from[last]) continue
    any = true
    mixed.fill(0, 0, count)
    for (let q = first; q < last; q++) {
      const factor = dry === null ? 1 : dry[dryAt + q]!
      for (let at = kept.from[q]!; at < kept.from[q + 1]!; at++) mixed[kept.inner[at]!]! += factor * around[base + at]!
    }
    for (let kind = 0; kind < kindCount; kind++) {
      const ratio = kinds.ratios[f]![kind]![i]!
      if (inGroup[kind] === 0 || ratio === 0) continue
      for (let k = 0, at = kind * count; k < count; k++) byCell[at + k]! += ratio * mixed[k]!
    }
  }
  return any
}

/** Multiplies wet and leak likelihood in, run by run, and adds to the states. */
function outOf(group: StateGroup, f: number, { wet, leak, leakRow, weight, live, kinds }: Tables, { grid, states }: Workspace, { byCell, byLeak, inGroup }: Scratch, out: Float64Array): void {
  const first = grid.families[f]![0]!
  const from = grid.leakFrom[first]!, width = grid.leakTo[first]! - from
  const rises = grid.rises.length, count = rises * width
  const { states: list, runs } = group
  for (let r = 0; r + 1 < runs.length; r++) {
    let summed = 0
    for (let i = runs[r]!; i < runs[r + 1]!; i++) {
      const s = list[i]!
      if (live[s] === 0) continue
      if (summed === 0) {
        summed = 1
        const wetAt = (f * states.sealRows.length + states.sealRow[s]!) * rises
        for (let kind = 0; kind < inGroup.length; kind++) {
          if (inGroup[kind] === 0) continue
          const at = kind * width
          byLeak.fill(0, at, at + width)
          let cell = kind * count
          for (let v = 0; v < rises; v++) {
            const factor = wet === null ? 1 : wet[wetAt + v]!
            for (let l = 0; l < width; l++) byLeak[at + l]! += factor * byCell[cell++]!
          }
        }
      }
      const own = f * OWN_COUNT + states.own[s]!
      const at = kinds.kindOf[own]! * width
      let sum = 0
      if (leak === null) for (let l = 0; l < width; l++) sum += byLeak[at + l]!
      else {
        const row = leakRow[s]! * grid.leakCount + from
        for (let l = 0; l < width; l++) sum += leak[row + l]! * byLeak[at + l]!
      }
      out[s]! += weight[s]! * kinds.lead[own]! * sum
    }
  }
}

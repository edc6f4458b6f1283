import { sumDry, weighDry } from './dry-sums.ts'
import type { StateGroup } from './groups.ts'
import type { Kinds } from './kinds.ts'
import { OWN_COUNT } from './states.ts'
import type { Box, Emission, KeptCells, Workspace } from './workspace.ts'

/** What the sums need of a cylinder. */
export type Tables = Pick<Emission, 'dry' | 'wet' | 'leak' | 'leakAt' | 'leakRow' | 'weight' | 'prior' | 'live' | 'kinds'>

/** Room for the sums over one group, for each kind: by healthy leak; by rise and healthy leak; and over the groups by level as well. */
interface Scratch { readonly byLeak: Float64Array; readonly byCell: Float64Array; readonly byLevel: Float64Array; readonly touched: Uint8Array; readonly inGroup: Uint8Array; readonly inBlock: Uint8Array }

function scratchFor(kinds: Kinds, { grid }: Workspace): Scratch {
  const cells = grid.families.reduce((most, _, f) => Math.max(most, widthOf(f, grid)), 0)
  const levels = grid.ladders.reduce((most, { count }) => Math.max(most, count), 0)
  return {
    byLeak: new Float64Array(kinds.most * grid.leakCount), byCell: new Float64Array(kinds.most * cells), byLevel: new Float64Array(kinds.most * levels * cells),
    touched: new Uint8Array(kinds.most), inGroup: new Uint8Array(kinds.most), inBlock: new Uint8Array(kinds.most),
  }
}

/** Live groups of one signature and bridge level. */
interface Block { readonly signature: number; readonly bridgeLevel: number; readonly groups: readonly StateGroup[] }

function liveBlocks({ dry, live }: Tables, { grouping }: Workspace): Block[] {
  const blocks: { signature: number; bridgeLevel: number; groups: StateGroup[] }[] = []
  for (const group of dry === null ? grouping.unread : grouping.read) {
    if (!group.states.some((s) => live[s] === 1)) continue
    const last = blocks.at(-1)
    if (last !== undefined && last.signature === group.signature && last.bridgeLevel === group.bridgeLevel) last.groups.push(group)
    else blocks.push({ signature: group.signature, bridgeLevel: group.bridgeLevel, groups: [group] })
  }
  return blocks
}

/**
 * Sums the likelihood of a cylinder's readings over its own states: blocks [signature * bridge levels + level], each over the
 * cells of the grid; null where no state is.
 *
 * @param room arrays of an earlier sum over the same grid that nobody needs any more: taken for the blocks, and grown by what is missing
 */
export function sumStates(tables: Tables, space: Workspace, room: Float64Array[] = []): (Float64Array | null)[] {
  if (tables.wet === null && tables.leak === null) return sumDry(tables, space)
  const { grid, grouping, states } = space
  const levels = states.bridgePrior.length
  const out: (Float64Array | null)[] = new Array<null>(grouping.signatures.length * levels).fill(null)
  const scratch = scratchFor(tables.kinds, space)
  let taken = 0
  for (const { signature, bridgeLevel, groups } of liveBlocks(tables, space)) {
    const block = (room[taken++] ??= new Float64Array(grid.cells)).fill(0)
    out[signature * levels + bridgeLevel] = block
    for (let f = 0; f < grid.families.length; f++) {
      if (grid.ladders[f]!.count === 0) continue
      scratch.inBlock.fill(0)
      for (const group of groups) {
        innerOf(group, f, tables, space, scratch)
        addLevels(group, f, tables, space, scratch)
      }
      spread(f, tables, space, scratch, block)
    }
  }
  return out
}

/** Cells within a column of a family. */
function widthOf(f: number, { families, rises, leakFrom, leakTo }: Workspace['grid']): number {
  const first = families[f]![0]!
  return rises.length * (leakTo[first]! - leakFrom[first]!)
}

/** Weight x wet x leak likelihood of a group's states over rise and healthy leak, for each kind, into `byCell`. */
function innerOf(group: StateGroup, f: number, { wet, leak, leakAt, leakRow, weight, live, kinds }: Tables, space: Workspace, scratch: Scratch): void {
  const { grid, states } = space
  const { byLeak, byCell, touched, inGroup } = scratch
  const first = grid.families[f]![0]!
  const from = grid.leakFrom[first]!, width = grid.leakTo[first]! - from
  const rises = grid.rises.length, count = rises * width
  const kindCount = kinds.ratios[f]!.length
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
        const row = leakAt[f]! + leakRow[s]! * grid.leakCount + from
        for (let l = 0; l < width; l++) byLeak[at + l]! += w * leak[row + l]!
      }
    }
    if (any === 0) continue
    const wetAt = (f * states.sealRows.length + states.sealRow[list[runs[r]!]!]!) * rises
    for (let kind = 0; kind < kindCount; kind++) {
      if (touched[kind] === 0) continue
      touched[kind] = 0
      const at = kind * width
      let cell = kind * count
      if (inGroup[kind] === 0) byCell.fill(0, cell, cell + count)
      inGroup[kind] = 1
      for (let v = 0; v < rises; v++) {
        const factor = wet === null ? 1 : wet[wetAt + v]!
        for (let l = 0; l < width; l++) byCell[cell++]! += factor * byLeak[at + l]!
      }
      byLeak.fill(0, at, at + width)
    }
  }
}

/** Adds a group to the sums by level: its cells times the dry likelihood of its loss. */
function addLevels(group: StateGroup, f: number, { dry, kinds }: Tables, { grid }: Workspace, { byCell, byLevel, inGroup, inBlock }: Scratch): void {
  const count = widthOf(f, grid)
  const levels = grid.ladders[f]!.count
  const dryAt = group.lossRow * grid.ladderFrom[grid.families.length]! + grid.ladderFrom[f]!
  for (let kind = 0; kind < kinds.ratios[f]!.length; kind++) {
    if (inGroup[kind] === 0) continue
    if (inBlock[kind] === 0) byLevel.fill(0, kind * levels * count, (kind + 1) * levels * count)
    inBlock[kind] = 1
    const from = kind * count
    for (let j = 0, to = kind * levels * count; j < levels; j++) {
      const factor = dry === null ? 1 : dry[dryAt + j]!
      for (let k = 0; k < count; k++) byLevel[to++]! += factor * byCell[from + k]!
    }
  }
}

/** Gives each class its part of each kind. */
function spread(f: number, { kinds }: Tables, { grid }: Workspace, { byLevel, inBlock }: Scratch, block: Float64Array): void {
  const count = widthOf(f, grid)
  const levels = grid.ladders[f]!.count
  grid.families[f]!.forEach((c, i) => {
    for (let kind = 0; kind < kinds.ratios[f]!.length; kind++) {
      const ratio = kinds.ratios[f]![kind]![i]!
      if (inBlock[kind] === 0 || ratio === 0) continue
      for (let q = grid.columnFrom[c]!; q < grid.columnFrom[c + 1]!; q++) {
        const to = grid.offset[q]!, from = (kind * levels + grid.levelOf[q]! - grid.ladderFrom[f]!) * count
        for (let k = 0; k < count; k++) block[to + k]! += ratio * byLevel[from + k]!
      }
    }
  })
}

/**
 * Weight of each state of a cylinder: the sum over the kept cells of prior x likelihood x all else. `around` holds what is not this
 * cylinder's own, for each signature: [bridge level * kept cells + cell].
 *
 * @param worn takes, if given, the part of each weight that lies in evenly worn engines
 */
export function weighStates(tables: Tables, scale: number, around: readonly Float64Array[], kept: KeptCells, space: Workspace, worn?: Float64Array): Float64Array {
  const { grid, states } = space
  const out = new Float64Array(states.count)
  if (tables.wet === null && tables.leak === null) weighDry(tables, around, kept, space, out, worn ?? out)
  else {
    const into = grid.families.map((classes) => (worn !== undefined && grid.classes[classes[0]!]!.commonLoss > 0 ? worn : out))
    const scratch = scratchFor(tables.kinds, space)
    for (const { signature, bridgeLevel, groups } of liveBlocks(tables, space)) {
      for (let f = 0; f < grid.families.length; f++) {
        if (!gatherLevels(f, bridgeLevel, tables, space, around[signature]!, kept, scratch)) continue
        for (const group of groups) {
          gatherCells(group, f, tables, space, kept.boxes[f]!, scratch)
          outOf(group, f, tables, space, kept.boxes[f]!, scratch, into[f]!)
        }
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

/** What is not the cylinder's own for each kind by level and cell, the classes of a family summed into `byLevel`; false when nothing is kept there. */
function gatherLevels(f: number, bridgeLevel: number, { kinds }: Tables, { grid }: Workspace, around: Float64Array, kept: KeptCells, { byLevel }: Scratch): boolean {
  const { rises, leaks } = kept.boxes[f]!
  const count = rises * leaks
  if (count === 0) return false
  const levels = grid.ladders[f]!.count
  const ratios = kinds.ratios[f]!
  const base = bridgeLevel * kept.cells.length
  byLevel.fill(0, 0, ratios.length * levels * count)
  grid.families[f]!.forEach((c, i) => {
    const first = grid.columnFrom[c]!, last = grid.columnFrom[c + 1]!
    if (kept.from[first] === kept.from[last]) return
    for (let kind = 0; kind < ratios.length; kind++) {
      const ratio = ratios[kind]![i]!
      if (ratio === 0) continue
      for (let q = first; q < last; q++) {
        const to = (kind * levels + grid.levelOf[q]! - grid.ladderFrom[f]!) * count
        for (let at = kept.from[q]!; at < kept.from[q + 1]!; at++) byLevel[to + kept.inner[at]!]! += ratio * around[base + at]!
      }
    }
  })
  return true
}

/** Sums the levels with the dry likelihood of a group, for each kind that the group has, into `byCell`. */
function gatherCells(group: StateGroup, f: number, { dry, kinds, live }: Tables, { grid, states }: Workspace, { rises, leaks }: Box, { byCell, byLevel, inGroup }: Scratch): void {
  const count = rises * leaks
  const levels = grid.ladders[f]!.count
  const dryAt = group.lossRow * grid.ladderFrom[grid.families.length]! + grid.ladderFrom[f]!
  inGroup.fill(0)
  for (let i = 0; i < group.states.length; i++) {
    const s = group.states[i]!
    if (live[s] === 1) inGroup[kinds.kindOf[f * OWN_COUNT + states.own[s]!]!] = 1
  }
  for (let kind = 0; kind < kinds.ratios[f]!.length; kind++) {
    if (inGroup[kind] === 0) continue
    const to = kind * count
    byCell.fill(0, to, to + count)
    for (let j = 0, from = kind * levels * count; j < levels; j++) {
      const factor = dry === null ? 1 : dry[dryAt + j]!
      for (let k = 0; k < count; k++) byCell[to + k]! += factor * byLevel[from++]!
    }
  }
}

/** Multiplies wet and leak likelihood in, run by run, and adds to the states. */
function outOf(group: StateGroup, f: number, { wet, leak, leakAt, leakRow, weight, live, kinds }: Tables, { grid, states }: Workspace, box: Box, { byCell, byLeak, inGroup }: Scratch, out: Float64Array): void {
  const { rises, leaks: width } = box
  const from = grid.leakFrom[grid.families[f]![0]!]! + box.leak, count = rises * width
  const { states: list, runs } = group
  for (let r = 0; r + 1 < runs.length; r++) {
    let summed = 0
    for (let i = runs[r]!; i < runs[r + 1]!; i++) {
      const s = list[i]!
      if (live[s] === 0) continue
      if (summed === 0) {
        summed = 1
        const wetAt = (f * states.sealRows.length + states.sealRow[s]!) * grid.rises.length + box.rise
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
        const row = leakAt[f]! + leakRow[s]! * grid.leakCount + from
        for (let l = 0; l < width; l++) sum += leak[row + l]! * byLeak[at + l]!
      }
      out[s]! += weight[s]! * kinds.lead[own]! * sum
    }
  }
}
